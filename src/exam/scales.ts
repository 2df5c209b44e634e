import { commonPractice, recalled, type Source } from '../kernel/cite.ts';

/** One step of a scale of values. */
export interface Grade {
  readonly key: string;
  readonly label: string;
  /** Order-preserving number for sorting and thresholds, never for means. Own choice; no standard fixes it. */
  readonly ordinal?: number;
}

/** The values that an item may take. `normal` lists the keys that are not a deficit. */
export interface Scale {
  readonly label: string;
  /** The property of the exam's JSON that holds the value. */
  readonly property: string;
  readonly grades: readonly Grade[];
  readonly normal: readonly string[];
  /** Grade that a reader sees as the full mark: 3 of 5 is written 3/5. */
  readonly outOf?: number;
  readonly source: Source;
}

export const scales = {
  'mrc-power': {
    label: 'Medical Research Council power grade',
    property: 'grade',
    grades: [
      { key: '0', label: 'No contraction', ordinal: 0 },
      { key: '1', label: 'Flicker or trace of contraction', ordinal: 1 },
      { key: '2', label: 'Active movement with gravity eliminated', ordinal: 2 },
      { key: '3', label: 'Active movement against gravity', ordinal: 3 },
      { key: '4-', label: 'Active movement against gravity and slight resistance', ordinal: 3.67 },
      { key: '4', label: 'Active movement against gravity and moderate resistance', ordinal: 4 },
      { key: '4+', label: 'Active movement against gravity and strong resistance', ordinal: 4.33 },
      { key: '5', label: 'Normal power', ordinal: 5 },
    ],
    normal: ['5'],
    outOf: 5,
    source: recalled('mrc-aids', 'grading of power; 4-, 4 and 4+ are common additions'),
  },
  'reflex-grade': {
    label: 'Reflex grade',
    property: 'grade',
    grades: [
      { key: '0', label: 'Absent', ordinal: 0 },
      { key: 'trace', label: 'Trace, or only with reinforcement', ordinal: 0.5 },
      { key: '1', label: 'Reduced', ordinal: 1 },
      { key: '2', label: 'Normal', ordinal: 2 },
      { key: '3', label: 'Brisk', ordinal: 3 },
      { key: '4', label: 'Very brisk, with clonus', ordinal: 4 },
    ],
    normal: ['2'],
    source: recalled('dejong', 'grading of the muscle stretch reflexes, 0 to 4+'),
  },
  'superficial-reflex': {
    label: 'Superficial reflex',
    property: 'grade',
    grades: [
      { key: '0', label: 'Absent', ordinal: 0 },
      { key: '1', label: 'Reduced', ordinal: 1 },
      { key: '2', label: 'Present', ordinal: 2 },
    ],
    normal: ['2'],
    source: commonPractice,
  },
  'plantar-response': {
    label: 'Plantar response',
    property: 'response',
    grades: [
      { key: 'flexor', label: 'Flexor' },
      { key: 'extensor', label: 'Extensor' },
      { key: 'equivocal', label: 'Equivocal' },
      { key: 'mute', label: 'Mute' },
    ],
    normal: ['flexor'],
    source: commonPractice,
  },
  tone: {
    label: 'Muscle tone',
    property: 'tone',
    grades: [
      { key: 'normal', label: 'Normal' },
      { key: 'reduced', label: 'Reduced' },
      { key: 'spastic', label: 'Spastic' },
      { key: 'rigid', label: 'Rigid' },
      { key: 'paratonic', label: 'Paratonic' },
    ],
    normal: ['normal'],
    source: commonPractice,
  },
  sensation: {
    label: 'Sensation',
    property: 'result',
    grades: [
      { key: 'normal', label: 'Normal' },
      { key: 'reduced', label: 'Reduced' },
      { key: 'absent', label: 'Absent' },
      { key: 'increased', label: 'Increased' },
      { key: 'altered', label: 'Altered' },
    ],
    normal: ['normal'],
    source: commonPractice,
  },
  coordination: {
    label: 'Coordination',
    property: 'result',
    grades: [
      { key: 'normal', label: 'Normal' },
      { key: 'impaired', label: 'Impaired' },
      { key: 'impaired-by-weakness', label: 'Impaired in proportion to weakness' },
    ],
    normal: ['normal'],
    source: commonPractice,
  },
  performance: {
    label: 'Performance of a task',
    property: 'result',
    grades: [
      { key: 'normal', label: 'Performed normally' },
      { key: 'impaired', label: 'Impaired' },
      { key: 'unable', label: 'Unable' },
    ],
    normal: ['normal'],
    source: commonPractice,
  },
  'test-result': {
    label: 'Result of a special test',
    property: 'result',
    grades: [
      { key: 'negative', label: 'Negative' },
      { key: 'positive', label: 'Positive' },
      { key: 'equivocal', label: 'Equivocal' },
    ],
    normal: ['negative'],
    source: commonPractice,
  },
  presence: {
    label: 'Presence of a sign',
    property: 'present',
    grades: [
      { key: 'present', label: 'Present' },
      { key: 'absent', label: 'Absent' },
    ],
    normal: ['absent'],
    source: commonPractice,
  },
} as const satisfies Record<string, Scale>;

export type ScaleKey = keyof typeof scales;

/** Clonus is counted, not graded: beats, 0 to 99. Four or more beats are taken as abnormal. */
export const clonusAbnormalFromBeats = 4;

import { segmentIndex } from '../../anatomy/segments.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Ages, type Hypothesis, hypothesis, type PaceFactors, widespreadSite } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type Process, processOf, reached } from '../process.ts';
import { comesOnSlowly, facultiesOf, type ProcessSign } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged from what reaches a neurologist. */
const percentOfAll = 0.9;

/** Spinocerebellar forms lose the longest sensory fibres and the tracts as well. */
const longAxons = processOf({
  largeFibre: ({ lengthCm }) => 0.8 * reached(lengthCm, 70),
  reflex: () => 0.85,
  because: 'cerebellum and the longest sensory fibres waste away together',
});
const cerebellumInflamed = processOf({ because: 'the whole cerebellum is inflamed or poisoned' });
/** Limbs that the cerebellum has left are slack and tire, and in a child they are called weak (Holmes 1939, recalled). Judged. */
const slackWithIt = processOf({
  motor: () => 0.2,
  because: 'the whole cerebellum is inflamed or poisoned, and limbs without it are slack and seem weak',
});
const wholeCerebellum = widespreadSite('cerebellar-degeneration', 'Degeneration of the whole cerebellum', 'cerebellum');
const cerebellumOnly = processOf({ because: 'the whole cerebellum wastes away' });

/** Most of the dominant ataxias let go of the jerks of arms and legs long before anything is weak (from-memory). Judged. */
const briskAndUnsteady = processOf({
  release: ({ segment }) => (segment === null ? 0 : 0.5),
  because: 'the whole cerebellum wastes away, and descending tracts with it',
});

const autonomicFailure: readonly ProcessSign[] = [
  ['blood-pressure', 0.75],
  ['bladder-urgency', 0.6],
  ['bladder-retention', 0.45],
  ['sexual', 0.6],
  ['voice', 0.25],
];

/** Dystonia in a third, slow or narrow gaze in as many; chorea and a failing mind in fewer. Judged. */
const twistedLimbs: readonly ProcessSign[] = [
  ['dystonia', 0.5],
  ['rigidity', 0.25],
  ['chorea', 0.06],
  ['gaze-vertical', 0.35],
  ['gaze-down', 0.25],
  ['abducens', 0.15],
  ['executive', 0.35],
  ['speech-articulation', 0.4],
];

/** Memory and planning fail in a third to a half, and limbs jerk in as many. Judged. */
const failingMind: readonly ProcessSign[] = [
  ['memory', 0.45],
  ['executive', 0.5],
  ['attention', 0.3],
  ['mood-behaviour', 0.3],
  ['myoclonus', 0.5],
  ['speech-articulation', 0.4],
  ['chorea', 0.1],
  ['gaze-horizontal', 0.1],
];

function cerebellarDegeneration(): Hypothesis[] {
  const forms = [
    { key: 'pure', share: 0.4, hemisphere: 0.75, vermis: 0.85, pyramidal: 0, process: cerebellumOnly },
    // Gait fails before speech and eyes do.
    { key: 'mild', share: 0.2, hemisphere: 0.45, vermis: 0.7, pyramidal: 0, speech: 0.3, process: cerebellumOnly },
    { key: 'with-tracts', share: 0.2, hemisphere: 0.7, vermis: 0.8, pyramidal: 0.4, process: cerebellumOnly },
    {
      key: 'with-autonomic-failure',
      share: 0.2,
      hemisphere: 0.65,
      vermis: 0.8,
      pyramidal: 0.2,
      process: cerebellumOnly,
    },
    // Machado-Joseph disease and its kin stiffen and twist the limbs and hold the eyes as well (from-memory).
    {
      key: 'with-twisted-limbs',
      share: 0.06,
      hemisphere: 0.7,
      vermis: 0.8,
      pyramidal: 0.35,
      twisted: true,
      process: cerebellumOnly,
    },
    // Some of the inherited ataxias, and most that begin in childhood with fits, take the cortex as well (from-memory).
    {
      key: 'with-cortex',
      share: 0.07,
      hemisphere: 0.65,
      vermis: 0.8,
      pyramidal: 0.15,
      failing: true,
      process: cerebellumOnly,
    },
    { key: 'with-brisk-jerks', share: 0.015, hemisphere: 0.7, vermis: 0.8, pyramidal: 0.05, process: briskAndUnsteady },
    { key: 'with-long-axons', share: 0.3, hemisphere: 0.65, vermis: 0.8, pyramidal: 0.3, process: longAxons },
  ] as const;
  return forms.map(({ key, share, hemisphere, vermis, pyramidal, process, ...form }) => {
    const lesion = new LesionBuilder().brain('left', 'cerebellar-vermis', vermis);
    lesion.brain('left', 'flocculonodular-lobe', 0.5);
    for (const side of bodySides) {
      lesion.brain(side, 'cerebellar-hemisphere', hemisphere);
      lesion.cord('corticospinal', side, segmentIndex('T1'), pyramidal);
      if (key === 'with-autonomic-failure') lesion.brain(side, 'substantia-nigra', 0.4);
      if (process === longAxons) lesion.cord('dorsalColumn', side, segmentIndex('C4'), 0.6);
    }
    return hypothesis(wholeCerebellum, key, percentOfAll * share, lesion.build(), {
      process,
      faculties: facultiesOf([
        ['speech-cerebellar', 'speech' in form ? form.speech : 0.5],
        ['nystagmus-gaze-evoked', 0.35],
        ['pursuit', 0.4],
        ['saccade-accuracy', 0.4],
        ['swallowing', 0.15],
        ...(key === 'with-autonomic-failure' ? autonomicFailure : []),
        ...('twisted' in form ? twistedLimbs : []),
        ...('failing' in form ? failingMind : []),
      ]),
      lasting: { years: 3, beyond: 1.5 },
    });
  });
}

/** Share of a wasting vermis that goes with a neuropathy of the legs, as in drink; percent of all findings. Judged. */
const vermisAndNerves = 0.05;

/** Vermis and the longest axons wasting together: more than half of those whom drink has made unsteady have both. */
function vermisWithLongAxons(): Hypothesis[] {
  return [0.85, 0.55].map((depth) =>
    hypothesis(
      { key: 'cerebellar-vermis', label: 'Cerebellar vermis', side: null, level: null, kind: 'cerebellum' },
      `with-long-axons-${depth}`,
      vermisAndNerves / 2,
      new LesionBuilder().brain('left', 'cerebellar-vermis', depth).build(),
      {
        process: processOf({
          largeFibre: ({ lengthCm }) => 0.6 * reached(lengthCm, 92),
          smallFibre: ({ lengthCm }) => 0.4 * reached(lengthCm, 96),
          reflex: ({ lengthCm }) => 0.7 * reached(lengthCm, 84),
          because: 'drink and lack of vitamins harm the vermis and the longest axons together',
        }),
        paces: comesOnSlowly,
      },
    ),
  );
}

/** Inflamed after an infection of childhood, or poisoned, within hours to days; undoes the tempo of the site. Judged. */
const inflamedOrPoisoned = { hyperacute: 6, acute: 7, subacute: 1.5, chronic: 0.1 } as const;

const childhood = { to: 16, outside: 0.03 } as const;
/** Immunity against a tumour or against large cells takes the whole cerebellum within weeks to a few months. Judged. */
const againstTumour = { hyperacute: 0.2, acute: 1.5, subacute: 3, chronic: 0.4 } as const;

interface InflamedForm {
  readonly key: string;
  readonly share: number;
  readonly isDrowsy: boolean;
  /** Whether limbs and trunk jerk with it, as where the eyes dance. */
  readonly jerks?: true;
  readonly process: Process;
  readonly ages?: Ages;
  readonly paces?: PaceFactors;
}

function inflamedCerebellum(): Hypothesis[] {
  const lesion = new LesionBuilder()
    .brain('left', 'cerebellar-vermis', 0.85)
    .brain('left', 'flocculonodular-lobe', 0.4);
  for (const side of bodySides) lesion.brain(side, 'cerebellar-hemisphere', 0.7);
  const forms: readonly InflamedForm[] = [
    { key: 'inflamed', share: 0.06, isDrowsy: false, process: cerebellumInflamed },
    { key: 'inflamed-and-drowsy', share: 0.03, isDrowsy: true, process: cerebellumInflamed },
    { key: 'inflamed-and-slack', share: 0.03, isDrowsy: false, process: slackWithIt, ages: childhood },
    // After an infection of childhood this is the commonest ataxia there is.
    { key: 'inflamed-in-childhood', share: 0.35, isDrowsy: false, process: cerebellumInflamed, ages: childhood },
    { key: 'dancing', share: 0.06, isDrowsy: false, jerks: true, process: cerebellumInflamed, paces: againstTumour },
    {
      key: 'immune',
      share: 0.22,
      isDrowsy: false,
      process: cerebellumInflamed,
      ages: { from: 25, outside: 0.3 },
      paces: againstTumour,
    },
  ];
  return forms.map(({ key, share, isDrowsy, jerks, process, ages, paces = inflamedOrPoisoned }) =>
    hypothesis(wholeCerebellum, key, percentOfAll * share, lesion.build(), {
      process,
      paces,
      ...(ages && { ages }),
      faculties: facultiesOf([
        ['speech-cerebellar', 0.5],
        ['speech-articulation', 0.3],
        ['nystagmus-gaze-evoked', 0.5],
        ['pursuit', 0.4],
        ['saccade-accuracy', 0.4],
        // A child whose cerebellum has failed of a sudden may fall silent, awake and clear (mutism of the cerebellum, from memory).
        ...(ages === childhood ? [['speech-initiation', 0.15] as const] : []),
        ...(isDrowsy ? drowsyWithIt : []),
        ...(jerks ? dancing : []),
      ]),
    }),
  );
}

const dancing: readonly ProcessSign[] = [
  ['myoclonus', 0.75],
  ['postural-tremor', 0.4],
  ['mood-behaviour', 0.4],
];

const drowsyWithIt: readonly ProcessSign[] = [
  ['consciousness', 0.4],
  ['attention', 0.5],
  ['orientation', 0.25],
  ['mood-behaviour', 0.3],
  ['chorea', 0.08],
];

/** Wasting, inflammation and poisoning of the whole cerebellum. */
export function wholeCerebellumHypotheses(): Hypothesis[] {
  return [...cerebellarDegeneration(), ...inflamedCerebellum(), ...vermisWithLongAxons()];
}

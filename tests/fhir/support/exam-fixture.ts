import type { Item } from '../../../src/exam/catalogue/item.ts';
import { itemId } from '../../../src/exam/catalogue/item.ts';
import type { Exam } from '../../../src/exam/exam.ts';
import type { Finding, ScoredScale } from '../../../src/exam/finding.ts';
import { commonPractice } from '../../../src/kernel/cite.ts';
import type { Side } from '../../../src/kernel/side.ts';
import { systems } from '../../../src/terminology/systems.ts';
import type { Assessment, WorkupItem } from '../../../src/workup/assessment.ts';

// An invented exam and an invented assessment of it, written by hand so that the builders are tested on their own.

const row = (item: Omit<Item, 'source' | 'probe'> & Partial<Item>): Item => ({
  source: commonPractice,
  probe: { kind: 'recorded-only' },
  ...item,
});

export const rows = {
  dorsiflexion: row({
    section: 'power',
    key: 'ankle-dorsiflexion',
    label: 'Ankle dorsiflexion',
    sides: 'paired',
    scale: 'mrc-power',
    region: 'lower-limbs',
    hpo: { code: 'HP:0009027', display: 'Foot dorsiflexor weakness', relation: 'equivalent' },
    probe: { kind: 'movement', movement: 'ankle-dorsiflexion' },
  }),
  ankleJerk: row({
    section: 'reflexes',
    key: 'ankle',
    label: 'Ankle reflex',
    sides: 'paired',
    scale: 'reflex-grade',
    region: 'lower-limbs',
    bodyPart: 'ankle',
    hpoByValue: {
      '0': { code: 'HP:0003438', display: 'Absent Achilles reflex', relation: 'equivalent' },
      '1': { code: 'HP:0001315', display: 'Reduced tendon reflexes', relation: 'wider' },
    },
    probe: { kind: 'reflex', reflex: 'ankle' },
  }),
  plantar: row({
    section: 'plantars',
    key: 'plantar-response',
    label: 'Plantar response',
    sides: 'paired',
    scale: 'plantar-response',
    region: 'lower-limbs',
    bodyPart: 'foot',
    hpoByValue: { extensor: { code: 'HP:0003487', display: 'Babinski sign', relation: 'equivalent' } },
    loinc: { code: '32385-7', display: 'Babinski reflex', relation: 'equivalent' },
    probe: { kind: 'plantar' },
  }),
  clonus: row({
    section: 'clonus',
    key: 'ankle',
    label: 'Ankle clonus',
    sides: 'paired',
    scale: 'beats',
    region: 'lower-limbs',
    bodyPart: 'ankle',
    hpo: { code: 'HP:0011448', display: 'Ankle clonus', relation: 'equivalent' },
    probe: { kind: 'clonus', reflex: 'ankle' },
  }),
  pinprick: row({
    section: 'sensation',
    key: 'pinprick',
    label: 'Pinprick',
    sides: 'paired',
    scale: 'sensation',
    region: 'trunk',
    hpoByValue: { reduced: { code: 'HP:0007328', display: 'Impaired pain sensation', relation: 'equivalent' } },
    probe: { kind: 'sensation', modality: 'pinprick' },
  }),
  ptosis: row({
    section: 'cranialNerves',
    key: 'ptosis',
    label: 'Ptosis',
    sides: 'paired',
    scale: 'presence',
    region: 'head',
    hpo: { code: 'HP:0000508', display: 'Ptosis', relation: 'equivalent' },
  }),
  retention: row({
    section: 'sphincters',
    key: 'urinary-retention',
    label: 'Urinary retention',
    sides: 'midline',
    scale: 'presence',
    region: 'perineum',
    hpo: { code: 'HP:0000016', display: 'Urinary retention', relation: 'equivalent' },
  }),
  neckTone: row({
    section: 'tone',
    key: 'neck',
    label: 'Tone of the neck',
    sides: 'midline',
    scale: 'tone',
    region: 'neck',
    hpo: { code: 'HP:0031867', display: 'Neck hypertonia', relation: 'narrower' },
  }),
} satisfies Record<string, Item>;

let count = 0;

export function finding(item: Item, side: Side, value: Finding['value'], more: Partial<Finding> = {}): Finding {
  const { place } = more;
  const where = place === undefined ? '' : `@${place.kind}:${place.key}`;
  count += 1;
  return {
    item,
    side,
    value,
    abnormal: false,
    pointer: `/findings/${item.section}/${count}`,
    origin: 'recorded',
    id: `${itemId(item)}${where}|${side}`,
    ...more,
  };
}

/** Implied by a statement and not recorded, so without an Observation of its own. */
const impliedSign = finding(rows.ptosis, 'left', 'absent', {
  origin: 'otherwise-normal',
  pointer: '/otherwiseNormal/0',
});
const footDrop = finding(rows.dorsiflexion, 'left', '3', {
  abnormal: true,
  note: 'Gave way with "pain" <3/10> & effort',
});
const skin = finding(rows.pinprick, 'left', 'reduced', {
  abnormal: true,
  place: { kind: 'dermatome', key: 'L5' },
  modality: 'pinprick',
});
const jerk = finding(rows.ankleJerk, 'left', '2', { reinforced: true });

const findings: readonly Finding[] = [
  impliedSign,
  finding(rows.ptosis, 'right', 'absent'),
  finding(rows.neckTone, 'midline', 'normal'),
  finding(rows.clonus, 'left', 0),
  finding(rows.clonus, 'right', 6, { abnormal: true }),
  footDrop,
  finding(rows.dorsiflexion, 'right', '5', { origin: 'otherwise-normal', pointer: '/otherwiseNormal/1' }),
  jerk,
  finding(rows.ankleJerk, 'right', '4', { abnormal: true }),
  finding(rows.plantar, 'left', 'flexor'),
  finding(rows.plantar, 'right', 'extensor', { abnormal: true }),
  skin,
  finding(rows.pinprick, 'right', null, { notTested: 'declined', place: { kind: 'landmark', key: 'dorsum-of-foot' } }),
  finding(rows.pinprick, 'left', 'increased', { abnormal: true, place: { kind: 'level-below', key: 'T10' } }),
  finding(rows.retention, 'midline', null, { notTested: 'limb-absent' }),
];

const comaScale: ScoredScale = {
  scale: 'glasgow-coma-scale',
  parts: { eye: 4, verbal: null, motor: 6 },
  total: null,
  notTested: { verbal: 'unable' },
  pointer: '/findings/higherFunction/0',
};

export const exam: Exam = {
  identifier: { system: 'https://clinic.example/exams', value: 'EX-1' },
  status: 'final',
  subject: { reference: 'Patient/4711' },
  encounter: { reference: 'Encounter/88' },
  performer: [{ reference: 'Practitioner/7' }],
  examinedAt: '2026-03-14T10:20:00+01:00',
  person: { ageYears: 46, sex: 'female' },
  onset: { pace: 'acute', durationDays: 3 },
  course: 'static',
  history: [],
  findings,
  scales: [comaScale],
  otherwiseNormal: [
    { section: 'cranialNerves', pointer: '/otherwiseNormal/0' },
    { section: 'power', region: 'lower-limbs', side: 'right', pointer: '/otherwiseNormal/1' },
    { section: 'gait', pointer: '/otherwiseNormal/2' },
  ],
  results: [],
};

const evidence = (about: Finding, weight: number) => ({
  finding: about.pointer,
  side: about.side,
  text: about.item.label.toLowerCase(),
  weight,
  because: 'supplied by this root',
  abnormal: about.abnormal,
  findingId: about.id,
});

const suggested: readonly WorkupItem[] = [
  {
    key: 'mri-lumbar-spine',
    label: 'MRI of the lumbar spine',
    code: { system: systems.loinc, code: '36514-8', display: 'MR Lumbar spine WO contrast' },
    tier: 1,
    priority: 'urgent',
    because: 'shows compression of the root',
    source: 'Guideline',
  },
  {
    key: 'nerve-conduction',
    label: 'Nerve conduction studies',
    code: { system: systems.investigation, code: 'nerve-conduction', display: 'Nerve conduction studies' },
    tier: 2,
    priority: 'routine',
    because: 'separates root from nerve',
    source: 'Guideline',
  },
];

export const assessment: Assessment = {
  localisations: [
    {
      site: 'nerve-root',
      label: 'L5 root',
      side: 'left',
      level: 'L5',
      levelRange: ['L5', 'L5'],
      kind: 'root',
      code: { system: systems.localisation, code: 'nerve-root-L5.left', display: 'Left L5 nerve root' },
      probability: 0.8123,
      fit: 0.97,
      supporting: [evidence(footDrop, 2.1), evidence(skin, 1.3), evidence(skin, 0.2)],
      against: [evidence(jerk, -0.1), evidence(impliedSign, -0.1)],
      unexplained: [],
    },
    {
      site: 'common-fibular-nerve',
      label: 'Common fibular nerve at the fibular neck',
      side: 'left',
      level: null,
      levelRange: null,
      kind: 'nerve',
      code: { system: systems.localisation, code: 'common-fibular-nerve.left', display: 'Left common fibular nerve' },
      probability: 0.15,
      fit: 0.9,
      supporting: [],
      against: [],
      unexplained: [],
    },
  ],
  pattern: {
    key: 'radiculopathy',
    label: 'Radiculopathy',
    motorNeuron: 'lower',
    symmetry: 'one-sided',
    modalities: [],
  },
  conclusion: 'single-site',
  nextExamination: [],
  causes: [
    {
      key: 'fibular-compression-at-fibular-neck',
      label: 'Compression of the common fibular nerve at the fibular neck',
      code: {
        system: systems.cause,
        code: 'fibular-compression-at-fibular-neck',
        display: 'Compression of the common fibular nerve at the fibular neck',
      },
      probability: 0.7,
      supporting: [{ pointer: footDrop.pointer, text: 'acute onset', findingId: footDrop.id }],
      against: [],
      source: 'Textbook',
    },
    {
      key: 'diabetic-polyneuropathy',
      label: 'Diabetic polyneuropathy',
      code: { system: systems.cause, code: 'diabetic-polyneuropathy', display: 'Diabetic polyneuropathy' },
      probability: 0.0004,
      supporting: [],
      against: [{ pointer: null, text: 'no diabetes' }],
      source: 'Textbook',
    },
  ],
  redFlags: [
    {
      key: 'suspected-cauda-equina-syndrome',
      label: 'Suspected cauda equina syndrome',
      state: 'not-assessable',
      urgency: 'immediate',
      because: [
        {
          pointer: null,
          text: 'urinary retention was not examined',
          findingId: 'sphincters/urinary-retention|midline',
        },
      ],
      action: 'Examine the perineum.',
      source: 'Guideline',
    },
    {
      key: 'rapidly-progressive-weakness',
      label: 'Very rapidly progressive limb weakness',
      state: 'present',
      urgency: 'same-day',
      because: [{ pointer: footDrop.pointer, text: 'power 3', findingId: footDrop.id }],
      action: 'Refer the same day.',
      source: 'Guideline',
    },
    {
      key: 'neuromuscular-respiratory-failure',
      label: 'Neuromuscular respiratory failure threatened',
      state: 'absent',
      urgency: 'immediate',
      because: [],
      action: 'Measure vital capacity.',
      source: 'Guideline',
    },
  ],
  needless: [],
  workup: suggested,
  proposed: suggested.map((item) => ({ ...item, isChosen: false })),
  notChosen: [],
  presentation: 'A 46-year-old woman with three days of left foot drop.',
  caution: 'Decision support for trained clinicians; not a diagnosis.',
  modelVersion: '1.2.3-test',
};

import { commonPractice, fromMemory, read, recalled } from '../kernel/cite.ts';
import { clouded } from './red-flags/consciousness.ts';
import type { WorkupRule } from './workup-rule.ts';

/** Medicines that make the brain discharge or swell. */
const excite = ['tacrolimus', 'ciclosporin', 'ifosfamide', 'beta-lactam', 'valproate', 'cytarabine'] as const;

/** Tests that the story asks for by itself, of brain, spine, muscle and blood. */
export const furtherStoryTests: readonly WorkupRule[] = [
  {
    tests: ['blood-glucose', 'sodium', 'calcium'],
    byStory: true,
    when: (facts) =>
      facts.cameWithin(1) &&
      (facts.told('seizure', 'ongoing-seizure', 'cognitive-change', 'behaviour-change', 'loss-of-consciousness')
        .length > 0 ||
        facts.query.hasAbnormal('involuntary-movements/seizure-seen') ||
        facts.query.abnormal(clouded).length > 0),
    tier: 1,
    priority: 'urgent',
    because: 'a fit or a muddled mind of today: glucose first, then the salts, in a known epilepsy too',
    source: recalled('nice-ng217', 'glucose and electrolytes'),
  },
  {
    tests: ['electroencephalogram'],
    byStory: true,
    when: ({ query, told, beganWithin }) =>
      told(...excite).length > 0 &&
      (query.abnormal([...clouded, 'higher-function/mutism']).length > 0 ||
        told('seizure', 'behaviour-change', 'cognitive-change').length > 0) &&
      (told('epilepsy').length === 0 || beganWithin(28) === 'yes'),
    tier: 1,
    priority: 'urgent',
    because: 'seizures without convulsion under a medicine that excites the cortex',
    source: recalled('cefepime-2017'),
  },
  {
    tests: ['mri-brain'],
    flags: ['unexplained-fall-in-consciousness'],
    tier: 1,
    priority: 'urgent',
    because: 'thalami, pons and cortex, of which a CT shows little',
    source: commonPractice,
  },
  {
    tests: ['mri-brain', 'lumbar-puncture', 'electroencephalogram'],
    byStory: true,
    when: ({ exam, query, told, beganWithin }) =>
      exam.course === 'progressive' &&
      beganWithin(366) === 'yes' &&
      [...told('cognitive-change'), ...query.abnormal(['higher-function/memory-impairment'])].length > 0 &&
      query.abnormal(['gait/ataxic', 'involuntary-movements/myoclonus', 'involuntary-movements/exaggerated-startle'])
        .length > 0,
    tier: 2,
    priority: 'urgent',
    because: 'a mind that fails within a year with balance or jerks: prions, antibodies and infection are told apart',
    source: recalled('adams-victor', 'prion disease'),
  },
  {
    tests: ['cortisol', 'sodium', 'potassium'],
    byStory: true,
    when: ({ query, told }) =>
      query.hasAbnormal('inspection/skin-hyperpigmentation') &&
      told('vomiting', 'nausea', 'abdominal-pain', 'fatigue', 'weight-loss', 'light-headed-on-standing').length > 0,
    tier: 1,
    priority: 'stat',
    because: 'a dark skin with vomiting, wasting or faints: adrenals that fail',
    source: recalled('adams-victor', 'adrenal insufficiency'),
  },
  {
    tests: ['cognitive-assessment'],
    byStory: true,
    when: ({ query, told, beganWithin, exam }) =>
      beganWithin(60) === 'no' &&
      (exam.person.ageYears ?? 50) >= 40 &&
      told('cognitive-change').length > 0 &&
      query.abnormal(['higher-function/memory-impairment', 'higher-function/disorientation']).length > 0,
    tier: 1,
    priority: 'routine',
    because: 'a memory that has failed for months is measured, whatever else has failed with it',
    source: recalled('nice-ng97'),
  },
  {
    tests: ['hmgcr-antibody'],
    byStory: true,
    when: ({ query, told, weakLimbs }) => {
      const kinase = query.quantity('creatine-kinase', 'U/L');
      const weak = told('weakness', 'leg-weakness', 'arm-weakness', 'difficulty-with-stairs').length + weakLimbs.length;
      return told('statin').length > 0 && weak > 0 && kinase !== undefined && kinase.value >= tenfold;
    },
    tier: 2,
    priority: 'urgent',
    because:
      'weakness with a very high creatine kinase under a statin: an immune attack goes on after the medicine is stopped',
    source: recalled('adams-victor', 'immune-mediated necrotizing myopathy'),
  },
  {
    tests: ['mri-lumbar-spine'],
    byStory: true,
    when: ({ exam, told, abnormalFindings, maybeProgressing }) =>
      abnormalFindings.length === 0 &&
      exam.otherwiseNormal.length === 0 &&
      maybeProgressing &&
      told('leg-weakness').length > 0 &&
      told('radicular-leg-pain', 'bilateral-leg-pain').length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'a sciatica with a leg that weakens is imaged, before anybody has tried which muscle it is',
    source: read('nice-ng59', 'imaging'),
  },
  {
    tests: ['mri-whole-spine'],
    byStory: true,
    when: ({ exam, told, abnormalFindings }) =>
      abnormalFindings.length === 0 &&
      exam.course === 'progressive' &&
      told('leg-weakness', 'difficulty-walking').length > 0 &&
      told('numbness').length > 0 &&
      told('episodic-weakness', 'neurogenic-claudication', 'bladder-disturbance').length > 0,
    tier: 1,
    priority: 'urgent',
    because:
      'legs that grow weak and numb and give way on effort: a canal that is narrow, or veins that congest the cord',
    source: commonPractice,
  },
  {
    tests: ['vitamin-b12', 'full-blood-count', 'methylmalonic-acid', 'homocysteine'],
    byStory: true,
    when: ({ exam, told }) =>
      (exam.person.ageYears ?? 18) < 3 &&
      told('vegan-diet', 'vitamin-b12-deficiency', 'pernicious-anaemia').length > 0 &&
      exam.onset.pace !== 'hyperacute',
    tier: 1,
    priority: 'urgent',
    because:
      'a baby at the breast of a mother who lacks vitamin B12 loses what it has learnt, and gets it back with treatment',
    source: fromMemory,
  },
  {
    tests: ['mri-brain'],
    byStory: true,
    when: ({ query, told }) =>
      told('metronidazole').length > 0 &&
      [
        ...told('slurred-speech'),
        ...query.abnormal([
          'cranial-nerves/dysarthria',
          'cranial-nerves/cerebellar-dysarthria',
          'cranial-nerves/nystagmus',
        ]),
        ...query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar'),
      ].length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'metronidazole lights up the dentate nuclei, and it goes when the medicine is stopped',
    source: fromMemory,
  },
  {
    tests: ['mri-brain'],
    byStory: true,
    when: ({ exam, query }) =>
      (exam.person.ageYears ?? 0) >= 50 &&
      query.hasAbnormal('gait/ataxic') &&
      query.abnormalWhere(({ item }) => /tremor$/.test(item.key)).length > 0,
    tier: 1,
    priority: 'routine',
    because: 'tremor with a broad-based gait: the cerebellum and its peduncles are looked at',
    source: recalled('adams-victor', 'cerebellar tremor'),
  },
  {
    tests: ['paraneoplastic-antibodies', 'ct-chest'],
    byStory: true,
    when: ({ exam, query, told, beganWithin }) =>
      exam.course === 'progressive' &&
      beganWithin(366) === 'yes' &&
      told('tobacco', 'cancer', 'weight-loss').length > 0 &&
      [
        ...told('slurred-speech'),
        ...query.abnormal(['cranial-nerves/dysarthria', 'cranial-nerves/cerebellar-dysarthria']),
      ].length > 0 &&
      told('oscillopsia', 'diplopia', 'vertigo', 'unsteadiness').length > 0 &&
      query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar' || /tremor$|^ataxic$/.test(item.key)).length >
        0,
    tier: 1,
    priority: 'urgent',
    because:
      'speech, eyes and limbs that shake or sway within a year in a smoker, or beside a cancer: a tumour that hides',
    source: recalled('adams-victor', 'paraneoplastic disorders'),
  },
  {
    tests: ['serum-immunofixation', 'free-light-chains', 'nerve-conduction-study'],
    byStory: true,
    when: ({ exam, query, told }) =>
      (exam.person.ageYears ?? 0) >= 50 &&
      told('numbness', 'paraesthesiae', 'burning-feet', 'neuropathic-pain').length > 0 &&
      query.abnormal(['inspection/oedema', 'inspection/ascites', 'inspection/enlarged-liver-or-spleen']).length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'nerves that tingle in a body that swells: a clone of plasma cells, with amyloid or without',
    source: recalled('adams-victor', 'POEMS syndrome; amyloid neuropathy'),
  },
];

/** About ten times the upper limit of creatine kinase, in U/L. */
const tenfold = 2000;

import { cameFast } from '../exam/pace.ts';
import { recalled } from '../kernel/cite.ts';
import type { BedsideFacts } from './bedside-facts.ts';
import type { WorkupRule } from './workup-rule.ts';

/** Movements that flow or fling. Those of dystonia, tics and tremor have other causes. */
function isChoreic(facts: BedsideFacts): boolean {
  const seen = ['chorea', 'hemiballism', 'athetosis', 'orofacial-dyskinesia'].map(
    (key) => `involuntary-movements/${key}`,
  );
  return facts.query.abnormal(seen).length > 0;
}

/** Known to have lasted longer than what poison, sugar, a pregnancy or an antibody brings takes to be noticed. Judged. */
const isSlow = (facts: BedsideFacts): boolean => facts.beganWithin(180) === 'no';

/** Before this age of onset copper must be thought of. */
const copperBefore = 40;

const began = ({ exam }: BedsideFacts): number => (exam.person.ageYears ?? 99) - (exam.onset.durationDays ?? 0) / 365;

/** Two of speech, tremor and movements with a mind that changes or a liver that is ill, over more than two weeks, in the young. */
function mayBeCopper(facts: BedsideFacts): boolean {
  const { query } = facts;
  const speech =
    facts.told('slurred-speech').length +
    query.abnormal(['cranial-nerves/dysarthria', 'cranial-nerves/drooling']).length;
  const seen = ['dystonia', 'postural-tremor', 'action-tremor', 'resting-tremor', 'chorea', 'bradykinesia'];
  const moves =
    facts.told('tremor', 'involuntary-movements', 'slowness').length +
    query.abnormal(seen.map((key) => `involuntary-movements/${key}`)).length;
  const beside =
    facts.told('behaviour-change', 'cognitive-change', 'psychiatric-disorder', 'chronic-liver-disease', 'jaundice')
      .length + query.abnormal(['inspection/kayser-fleischer-ring', 'inspection/jaundice']).length;
  return began(facts) < copperBefore && speech > 0 && moves > 0 && beside > 0 && facts.beganWithin(14) !== 'yes';
}

/** The first twenty-five years, in which the walk begins to sway while the jerks of the legs are lost, with what goes with it. */
function isYoungAndSwaying(facts: BedsideFacts): boolean {
  const { query, reducedReflexes, exam } = facts;
  const lost = reducedReflexes.filter(({ item, value }) => item.region === 'lower-limbs' && value !== '1');
  const sways =
    query.abnormal(['gait/ataxic', 'gait/sensory-ataxic', 'gait/romberg']).length > 0 ||
    facts.told('unsteadiness').length > 0;
  const beside = [
    ...query.abnormal(['inspection/scoliosis', 'inspection/pes-cavus']),
    ...facts.legSensoryLoss.filter(({ modality }) => modality === 'vibration' || modality === 'joint-position'),
    ...facts.upperMotorSignsInLegs,
    ...query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar'),
  ];
  const isSlow = facts.beganWithin(28) !== 'yes' && !cameFast(exam.onset);
  return began(facts) < 25 && isSlow && sways && lost.length > 0 && beside.length > 0;
}

/** Movements that came within days of a drug that blocks dopamine are the drug's, and copper does not come so. */
const isOfADrugWithinDays = ({ exam, told }: BedsideFacts): boolean =>
  cameFast(exam.onset) && told('antipsychotic', 'metoclopramide').length > 0;

/** Tests for disorders of movement, of gait and of the cerebellum. */
export const movementTests: readonly WorkupRule[] = [
  {
    tests: ['lying-standing-blood-pressure'],
    sites: ['akinetic-rigid-syndrome'],
    tier: 1,
    priority: 'routine',
    because: 'autonomic failure speaks for multiple system atrophy',
    source: recalled('mds-parkinson-2015'),
  },
  {
    tests: ['mri-brain'],
    causes: [
      'progressive-supranuclear-palsy',
      'corticobasal-degeneration',
      'multiple-system-atrophy',
      'vascular-parkinsonism',
      'normal-pressure-hydrocephalus',
    ],
    tier: 2,
    priority: 'routine',
    because:
      'only when the picture is atypical: early falls, gaze, cerebellar signs, stepwise course, no response to levodopa',
    source: recalled('nice-ng71'),
  },
  {
    tests: ['dopamine-transporter-imaging'],
    causes: ['drug-induced-parkinsonism', 'essential-tremor', 'dystonic-tremor'],
    tier: 3,
    priority: 'routine',
    because: 'only to separate an essential or drug-induced tremor from loss of dopamine cells',
    source: recalled('nice-ng71'),
  },
  {
    tests: ['caeruloplasmin', 'liver-function', 'eye-examination'],
    sites: ['akinetic-rigid-syndrome', 'hyperkinetic-syndrome', 'action-tremor'],
    when: (facts) => began(facts) < copperBefore && !isOfADrugWithinDays(facts),
    tier: 1,
    priority: 'routine',
    because: 'Wilson disease is treatable: any movement disorder that began before the age of 40',
    source: recalled('adams-victor', 'Wilson disease'),
  },
  {
    tests: ['caeruloplasmin', 'liver-function'],
    byStory: true,
    when: mayBeCopper,
    tier: 1,
    priority: 'routine',
    because: 'speech or hands that fail with the mind or the liver, before the age of 40: copper can be taken out',
    source: recalled('adams-victor', 'Wilson disease'),
  },
  {
    tests: ['caeruloplasmin'],
    causes: ['wilson-disease'],
    tier: 1,
    priority: 'routine',
    because: 'copper in liver and basal ganglia',
    source: recalled('adams-victor', 'Wilson disease'),
  },
  {
    tests: ['thyroid-stimulating-hormone'],
    sites: ['action-tremor'],
    tier: 1,
    priority: 'routine',
    because: 'the one blood test of a tremor on action',
    source: recalled('nice-ng127', 'tremor in adults'),
  },
  {
    tests: [
      'blood-glucose',
      'thyroid-stimulating-hormone',
      'antinuclear-antibody',
      'antiphospholipid-antibodies',
      'pregnancy-test',
      'calcium',
    ],
    sites: ['hyperkinetic-syndrome', 'subthalamic-nucleus', 'striatum'],
    causes: ['antiphospholipid-or-lupus-chorea', 'hyperglycaemic-hemichorea', 'chorea-gravidarum-or-oestrogen-chorea'],
    when: (facts) => isChoreic(facts) && !isSlow(facts),
    tier: 1,
    priority: 'urgent',
    because: 'treatable causes of chorea',
    source: recalled('adams-victor', 'chorea'),
  },
  {
    tests: [
      'thyroid-stimulating-hormone',
      'antinuclear-antibody',
      'antiphospholipid-antibodies',
      'pregnancy-test',
      'calcium',
    ],
    sites: ['hyperkinetic-syndrome', 'striatum'],
    when: (facts) => isChoreic(facts) && isSlow(facts),
    tier: 2,
    priority: 'routine',
    because: 'treatable causes of a chorea that came slowly',
    source: recalled('adams-victor', 'chorea'),
  },
  {
    tests: ['mri-brain'],
    sites: ['subthalamic-nucleus', 'striatum'],
    causes: ['hyperglycaemic-hemichorea'],
    tier: 1,
    priority: 'urgent',
    because: 'a lesion of the basal ganglia on one side',
    source: recalled('adams-victor', 'hemiballismus'),
  },
  {
    tests: ['huntingtin-gene'],
    causes: ['huntington-disease'],
    tier: 2,
    tierOfTheNamed: 1,
    priority: 'routine',
    because: 'after counselling',
    source: recalled('adams-victor', 'Huntington disease'),
  },
  {
    tests: ['huntingtin-gene'],
    sites: [
      'hyperkinetic-syndrome',
      'akinetic-rigid-syndrome',
      'striatum',
      'diffuse-encephalopathy',
      'cerebellar-degeneration',
      'cortex-frontal',
    ],
    when: ({ told }) => told('family/chorea').length > 0,
    tier: 2,
    priority: 'routine',
    because: 'chorea in the family, whatever form it takes here; after counselling',
    source: recalled('adams-victor', 'Huntington disease'),
  },
  {
    tests: ['ataxia-genes', 'mri-brain'],
    sites: [
      'hyperkinetic-syndrome',
      'akinetic-rigid-syndrome',
      'action-tremor',
      'cerebellar-degeneration',
      'cerebellar-vermis',
      'cerebellar-hemisphere',
      'upper-motor-neuron-system',
      'spinal-cord-lateral',
      'sensory-ganglionopathy',
    ],
    when: ({ told, exam }) => told('family/ataxia').length > 0 && exam.onset.pace === 'chronic',
    tier: 2,
    priority: 'routine',
    because: 'ataxia in the family, which may begin with dystonia, tremor, slowness or stiffness',
    source: recalled('adams-victor', 'cerebellar degenerations'),
  },
  {
    tests: ['mri-brain', 'csf-tap-test'],
    sites: ['frontal-gait-disorder'],
    causes: ['normal-pressure-hydrocephalus'],
    tier: 1,
    priority: 'routine',
    because: 'wide ventricles, and whether the gait improves when fluid is taken',
    source: recalled('adams-victor', 'normal pressure hydrocephalus'),
  },
  {
    tests: ['thyroid-stimulating-hormone', 'vitamin-b12', 'vitamin-e', 'tissue-transglutaminase-antibody', 'mri-brain'],
    sites: ['cerebellar-degeneration'],
    tier: 1,
    priority: 'routine',
    because: 'treatable causes of ataxia, and the pattern of wasting',
    source: recalled('adams-victor', 'cerebellar degenerations'),
  },
  {
    tests: ['paraneoplastic-antibodies', 'lumbar-puncture'],
    causes: ['paraneoplastic-cerebellar-degeneration', 'autoimmune-cerebellar-ataxia'],
    tier: 1,
    priority: 'urgent',
    because: 'ataxia of weeks: immune or paraneoplastic',
    source: recalled('adams-victor', 'paraneoplastic disorders'),
  },
  {
    tests: ['vitamin-e', 'ataxia-genes'],
    byStory: true,
    when: isYoungAndSwaying,
    tier: 1,
    priority: 'routine',
    because:
      'a walk that sways over lost jerks in the young: Friedreich ataxia, and the want of vitamin E that looks the same and is treated',
    source: recalled('adams-victor', 'Friedreich ataxia'),
  },
  {
    tests: ['ataxia-genes'],
    causes: [
      'dominant-cerebellar-ataxia',
      'friedreich-ataxia',
      'ataxia-with-neuropathy-and-vestibular-areflexia',
      'episodic-ataxia',
      'spastic-ataxia',
      'ataxia-telangiectasia',
    ],
    tier: 2,
    priority: 'routine',
    because: 'slow ataxia with relatives affected, or that began early',
    source: recalled('adams-victor', 'cerebellar degenerations'),
  },
  {
    tests: ['electrocardiogram', 'echocardiogram', 'glucose-or-hba1c'],
    causes: ['friedreich-ataxia'],
    tier: 2,
    priority: 'routine',
    because: 'the heart and the pancreas suffer too',
    source: recalled('adams-victor', 'Friedreich ataxia'),
  },
  {
    tests: ['fmr1-gene'],
    causes: ['fragile-x-tremor-ataxia-syndrome'],
    tier: 3,
    priority: 'routine',
    because: 'tremor and ataxia of an older man',
    source: recalled('adams-victor'),
  },
  {
    tests: ['paraneoplastic-antibodies', 'glucose-or-hba1c', 'electromyography'],
    causes: ['stiff-person-syndrome', 'neuromyotonia'],
    tier: 2,
    priority: 'routine',
    because: 'antibodies that stiffen',
    source: recalled('adams-victor', 'stiff person syndrome'),
  },
  {
    tests: ['drug-level'],
    causes: ['drug-induced-ataxia', 'drug-induced-tremor'],
    tier: 1,
    priority: 'urgent',
    because: 'too much of the medicine in the blood',
    source: recalled('adams-victor', 'cerebellar effects of medicines'),
  },
  {
    tests: ['mri-brain', 'autonomic-tests', 'bladder-scan', 'lying-standing-blood-pressure'],
    causes: ['multiple-system-atrophy'],
    tier: 2,
    priority: 'routine',
    because: 'wasting of pons and putamen, and how far autonomic function has gone',
    source: recalled('mds-parkinson-2015'),
  },
  {
    tests: ['ct-chest', 'ct-abdomen'],
    causes: ['paraneoplastic-cerebellar-degeneration'],
    tier: 1,
    priority: 'urgent',
    because: 'a tumour of ovary, breast or lung',
    source: recalled('adams-victor', 'paraneoplastic disorders'),
  },
  {
    tests: ['thiamine'],
    causes: ['alcoholic-cerebellar-degeneration'],
    tier: 2,
    priority: 'routine',
    because: 'drink empties the stores of thiamine',
    source: recalled('caine-1997'),
  },
  {
    tests: ['thyroid-stimulating-hormone', 'full-blood-count', 'calcium', 'sodium', 'blood-glucose'],
    causes: ['metabolic-chorea'],
    tier: 1,
    priority: 'urgent',
    because: 'thyroid, red cells, salts and sugar are put right, and the movement goes',
    source: recalled('adams-victor', 'disorders of movement and posture'),
  },
  {
    tests: ['paraneoplastic-antibodies', 'ct-chest'],
    causes: ['autoimmune-chorea'],
    tier: 1,
    priority: 'urgent',
    because: 'an antibody of a tumour that hides',
    source: recalled('adams-victor', 'paraneoplastic disorders'),
  },
  {
    tests: ['electroencephalogram'],
    causes: ['progressive-myoclonic-epilepsy', 'paroxysmal-dyskinesia'],
    tier: 1,
    priority: 'routine',
    because: 'discharges part epilepsy from movement',
    source: recalled('adams-victor', 'tremor, myoclonus, focal dystonias and tics'),
  },
  {
    tests: ['blood-glucose', 'glucose-or-hba1c'],
    causes: ['hyperglycaemic-hemichorea'],
    tier: 1,
    priority: 'stat',
    because: 'it goes when the sugar is brought down',
    source: recalled('adams-victor', 'disorders of movement and posture'),
  },
];

import { recalled } from '../kernel/cite.ts';
import { type BedsideFacts, mayBePregnant } from './bedside-facts.ts';
import type { WorkupRule } from './workup-rule.ts';

/** Movements that flow or fling. Those of dystonia, tics and tremor have other causes. */
function isChoreic(facts: BedsideFacts): boolean {
  const seen = ['chorea', 'hemiballism', 'athetosis', 'orofacial-dyskinesia'].map(
    (key) => `involuntary-movements/${key}`,
  );
  return facts.query.abnormal(seen).length > 0;
}

/** What is looked for where movements flow or fling, whatever else is told. */
function treatableChorea(parts: readonly Pick<WorkupRule, 'tests' | 'when'>[]): readonly WorkupRule[] {
  return parts.map((part) => ({
    ...part,
    sites: ['hyperkinetic-syndrome', 'subthalamic-nucleus', 'striatum'],
    causes: ['antiphospholipid-or-lupus-chorea', 'hyperglycaemic-hemichorea', 'chorea-gravidarum-or-oestrogen-chorea'],
    tier: 1,
    priority: 'urgent',
    because: 'treatable causes of chorea',
    source: recalled('adams-victor', 'chorea'),
  }));
}

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
    when: ({ exam }) => (exam.person.ageYears ?? 99) - (exam.onset.durationDays ?? 0) / 365 < 40,
    tier: 1,
    priority: 'routine',
    because: 'Wilson disease is treatable: any movement disorder that began before the age of 40',
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
  ...treatableChorea([
    { tests: ['blood-glucose', 'thyroid-stimulating-hormone', 'calcium'], when: isChoreic },
    { tests: ['antinuclear-antibody', 'antiphospholipid-antibodies'], when: isChoreic },
    { tests: ['pregnancy-test'], when: (facts) => isChoreic(facts) && mayBePregnant(facts) },
  ]),
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
    priority: 'routine',
    because: 'after counselling',
    source: recalled('adams-victor', 'Huntington disease'),
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
];

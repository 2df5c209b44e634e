import { dopamineBlockers } from '../causes/table/movement-causes.ts';
import { commonPractice, recalled } from '../kernel/cite.ts';
import { isFocalAndUnseen } from './red-flags/actions-by-case.ts';
import { isOfTheLungApex } from './red-flags/lung-apex.ts';
import type { WorkupRule } from './workup-rule.ts';

/** Medicines of which the level decides what is done. */
const narrow = ['lithium', 'phenytoin', 'valproate', 'carbamazepine', 'tacrolimus'] as const;

/** Tests on which the remedy of a raised flag depends, so that they come before those which look for something else. */
export const remedyTests: readonly WorkupRule[] = [
  {
    tests: ['ct-head'],
    flags: ['suspected-encephalitis'],
    when: isFocalAndUnseen,
    tier: 1,
    priority: 'stat',
    because: 'a focal sign or a fit: the head is imaged before fluid is taken',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
  {
    tests: ['drug-level', 'renal-function', 'sodium'],
    flags: ['suspected-poisoning'],
    when: ({ told }) => told(...narrow).length > 0,
    tier: 1,
    priority: 'stat',
    because:
      'the level, taken again after six hours, and the kidneys decide whether a medicine is washed out by dialysis',
    source: recalled('extrip-lithium-2015'),
  },
  {
    tests: ['cholinesterase'],
    flags: ['suspected-poisoning'],
    when: ({ told }) => told('organophosphate').length > 0,
    tier: 1,
    priority: 'stat',
    because: 'blood for cholinesterase is taken before the oxime is given; atropine waits for nothing',
    source: recalled('adams-victor', 'organophosphates'),
  },
  {
    tests: ['drug-level'],
    flags: ['status-epilepticus'],
    when: ({ told }) => told('phenytoin', 'valproate', 'carbamazepine').length > 0,
    tier: 1,
    priority: 'stat',
    because: 'a medicine against seizures that was left out, or of which there is too much, keeps them going',
    source: recalled('nice-ng217', 'status epilepticus'),
  },
  {
    tests: ['ct-chest', 'chest-radiograph', 'mri-brachial-plexus'],
    flags: ['painful-horner-syndrome'],
    when: isOfTheLungApex,
    tier: 1,
    priority: 'urgent',
    because: 'weeks of pain with a Horner syndrome and a failing hand: the apex of the lung is seen first',
    source: recalled('nice-ng12', 'lung cancer'),
  },
  {
    tests: ['magnesium'],
    flags: ['suspected-wernicke-encephalopathy'],
    when: ({ query }) => query.result('magnesium') === undefined,
    tier: 1,
    priority: 'stat',
    because: 'without magnesium thiamine does not work',
    source: commonPractice,
  },
  {
    tests: ['limb-radiograph', 'c-reactive-protein'],
    flags: ['diabetic-foot-ulcer'],
    tier: 1,
    priority: 'urgent',
    because: 'an ulcer over numb nerves may reach the bone, which a radiograph and inflammation in the blood tell of',
    source: recalled('nice-ng19', 'diabetic foot infection'),
  },
  {
    tests: ['dopamine-transporter-imaging'],
    causes: ['drug-induced-parkinsonism'],
    when: ({ told, kindProbability }) =>
      told(...dopamineBlockers).length > 0 && kindProbability('basal-ganglia') >= 0.5,
    tier: 2,
    priority: 'routine',
    because: 'under a medicine that blocks dopamine the transporter tells the disease from the medicine',
    source: recalled('nice-ng71'),
  },
  {
    tests: ['full-blood-count'],
    flags: ['suspected-spinal-haematoma'],
    tier: 1,
    priority: 'stat',
    because: 'how much blood has been lost, and whether platelets are short',
    source: commonPractice,
  },
  {
    tests: ['cognitive-assessment', 'lying-standing-blood-pressure'],
    causes: ['dementia-with-lewy-bodies'],
    tier: 1,
    priority: 'routine',
    because: 'a scored test shows what fails, and the pressure on standing whether the autonomic nerves do',
    source: recalled('nice-ng97'),
  },
];

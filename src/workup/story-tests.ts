import { commonPractice, recalled } from '../kernel/cite.ts';
import type { WorkupRule } from './workup-rule.ts';

const muscleBook = recalled('amato-russell');

/** Under it an optic nerve that fails is mostly inflamed or pressed on, and the nerves and the brain are imaged. */
const giantCellsFrom = 50;

/** Age before which the epilepsies that jerk begin. */
const epilepsyBegins = 25;

/** Tests that one telling complaint or sign asks for, whatever place or cause leads. */
export const storyTests: readonly WorkupRule[] = [
  {
    tests: ['creatine-kinase', 'thyroid-stimulating-hormone', 'acetylcholine-receptor-antibody'],
    byStory: true,
    when: ({ query, told }) => query.hasAbnormal('inspection/dropped-head') && told('parkinson-disease').length === 0,
    tier: 1,
    priority: 'routine',
    because: 'a head that drops, with a neck that hurts or without: muscle, thyroid or junction',
    source: muscleBook,
  },
  {
    tests: ['heavy-metals'],
    byStory: true,
    when: ({ told }) =>
      told('hair-loss').length > 0 &&
      told('numbness', 'paraesthesiae', 'neuropathic-pain', 'burning-feet', 'foot-pain').length > 0 &&
      told('abdominal-pain', 'preceding-gastroenteritis', 'vomiting', 'weakness', 'leg-weakness').length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'hair that falls with nerves that fail and a belly that was ill: thallium or arsenic, given unseen',
    source: recalled('adams-victor', 'neuropathies of metals'),
  },
  {
    tests: ['vital-capacity', 'chest-radiograph', 'diaphragm-ultrasound'],
    byStory: true,
    when: ({ told }) => told('orthopnoea').length > 0 && told('heart-failure', 'asthma').length === 0,
    tier: 2,
    priority: 'urgent',
    because: 'a breath that grows short on lying flat, without an ill heart, is that of a weak diaphragm',
    source: commonPractice,
  },
  {
    tests: ['mri-brain'],
    byStory: true,
    when: ({ told }) => told('orthostatic-headache').length > 0 && told('lumbar-puncture-or-epidural').length === 0,
    tier: 1,
    priority: 'urgent',
    because:
      'a headache that comes on sitting up, with no puncture before it: fluid leaks, and the MRI with contrast shows it',
    source: recalled('adams-victor', 'low-pressure headache'),
  },
  {
    tests: ['electroencephalogram'],
    byStory: true,
    when: ({ exam, query, upperMotorSigns }) =>
      (exam.person.ageYears ?? epilepsyBegins) < epilepsyBegins &&
      query.hasAbnormal('involuntary-movements/myoclonus') &&
      upperMotorSigns.length === 0,
    tier: 1,
    priority: 'routine',
    because: 'jerks of the young are an epilepsy of the morning hours, or a worse one, until the tracing has been seen',
    source: recalled('adams-victor', 'myoclonic epilepsy'),
  },
  {
    tests: ['mri-brain', 'mri-orbit', 'eye-examination'],
    flags: ['acute-visual-loss'],
    when: ({ exam, told, query }) =>
      (exam.person.ageYears ?? giantCellsFrom) < giantCellsFrom &&
      exam.onset.pace !== 'hyperacute' &&
      told('red-eye', 'flashes-and-floaters').length === 0 &&
      !query.hasAbnormal('cranial-nerves/retinal-haemorrhages'),
    tier: 1,
    priority: 'urgent',
    because: 'sight that fails within days to weeks before fifty: the eye is looked into, then optic nerves and chiasm',
    source: recalled('adams-victor', 'optic neuropathy'),
  },
];

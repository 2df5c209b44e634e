import { commonPractice, fromMemory, recalled } from '../../../kernel/cite.ts';
import { anyOf, kinds, sites } from '../history/history-weight.ts';
import { type SignWeight, sign } from './sign-weight.ts';

/** Signs of eye grounds, lids, conduct, skin and other organs, and of infants, that no pathway decides. Factors judged and small. */
export const generalSigns: readonly SignWeight[] = [
  ...sign('lid-lag', sites('orbital-apex'), 3, 'thyroid disease holds the lid up', commonPractice),
  ...sign(
    'lid-lag',
    anyOf(kinds('muscle'), sites('action-tremor', 'hyperkinetic-syndrome')),
    1.8,
    'too much thyroid hormone weakens muscles and makes hands tremble, and myotonia holds the lid',
    recalled('adams-victor', 'thyroid myopathies'),
  ),
  ...sign(
    'retinal-haemorrhages',
    anyOf(kinds('meninges'), sites('retina', 'raised-intracranial-pressure', 'diffuse-encephalopathy')),
    2,
    'pressure in the head that leaps up, or vessels that leak, bleed into the retina',
    recalled('adams-victor', 'subarachnoid hemorrhage'),
  ),
  ...sign(
    'motor-impersistence',
    sites('hyperkinetic-syndrome', 'striatum'),
    3,
    'chorea breaks off what is held',
    recalled('adams-victor', 'chorea'),
  ),
  ...sign(
    'motor-impersistence',
    kinds('hemisphere'),
    1.4,
    'the frontal lobe, of the right half above all, keeps an act going',
    fromMemory,
  ),
  ...sign('agitation', kinds('encephalopathy'), 2, 'a clouded mind is driven', commonPractice),
  ...sign(
    'agitation',
    sites('cortex-temporal', 'cortex-middle-cerebral-lower', 'meningeal-irritation'),
    1.4,
    'inflamed or stricken temporal lobes make people wild',
    commonPractice,
  ),
];

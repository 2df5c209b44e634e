import { anyOf, type HistoryWeight, kinds, sites, weigh } from './history-weight.ts';

/** Illnesses, remedies and complaints that reports state and few patients have. All judged. */
export const rarerHistory: readonly HistoryWeight[] = [
  ...weigh('autoimmune-disease', anyOf(kinds('junction'), sites('optic-nerve')), 1.3, 1, 'who has one has others'),
  ...weigh(
    'behcet-disease',
    sites('brainstem-diffuse', 'midbrain-tegmentum', 'pons-tegmentum', 'raised-intracranial-pressure'),
    2.5,
    1,
    'it inflames the brainstem and clots the veins of the brain',
  ),
  ...weigh('glomerulonephritis', sites('multiple-mononeuropathy'), 2, 1, 'inflamed vessels starve kidney and nerve'),
  ...weigh(
    'renal-tubular-acidosis',
    sites('proximal-myopathy', 'motor-polyneuropathy', 'lower-motor-neuron-system'),
    2.5,
    1,
    'it loses the potassium that muscle needs',
  ),
  ...weigh(
    'macroglobulinaemia',
    kinds('polyneuropathy', 'polyradiculoneuropathy'),
    2,
    1,
    'its antibody binds to the sheaths of nerves',
  ),
  ...weigh(
    'hydrocephalus',
    sites('raised-intracranial-pressure', 'midbrain-dorsal', 'frontal-gait-disorder'),
    2.5,
    1,
    'the ventricles are wide and may widen again',
  ),
  ...weigh(
    'streptococcal-infection',
    sites('hyperkinetic-syndrome', 'striatum'),
    2,
    1,
    'antibodies against streptococci strike the striatum weeks later',
  ),
  ...weigh(
    'herbal-remedy',
    kinds('polyneuropathy', 'encephalopathy'),
    1.3,
    1,
    'some remedies hold lead, arsenic or plant poisons',
  ),
  ...weigh(
    'baclofen-withdrawal',
    sites('diffuse-encephalopathy', 'hyperkinetic-syndrome'),
    2,
    1,
    'what held the cord and brain in check is gone',
  ),
  ...weigh(
    'rifampicin',
    sites('basal-meningeal-process', 'meningeal-irritation'),
    1.4,
    1,
    'it is given for tuberculosis',
  ),
  ...weigh('aromatase-inhibitor', sites('median-nerve-wrist'), 1.6, 1, 'it swells the sheaths of tendons'),
  ...weigh('jaundice', kinds('encephalopathy'), 1.8, 1, 'a failing liver clouds the mind'),
  ...weigh('allodynia', kinds('nerve', 'polyneuropathy'), 1.3, 1, 'a hurt nerve makes touch painful'),
];

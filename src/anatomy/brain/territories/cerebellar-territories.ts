import { recalled } from '../../../kernel/cite.ts';
import type { Territory } from '../territory.ts';

const cerebellum = recalled('brazis', 'cerebellum');

/** The cerebellum by hemisphere, vermis and flocculonodular lobe, with what a swelling of it presses on. */
export const cerebellarTerritories = {
  'cerebellar-hemisphere': {
    label: 'Cerebellar hemisphere',
    holds: { 'cerebellar-hemisphere': 0.95, 'cerebellar-vermis': 0.12 },
    source: cerebellum,
  },
  'cerebellar-hemisphere-and-vermis': {
    label: 'Cerebellar hemisphere',
    holds: { 'cerebellar-hemisphere': 0.85, 'cerebellar-vermis': 0.5, 'flocculonodular-lobe': 0.2 },
    source: cerebellum,
  },
  'cerebellar-hemispheres-both': {
    label: 'Cerebellar hemisphere',
    holds: { 'cerebellar-hemisphere': 0.9, 'cerebellar-vermis': 0.5 },
    across: { 'cerebellar-hemisphere': 0.9 },
    source: cerebellum,
  },
  'cerebellar-hemisphere-pressing-on-pons': {
    label: 'Cerebellar hemisphere',
    holds: {
      'cerebellar-hemisphere': 0.95,
      'cerebellar-vermis': 0.6,
      'horizontal-gaze-centre': 0.45,
      'facial-nucleus': 0.4,
      'pontine-reticular-formation': 0.5,
      'basis-pontis': 0.2,
      'intracranial-pressure': 0.35,
    },
    across: { 'basis-pontis': 0.2, 'pontine-reticular-formation': 0.4 },
    source: recalled('adams-victor', 'cerebellar haemorrhage'),
  },
  'cerebellar-hemisphere-swollen': {
    // A bleeding or a swollen infarct that fills the posterior fossa before it presses on the pons.
    label: 'Cerebellar hemisphere',
    holds: {
      'cerebellar-hemisphere': 0.9,
      'cerebellar-vermis': 0.75,
      'flocculonodular-lobe': 0.2,
      'intracranial-pressure': 0.5,
    },
    source: recalled('adams-victor', 'cerebellar haemorrhage'),
  },
  'cerebellar-nodule-and-uvula': {
    // What the medial branch of the posterior inferior cerebellar artery feeds beside the lowest part of a hemisphere.
    label: 'Cerebellar hemisphere',
    holds: { 'cerebellar-hemisphere': 0.12, 'cerebellar-vermis': 0.25, 'flocculonodular-lobe': 0.5 },
    source: recalled('brazis', 'cerebellar infarction with vertigo alone'),
  },
  'cerebellar-vermis': {
    label: 'Cerebellar vermis',
    holds: { 'cerebellar-vermis': 0.95, 'flocculonodular-lobe': 0.15 },
    source: cerebellum,
  },
  'flocculonodular-lobe': {
    label: 'Flocculonodular lobe of the cerebellum',
    holds: { 'flocculonodular-lobe': 0.95, 'cerebellar-vermis': 0.2 },
    source: cerebellum,
  },
} as const satisfies Record<string, Territory>;

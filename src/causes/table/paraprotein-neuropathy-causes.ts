import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import {
  at,
  atLeast,
  type Cause,
  inKind,
  lengthDependent,
  longStandingSigns,
  mondo,
  reads,
  shows,
  tempos,
  told,
  under,
} from './cause.ts';
import { axonal, conduction, demyelinating, slowArm } from './conduction.ts';

const immunofixation = 'serum-immunofixation';
const igGOrA = (ratio: number) =>
  (['igg-kappa', 'igg-lambda', 'iga-kappa', 'iga-lambda'] as const).map((value) => [value, ratio] as const);
const igM = (ratio: number) => (['igm-kappa', 'igm-lambda'] as const).map((value) => [value, ratio] as const);
const lambda = (ratio: number) =>
  (['igg-lambda', 'iga-lambda', 'light-chain'] as const).map((value) => [value, ratio] as const);

/** Deformities of years and affected relatives point to what is inherited, and so away from what is acquired. */
const noOldDeformity = shows(longStandingSigns, 0.4, 1.05);
const notFamilial = told('family/similar-disorder', 0.4, 1.05);

/** Neuropathies with a monoclonal protein. */
export const paraproteinNeuropathyCauses: readonly Cause[] = [
  {
    key: 'paraproteinaemic-neuropathy',
    group: 'paraprotein',
    label: 'Neuropathy with IgG or IgA paraprotein',
    produces: [
      at(['sensory-ganglionopathy', 'small-fibre-polyneuropathy'], 'rare'),
      at(lengthDependent, 'uncommon'),
      inKind(['polyradiculoneuropathy'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 90, outside: 0.4, source: fromMemory },
    age: { from: 50, to: 110, outside: 0.3 },
    history: [told('monoclonal-gammopathy', 8, 0.5), notFamilial],
    signs: [noOldDeformity],
    quantities: [atLeast('monoclonal-protein', 1, 'g/L', 4, 0.4)],
    values: [
      reads(
        immunofixation,
        [...igGOrA(10), ...igM(0.2), ['normal', 0.05]],
        read('aan-dsp-laboratory-2009', 'serum protein immunofixation'),
      ),
    ],
    source: read('aan-dsp-laboratory-2009', 'serum protein immunofixation'),
  },
  {
    key: 'anti-mag-neuropathy',
    group: 'paraprotein',
    label: 'IgM neuropathy with antibodies to myelin-associated glycoprotein',
    mondo: mondo('MONDO:0018977', 'polyneuropathy associated with IgM monoclonal gammapathy with anti-MAG'),
    produces: [
      at(['sensory-polyneuropathy'], 'uncommon'),
      at(['length-dependent-polyneuropathy', 'sensory-ganglionopathy'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    courses: { 'relapsing-remitting': 0.3, improving: 0.3 },
    durationDays: {
      from: 180,
      outside: 0.3,
      source: recalled('ean-pns-cidp-2021', 'slow course of anti-MAG neuropathy'),
    },
    age: { from: 50, to: 110, outside: 0.2 },
    sex: { male: 1.4, female: 0.6 },
    history: [
      told('macroglobulinaemia', 12, 1),
      told('lymphoma', 1.5, 1),
      told('monoclonal-gammopathy', 5, 0.8),
      told(['unsteadiness', 'worse-in-the-dark'], 1.6, 0.6),
      told('tremor', 1.9, 0.8),
      notFamilial,
    ],
    signs: [
      shows(['involuntary-movements/postural-tremor', 'involuntary-movements/action-tremor'], 4, 0.7),
      shows(['gait/romberg', 'gait/sensory-ataxic'], 1.5, 0.7),
      noOldDeformity,
    ],
    quantities: [slowArm(3, 0.6), atLeast('igm', 2.5, 'g/L', 3, 0.5)],
    values: [
      reads('nerve-biopsy', [
        ['demyelination', 3],
        ['vasculitis', 0.1],
      ]),
      reads(immunofixation, [...igM(12), ...igGOrA(0.1), ['normal', 0.05]]),
      reads('anti-mag', [
        ['positive', 25],
        ['negative', 0.1],
      ]),
      reads(conduction, [...demyelinating(3, 4), ['mixed', 1.5], ['axonal', 0.3], ['normal', 0.05]]),
    ],
    source: recalled('ean-pns-cidp-2021', 'differential diagnosis: anti-MAG neuropathy'),
  },
  {
    key: 'poems-syndrome',
    group: 'paraprotein',
    label: 'POEMS syndrome',
    mondo: mondo('MONDO:0017364', 'POEMS syndrome'),
    produces: [
      at(['motor-polyneuropathy'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'uncommon'),
      at(['length-dependent-polyneuropathy'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.4, 'relapsing-remitting': 0.3 },
    age: { from: 35, to: 75, outside: 0.4 },
    sex: { male: 1.3, female: 0.7 },
    history: [
      told(
        ['stroke', 'amenorrhoea-or-galactorrhoea', 'peripheral-arterial-disease', 'leg-pain', 'foot-pain', 'headache'],
        1.4,
        1,
      ),
      told(['gynaecomastia', 'hypothyroidism', 'lymphoma', 'breathlessness'], 1.4, 1),
      told(['sexual-dysfunction', 'night-sweats', 'fatigue', 'cold-white-fingers'], 1.4, 1),
      told(['diabetes-mellitus', 'fever'], 0.7, 1),
      told(['weight-loss', 'recent-weight-loss'], 2, 0.7),
      told('monoclonal-gammopathy', 3, 0.9),
      told('neuropathic-pain', 1.4, 0.9),
    ],
    signs: [
      shows(['inspection/skin-hyperpigmentation'], 5, 0.6),
      shows(['inspection/enlarged-liver-or-spleen', 'inspection/wasting', 'inspection/distal-hair-loss'], 1.5, 1),
      shows(['inspection/oedema'], 5, 0.5),
      shows(['inspection/trophic-skin-change', 'inspection/enlarged-lymph-nodes'], 3, 0.8),
      shows(['cranial-nerves/optic-disc-swelling'], 8, 0.8),
    ],
    quantities: [
      atLeast('haemoglobin', 165, 'g/L', 1.6, 1),
      atLeast('tsh', 4.5, 'm[IU]/L', 1.4, 1),
      slowArm(2, 0.7),
      atLeast('platelets', 450, '10*9/L', 6, 0.5),
      atLeast('csf-protein', 0.45, 'g/L', 1.4, 0.4),
    ],
    values: [
      reads(immunofixation, [...lambda(25), ['igg-kappa', 0.3], ['iga-kappa', 0.3], ...igM(0.2), ['normal', 0.2]]),
      reads(conduction, [...demyelinating(2, 3), ['mixed', 2], ['axonal', 0.4], ['normal', 0.1]]),
    ],
    source: recalled('ean-pns-cidp-2021', 'differential diagnosis: POEMS'),
  },
  {
    key: 'al-amyloidosis',
    group: 'paraprotein',
    label: 'AL amyloidosis',
    mondo: mondo('MONDO:0019438', 'AL amyloidosis'),
    produces: [
      at(['median-nerve-wrist'], 'rare'),
      at(['autonomic-neuropathy'], 'uncommon'),
      at(['small-fibre-polyneuropathy'], 'uncommon'),
      at(lengthDependent, 'rare'),
      inKind(['multiple-nerves', 'polyradiculoneuropathy'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.5, static: 0.2, improving: 0.2 },
    durationDays: { from: 45, to: 2555, outside: 0.5, source: fromMemory },
    age: { from: 45, to: 110, outside: 0.15 },
    history: [
      told(['voice-change', 'bowel-disturbance', 'atrial-fibrillation'], 1.4, 1),
      told(['fatigue', 'breathlessness', 'orthopnoea'], 1.2, 1),
      told(['sexual-dysfunction', 'burning-feet', 'neuropathic-pain', 'dysphagia'], 1.3, 1),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.6),
      told(['heart-failure', 'cardiomyopathy', 'amyloidosis'], 3, 0.7),
      told('carpal-tunnel-syndrome', 3, 0.8),
      told('monoclonal-gammopathy', 6, 0.7),
      told(['light-headed-on-standing', 'syncope', 'early-satiety'], 3, 0.5),
      told('chronic-kidney-disease', 2, 0.95),
      told(['family/similar-disorder', 'family/amyloidosis'], 0.3, 1.1),
    ],
    signs: [
      shows(
        ['inspection/enlarged-liver-or-spleen', 'inspection/non-blanching-rash', 'inspection/periorbital-oedema'],
        1.8,
        1,
      ),
      shows(['sphincters/erectile-dysfunction', 'autonomic/gastroparesis', 'autonomic/anhidrosis'], 1.8, 0.95),
      shows(['autonomic/orthostatic-hypotension'], 4, 0.5),
      shows(['inspection/oedema'], 2, 0.9),
      noOldDeformity,
    ],
    quantities: [
      under('albumin', 30, 'g/L', 1.8, 0.9),
      atLeast('monoclonal-protein', 1, 'g/L', 3, 0.6),
      under('free-light-chain-ratio', 0.26, '{ratio}', 6, 0.7),
      atLeast('free-light-chain-ratio', 1.66, '{ratio}', 3, 0.9),
    ],
    values: [
      reads('autonomic-tests', [
        ['orthostatic-hypotension', 2.5],
        ['cardiovagal-failure', 2.5],
        ['sweat-loss', 1.6],
        ['normal', 0.4],
      ]),
      reads('urine-protein', [
        ['nephrotic', 6],
        ['raised', 2],
      ]),
      reads(immunofixation, [...lambda(8), ['igg-kappa', 4], ['iga-kappa', 4], ...igM(1.5), ['normal', 0.15]]),
      reads('nerve-biopsy', [
        ['amyloid', 30],
        ['normal', 0.4],
      ]),
      reads('genetic-test', [['ttr-variant', 0.02]]),
      axonal(1.4),
      reads('ecg', [
        ['conduction-disease', 1.6],
        ['other', 1.4],
      ]),
    ],
    source: recalled('adams-victor', 'amyloid neuropathy'),
  },
];

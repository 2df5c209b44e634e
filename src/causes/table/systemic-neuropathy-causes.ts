import { fromMemory, recalled } from '../../kernel/cite.ts';
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
import { axonal, conduction, demyelinating } from './conduction.ts';

/** Neuropathies that come with a disease of the whole body: cryoglobulins, connective tissue, granulomas, tumours, ticks. */
export const systemicNeuropathyCauses: readonly Cause[] = [
  {
    key: 'hepatitis-c-cryoglobulinaemic-neuropathy',
    group: 'immune',
    label: 'Cryoglobulinaemic neuropathy (hepatitis C)',
    mondo: mondo('MONDO:0100645', 'neuropathy in cryoglobulinemia'),
    produces: [
      inKind(['multiple-nerves'], 'uncommon'),
      at([...lengthDependent, 'small-fibre-polyneuropathy'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 30, to: 110, outside: 0.4 },
    history: [
      told(['hepatitis-c', 'cryoglobulinaemia'], 15, 0.25),
      told(['injecting-drug-use', 'chronic-liver-disease'], 3, 0.9),
      told('rash', 4, 0.6),
      told(['joint-pain', 'cold-white-fingers'], 2, 0.8),
    ],
    signs: [shows(['inspection/non-blanching-rash'], 10, 0.6)],
    quantities: [under('complement-c4', 0.1, 'g/L', 6, 0.4)],
    values: [
      reads('cryoglobulin', [
        ['positive', 15],
        ['negative', 0.2],
      ]),
      reads('hepatitis-c-antibody', [
        ['positive', 8],
        ['negative', 0.15],
      ]),
      reads('nerve-biopsy', [['vasculitis', 5]]),
      reads(conduction, [['axonal', 1.3], ['multifocal-axonal', 3], ...demyelinating(0.2)]),
    ],
    source: recalled('adams-victor', 'cryoglobulinaemia'),
  },
  {
    key: 'connective-tissue-disease-neuropathy',
    group: 'immune',
    label: 'Neuropathy of connective-tissue disease',
    mondo: mondo('MONDO:0001765', 'polyneuropathy in collagen vascular disease'),
    produces: [
      inKind(['multiple-nerves'], 'uncommon'),
      at([...lengthDependent, 'small-fibre-polyneuropathy'], 'uncommon'),
      at(['sensory-ganglionopathy', 'demyelinating-polyradiculoneuropathy', 'autonomic-neuropathy'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    sex: { male: 0.5, female: 1.5 },
    history: [
      told(['rash', 'interstitial-lung-disease', 'dry-eyes', 'dry-mouth', 'hair-loss'], 1.6, 1),
      told(['lupus', 'rheumatoid-arthritis', 'sjogren-syndrome', 'vasculitis'], 12, 0.1),
      told(['joint-pain', 'cold-white-fingers', 'photosensitive-rash'], 3, 0.6),
      told('family/autoimmune-disease', 1.5, 1),
    ],
    values: [
      reads('ana', [
        ['positive', 3],
        ['negative', 0.4],
      ]),
      reads('rheumatoid-factor', [['positive', 2]]),
      axonal(1.2),
    ],
    source: recalled('adams-victor', 'neuropathy of connective-tissue disease'),
  },
  {
    key: 'sarcoid-neuropathy',
    group: 'immune',
    label: 'Sarcoid neuropathy',
    mondo: mondo('MONDO:0100647', 'sarcoid neuropathy'),
    produces: [
      at(['cauda-equina', 'conus-medullaris', 'facial-nerve', 'intercostal-nerves', 'motor-polyneuropathy'], 'rare'),
      inKind(['multiple-nerves'], 'uncommon'),
      at(['small-fibre-polyneuropathy', 'polyradiculopathy'], 'uncommon'),
      at([...lengthDependent, 'demyelinating-polyradiculoneuropathy', 'autonomic-neuropathy'], 'rare'),
    ],
    tempo: tempos.subacute,
    age: { from: 20, to: 65, outside: 0.4 },
    history: [
      told(['weight-loss', 'chronic-cough', 'interstitial-lung-disease'], 1.6, 1),
      told('sarcoidosis', 20, 0.3),
      told(['breathlessness', 'fatigue', 'eye-pain'], 1.5, 0.9),
      told(['joint-pain', 'rash', 'night-sweats'], 1.5, 0.95),
    ],
    signs: [shows(['cranial-nerves/facial-weakness'], 4, 0.9), shows(['inspection/enlarged-lymph-nodes'], 3, 0.95)],
    quantities: [
      atLeast('angiotensin-converting-enzyme', 70, 'U/L', 4, 0.7),
      atLeast('calcium', 2.65, 'mmol/L', 2.5, 0.95),
      atLeast('csf-white-cells', 10, '10*6/L', 2, 0.9),
    ],
    values: [
      reads('ct-chest', [
        ['hilar-nodes', 12],
        ['normal', 0.3],
      ]),
      reads('nerve-biopsy', [
        ['granuloma', 30],
        ['normal', 0.6],
      ]),
    ],
    source: recalled('adams-victor', 'sarcoidosis'),
  },
  {
    key: 'coeliac-neuropathy',
    group: 'immune',
    label: 'Neuropathy with coeliac disease',
    produces: [
      at(['small-fibre-polyneuropathy'], 'uncommon'),
      at(lengthDependent, 'rare'),
      inKind(['ganglion'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    history: [
      told('coeliac-disease', 15, 0.2),
      told(['weight-loss', 'recent-weight-loss', 'malabsorption'], 1.8, 0.9),
      told('family/autoimmune-disease', 1.5, 1),
    ],
    signs: [shows(['gait/ataxic'], 1.6, 1)],
    quantities: [under('ferritin', 20, 'ug/L', 2, 0.8)],
    values: [
      reads('tissue-transglutaminase-antibody', [
        ['positive', 15],
        ['negative', 0.1],
      ]),
      axonal(1.2),
    ],
    source: recalled('adams-victor', 'coeliac disease'),
  },
  {
    key: 'lymphomatous-neuropathy',
    group: 'neoplastic',
    label: 'Lymphomatous neuropathy (neurolymphomatosis)',
    produces: [
      inKind(['multiple-nerves'], 'uncommon'),
      at(['polyradiculopathy'], 'uncommon'),
      inKind(['plexus', 'polyradiculoneuropathy', 'cauda-equina'], 'rare'),
      // Cranial nerves are reached in nearly half, single large nerves in some. Grisariu 2010 (recalled).
      at(['basal-meningeal-process'], 'uncommon'),
      at(
        [
          'facial-nerve',
          'oculomotor-nerve',
          'abducens-nerve',
          'trigeminal-nerve',
          'vagus-nerve',
          'recurrent-laryngeal-nerve',
          'cavernous-sinus',
          'hypoglossal-nerve',
          'cerebellopontine-angle',
          'sciatic-nerve',
          'adjacent-nerve-roots',
        ],
        'rare',
      ),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.4, static: 0.3, improving: 0.2 },
    age: { from: 40, to: 110, outside: 0.3 },
    history: [
      told(['hiv-infection', 'similar-attacks-before'], 1.3, 1),
      told(['diabetes-mellitus', 'trauma'], 0.6, 1),
      told('lymphoma', 30, 0.3),
      told(['weight-loss', 'recent-weight-loss', 'night-sweats'], 3, 0.7),
      told(['neuropathic-pain', 'leg-pain', 'arm-pain', 'back-pain'], 1.8, 0.6),
      told('immunosuppression', 1.5, 1),
    ],
    signs: [
      shows(['inspection/enlarged-lymph-nodes'], 4, 0.8),
      shows(['cranial-nerves/facial-weakness', 'cranial-nerves/ophthalmoplegia'], 2, 0.9),
    ],
    quantities: [
      atLeast('csf-white-cells', 5, '10*6/L', 3, 0.7),
      atLeast('csf-protein', 0.45, 'g/L', 1.6, 0.5),
      atLeast('ldh', 250, 'U/L', 3, 0.6),
    ],
    values: [
      reads('csf-cytology', [
        ['malignant', 20],
        ['normal', 0.6],
      ]),
      reads('mri-lumbar-spine', [['root-enhancement', 4]]),
      reads('mri-lumbosacral-plexus', [['mass', 5]]),
      reads('mri-brachial-plexus', [['mass', 5]]),
    ],
    source: recalled('adams-victor', 'lymphoma of nerve'),
  },
  {
    key: 'paraneoplastic-polyneuropathy',
    group: 'paraneoplastic',
    label: 'Paraneoplastic polyneuropathy',
    mondo: mondo('MONDO:0006888', 'paraneoplastic polyneuropathy'),
    produces: [
      at(lengthDependent, 'rare'),
      at(['autonomic-neuropathy'], 'uncommon'),
      inKind(['polyradiculoneuropathy', 'multiple-nerves'], 'rare'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.4, static: 0.4, improving: 0.2 },
    age: { from: 45, to: 110, outside: 0.2 },
    history: [
      told('cancer', 8, 0.7),
      told('tobacco', 2, 0.6),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.6),
      told(
        ['vincristine', 'cisplatin', 'oxaliplatin', 'carboplatin', 'paclitaxel', 'docetaxel', 'bortezomib'],
        0.15,
        1.1,
      ),
    ],
    signs: [shows(longStandingSigns, 0.3, 1.05), shows(['autonomic/gastroparesis', 'autonomic/ileus'], 2.5, 1)],
    values: [
      reads('paraneoplastic-antibody', [
        ['positive', 20],
        ['negative', 0.4],
      ]),
      reads('ct-chest', [
        ['tumour', 6],
        ['normal', 0.6],
      ]),
    ],
    source: recalled('adams-victor', 'paraneoplastic polyneuropathy'),
  },
  {
    key: 'tick-paralysis',
    group: 'toxic',
    label: 'Tick paralysis',
    produces: [
      at(['cerebellar-vermis', 'cerebellar-degeneration', 'proximal-myopathy'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'uncommon'),
      at(['motor-polyneuropathy', 'lower-motor-neuron-system', 'presynaptic-junction'], 'rare'),
    ],
    tempo: tempos.acute,
    durationDays: { to: 10, outside: 0.05, source: fromMemory },
    age: { from: 0, to: 10, outside: 0.15 },
    // The tick sits in the hair and is mostly found after the weakness.
    history: [
      told(['ascending-weakness', 'unsteadiness'], 1.5, 0.9),
      told(['fever', 'preceding-gastroenteritis'], 0.4, 1.05),
      told('tick-bite', 25, 0.4),
      told(['numbness', 'paraesthesiae'], 0.5, 1.2),
    ],
    signs: [
      shows(['gait/ataxic'], 1.5, 1),
      shows(['cranial-nerves/ophthalmoplegia', 'cranial-nerves/unreactive-pupil'], 1.5, 1),
    ],
    quantities: [atLeast('csf-protein', 0.45, 'g/L', 0.2, 1.3)],
    source: recalled('adams-victor', 'tick paralysis'),
  },
];

import { read, recalled } from '../../kernel/cite.ts';
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
} from './cause.ts';
import { axonal, conduction, demyelinating } from './conduction.ts';

/** Immune causes of disease of many nerves, of roots and nerves and of ganglia, with what imitates them. */
export const immuneNeuropathyCauses: readonly Cause[] = [
  {
    key: 'guillain-barre-syndrome',
    group: 'immune',
    label: 'Guillain-Barré syndrome',
    mondo: mondo('MONDO:0016218', 'Guillain-Barre syndrome'),
    produces: [
      at(['basal-meningeal-process'], 'uncommon'),
      at(['facial-nerve'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'very-common'),
      at(
        ['motor-polyneuropathy', 'length-dependent-polyneuropathy', 'nerve-roots', 'lower-motor-neuron-system'],
        'common',
      ),
      inKind(['ganglion'], 'uncommon'),
    ],
    tempo: tempos.acute,
    courses: { progressive: 1.2, 'relapsing-remitting': 0.1, static: 0.7 },
    durationDays: { to: 28, outside: 0.05, source: read('ean-pns-gbs-2023', 'nadir within four weeks') },
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 3, 0.7),
      told('fever', 0.4, 1.1),
    ],
    signs: [
      shows(['cranial-nerves/facial-weakness'], 2, 0.9),
      shows(['sphincters/urinary-retention', 'sphincters/saddle-anaesthesia'], 0.4, 1.1),
    ],
    quantities: [
      atLeast('csf-white-cells', 50, '10*6/L', 0.1, 1.2, read('ean-pns-gbs-2023', 'more than 50 cells per microlitre')),
    ],
    values: [reads(conduction, [...demyelinating(4, 0.5), ['axonal', 1.5], ['normal', 0.7]])],
    source: read('ean-pns-gbs-2023', 'clinical features'),
  },
  {
    key: 'miller-fisher-syndrome',
    group: 'immune',
    label: 'Miller Fisher syndrome',
    mondo: mondo('MONDO:0005851', 'Miller Fisher syndrome'),
    produces: [
      at(['basal-meningeal-process'], 'uncommon'),
      at(['oculomotor-nerve', 'abducens-nerve', 'ciliary-ganglion'], 'rare'),
      inKind(['polyradiculoneuropathy', 'multiple-sites'], 'uncommon'),
      inKind(['ganglion', 'brainstem'], 'rare'),
    ],
    tempo: tempos.acute,
    durationDays: { to: 28, outside: 0.1, source: read('ean-pns-gbs-2023') },
    history: [told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 3, 0.7)],
    signs: [shows(['cranial-nerves/ophthalmoplegia'], 12, 0.1)],
    values: [
      reads('anti-gq1b', [
        ['positive', 15],
        ['negative', 0.3],
      ]),
    ],
    source: read('ean-pns-gbs-2023', 'variants'),
  },
  {
    key: 'chronic-inflammatory-demyelinating-polyradiculoneuropathy',
    group: 'immune',
    label: 'Chronic inflammatory demyelinating polyradiculoneuropathy',
    mondo: mondo('MONDO:0006702', 'chronic inflammatory demyelinating polyradiculoneuropathy'),
    produces: [
      inKind(['polyradiculoneuropathy'], 'very-common'),
      at(['nerve-roots', 'multiple-mononeuropathy'], 'uncommon'),
      at(lengthDependent, 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { 'relapsing-remitting': 2, progressive: 1.2 },
    durationDays: {
      from: 56,
      outside: 0.15,
      source: read('ean-pns-cidp-2021', 'progression over at least eight weeks'),
    },
    history: [told('family/similar-disorder', 0.3, 1.1)],
    signs: [shows(longStandingSigns, 0.4, 1.05)],
    values: [
      reads(conduction, [...demyelinating(8, 0.6), ['axonal', 0.2], ['normal', 0.1]], read('ean-pns-cidp-2021')),
    ],
    source: read('ean-pns-cidp-2021', 'typical CIDP'),
  },
  {
    key: 'acute-porphyria',
    group: 'metabolic',
    label: 'Acute porphyria',
    produces: [inKind(['polyradiculoneuropathy'], 'rare'), at(['motor-polyneuropathy'], 'uncommon')],
    tempo: tempos.acute,
    history: [told('abdominal-pain', 15, 0.2), told(['porphyria', 'family/porphyria'], 20, 0.9)],
    values: [
      reads('porphobilinogen-urine', [
        ['positive', 60],
        ['negative', 0.03],
      ]),
    ],
    source: recalled('adams-victor', 'porphyric polyneuropathy'),
  },
  {
    key: 'multifocal-motor-neuropathy',
    group: 'immune',
    label: 'Multifocal motor neuropathy',
    mondo: mondo('MONDO:0018979', 'multifocal motor neuropathy'),
    produces: [
      inKind(['multiple-nerves'], 'common'),
      at(['posterior-interosseous-nerve', 'lower-motor-neuron-system', 'anterior-horn'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    age: { from: 20, to: 65, outside: 0.4 },
    sex: { male: 1.4, female: 0.6 },
    values: [
      reads(
        conduction,
        [
          ['motor-conduction-block', 20],
          ['axonal', 0.4],
        ],
        read('mmn-efns-2010'),
      ),
    ],
    source: read('mmn-efns-2010', 'clinical criteria'),
  },
  {
    key: 'vasculitic-neuropathy',
    group: 'immune',
    label: 'Vasculitic neuropathy',
    mondo: mondo('MONDO:0100639', 'vasculitic neuropathy'),
    produces: [
      inKind(['multiple-nerves'], 'very-common'),
      inKind(['nerve', 'plexus', 'multiple-sites'], 'uncommon'),
      at(lengthDependent, 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    history: [
      told(['neuropathic-pain', 'leg-pain', 'arm-pain'], 2, 0.5),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.7),
      told('fever', 3),
      told('rash', 4),
      told('asthma', 3),
    ],
    quantities: [atLeast('crp', 10, 'mg/L', 3, 0.4)],
    values: [
      reads('nerve-biopsy', [
        ['vasculitis', 50],
        ['normal', 0.3],
      ]),
      reads('anca', [
        ['positive', 6],
        ['negative', 0.7],
      ]),
      axonal(1.6),
    ],
    source: read('vasculitic-neuropathy-2010', 'clinical pattern'),
  },
  {
    key: 'leprosy',
    group: 'infective',
    label: 'Leprosy',
    mondo: mondo('MONDO:0005124', 'leprosy'),
    produces: [
      inKind(['multiple-nerves'], 'uncommon'),
      at(['ulnar-nerve-elbow', 'small-fibre-polyneuropathy'], 'rare'),
    ],
    tempo: tempos.chronic,
    history: [told(['leprosy'], 20, 0.2)],
    signs: [shows(['inspection/thickened-nerve'], 15, 0.6)],
    source: recalled('adams-victor', 'leprous neuritis'),
  },
  {
    key: 'critical-illness-polyneuropathy',
    group: 'critical-illness',
    label: 'Critical illness polyneuropathy',
    mondo: mondo('MONDO:0001957', 'critical illness polyneuropathy'),
    produces: [at([...lengthDependent, 'motor-polyneuropathy'], 'rare'), inKind(['polyradiculoneuropathy'], 'rare')],
    tempo: tempos.acuteOrSubacute,
    history: [told(['critical-illness', 'sepsis'], 60, 0.02)],
    source: recalled('preston-shapiro', 'critical illness polyneuropathy'),
  },
  {
    key: 'sjogren-syndrome',
    group: 'immune',
    label: 'Sjögren syndrome',
    mondo: mondo('MONDO:0010030', 'Sjogren syndrome'),
    produces: [inKind(['ganglion'], 'common'), at(['small-fibre-polyneuropathy'], 'uncommon')],
    tempo: tempos.subacuteOrChronic,
    sex: { male: 0.3, female: 1.7 },
    history: [told(['dry-eyes', 'dry-mouth', 'sjogren-syndrome'], 6, 0.4)],
    values: [
      reads('anti-ro', [
        ['positive', 8],
        ['negative', 0.5],
      ]),
    ],
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
  {
    key: 'paraneoplastic-sensory-neuronopathy',
    group: 'paraneoplastic',
    label: 'Paraneoplastic sensory neuronopathy',
    produces: [inKind(['ganglion'], 'common')],
    tempo: tempos.subacute,
    age: { from: 45, to: 110, outside: 0.2 },
    history: [
      told(['cancer', 'lymphoma'], 5, 0.8),
      told('tobacco', 2, 0.6),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.8),
    ],
    values: [
      reads('paraneoplastic-antibody', [
        ['positive', 20],
        ['negative', 0.4],
      ]),
    ],
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
  {
    key: 'idiopathic-sensory-ganglionopathy',
    group: 'immune',
    label: 'Idiopathic sensory ganglionopathy',
    produces: [inKind(['ganglion'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
];

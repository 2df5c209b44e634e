import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, mondo, reads, shows, tempos, told, under } from './cause.ts';

const muscleBook = recalled('amato-russell');

/** Further acquired causes of disease of the muscle. */
export const otherMuscleCauses: readonly Cause[] = [
  {
    key: 'polymyositis',
    group: 'immune',
    label: 'Polymyositis or overlap myositis',
    mondo: mondo('MONDO:0019127', 'polymyositis'),
    produces: [
      at(['proximal-myopathy'], 'common'),
      at(['finger-flexor-quadriceps-myopathy', 'axial-myopathy'], 'uncommon'),
    ],
    tempo: tempos.subacute,
    age: { from: 18, to: 90, outside: 0.3 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['lupus', 'sjogren-syndrome', 'joint-pain', 'cold-white-fingers'], 2.5, 0.8),
      told('rash', 0.4, 1.2),
      told('family/muscle-disease', 0.4, 1.05),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2.5, 0.2)],
    values: [
      reads('muscle-biopsy', [
        ['inflammatory', 6],
        ['normal', 0.2],
        ['rimmed-vacuoles', 0.1],
      ]),
      reads('ana', [['positive', 2]]),
    ],
    source: recalled('eular-acr-myositis-2017', 'subgroups'),
  },
  {
    key: 'antisynthetase-syndrome',
    group: 'immune',
    label: 'Antisynthetase syndrome',
    produces: [at(['proximal-myopathy'], 'uncommon')],
    tempo: tempos.subacute,
    age: { from: 18, to: 90, outside: 0.3 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['breathlessness', 'interstitial-lung-disease'], 4, 0.4),
      told('cold-white-fingers', 4, 0.6),
      told('joint-pain', 3, 0.5),
      told('fever', 2, 0.8),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2, 0.4)],
    values: [
      reads('myositis-antibody', [
        ['positive', 20],
        ['negative', 0.2],
      ]),
    ],
    source: recalled('eular-acr-myositis-2017', 'subgroups'),
  },
  {
    key: 'sarcoid-myopathy',
    group: 'immune',
    label: 'Sarcoid myopathy',
    produces: [
      at(['proximal-myopathy'], 'rare'),
      at(['finger-flexor-quadriceps-myopathy', 'axial-myopathy'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    history: [told('sarcoidosis', 40, 0.4)],
    quantities: [atLeast('angiotensin-converting-enzyme', 70, 'U/L', 3, 0.7)],
    values: [
      reads('ct-chest', [
        ['hilar-nodes', 8],
        ['normal', 0.4],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'viral-or-infectious-myositis',
    group: 'infective',
    label: 'Viral or other infectious myositis',
    produces: [at(['proximal-myopathy'], 'uncommon'), at(['distal-myopathy'], 'rare')],
    tempo: tempos.acute,
    courses: { improving: 2, progressive: 0.7, static: 0.3 },
    durationDays: { to: 42, outside: 0.15, source: fromMemory },
    history: [
      told(['fever', 'preceding-infection', 'preceding-respiratory-infection'], 4, 0.25),
      told('muscle-pain', 3, 0.2),
      told('hiv-infection', 3, 0.98),
    ],
    signs: [shows(['inspection/muscle-tenderness'], 4, 0.5)],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2, 0.3)],
    source: muscleBook,
  },
  {
    key: 'rhabdomyolysis',
    group: 'toxic',
    label: 'Rhabdomyolysis',
    produces: [
      at(['brachial-plexus', 'lumbosacral-plexus', 'sacral-plexus', 'sciatic-nerve'], 'rare'),
      at(['distal-myopathy'], 'rare'),
      at(['proximal-myopathy'], 'uncommon'),
      at(['axial-myopathy'], 'rare'),
    ],
    tempo: tempos.suddenOrAcute,
    durationDays: { to: 21, outside: 0.1, source: fromMemory },
    history: [
      told('dark-urine', 12, 0.4),
      told(
        [
          'heavy-exertion',
          'prolonged-immobility',
          'trauma',
          'cocaine-or-stimulants',
          'alcohol-excess',
          'seizure',
          'statin',
        ],
        4,
        0.3,
      ),
      told('muscle-pain', 3, 0.3),
    ],
    signs: [shows(['inspection/muscle-tenderness'], 3, 0.6)],
    quantities: [atLeast('creatine-kinase', 5000, 'U/L', 30, 0.03)],
    source: muscleBook,
  },
  {
    key: 'thyrotoxic-periodic-paralysis',
    group: 'metabolic',
    label: 'Thyrotoxic periodic paralysis',
    mondo: mondo('MONDO:0019201', 'thyrotoxic periodic paralysis'),
    produces: [
      at(['proximal-myopathy'], 'uncommon'),
      at(['no-lesion'], 'rare'),
      at(['demyelinating-polyradiculoneuropathy'], 'rare'),
    ],
    tempo: { hyperacute: 0.72, acute: 0.24, subacute: 0.02, chronic: 0.02 },
    courses: { 'relapsing-remitting': 3, progressive: 0.6 },
    age: { from: 18, to: 50, outside: 0.3 },
    sex: { male: 1.9, female: 0.1 },
    history: [
      told('hyperthyroidism', 20, 0.5),
      told('episodic-weakness', 6, 0.4),
      told(['weight-loss', 'tremor'], 2.5, 0.8),
    ],
    signs: [
      shows(
        ['autonomic/resting-tachycardia', 'involuntary-movements/postural-tremor', 'cranial-nerves/lid-retraction'],
        4,
        0.6,
      ),
    ],
    quantities: [under('potassium', 3.5, 'mmol/L', 15, 0.2), under('tsh', 0.4, 'm[IU]/L', 20, 0.03)],
    source: muscleBook,
  },
  {
    key: 'dropped-head-or-axial-myopathy',
    group: 'degenerative',
    label: 'Late-onset axial myopathy (dropped head or bent spine)',
    produces: [at(['axial-myopathy'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    age: { from: 50, to: 100, outside: 0.2 },
    history: [told(['fatigable-weakness', 'fluctuating-symptoms', 'diplopia'], 0.4, 1.1)],
    signs: [shows(['inspection/fasciculation'], 0.2, 1.1)],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 0.8, 1.1)],
    source: muscleBook,
  },
  {
    key: 'amyloid-myopathy',
    group: 'paraprotein',
    label: 'Amyloid myopathy',
    produces: [
      at(['proximal-myopathy'], 'rare'),
      at(['axial-myopathy', 'finger-flexor-quadriceps-myopathy'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 50, to: 100, outside: 0.2 },
    history: [
      told(['amyloidosis', 'monoclonal-gammopathy'], 20, 0.5),
      told(['heart-failure', 'carpal-tunnel-syndrome', 'dysphagia'], 2, 0.8),
    ],
    values: [
      reads('serum-immunofixation', [
        ['light-chain', 10],
        ['normal', 0.3],
      ]),
    ],
    source: muscleBook,
  },
];

import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, longStandingSigns, mondo, reads, shows, tempos, told } from './cause.ts';

const neuronBook = recalled('amato-russell', 'disorders of motor neurons');
const neuronChapter = recalled('preston-shapiro', 'motor neuron disease');

const tongueSigns = ['cranial-nerves/tongue-wasting', 'cranial-nerves/tongue-fasciculation'] as const;
const kinWithMotorNeuronDisease = [
  'family/similar-disorder',
  'family/motor-neuron-disease',
  'family/frontotemporal-dementia',
] as const;
const bulbarSymptoms = ['dysphagia', 'slurred-speech', 'voice-change'] as const;

/** Sensation and sphincters are spared in disease of the motor cells; a complaint of either speaks for something else. */
const sparedSenses = told(['numbness', 'paraesthesiae', 'bladder-disturbance'], 0.5, 1.2);

const widespreadDenervation = reads(
  'needle-emg',
  [
    ['denervation-widespread', 5],
    ['normal', 0.1],
    ['myopathic', 0.1],
  ],
  read('gold-coast-2020'),
);

/** Causes of disease of the anterior horn and of the motor neurons. */
export const motorNeuronCauses: readonly Cause[] = [
  {
    key: 'amyotrophic-lateral-sclerosis',
    group: 'degenerative',
    label: 'Amyotrophic lateral sclerosis',
    inheritance: ['autosomal-dominant'],
    mondo: mondo('MONDO:0004976', 'amyotrophic lateral sclerosis'),
    produces: [
      at(['hypoglossal-nerve'], 'rare'),
      inKind(['motor-neuron-system'], 'very-common'),
      at(['lower-motor-neuron-system', 'bulbar-motor-nuclei'], 'very-common'),
      at(['corticobulbar-both-sides', 'axial-myopathy', 'upper-motor-neuron-system'], 'common'),
      inKind(['anterior-horn'], 'common'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.5, static: 0.15, improving: 0.02, 'relapsing-remitting': 0.02, fluctuating: 0.1 },
    age: { from: 25, to: 90, outside: 0.03 },
    history: [
      told(kinWithMotorNeuronDisease, 2, 0.95),
      told(['weight-loss', 'recent-weight-loss'], 1.5, 0.9),
      told(['cramps', 'twitching'], 1.8, 0.8),
      sparedSenses,
    ],
    signs: [
      shows(tongueSigns, 8, 0.7),
      shows(['inspection/fasciculation'], 4, 0.4),
      shows(['higher-function/pseudobulbar-affect'], 2, 0.95),
    ],
    values: [widespreadDenervation, reads('anti-gm1', [['positive', 0.4]])],
    source: read('gold-coast-2020'),
  },
  {
    key: 'progressive-bulbar-palsy',
    group: 'degenerative',
    label: 'Progressive bulbar palsy (bulbar-onset motor neuron disease)',
    mondo: mondo('MONDO:0008890', 'progressive bulbar palsy'),
    produces: [at(['bulbar-motor-nuclei'], 'very-common'), at(['corticobulbar-both-sides'], 'common')],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.6, static: 0.1, improving: 0.02, 'relapsing-remitting': 0.02, fluctuating: 0.1 },
    age: { from: 50, to: 90, outside: 0.2 },
    sex: { male: 0.85, female: 1.15 },
    history: [
      told(bulbarSymptoms, 1.8, 0.2),
      told(kinWithMotorNeuronDisease, 2, 0.95),
      told(['weight-loss', 'recent-weight-loss'], 1.5, 0.9),
      told(['fatigable-weakness', 'diplopia', 'fluctuating-symptoms'], 0.3, 1.2),
    ],
    signs: [
      shows(tongueSigns, 8, 0.4),
      shows(['cranial-nerves/flaccid-dysarthria', 'cranial-nerves/spastic-dysarthria'], 2, 0.6),
      shows(['higher-function/pseudobulbar-affect', 'cranial-nerves/spastic-tongue'], 2, 0.9),
      shows(['cranial-nerves/ptosis', 'cranial-nerves/fatigable-ptosis', 'cranial-nerves/ophthalmoplegia'], 0.1, 1.3),
    ],
    values: [
      widespreadDenervation,
      reads('achr-antibody', [['positive', 0.05]]),
      reads('repetitive-stimulation', [['increment', 0.2]]),
    ],
    source: neuronBook,
  },
  {
    key: 'progressive-muscular-atrophy',
    group: 'degenerative',
    label: 'Progressive muscular atrophy',
    mondo: mondo('MONDO:0018687', 'progressive muscular atrophy'),
    produces: [at(['lower-motor-neuron-system'], 'common'), inKind(['anterior-horn'], 'common')],
    tempo: tempos.chronic,
    courses: { progressive: 1.3, improving: 0.05, 'relapsing-remitting': 0.05, fluctuating: 0.1 },
    age: { from: 30, to: 90, outside: 0.05 },
    sex: { male: 1.3, female: 0.7 },
    history: [told(['cramps', 'twitching'], 1.5, 0.8), told(bulbarSymptoms, 0.6, 1.1), sparedSenses],
    signs: [shows(['inspection/fasciculation'], 3, 0.5), shows(tongueSigns, 1.2, 1)],
    values: [widespreadDenervation, reads('anti-gm1', [['positive', 0.3]])],
    source: neuronChapter,
  },
  {
    key: 'brachial-amyotrophic-diplegia',
    group: 'degenerative',
    label: 'Brachial amyotrophic diplegia (flail-arm syndrome)',
    mondo: mondo('MONDO:0020708', 'brachial amyotrophic diplegia'),
    produces: [at(['lower-motor-neuron-system'], 'uncommon'), at(['motor-neuron-system'], 'uncommon')],
    tempo: tempos.chronic,
    courses: { progressive: 1.3, improving: 0.05, 'relapsing-remitting': 0.05, fluctuating: 0.1 },
    age: { from: 40, to: 85, outside: 0.25 },
    sex: { male: 1.6, female: 0.4 },
    history: [
      told('arm-weakness', 2.5, 0.2),
      told(['leg-weakness', 'difficulty-walking'], 0.4, 1.5),
      told(bulbarSymptoms, 0.4, 1.2),
      sparedSenses,
    ],
    signs: [shows(tongueSigns, 0.4, 1.1), shows(['inspection/fasciculation'], 2, 0.6)],
    values: [widespreadDenervation],
    source: neuronBook,
  },
  {
    key: 'primary-lateral-sclerosis',
    group: 'degenerative',
    label: 'Primary lateral sclerosis',
    produces: [
      at(['upper-motor-neuron-system'], 'very-common'),
      at(['corticobulbar-both-sides'], 'common'),
      inKind(['motor-neuron-system'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.3, improving: 0.03, 'relapsing-remitting': 0.05, fluctuating: 0.1 },
    durationDays: { from: 730, outside: 0.5, source: recalled('amato-russell', 'primary lateral sclerosis') },
    age: { from: 40, to: 80, outside: 0.3 },
    history: [
      told(['stiffness', 'slurred-speech'], 1.6, 0.6),
      told(['family/spastic-paraplegia', 'family/similar-disorder'], 0.3, 1.05),
      sparedSenses,
    ],
    signs: [
      shows(['inspection/fasciculation', 'inspection/wasting', ...tongueSigns], 0.2, 1.5),
      shows(['cranial-nerves/spastic-dysarthria', 'higher-function/pseudobulbar-affect'], 3, 0.6),
    ],
    values: [
      reads('needle-emg', [
        ['normal', 2.5],
        ['denervation-widespread', 0.1],
      ]),
      reads('mri-brain', [['demyelinating-lesions', 0.2]]),
      reads('csf-oligoclonal-bands', [['positive', 0.2]]),
    ],
    source: neuronChapter,
  },
  {
    key: 'spinal-and-bulbar-muscular-atrophy',
    group: 'hereditary',
    inheritance: ['x-linked'],
    label: 'Spinal and bulbar muscular atrophy (Kennedy disease)',
    mondo: mondo('MONDO:0010735', 'Kennedy disease'),
    produces: [at(['lower-motor-neuron-system', 'bulbar-motor-nuclei'], 'uncommon')],
    tempo: tempos.lifelong,
    courses: { progressive: 1.2, improving: 0.05, 'relapsing-remitting': 0.05 },
    age: { from: 20, to: 70, outside: 0.2 },
    sex: { male: 2, female: 0.01 },
    history: [
      told(['family/similar-disorder', 'family/motor-neuron-disease'], 5, 0.7),
      told('gynaecomastia', 15, 0.5),
      told(['tremor', 'cramps'], 2, 0.8),
    ],
    signs: [
      shows(['cranial-nerves/facial-myokymia'], 6, 0.8),
      shows(tongueSigns, 3, 0.6),
      shows(['involuntary-movements/postural-tremor', 'involuntary-movements/action-tremor'], 3, 0.8),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2, 0.5)],
    values: [
      widespreadDenervation,
      reads('nerve-conduction-pattern', [['sensory-only', 2]]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.1],
      ]),
    ],
    source: neuronBook,
  },
  {
    key: 'spinal-muscular-atrophy',
    group: 'hereditary',
    inheritance: ['autosomal-recessive'],
    label: 'Spinal muscular atrophy',
    mondo: mondo('MONDO:0001516', 'spinal muscular atrophy'),
    produces: [at(['lower-motor-neuron-system'], 'uncommon'), at(['proximal-myopathy'], 'uncommon')],
    tempo: tempos.lifelong,
    courses: { progressive: 1, improving: 0.1, 'relapsing-remitting': 0.05, fluctuating: 0.2 },
    age: { from: 0, to: 30, outside: 0.05 },
    history: [told(['family/similar-disorder', 'family/motor-neuron-disease'], 6, 0.8)],
    signs: [
      shows(['involuntary-movements/polyminimyoclonus'], 8, 0.7),
      shows(['cranial-nerves/tongue-fasciculation'], 5, 0.8),
      shows(['inspection/scoliosis'], 2.5, 0.8),
    ],
    quantities: [atLeast('creatine-kinase', 2000, 'U/L', 0.1, 1.3)],
    values: [
      widespreadDenervation,
      reads('genetic-test', [
        ['smn1-deletion', 200],
        ['negative', 0.1],
      ]),
    ],
    source: neuronBook,
  },
  {
    key: 'monomelic-amyotrophy',
    group: 'degenerative',
    label: 'Monomelic amyotrophy (Hirayama disease)',
    mondo: mondo('MONDO:0011224', 'monomelic amyotrophy'),
    produces: [
      at(
        [
          'spinal-cord-central',
          'lower-trunk',
          'adjacent-nerve-roots',
          'upper-trunk',
          'brachial-plexus',
          'multiple-mononeuropathy',
        ],
        'rare',
      ),
      at(['lower-motor-neuron-system'], 'uncommon'),
      at(['spinal-cord-anterior'], 'uncommon', 'cervical'),
      // Brisk legs go with it where the cord is pressed flat as the neck bends.
      at(['spinal-cord-hemisection', 'motor-neuron-system'], 'rare'),
      inKind(['anterior-horn'], 'common', 'cervical'),
    ],
    tempo: tempos.chronic,
    courses: { static: 2, progressive: 0.9, improving: 0.1 },
    age: { from: 12, to: 30, outside: 0.05 },
    sex: { male: 1.7, female: 0.3 },
    history: [
      told(['arm-weakness', 'muscle-thinning', 'clumsiness'], 1.8, 0.5),
      told('worse-in-the-cold', 4, 0.7),
      told([...bulbarSymptoms, 'leg-weakness'], 0.1, 1.2),
      sparedSenses,
    ],
    signs: [shows(['involuntary-movements/polyminimyoclonus'], 3, 0.8), shows(tongueSigns, 0.05, 1.1)],
    source: neuronChapter,
  },
  {
    key: 'post-polio-syndrome',
    group: 'infective',
    label: 'Post-polio syndrome',
    mondo: mondo('MONDO:0017416', 'postpoliomyelitis syndrome'),
    produces: [inKind(['anterior-horn'], 'uncommon'), at(['lower-motor-neuron-system'], 'uncommon')],
    tempo: tempos.chronic,
    courses: { progressive: 1.2, improving: 0.2 },
    age: { from: 25, to: 100, outside: 0.2 },
    history: [
      told('poliomyelitis', 200, 0.01),
      told(['fatigue', 'muscle-pain', 'joint-pain'], 1.8, 0.6),
      told('weakness', 1.2, 0.7),
    ],
    signs: [shows(longStandingSigns, 2, 0.9)],
    source: neuronChapter,
  },
  {
    key: 'acute-flaccid-myelitis',
    group: 'infective',
    label: 'Acute flaccid myelitis (enterovirus)',
    produces: [
      inKind(['anterior-horn'], 'common'),
      at(['lower-motor-neuron-system'], 'uncommon'),
      at(['spinal-cord-anterior'], 'common'),
      // All limbs limp without jerks: it is taken for an inflammation of the roots.
      inKind(['polyradiculoneuropathy'], 'rare'),
      at(['spinal-cord-transverse', 'bulbar-motor-nuclei'], 'rare'),
    ],
    // The limb is found limp on waking, or weakens over hours to a few days.
    tempo: { hyperacute: 0.3, acute: 0.6, subacute: 0.08, chronic: 0.02 },
    courses: { progressive: 1, static: 1.2, improving: 0.9, fluctuating: 0.1, 'relapsing-remitting': 0.05 },
    durationDays: { to: 28, outside: 0.2, source: fromMemory },
    age: { from: 0, to: 21, outside: 0.2 },
    history: [
      told('fever', 4, 0.4),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 3, 0.4),
      told(['neck-pain', 'back-pain', 'arm-pain', 'leg-pain'], 1.6, 0.8),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 5, 0.3)],
    values: [
      reads('mri-cervical-spine', [
        ['cord-lesion-long', 6],
        ['normal', 0.2],
      ]),
    ],
    source: fromMemory,
  },
  {
    key: 'west-nile-or-polio-infection',
    group: 'infective',
    label: 'Poliomyelitis from West Nile virus, poliovirus or another neurotropic virus',
    produces: [
      inKind(['anterior-horn'], 'common'),
      at(['lower-motor-neuron-system'], 'uncommon'),
      at(['spinal-cord-anterior', 'bulbar-motor-nuclei'], 'uncommon'),
      inKind(['polyradiculoneuropathy'], 'rare'),
      at(['motor-polyneuropathy', 'spinal-cord-transverse'], 'rare'),
    ],
    tempo: { hyperacute: 0.15, acute: 0.7, subacute: 0.12, chronic: 0.03 },
    courses: { progressive: 1, static: 1.2, improving: 1, fluctuating: 0.1, 'relapsing-remitting': 0.05 },
    durationDays: { to: 28, outside: 0.2, source: fromMemory },
    history: [
      told('fever', 5, 0.25),
      told(['travel', 'tick-bite'], 4, 0.6),
      told(['headache', 'new-headache', 'photophobia', 'vomiting'], 2, 0.7),
      told('muscle-pain', 1.5, 0.8),
      told(['numbness', 'paraesthesiae'], 0.5, 1.2),
    ],
    signs: [
      shows(['special-tests/neck-stiffness', 'higher-function/confusion', 'autonomic/fever'], 3, 0.7),
      shows(['involuntary-movements/action-tremor', 'involuntary-movements/myoclonus'], 2, 0.9),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 8, 0.15)],
    values: [reads('csf-microbiology', [['positive', 4]])],
    source: recalled('adams-victor', 'viral infections with poliomyelitis'),
  },
  {
    key: 'benign-cramp-fasciculation',
    group: 'degenerative',
    label: 'Benign cramp and fasciculation syndrome',
    produces: [at(['no-lesion'], 'uncommon'), at(['lower-motor-neuron-system'], 'rare')],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 0.2, static: 2, fluctuating: 1.5 },
    age: { from: 15, to: 70, outside: 0.5 },
    history: [
      told(['twitching', 'cramps', 'exercise-cramps'], 5, 0.1),
      told(['weakness', 'leg-weakness', 'arm-weakness', 'muscle-thinning'], 0.3, 1.5),
    ],
    signs: [
      shows(['inspection/fasciculation', 'involuntary-movements/cramp'], 4, 0.7),
      shows(['inspection/wasting', ...tongueSigns], 0.05, 1.5),
    ],
    values: [
      reads('needle-emg', [
        ['normal', 3],
        ['denervation-widespread', 0.05],
      ]),
    ],
    source: neuronBook,
  },
  {
    key: 'neuromyotonia',
    group: 'immune',
    label: 'Acquired neuromyotonia (Isaacs syndrome)',
    produces: [
      at(['myotonic-myopathy'], 'uncommon'),
      at(
        ['no-lesion', 'lower-motor-neuron-system', 'small-fibre-polyneuropathy', 'length-dependent-polyneuropathy'],
        'rare',
      ),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { fluctuating: 1.3, progressive: 1 },
    history: [
      told(['twitching', 'stiffness'], 4, 0.3),
      told('altered-sweating', 3, 0.7),
      told(['cramps', 'exercise-cramps'], 2, 0.5),
      told(['thymoma', 'myasthenia-gravis', 'cancer'], 4, 0.9),
    ],
    signs: [
      shows(['involuntary-movements/neuromyotonia', 'involuntary-movements/myokymia'], 25, 0.2),
      shows(['autonomic/hyperhidrosis'], 4, 0.7),
      shows(['involuntary-movements/percussion-myotonia'], 0.2, 1.4),
    ],
    values: [
      reads('needle-emg', [
        ['myokymic-discharges', 20],
        ['myotonic-discharges', 0.2],
        ['normal', 0.1],
      ]),
      reads('ct-chest', [['thymoma', 4]]),
      reads('paraneoplastic-antibody', [['positive', 5]]),
    ],
    source: recalled('preston-shapiro', 'neuromyotonia'),
  },
  {
    // Numbness of the face, then throat, neck and arms; a corneal reflex that is weak or lost marks it.
    key: 'facial-onset-sensory-and-motor-neuronopathy',
    group: 'degenerative',
    label: 'Facial onset sensory and motor neuronopathy',
    produces: [
      at(['trigeminal-nerve', 'bulbar-motor-nuclei', 'lower-motor-neuron-system', 'motor-neuron-system'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.6, improving: 0.1 },
    age: { from: 35, to: 80, outside: 0.3 },
    history: [told(bulbarSymptoms, 1.6, 0.8), told('triggered-facial-pain', 0.2, 1)],
    signs: [
      shows(['cranial-nerves/facial-numbness'], 8, 0.1),
      shows(['cranial-nerves/absent-corneal-reflex'], 5, 0.3),
      shows(tongueSigns, 2, 0.8),
    ],
    source: read('fosmn-2016', 'abstract'),
  },
];

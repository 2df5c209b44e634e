import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told } from './cause.ts';

const junctionBook = recalled('amato-russell', 'disorders of the neuromuscular junction');

const fatigueTold = told(['fatigable-weakness', 'fluctuating-symptoms'], 3, 0.4);
const fatigueSeen = [
  'cranial-nerves/fatigable-ptosis',
  'cranial-nerves/fatigable-diplopia',
  'special-tests/sustained-upgaze',
  'special-tests/ice-pack',
  'special-tests/lid-twitch',
  'special-tests/limb-fatigability',
  'special-tests/counting-fatigability',
] as const;
const pupilsSeen = ['cranial-nerves/dilated-pupil', 'cranial-nerves/unreactive-pupil'] as const;
const dryness = ['dry-mouth', 'dry-eyes', 'sexual-dysfunction'] as const;

/** Causes of failure of the neuromuscular junction. */
export const junctionCauses: readonly Cause[] = [
  {
    key: 'myasthenia-gravis',
    group: 'immune',
    label: 'Myasthenia gravis',
    mondo: mondo('MONDO:0009688', 'myasthenia gravis'),
    produces: [
      at(
        [
          'facial-nerve',
          'medial-longitudinal-fasciculus',
          'brainstem-diffuse',
          'lower-motor-neuron-system',
          'vagus-nerve',
        ],
        'rare',
      ),
      at(['proximal-myopathy'], 'uncommon'),
      at(['oculomotor-nerve', 'trochlear-nerve', 'abducens-nerve'], 'uncommon'),
      at(['postsynaptic-junction'], 'very-common'),
      at(['axial-myopathy', 'oculopharyngeal-myopathy', 'bulbar-motor-nuclei'], 'common'),
      at(['no-lesion'], 'uncommon'),
      inKind(['junction'], 'common'),
    ],
    // A crisis, or eyes that are noticed one morning, come within days.
    tempo: { hyperacute: 0.03, acute: 0.12, subacute: 0.4, chronic: 0.45 },
    courses: { fluctuating: 3, 'relapsing-remitting': 1.5, progressive: 0.8, static: 0.3 },
    durationDays: { to: 5475, outside: 0.5, source: fromMemory },
    history: [
      told(['dysphagia', 'slurred-speech', 'orthopnoea', 'arm-weakness'], 1.2, 1),
      told(['family/similar-disorder', 'family/muscle-disease'], 0.5, 1),
      // Medicines that bring it out.
      told(
        [
          'aminoglycoside',
          'fluoroquinolone',
          'macrolide',
          'beta-blocker',
          'magnesium',
          'hydroxychloroquine',
          'botulinum-toxin-injection',
        ],
        1.8,
        1,
      ),
      told(['lupus', 'rheumatoid-arthritis', 'hypothyroidism', 'family/autoimmune-disease', 'pregnancy'], 1.4, 1),
      fatigueTold,
      told(['diplopia', 'drooping-eyelids'], 2, 0.6),
      told('myasthenia-gravis', 20, 1),
      told(['thymoma', 'hyperthyroidism'], 4, 0.95),
      told(['numbness', 'paraesthesiae'], 0.4, 1.1),
      told([...dryness], 0.6, 1.1),
    ],
    signs: [shows(fatigueSeen, 6, 0.5), shows(pupilsSeen, 0.1, 1.1)],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.2, 1.1)],
    values: [
      reads('achr-antibody', [
        ['positive', 30],
        ['negative', 0.3],
      ]),
      reads('repetitive-stimulation', [
        ['decrement', 6],
        ['normal', 0.5],
        ['increment', 0.1],
      ]),
      reads('single-fibre-emg', [
        ['increased-jitter', 5],
        ['normal', 0.1],
      ]),
      reads('musk-antibody', [['positive', 0.05]]),
      reads('vgcc-antibody', [['positive', 0.1]]),
      reads('ct-chest', [['thymoma', 8]]),
      reads('striated-muscle-antibody', [['positive', 5]]),
    ],
    source: read('scherer-2005'),
  },
  {
    key: 'musk-myasthenia',
    group: 'immune',
    label: 'Myasthenia with antibodies to muscle-specific kinase',
    produces: [
      at(['postsynaptic-junction'], 'common'),
      at(['bulbar-motor-nuclei', 'axial-myopathy', 'oculopharyngeal-myopathy'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.14, subacute: 0.54, chronic: 0.3 },
    courses: { fluctuating: 2, progressive: 1.2, static: 0.3 },
    durationDays: { to: 3650, outside: 0.5, source: fromMemory },
    age: { from: 15, to: 70, outside: 0.5 },
    sex: { male: 0.4, female: 1.6 },
    history: [
      told(['weight-loss', 'nasal-regurgitation', 'orthopnoea'], 1.4, 1),
      told('muscle-thinning', 1.3, 1),
      fatigueTold,
      told(['dysphagia', 'slurred-speech', 'voice-change', 'breathlessness'], 1.8, 0.4),
      told('thymoma', 0.1, 1),
    ],
    signs: [
      shows(['cranial-nerves/tongue-wasting', 'inspection/dropped-head', 'cranial-nerves/facial-weakness'], 2.5, 0.7),
      shows(['cranial-nerves/dysphagia', 'cranial-nerves/nasal-speech', 'cranial-nerves/flaccid-dysarthria'], 1.4, 0.6),
      shows(fatigueSeen, 3, 0.6),
    ],
    values: [
      reads('musk-antibody', [
        ['positive', 150],
        ['negative', 0.05],
      ]),
      reads('achr-antibody', [
        ['positive', 0.03],
        ['negative', 3],
      ]),
      reads('ct-chest', [['thymoma', 0.2]]),
      reads('single-fibre-emg', [['normal', 0.3]]),
    ],
    source: recalled('mg-consensus-2021', 'MuSK myasthenia'),
  },
  {
    key: 'congenital-myasthenic-syndrome',
    group: 'hereditary',
    inheritance: ['autosomal-recessive', 'autosomal-dominant'],
    label: 'Congenital myasthenic syndrome',
    mondo: mondo('MONDO:0018940', 'congenital myasthenic syndrome'),
    produces: [
      at(['postsynaptic-junction', 'oculopharyngeal-myopathy'], 'uncommon'),
      // Limb-girdle forms look like a disease of muscle.
      at(['proximal-myopathy'], 'uncommon'),
      at(['axial-myopathy'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { static: 1.5, fluctuating: 1.5, improving: 0.4, 'relapsing-remitting': 0.5 },
    durationDays: { from: 180, outside: 0.5, source: fromMemory },
    age: { from: 0, to: 25, outside: 0.05 },
    history: [
      told(['difficulty-with-stairs', 'falls', 'diplopia', 'drooping-eyelids'], 1.2, 1),
      told('family/consanguinity', 3, 1),
      told(['breathlessness', 'dysphagia'], 1.2, 1),
      told(['family/similar-disorder', 'family/muscle-disease'], 5, 0.8),
      fatigueTold,
    ],
    signs: [
      shows(['inspection/scoliosis', 'inspection/joint-contracture', 'inspection/hyperlordosis'], 2, 0.9),
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/facial-weakness'], 2.5, 0.5),
      shows(fatigueSeen, 3, 0.6),
    ],
    values: [
      reads('achr-antibody', [
        ['positive', 0.02],
        ['negative', 2],
      ]),
      reads('musk-antibody', [['positive', 0.05]]),
      reads('repetitive-stimulation', [
        ['decrement', 4],
        ['normal', 0.5],
      ]),
      reads('genetic-test', [
        ['other', 20],
        ['negative', 0.3],
      ]),
    ],
    source: junctionBook,
  },
  {
    key: 'lambert-eaton-myasthenic-syndrome',
    group: 'paraneoplastic',
    label: 'Lambert-Eaton myasthenic syndrome',
    mondo: mondo('MONDO:0018556', 'Lambert-Eaton myasthenic syndrome'),
    produces: [
      // Hips that are weak in the morning are taken for a disease of muscle.
      at(['proximal-myopathy'], 'uncommon'),
      at(['lower-motor-neuron-system', 'demyelinating-polyradiculoneuropathy'], 'rare'),
      at(['presynaptic-junction'], 'very-common'),
      inKind(['junction'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.2, fluctuating: 1.2, improving: 0.2 },
    durationDays: { to: 3650, outside: 0.5, source: fromMemory },
    age: { from: 30, to: 85, outside: 0.4 },
    history: [
      told(['fatigable-weakness', 'fluctuating-symptoms', 'orthopnoea', 'bladder-disturbance'], 1.3, 1),
      told(['weight-loss', 'recent-weight-loss'], 1.6, 1),
      told(['light-headed-on-standing', 'fatigue'], 1.3, 1),
      told(['numbness', 'family/muscle-disease'], 0.5, 1.05),
      told([...dryness, 'sjogren-syndrome'], 4, 0.5),
      told('tobacco', 2, 0.7),
      told(['cancer', 'lymphoma'], 3, 0.9),
      told(['difficulty-with-stairs', 'leg-weakness', 'difficulty-walking'], 1.5, 0.4),
      told('home-preserved-food', 0.2, 1.05),
    ],
    signs: [
      shows(['cranial-nerves/fatigable-ptosis', 'cranial-nerves/ptosis'], 0.8, 1),
      shows(['autonomic/gastroparesis', 'sphincters/erectile-dysfunction', 'sphincters/constipation'], 1.8, 1),
      shows(['special-tests/post-exercise-facilitation'], 12, 0.4),
      shows(['autonomic/dry-mouth', 'autonomic/orthostatic-hypotension'], 3, 0.7),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.2, 1.1)],
    values: [
      reads('achr-antibody', [['positive', 0.2]]),
      reads('vgcc-antibody', [
        ['positive', 25],
        ['negative', 0.15],
      ]),
      reads(
        'repetitive-stimulation',
        [
          ['increment', 20],
          ['normal', 0.1],
        ],
        read('lems-titulaer-2011'),
      ),
      reads('ct-chest', [['tumour', 4]]),
    ],
    source: read('lems-titulaer-2011'),
  },
  {
    key: 'botulism',
    group: 'infective',
    label: 'Botulism',
    mondo: mondo('MONDO:0005498', 'botulism'),
    produces: [
      at(['diffuse-encephalopathy'], 'rare'),
      at(['presynaptic-junction'], 'common'),
      at(['bulbar-motor-nuclei'], 'uncommon'),
      // Eyes and throat that fail together look like a lesion of the brainstem.
      at(['brainstem-diffuse', 'basal-meningeal-process'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'rare'),
      inKind(['junction'], 'uncommon'),
    ],
    // It descends over one to three days.
    tempo: { hyperacute: 0.3, acute: 0.6, subacute: 0.08, chronic: 0.02 },
    courses: { progressive: 1.3, fluctuating: 0.3, 'relapsing-remitting': 0.05 },
    durationDays: { to: 28, outside: 0.2, source: recalled('botulism-2021', 'clinical course') },
    history: [
      told(['nasal-regurgitation', 'slurred-speech', 'drooping-eyelids', 'vomiting', 'abdominal-pain'], 1.4, 0.95),
      told(['home-preserved-food', 'botulinum-toxin-injection'], 15, 0.4),
      told('descending-weakness', 5, 0.4),
      told('injecting-drug-use', 6, 0.9),
      told(['diplopia', 'dry-mouth', 'dysphagia'], 2, 0.3),
      told('fever', 0.2, 1.2),
      told(['numbness', 'paraesthesiae'], 0.3, 1.2),
    ],
    signs: [
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia'], 1.5, 0.7),
      shows(pupilsSeen, 8, 0.5),
      shows(['autonomic/dry-mouth', 'autonomic/ileus', 'sphincters/constipation'], 3, 0.6),
      // Weak limbs with a full bladder are of the cord far more often.
      shows(['sphincters/urinary-retention'], 1.3, 0.9),
      shows(['autonomic/fever'], 0.2, 1.2),
    ],
    values: [
      reads('repetitive-stimulation', [
        ['increment', 5],
        ['normal', 0.6],
      ]),
      reads('vgcc-antibody', [['positive', 0.05]]),
      reads('achr-antibody', [['positive', 0.1]]),
    ],
    source: read('botulism-2021'),
  },
  {
    key: 'drug-induced-junction-failure',
    group: 'toxic',
    label: 'Junction failure from a medicine',
    produces: [inKind(['junction'], 'uncommon')],
    tempo: tempos.suddenOrAcute,
    courses: { improving: 1.3, progressive: 1 },
    durationDays: { to: 60, outside: 0.4, source: recalled('mg-consensus-2021', 'medicines to avoid') },
    history: [
      told(['breathlessness', 'drooping-eyelids', 'sepsis'], 1.2, 1),
      told(['chronic-kidney-disease', 'myasthenia-gravis', 'magnesium'], 1.5, 1),
      told(['aminoglycoside', 'neuromuscular-blocker', 'botulinum-toxin-injection'], 12, 0.3),
      told(['fluoroquinolone', 'macrolide', 'beta-blocker', 'chloroquine', 'hydroxychloroquine'], 3, 0.6),
      told(['critical-illness', 'recent-surgery'], 2, 0.9),
    ],
    source: recalled('mg-consensus-2021', 'medicines to avoid'),
  },
  {
    key: 'hypermagnesaemia',
    group: 'toxic',
    label: 'Excess of magnesium',
    produces: [at(['presynaptic-junction'], 'uncommon'), inKind(['junction', 'muscle'], 'rare')],
    tempo: tempos.suddenOrAcute,
    history: [told('magnesium', 25, 0.1), told(['pregnancy', 'chronic-kidney-disease'], 3, 0.6)],
    signs: [shows(['autonomic/bradycardia'], 1.8, 0.9)],
    quantities: [atLeast('magnesium', 2.5, 'mmol/L', 40, 0.05)],
    source: recalled('adams-victor', 'electrolyte disorders'),
  },
  {
    key: 'organophosphate-poisoning',
    group: 'toxic',
    label: 'Organophosphate or carbamate poisoning',
    produces: [at(['brainstem-diffuse', 'diffuse-encephalopathy'], 'rare'), inKind(['junction'], 'uncommon')],
    tempo: tempos.suddenOrAcute,
    durationDays: { to: 28, outside: 0.2, source: recalled('adams-victor', 'organophosphate poisoning') },
    history: [
      told(['slurred-speech', 'loss-of-consciousness', 'seizure', 'breathlessness', 'psychiatric-disorder'], 1.4, 1),
      told('organophosphate', 100, 0.05),
      told(['vomiting', 'abdominal-pain', 'altered-sweating'], 2, 0.6),
      told(['dry-mouth', 'dry-eyes'], 0.2, 1.2),
    ],
    signs: [
      shows(['cranial-nerves/small-pupil', 'cranial-nerves/drooling', 'autonomic/hyperhidrosis'], 8, 0.4),
      shows(['inspection/fasciculation'], 4, 0.6),
      shows(['autonomic/bradycardia'], 2.5, 0.8),
      shows(pupilsSeen, 0.2, 1.1),
    ],
    source: recalled('adams-victor', 'organophosphate poisoning'),
  },
  {
    key: 'neurotoxic-envenomation',
    group: 'toxic',
    label: 'Neurotoxic bite or sting (snake, tick, spider)',
    produces: [
      at(
        ['demyelinating-polyradiculoneuropathy', 'brainstem-diffuse', 'bulbar-motor-nuclei', 'diffuse-encephalopathy'],
        'rare',
      ),
      inKind(['junction'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    durationDays: { to: 21, outside: 0.2, source: recalled('adams-victor', 'animal venoms') },
    history: [
      told(['vomiting', 'dysphagia', 'drooping-eyelids'], 1.3, 1),
      // Kraits bite sleepers, without pain and often without a mark; most wake with colic.
      told('venomous-bite', 100, 0.2),
      told('abdominal-pain', 2, 0.9),
      told('tick-bite', 3, 0.95),
      told(['travel', 'descending-weakness'], 2, 0.8),
    ],
    signs: [shows(['inspection/oedema'], 2, 0.8), shows(['cranial-nerves/ptosis'], 1.3, 0.4)],
    source: recalled('adams-victor', 'animal venoms'),
  },
  {
    key: 'checkpoint-inhibitor-myositis-or-myasthenia',
    group: 'immune',
    label: 'Myositis or myasthenia from an immune checkpoint inhibitor',
    produces: [
      at(['bulbar-motor-nuclei', 'oculomotor-nerve'], 'rare'),
      at(['postsynaptic-junction', 'oculopharyngeal-myopathy', 'axial-myopathy'], 'uncommon'),
      at(['proximal-myopathy'], 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { progressive: 1.4, static: 0.3 },
    durationDays: { to: 365, outside: 0.3, source: fromMemory },
    age: { from: 25, to: 95, outside: 0.3 },
    history: [
      told(['neck-pain', 'difficulty-with-stairs', 'dysphagia', 'orthopnoea'], 1.3, 1),
      told('immune-checkpoint-inhibitor', 150, 0.02),
      told(['cancer', 'lymphoma', 'immune-checkpoint-inhibitor'], 3, 0.1),
      told(['muscle-pain', 'breathlessness', 'diplopia', 'drooping-eyelids'], 1.8, 0.7),
    ],
    signs: [shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'inspection/dropped-head'], 1.5, 0.9)],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2.5, 0.4)],
    values: [reads('ecg', [['conduction-disease', 3]])],
    source: junctionBook,
  },
];

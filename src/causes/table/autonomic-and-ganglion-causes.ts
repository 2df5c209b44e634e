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

const autonomicTests = (abnormal: number, normal: number) =>
  reads('autonomic-tests', [
    ['orthostatic-hypotension', abnormal],
    ['cardiovagal-failure', abnormal],
    ['sweat-loss', abnormal],
    ['normal', normal],
  ]);

/** Diseases of sensory ganglia, of small fibres and of the autonomic nerves. */
export const autonomicAndGanglionCauses: readonly Cause[] = [
  {
    key: 'idiopathic-small-fibre-neuropathy',
    group: 'degenerative',
    label: 'Idiopathic small-fibre neuropathy',
    produces: [at(['small-fibre-polyneuropathy'], 'very-common')],
    tempo: tempos.chronic,
    courses: { progressive: 1, static: 1.2, 'relapsing-remitting': 0.7 },
    age: { from: 20, to: 110, outside: 0.4 },
    history: [
      told(['restless-legs', 'altered-sweating', 'fatigue', 'recent-vaccination', 'preceding-infection'], 1.1, 1),
      told(
        ['sjogren-syndrome', 'lupus', 'sarcoidosis', 'hiv-infection', 'monoclonal-gammopathy', 'coeliac-disease'],
        0.4,
        1.05,
      ),
      told(['burning-feet', 'neuropathic-pain'], 1.3, 0.8),
      told(['diabetes-mellitus', 'prediabetes'], 0.25, 1.3),
      told('alcohol-excess', 0.5, 1.1),
      told(['light-headed-on-standing', 'weight-loss', 'recent-weight-loss'], 0.5, 1.1),
      told(['cisplatin', 'oxaliplatin', 'paclitaxel', 'docetaxel', 'bortezomib', 'vincristine'], 0.1, 1),
      told('family/similar-disorder', 0.5, 1.05),
    ],
    signs: [
      shows(['inspection/angiokeratoma', 'inspection/colour-or-temperature-change', 'autonomic/anhidrosis'], 0.4, 1),
      shows(['autonomic/orthostatic-hypotension'], 0.4, 1.1),
      shows(longStandingSigns, 0.5, 1),
    ],
    quantities: [
      atLeast('hba1c', 5.7, '%', 0.6, 1.2, recalled('ada-standards', 'prediabetes: HbA1c 5.7 to 6.4 %')),
      atLeast('hba1c', 6.5, '%', 0.4, 1.1, recalled('ada-standards', 'diabetes: HbA1c 6.5 %')),
      atLeast('glucose-2h', 7.8, 'mmol/L', 0.4, 1.4, recalled('ada-standards', 'impaired glucose tolerance')),
    ],
    values: [
      reads('skin-biopsy-nerve-fibre-density', [
        ['reduced', 1.3],
        ['normal', 0.5],
      ]),
      reads(conduction, [['normal', 1.3], ['axonal', 0.5], ...demyelinating(0.2)]),
      reads('serum-immunofixation', [['normal', 1.1]]),
    ],
    source: recalled('adams-victor', 'small-fibre neuropathy: half have no cause found'),
  },
  {
    key: 'treatment-induced-neuropathy-of-diabetes',
    group: 'metabolic',
    label: 'Treatment-induced neuropathy of diabetes',
    produces: [
      at(['no-lesion'], 'exceptional'),
      at(['small-fibre-polyneuropathy', 'autonomic-neuropathy'], 'uncommon'),
      at(lengthDependent, 'rare'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { improving: 2 },
    durationDays: { to: 180, outside: 0.3, source: fromMemory },
    history: [
      told(
        ['light-headed-on-standing', 'sexual-dysfunction', 'early-satiety', 'psychiatric-disorder', 'visual-loss'],
        1.4,
        1,
      ),
      told('rapid-glucose-control', 20, 0.4),
      // That the glucose fell fast is seldom told; insulin or tablets just begun stand for it.
      told(['rapid-glucose-control', 'insulin-or-sulfonylurea', 'recent-weight-loss', 'weight-loss'], 2, 0.15),
      told('diabetes-mellitus', 4, 0.02),
      told(['neuropathic-pain', 'burning-feet', 'foot-pain'], 2, 0.2),
      told(['weight-loss', 'recent-weight-loss'], 1.5, 0.9),
    ],
    signs: [shows(['autonomic/orthostatic-hypotension'], 1.6, 0.9)],
    source: recalled('adams-victor', 'acute painful diabetic neuropathy'),
  },
  {
    key: 'sjogren-syndrome',
    group: 'immune',
    label: 'Sjögren syndrome',
    mondo: mondo('MONDO:0010030', 'Sjogren syndrome'),
    produces: [
      at(['trigeminal-nerve', 'polyradiculopathy', 'demyelinating-polyradiculoneuropathy'], 'exceptional'),
      // Limbs that do not feel where they are look like a lesion of the posterior columns.
      at(['spinal-cord-posterior'], 'rare'),
      inKind(['ganglion'], 'common'),
      at(['small-fibre-polyneuropathy', 'autonomic-neuropathy'], 'uncommon'),
      at([...lengthDependent, 'multiple-mononeuropathy'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 25, to: 110, outside: 0.4 },
    sex: { male: 0.3, female: 1.7 },
    history: [
      told(['face-numbness', 'chronic-cough', 'dysphagia', 'light-headed-on-standing'], 1.5, 1),
      told(['lymphoma', 'rash', 'interstitial-lung-disease'], 1.3, 1),
      told(['dry-eyes', 'dry-mouth', 'sjogren-syndrome'], 8, 0.35),
      told(['joint-pain', 'cold-white-fingers', 'fatigue'], 1.6, 0.95),
      told('family/autoimmune-disease', 1.4, 1),
      told('lymphoma', 1.4, 1),
    ],
    signs: [
      shows(
        ['inspection/non-blanching-rash', 'inspection/enlarged-lymph-nodes', 'involuntary-movements/pseudoathetosis'],
        1.4,
        1,
      ),
      shows(['autonomic/dry-mouth', 'autonomic/dry-eyes'], 5, 0.6),
      shows(['cranial-nerves/facial-numbness'], 2.5, 0.95),
      shows(['cranial-nerves/tonic-pupil'], 3, 1),
    ],
    quantities: [under('white-cells', 4, '10*9/L', 1.6, 1), atLeast('esr', 40, 'mm/h', 1.4, 0.95)],
    values: [
      reads('anti-ro', [
        ['positive', 10],
        ['negative', 0.4],
      ]),
      reads('anti-la', [
        ['positive', 4],
        ['negative', 0.8],
      ]),
      reads('ana', [
        ['positive', 1.6],
        ['negative', 0.6],
      ]),
    ],
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
  {
    key: 'paraneoplastic-sensory-neuronopathy',
    group: 'paraneoplastic',
    label: 'Paraneoplastic sensory neuronopathy',
    produces: [
      at(['length-dependent-polyneuropathy', 'polyradiculopathy', 'multiple-mononeuropathy'], 'exceptional'),
      at(['multiple-sites', 'autonomic-neuropathy'], 'rare'),
      at(['sensory-polyneuropathy', 'demyelinating-polyradiculoneuropathy'], 'rare'),
      // Limbs that do not feel where they are look like a lesion of the posterior columns.
      at(['spinal-cord-posterior'], 'rare'),
      inKind(['ganglion'], 'common'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.4, static: 0.5, improving: 0.2 },
    durationDays: { to: 1095, outside: 0.4, source: fromMemory },
    age: { from: 45, to: 110, outside: 0.2 },
    history: [
      told(['chronic-cough', 'unsteadiness', 'hearing-loss', 'bowel-disturbance'], 1.4, 1),
      told('cancer', 5, 0.8),
      told('tobacco', 2.5, 0.5),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.7),
      told(['neuropathic-pain', 'arm-pain', 'leg-pain'], 1.6, 0.7),
      told(['cognitive-change', 'early-satiety', 'seizure'], 2, 0.95),
      told(['cisplatin', 'oxaliplatin', 'carboplatin'], 0.15, 1.1),
      told('family/similar-disorder', 0.3, 1),
    ],
    signs: [
      shows(
        ['autonomic/gastroparesis', 'autonomic/ileus', 'autonomic/orthostatic-hypotension', 'cranial-nerves/nystagmus'],
        1.6,
        1,
      ),
    ],
    quantities: [
      under('sodium', 132, 'mmol/L', 2, 1),
      atLeast('csf-white-cells', 5, '10*6/L', 2, 0.8),
      atLeast('csf-protein', 0.45, 'g/L', 1.6, 0.7),
    ],
    values: [
      reads('paraneoplastic-antibody', [
        ['positive', 25],
        ['negative', 0.3],
      ]),
      reads('ct-chest', [
        ['tumour', 8],
        ['normal', 0.5],
      ]),
      reads(conduction, [['sensory-only', 1.5], ...demyelinating(0.15)]),
    ],
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
  {
    key: 'idiopathic-sensory-ganglionopathy',
    group: 'immune',
    label: 'Idiopathic sensory ganglionopathy',
    produces: [at(['spinal-cord-posterior'], 'rare'), inKind(['ganglion'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    durationDays: { from: 60, outside: 0.6, source: fromMemory },
    age: { from: 25, to: 110, outside: 0.4 },
    history: [
      told(['cisplatin', 'oxaliplatin', 'carboplatin', 'pyridoxine-excess'], 0.1, 1),
      told(['cancer', 'weight-loss', 'recent-weight-loss'], 0.4, 1.1),
      told(['dry-eyes', 'dry-mouth', 'sjogren-syndrome'], 0.4, 1.1),
      told('family/similar-disorder', 0.3, 1.05),
    ],
    values: [
      reads('paraneoplastic-antibody', [
        ['positive', 0.1],
        ['negative', 1.2],
      ]),
      reads('anti-ro', [
        ['positive', 0.2],
        ['negative', 1.2],
      ]),
      reads(conduction, [['sensory-only', 1.5], ...demyelinating(0.15)]),
    ],
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
  {
    key: 'hiv-or-viral-ganglionopathy',
    group: 'infective',
    label: 'Ganglionopathy with HIV or another virus',
    produces: [at(['spinal-cord-posterior', 'sensory-polyneuropathy'], 'rare'), inKind(['ganglion'], 'uncommon')],
    tempo: tempos.acuteOrSubacute,
    history: [
      told(['rash', 'night-sweats', 'weight-loss', 'immunosuppression', 'recent-vaccination'], 1.3, 1),
      told(['hiv-infection', 'herpes-zoster'], 12, 0.3),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis', 'fever'], 2.5, 0.6),
      told(['unprotected-sex', 'injecting-drug-use'], 2, 0.9),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 2.5, 0.7)],
    values: [
      reads('hiv-test', [
        ['positive', 15],
        ['negative', 0.4],
      ]),
    ],
    source: recalled('preston-shapiro', 'sensory neuronopathy'),
  },
  {
    key: 'diabetic-autonomic-neuropathy',
    group: 'metabolic',
    label: 'Diabetic autonomic neuropathy',
    mondo: mondo('MONDO:0001299', 'diabetic autonomic neuropathy'),
    produces: [at(['no-lesion'], 'rare'), at(['autonomic-neuropathy'], 'very-common')],
    tempo: tempos.chronic,
    courses: { improving: 0.4, 'relapsing-remitting': 0.5 },
    age: { from: 25, to: 110, outside: 0.3 },
    history: [
      told(
        [
          'retinal-disease',
          'chronic-kidney-disease',
          'bladder-disturbance',
          'bowel-disturbance',
          'vomiting',
          'weight-loss',
        ],
        1.4,
        1,
      ),
      told(['light-headed-on-standing', 'syncope'], 1.5, 0.9),
      told(['diabetes-mellitus', 'insulin-or-sulfonylurea'], 6, 0.05),
      told(['sexual-dysfunction', 'early-satiety', 'altered-sweating'], 1.5, 0.9),
      told(['burning-feet', 'known-neuropathy', 'numbness'], 1.5, 0.9),
    ],
    signs: [
      shows(
        [
          'inspection/foot-ulcer',
          'sphincters/erectile-dysfunction',
          'sphincters/urinary-retention',
          'autonomic/anhidrosis',
        ],
        1.3,
        1,
      ),
      shows(['autonomic/fixed-heart-rate', 'autonomic/gastroparesis', 'autonomic/resting-tachycardia'], 2, 0.9),
    ],
    quantities: [
      atLeast('hba1c', 6.5, '%', 6, 0.15, recalled('ada-standards', 'diabetes: HbA1c 6.5 %')),
      atLeast('glucose-fasting', 7, 'mmol/L', 6, 0.25, recalled('ada-standards', 'fasting glucose 7.0 mmol/L')),
    ],
    values: [autonomicTests(1.3, 0.2), axonal(1.2)],
    source: recalled('ada-standards', 'neuropathy'),
  },
  {
    key: 'pure-autonomic-failure',
    group: 'degenerative',
    label: 'Pure autonomic failure',
    mondo: mondo('MONDO:0018608', 'pure autonomic failure'),
    produces: [at(['no-lesion'], 'exceptional'), at(['autonomic-neuropathy'], 'common')],
    tempo: tempos.chronic,
    courses: { progressive: 1.2, static: 1.1, improving: 0.1, 'relapsing-remitting': 0.2 },
    durationDays: { from: 365, outside: 0.3, source: fromMemory },
    age: { from: 45, to: 110, outside: 0.15 },
    history: [
      told(['falls', 'neck-pain', 'fatigue'], 1.2, 1),
      told(['dream-enactment', 'sexual-dysfunction', 'bladder-disturbance', 'altered-sweating'], 1.5, 0.95),
      told(['light-headed-on-standing', 'syncope'], 2, 0.2),
      told('diabetes-mellitus', 0.1, 1.4),
      told(['numbness', 'burning-feet', 'paraesthesiae', 'neuropathic-pain'], 0.3, 1.5),
      told(['weight-loss', 'recent-weight-loss', 'cardiomyopathy', 'heart-failure'], 0.3, 1.1),
      told(['alpha-blocker', 'diuretic', 'levodopa', 'antipsychotic'], 0.5, 1.1),
      told('loss-of-smell', 1.6, 1),
    ],
    signs: [
      shows(['autonomic/anhidrosis', 'sphincters/constipation', 'sphincters/erectile-dysfunction'], 1.3, 1),
      shows(['autonomic/stridor', 'cranial-nerves/dysarthria', 'plantars/plantar-response'], 0.3, 1),
      shows(['autonomic/orthostatic-hypotension'], 2, 0.1),
      shows(['involuntary-movements/bradykinesia', 'involuntary-movements/resting-tremor', 'gait/ataxic'], 0.1, 1.3),
    ],
    values: [
      autonomicTests(1.5, 0.1),
      reads(conduction, [
        ['normal', 1.5],
        ['axonal', 0.3],
      ]),
      reads('serum-immunofixation', [
        ['normal', 1.2],
        ['light-chain', 0.2],
        ['igg-lambda', 0.3],
      ]),
    ],
    source: recalled('adams-victor', 'pure autonomic failure'),
  },
  {
    key: 'autoimmune-autonomic-ganglionopathy',
    group: 'immune',
    label: 'Autoimmune autonomic ganglionopathy',
    produces: [
      at(['ciliary-ganglion', 'sensory-ganglionopathy', 'no-lesion', 'presynaptic-junction'], 'exceptional'),
      at(['cauda-equina', 'small-fibre-polyneuropathy'], 'rare'),
      at(['autonomic-neuropathy'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { 'relapsing-remitting': 1, improving: 1 },
    durationDays: { to: 730, outside: 0.5, source: fromMemory },
    sex: { male: 0.8, female: 1.2 },
    history: [
      told(['vomiting', 'weight-loss', 'visual-loss', 'photophobia', 'thymoma', 'lymphoma'], 1.3, 1),
      told(['light-headed-on-standing', 'syncope'], 1.5, 0.7),
      told(['bladder-disturbance', 'bowel-disturbance', 'sexual-dysfunction', 'abdominal-pain'], 1.4, 0.95),
      told(['cancer', 'tobacco'], 1.2, 1),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 3, 0.7),
      told(['dry-mouth', 'dry-eyes', 'early-satiety', 'altered-sweating'], 2.5, 0.4),
      told('recent-vaccination', 1.5, 1),
      told('diabetes-mellitus', 0.3, 1.1),
    ],
    signs: [
      shows(
        ['sphincters/urinary-retention', 'sphincters/constipation', 'autonomic/fixed-heart-rate', 'autonomic/dry-eyes'],
        1.5,
        1,
      ),
      shows(
        [
          'cranial-nerves/unreactive-pupil',
          'cranial-nerves/sluggish-pupil',
          'cranial-nerves/tonic-pupil',
          'cranial-nerves/dilated-pupil',
        ],
        6,
        0.5,
      ),
      shows(['autonomic/gastroparesis', 'autonomic/ileus', 'autonomic/dry-mouth', 'autonomic/anhidrosis'], 3, 0.5),
    ],
    values: [
      reads('ganglionic-antibody', [
        ['positive', 40],
        ['negative', 0.4],
      ]),
      autonomicTests(1.5, 0.05),
    ],
    source: recalled('adams-victor', 'acute autonomic paralysis'),
  },
  {
    key: 'drug-induced-orthostatic-hypotension',
    group: 'toxic',
    label: 'Orthostatic hypotension due to a medicine',
    produces: [at(['no-lesion'], 'rare'), at(['autonomic-neuropathy'], 'common')],
    tempo: tempos.any,
    age: { from: 40, to: 110, outside: 0.4 },
    history: [
      told(['vomiting', 'preceding-gastroenteritis', 'parkinson-disease', 'hypertension', 'dementia'], 1.3, 1),
      told(
        ['alpha-blocker', 'diuretic', 'levodopa', 'antipsychotic', 'opioid', 'beta-blocker', 'serotonergic-medicine'],
        6,
        0.1,
      ),
      told(['early-satiety', 'altered-sweating', 'dry-mouth'], 0.5, 1.1),
    ],
    signs: [
      shows(['autonomic/orthostatic-hypotension'], 1.5, 0.1),
      shows(['autonomic/anhidrosis', 'autonomic/gastroparesis', 'autonomic/fixed-heart-rate'], 0.2, 1.2),
    ],
    values: [
      reads('autonomic-tests', [
        ['cardiovagal-failure', 0.2],
        ['sweat-loss', 0.2],
      ]),
    ],
    source: recalled('adams-victor', 'orthostatic hypotension'),
  },
];

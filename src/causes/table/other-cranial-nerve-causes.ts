import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, type Cause, shows, sided, tempos, told } from './cause.ts';

const facialNerveChapter = recalled('adams-victor', 'disorders of the facial nerve');

/** Rarer causes of disease of the facial and glossopharyngeal nerves. */
export const otherCranialNerveCauses: readonly Cause[] = [
  {
    key: 'melkersson-rosenthal-syndrome',
    group: 'immune',
    label: 'Melkersson-Rosenthal syndrome (swollen face with recurrent facial palsy)',
    produces: [at(['facial-nerve'], 'rare')],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 5, progressive: 0.3 },
    age: { from: 8, to: 45, outside: 0.4 },
    history: [
      told('similar-attacks-before', 8, 0.4),
      told('red-eye', 2, 0.9),
      told(['family/similar-disorder', 'inflammatory-bowel-disease', 'migraine'], 2, 0.95),
      told(['diabetes-mellitus', 'tick-bite', 'herpes-zoster', 'trauma'], 0.5, 1),
    ],
    signs: [
      shows(['inspection/periorbital-oedema'], 6, 0.8),
      shows(['inspection/vesicular-rash', 'cranial-nerves/hearing-loss'], 0.1, 1.05),
      shows(['cranial-nerves/facial-synkinesis'], 1.6, 1),
    ],
    source: facialNerveChapter,
  },
  {
    key: 'congenital-facial-palsy',
    group: 'hereditary',
    label: 'Facial palsy since birth (Moebius syndrome, injury at birth)',
    produces: [
      at(['facial-nerve'], 'rare'),
      at(['abducens-nerve', 'pons-tegmentum', 'brainstem-diffuse'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.02, subacute: 0.02, chronic: 0.94 },
    courses: { static: 2.5, progressive: 0.05, 'relapsing-remitting': 0.02 },
    age: { from: 0, to: 1, outside: 0.01 },
    history: [
      told('shoulder-dystocia', 6, 1),
      told('perinatal-injury', 3, 0.9),
      told(['ear-pain', 'headache', 'vomiting', 'fever', 'preceding-infection'], 0.15, 1.2),
      told('developmental-delay', 1.4, 1),
    ],
    signs: [
      shows(['cranial-nerves/sixth-nerve-palsy', 'cranial-nerves/eye-abduction-weakness'], 4, 0.8),
      shows(['inspection/equinovarus', 'cranial-nerves/tongue-wasting', 'cranial-nerves/weak-suck-or-cry'], 2, 1),
    ],
    sides: [sided(['cranial-nerves/facial-weakness'], { one: 0.8, both: 3 })],
    source: facialNerveChapter,
  },
  {
    key: 'glossopharyngeal-neuralgia',
    group: 'compressive',
    label: 'Glossopharyngeal neuralgia',
    produces: [at(['trigeminal-nerve'], 'rare'), at(['vagus-nerve', 'jugular-foramen', 'no-lesion'], 'exceptional')],
    tempo: { hyperacute: 0.3, acute: 0.1, subacute: 0.2, chronic: 0.4 },
    courses: { 'relapsing-remitting': 2.5, fluctuating: 2, static: 0.4 },
    age: { from: 40, to: 95, outside: 0.4 },
    history: [
      told(['triggered-facial-pain', 'sore-throat', 'ear-pain'], 4, 0.1),
      told(['sore-throat', 'ear-pain', 'dysphagia'], 6, 0.3),
      told('syncope', 5, 0.95),
      told(['fever', 'weight-loss', 'face-or-neck-lump', 'cancer', 'rash'], 0.2, 1.1),
    ],
    signs: [
      shows(
        [
          'cranial-nerves/palatal-weakness',
          'cranial-nerves/vocal-cord-paralysis',
          'cranial-nerves/tongue-deviation',
          'cranial-nerves/facial-numbness',
        ],
        0.1,
        1.3,
      ),
      shows(['autonomic/bradycardia'], 6, 1),
    ],
    source: fromMemory,
  },
];

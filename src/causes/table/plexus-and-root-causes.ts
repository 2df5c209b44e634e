import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { at, atLeast, atRoot, type Cause, inKind, mondo, reads, shows, showsAt, tempos, told } from './cause.ts';

const plexusChapter = recalled('preston-shapiro', 'plexopathies');

/** Lesions of the brachial and lumbosacral plexuses, and of the roots with them. */
export const plexusAndRootCauses: readonly Cause[] = [
  {
    key: 'neuralgic-amyotrophy',
    group: 'immune',
    label: 'Neuralgic amyotrophy',
    mondo: mondo('MONDO:0017362', 'neuralgic amyotrophy'),
    produces: [
      // Before the plexus is thought of it passes for a disc of the neck.
      inKind(['root'], 'rare', 'cervical'),
      at(['median-nerve-elbow', 'ulnar-nerve-elbow', 'radial-nerve-elbow', 'radial-nerve-axilla'], 'rare'),
      at(['cervical-plexus'], 'uncommon'),
      at(
        [
          'recurrent-laryngeal-nerve',
          'median-nerve-forearm',
          'radial-nerve-spiral-groove',
          'lateral-femoral-cutaneous-nerve',
          'femoral-nerve-pelvis',
        ],
        'rare',
      ),
      at(['upper-trunk', 'long-thoracic-nerve', 'anterior-interosseous-nerve', 'suprascapular-nerve'], 'very-common'),
      at(['brachial-plexus'], 'very-common'),
      at(['spinal-accessory-nerve', 'dorsal-scapular-nerve', 'musculocutaneous-nerve'], 'common'),
      at(['lateral-cord', 'posterior-cord', 'medial-cord', 'superficial-radial-nerve'], 'uncommon'),
      at(['lateral-cutaneous-nerve-of-forearm', 'thoracodorsal-nerve', 'suprascapular-nerve-spinoglenoid'], 'uncommon'),
      at(['phrenic-nerve', 'posterior-interosseous-nerve', 'axillary-nerve', 'middle-trunk', 'lower-trunk'], 'common'),
      // The same attack on the lumbosacral plexus, without diabetes.
      at(['lumbosacral-plexus', 'lumbar-plexus', 'sacral-plexus'], 'uncommon'),
      inKind(['multiple-nerves'], 'uncommon'),
    ],
    // Half wake with it in the night.
    tempo: { hyperacute: 0.17, acute: 0.62, subacute: 0.18, chronic: 0.03 },
    courses: { improving: 1.4, progressive: 0.6 },
    durationDays: { to: 90, outside: 0.4, source: read('neuralgic-amyotrophy-2016', 'clinical phenotype') },
    age: { from: 12, to: 110, outside: 0.4 },
    history: [
      told('surgical-positioning', 0.7, 1),
      told(
        ['chronic-liver-disease', 'immune-checkpoint-inhibitor', 'muscle-thinning', 'arm-weakness', 'orthopnoea'],
        1.3,
        1,
      ),
      told('limb-fracture-or-dislocation', 0.7, 1),
      told(['heavy-exertion', 'pregnancy'], 1.2, 1),
      told(['similar-attacks-before', 'family/similar-disorder'], 1.6, 1),
      told(['cancer', 'neck-trauma', 'radiotherapy'], 0.6, 1),
      told(
        ['arm-pain', 'radicular-arm-pain', 'shoulder-pain', 'thigh-pain', 'leg-pain', 'radicular-leg-pain'],
        5,
        0.15,
      ),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 2, 0.9),
      told('recent-vaccination', 2, 0.95),
      told('recent-surgery', 1.5, 0.95),
    ],
    signs: [shows(['special-tests/pinch-sign'], 1.5, 1), shows(['inspection/scapular-winging'], 2.5, 0.9)],
    values: [
      reads('mri-brachial-plexus', [['normal', 0.8]]),
      ...(['mri-brachial-plexus', 'mri-lumbosacral-plexus'] as const).map((result) =>
        reads(result, [
          ['inflammation', 4],
          ['mass', 0.1],
        ]),
      ),
      reads('needle-emg', [
        ['denervation-plexus', 2],
        ['denervation-single-root', 0.4],
      ]),
      reads('nerve-ultrasound', [
        ['focal-swelling', 1.5],
        ['mass-or-cyst', 0.3],
      ]),
    ],
    source: read('neuralgic-amyotrophy-2016', 'clinical phenotype'),
  },
  {
    key: 'cancer-plexopathy',
    group: 'neoplastic',
    label: 'Plexus infiltration or compression by tumour',
    produces: [
      at(['adjacent-nerve-roots', 'sciatic-nerve', 'femoral-nerve-pelvis', 'polyradiculopathy'], 'rare'),
      at(['lower-trunk', 'medial-cord', 'sacral-plexus', 'lumbosacral-plexus'], 'very-common'),
      at(['upper-trunk', 'lumbosacral-trunk'], 'uncommon'),
      inKind(['plexus'], 'common'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.1, static: 0.5 },
    durationDays: { to: 1825, outside: 0.4, source: fromMemory },
    age: { from: 40, to: 110, outside: 0.3 },
    history: [
      told(['thigh-pain', 'leg-pain', 'back-pain', 'radicular-leg-pain', 'neuropathic-pain'], 1.4, 1),
      told(['trauma', 'preceding-infection', 'recent-vaccination'], 0.6, 1),
      // Of 78 with a tumour in the plexus 34 had been irradiated (Kori 1981, abstract).
      told('radiotherapy', 3, 1),
      // It is the first sign of the tumour in about one in seven (Jaeckle 1985, recalled).
      told(['cancer', 'lymphoma'], 8, 0.15),
      told('tobacco', 1.5, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.8),
      told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain'], 2, 0.6),
    ],
    signs: [
      shows(['inspection/enlarged-lymph-nodes', 'inspection/palpable-mass'], 2.5, 1),
      shows(['inspection/oedema'], 1.3, 1),
      shows(['cranial-nerves/horner-syndrome'], 5, 0.8),
    ],
    values: [
      reads('ct-chest', [
        ['tumour', 4],
        ['normal', 0.6],
      ]),
      ...(['mri-brachial-plexus', 'mri-lumbosacral-plexus'] as const).map((result) =>
        reads(result, [
          ['mass', 15],
          ['normal', 0.1],
        ]),
      ),
      reads('needle-emg', [['myokymic-discharges', 0.3]]),
    ],
    source: plexusChapter,
  },
  {
    key: 'radiation-plexopathy',
    group: 'toxic',
    label: 'Radiation plexopathy',
    mondo: mondo('MONDO:0033838', 'radiation-induced plexopathy'),
    produces: [
      inKind(['plexus'], 'common'),
      at(['upper-trunk', 'lumbosacral-plexus'], 'common'),
      at(['lower-trunk', 'lumbosacral-trunk'], 'uncommon'),
      // Plexus and roots of both sides in one field look like roots or like anterior horns.
      at(['polyradiculopathy', 'adjacent-nerve-roots', 'lower-motor-neuron-system'], 'rare'),
    ],
    tempo: tempos.chronic,
    age: { from: 15, to: 110, outside: 0.4 },
    history: [
      told(['paraesthesiae', 'numbness'], 1.3, 0.9),
      told(['cancer', 'lymphoma'], 2, 0.8),
      told('radiotherapy', 40, 0.01),
      told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain'], 0.5, 1.3),
    ],
    signs: [
      shows(['involuntary-movements/myokymia'], 4, 0.95),
      shows(['inspection/oedema'], 1.4, 1),
      shows(['cranial-nerves/horner-syndrome'], 0.3, 1),
    ],
    values: [
      reads('mri-brachial-plexus', [
        ['mass', 0.2],
        ['inflammation', 1.5],
      ]),
      reads('mri-lumbosacral-plexus', [
        ['mass', 0.2],
        ['inflammation', 1.5],
      ]),
      reads('needle-emg', [['myokymic-discharges', 10]]),
    ],
    source: plexusChapter,
  },
  {
    key: 'diabetic-radiculoplexus-neuropathy',
    group: 'metabolic',
    label: 'Diabetic lumbosacral radiculoplexus neuropathy',
    produces: [
      inKind(['root'], 'rare', 'lumbosacral'),
      at(['common-fibular-nerve', 'sciatic-nerve', 'obturator-nerve'], 'rare'),
      at(['brachial-plexus', 'intercostal-nerves', 'multiple-mononeuropathy', 'femoral-nerve-groin'], 'rare'),
      // A thigh that aches and wastes is taken for a disease of its muscle.
      at(['proximal-myopathy', 'finger-flexor-quadriceps-myopathy'], 'rare'),
      at(['lumbar-plexus', 'lumbosacral-plexus'], 'very-common'),
      at(['polyradiculopathy', 'femoral-nerve-pelvis'], 'common'),
      at(['adjacent-nerve-roots'], 'common', 'lumbosacral'),
      at(['sacral-plexus'], 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    durationDays: { to: 540, outside: 0.4, source: recalled('ada-neuropathy-2017', 'radiculoplexus neuropathy') },
    age: { from: 45, to: 110, outside: 0.2 },
    history: [
      told(['back-pain', 'muscle-thinning', 'difficulty-with-stairs', 'falls'], 1.2, 1),
      told(['trauma', 'anticoagulant', 'recent-surgery'], 0.6, 1),
      // Some come to be known as diabetic by it, and the same is met without diabetes. Dyck 2001 (recalled).
      told(['diabetes-mellitus', 'prediabetes'], 8, 0.2),
      told(['rapid-glucose-control', 'insulin-or-sulfonylurea', 'metformin'], 1.8, 1),
      told(['weight-loss', 'recent-weight-loss'], 4, 0.4),
      told(['leg-pain', 'radicular-leg-pain', 'thigh-pain', 'bilateral-leg-pain'], 3, 0.2),
    ],
    quantities: [atLeast('hba1c', 6.5, '%', 5, 0.3, read('ada-standards', 'diabetes: HbA1c 6.5 %'))],
    values: [
      reads('mri-lumbosacral-plexus', [
        ['inflammation', 4],
        ['mass', 0.1],
        ['haematoma', 0.05],
      ]),
    ],
    source: recalled('ada-neuropathy-2017', 'radiculoplexus neuropathy'),
  },
  {
    key: 'neurogenic-thoracic-outlet-syndrome',
    group: 'compressive',
    label: 'True neurogenic thoracic outlet syndrome',
    produces: [
      at(['adjacent-nerve-roots'], 'rare', 'cervical'),
      at(['median-nerve-wrist', 'lower-motor-neuron-system'], 'exceptional'),
      atRoot('T1', 'uncommon'),
      at(['ulnar-nerve-elbow', 'multiple-mononeuropathy'], 'rare'),
      at(['upper-trunk', 'brachial-plexus'], 'exceptional'),
      at(['lower-trunk', 'medial-cord'], 'common'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 120, outside: 0.4, source: fromMemory },
    age: { from: 15, to: 60, outside: 0.4 },
    sex: { male: 0.4, female: 1.6 },
    history: [
      told('neck-trauma', 1.2, 1),
      told(['numbness', 'paraesthesiae', 'clumsiness', 'heavy-exertion'], 1.2, 1),
      told(['cancer', 'tobacco', 'weight-loss', 'diabetes-mellitus'], 0.6, 1),
      told('family/similar-disorder', 0.6, 1),
      told(['muscle-thinning', 'repetitive-hand-use', 'cold-white-fingers'], 1.5, 1),
      told('arm-pain', 1.3, 0.9),
      // It aches for years and begins with no storm of pain.
      told('shoulder-pain', 0.4, 1),
    ],
    signs: [
      shows(['special-tests/roos', 'special-tests/adson'], 3, 0.7),
      showsAt(['inspection/wasting'], ['thenar-eminence'], 1.6, 1),
      shows(['special-tests/tinel-supraclavicular'], 4, 0.8),
      shows(['cranial-nerves/horner-syndrome'], 0.2, 1.05),
    ],
    values: [
      reads('mri-brachial-plexus', [
        ['mass', 0.2],
        ['other', 2],
      ]),
    ],
    source: plexusChapter,
  },
  {
    key: 'obstetric-or-traction-brachial-plexus-injury',
    group: 'traumatic',
    label: 'Traction injury of the brachial plexus (birth or accident)',
    mondo: mondo('MONDO:0004569', 'brachial plexus neuropathy from injury'),
    produces: [
      at(['adjacent-nerve-roots'], 'rare', 'cervical'),
      at(['axillary-nerve', 'suprascapular-nerve', 'musculocutaneous-nerve'], 'rare'),
      at(['upper-trunk', 'brachial-plexus', 'middle-trunk'], 'very-common'),
      at(['lower-trunk', 'lateral-cord', 'posterior-cord', 'medial-cord'], 'common'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.1, improving: 1.3, static: 1.3 },
    age: { from: 0, to: 60, outside: 0.6 },
    history: [
      told('shoulder-dystocia', 5, 1),
      told('preceding-infection', 0.4, 1),
      told('head-injury', 1.5, 1),
      told(['trauma', 'neck-trauma', 'limb-fracture-or-dislocation', 'perinatal-injury', 'shoulder-dystocia'], 20, 0.1),
      told('radiotherapy', 0.3, 1),
    ],
    values: [reads('needle-emg', [['denervation-plexus', 1.5]])],
    signs: [shows(['special-tests/asymmetric-moro'], 4, 1)],
    source: recalled('preston-shapiro', 'plexopathies: trauma'),
  },
  {
    key: 'positional-brachial-plexus-injury',
    group: 'compressive',
    label: 'Stretch or pressure of the brachial plexus by position or load (operation, intensive care, rucksack)',
    produces: [
      at(['upper-trunk', 'brachial-plexus'], 'common'),
      at(
        ['lower-trunk', 'middle-trunk', 'medial-cord', 'lateral-cord', 'posterior-cord', 'long-thoracic-nerve'],
        'uncommon',
      ),
      at(['suprascapular-nerve', 'axillary-nerve'], 'rare'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { improving: 1.6, progressive: 0.2 },
    history: [
      told('surgical-positioning', 20, 1),
      told(
        ['surgical-positioning', 'recent-surgery', 'prolonged-immobility', 'external-pressure', 'critical-illness'],
        2.5,
        0.05,
      ),
      told(['shoulder-pain', 'preceding-infection'], 0.5, 1),
      told(['trauma', 'limb-fracture-or-dislocation', 'radiotherapy', 'cancer'], 0.3, 1),
    ],
    values: [reads('needle-emg', [['denervation-plexus', 1.5]])],
    source: recalled('preston-shapiro', 'plexopathies: trauma'),
  },
  {
    key: 'nerve-root-avulsion',
    group: 'traumatic',
    label: 'Avulsion of nerve roots',
    produces: [
      at(['nerve-root'], 'uncommon', 'cervical'),
      at(['adjacent-nerve-roots'], 'common', 'cervical'),
      at(['brachial-plexus'], 'common'),
      at(['upper-trunk', 'lower-trunk'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.1, improving: 0.4, static: 2 },
    age: { from: 0, to: 60, outside: 0.6 },
    history: [
      told('shoulder-dystocia', 4, 1),
      told(['head-injury', 'limb-fracture-or-dislocation', 'perinatal-injury'], 2, 1),
      told(['trauma', 'neck-trauma'], 15, 0.02),
      told('neuropathic-pain', 2, 0.7),
    ],
    signs: [shows(['cranial-nerves/horner-syndrome'], 5, 0.8)],
    source: recalled('preston-shapiro', 'plexopathies: root avulsion'),
  },
  {
    key: 'lumbosacral-plexus-injury-at-delivery-or-pelvic-surgery',
    group: 'traumatic',
    label: 'Lumbosacral plexus injury at delivery, pelvic operation or fracture',
    produces: [
      at(['adjacent-nerve-roots'], 'rare', 'lumbosacral'),
      at(['sciatic-nerve', 'femoral-nerve-pelvis', 'obturator-nerve', 'common-fibular-nerve'], 'rare'),
      at(['lumbosacral-trunk'], 'very-common'),
      at(['sacral-plexus', 'lumbosacral-plexus', 'lumbar-plexus'], 'common'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.2, improving: 1.5 },
    history: [
      told('surgical-positioning', 2, 1),
      told('difficult-delivery', 4, 1),
      told(['lumbar-puncture-or-epidural', 'leg-weakness'], 1.2, 1),
      told('limb-fracture-or-dislocation', 2, 1),
      told('fever', 0.4, 1),
      told(['pregnancy', 'recent-surgery', 'hip-replacement', 'difficult-delivery', 'trauma'], 10, 0.1),
      told('pregnancy', 3, 0.9),
    ],
    signs: [aboveTheLoins],
    source: recalled('preston-shapiro', 'postpartum lumbosacral plexopathy'),
  },
  {
    key: 'diabetic-thoracic-radiculopathy',
    group: 'metabolic',
    label: 'Diabetic thoracic radiculopathy',
    produces: [
      inKind(['root'], 'common', 'thoracic'),
      at(['intercostal-nerves'], 'very-common'),
      at(['polyradiculopathy'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.25, subacute: 0.45, chronic: 0.28 },
    durationDays: { to: 730, outside: 0.5, source: recalled('ada-neuropathy-2017', 'thoracic radiculopathy') },
    age: { from: 45, to: 110, outside: 0.3 },
    history: [
      told(['insulin-or-sulfonylurea', 'metformin', 'known-neuropathy'], 1.5, 1),
      told('rapid-glucose-control', 2, 1),
      // In some it is what the diabetes is found by.
      told(['diabetes-mellitus', 'prediabetes'], 8, 0.25),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.8),
      told(['thoracic-back-pain', 'abdominal-pain', 'neuropathic-pain', 'flank-pain', 'tight-band'], 2.5, 0.3),
      told('rash', 0.3, 1.1),
    ],
    signs: [shows(['inspection/vesicular-rash'], 0.1, 1.05), shows(['inspection/abdominal-bulge'], 4, 0.95)],
    quantities: [atLeast('hba1c', 6.5, '%', 5, 0.3, recalled('ada-standards', 'diabetes: HbA1c 6.5 %'))],
    source: recalled('ada-neuropathy-2017', 'thoracic radiculopathy'),
  },
];

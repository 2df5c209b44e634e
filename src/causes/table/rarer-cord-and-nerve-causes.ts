import { recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { at, type Cause, inKind, reads, shows, tempos, told } from './cause.ts';
import { spinalPain } from './complaints.ts';
import { longLesion } from './cord-inflammation-causes.ts';

const cordChapter = recalled('adams-victor', 'diseases of the spinal cord');
const limbNerves = recalled('preston-shapiro', 'mononeuropathies');

/** Causes of cord, cauda equina and single nerves that are known by what was done or by where it hurts. */
export const rarerCordAndNerveCauses: readonly Cause[] = [
  {
    key: 'toxic-myelopathy',
    group: 'toxic',
    label: 'Myelopathy from a drug in the spinal fluid or the vein (methotrexate, cytarabine, heroin)',
    produces: [
      at(['spinal-cord-transverse', 'spinal-cord-posterolateral', 'conus-medullaris'], 'rare'),
      at(['spinal-cord-posterior', 'spinal-cord-anterior', 'cauda-equina', 'polyradiculopathy'], 'rare'),
      inKind(['cord'], 'exceptional'),
    ],
    // Within hours of the needle, or days to weeks after several.
    tempo: { hyperacute: 0.25, acute: 0.4, subacute: 0.3, chronic: 0.05 },
    courses: { 'relapsing-remitting': 0.2 },
    history: [
      told(['methotrexate', 'cytarabine', 'injecting-drug-use', 'opioid', 'lumbar-puncture-or-epidural'], 5, 0.02),
      told(['methotrexate', 'cytarabine'], 15, 1),
      told('lumbar-puncture-or-epidural', 3, 1),
      told('injecting-drug-use', 2, 1),
      told(['cancer', 'lymphoma'], 1.4, 1),
      // What is given into the fluid irritates: head and back ache, and some are hot.
      told('fever', 0.8, 1),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain'], 0.9, 1),
    ],
    values: [...longLesion(2.5, 1, 0.03)],
    source: cordChapter,
  },
  {
    key: 'osteoporotic-vertebral-collapse',
    group: 'compressive',
    label: 'Collapse of an osteoporotic vertebra against cord, cauda equina or root',
    produces: [
      at(['conus-medullaris'], 'uncommon'),
      inKind(['cord'], 'rare', 'thoracic'),
      inKind(['cord'], 'rare', 'lumbosacral'),
      inKind(['cauda-equina'], 'rare'),
      inKind(['root'], 'rare', 'thoracic'),
      inKind(['root'], 'rare', 'lumbosacral'),
    ],
    // The bone gives way at once, the cord days to weeks later.
    tempo: { hyperacute: 0.15, acute: 0.3, subacute: 0.4, chronic: 0.15 },
    courses: { progressive: 1.4, 'relapsing-remitting': 0.1 },
    age: { from: 55, to: 110, outside: 0.15 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['osteoporosis', 'spinal-fracture', 'corticosteroid'], 10, 0.05),
      told(spinalPain, 2.5, 0.2),
      told(['falls', 'trauma', 'rheumatoid-arthritis'], 1.5, 1),
      told(['cancer', 'lymphoma', 'monoclonal-gammopathy'], 0.4, 1),
      told(['fever', 'weight-loss', 'night-sweats', 'injecting-drug-use'], 0.3, 1),
    ],
    signs: [shows(['inspection/kyphosis'], 3, 0.8), shows(['inspection/spinal-tenderness'], 1.6, 0.8), aboveTheLoins],
    values: (['mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
      reads(result, [
        ['cord-compression', 3],
        ['metastasis', 0.05],
        ['infection-or-abscess', 0.05],
        ['normal', 0.02],
      ]),
    ),
    source: cordChapter,
  },
  {
    key: 'abdominal-cutaneous-nerve-entrapment',
    group: 'compressive',
    label: 'Entrapment of a cutaneous nerve in the wall of the belly',
    produces: [
      at(['intercostal-nerves'], 'very-common'),
      inKind(['root'], 'uncommon', 'thoracic'),
      at(['iliohypogastric-nerve', 'ilioinguinal-nerve'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.1, acute: 0.2, subacute: 0.25, chronic: 0.45 },
    age: { from: 8, to: 60, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('abdominal-pain', 6, 0.05),
      told(['recent-surgery', 'pregnancy', 'heavy-exertion', 'hormonal-contraceptive'], 1.4, 1),
      told(['rash', 'herpes-zoster', 'tick-bite'], 0.2, 1),
      told(['diabetes-mellitus', 'cancer', 'weight-loss', 'fever', 'thoracic-back-pain', 'leg-weakness'], 0.4, 1.05),
    ],
    signs: [
      shows(['inspection/vesicular-rash'], 0.05, 1),
      shows(['inspection/abdominal-bulge'], 0.4, 1),
      shows(['inspection/spinal-tenderness'], 0.5, 1),
    ],
    source: limbNerves,
  },
  {
    key: 'deep-gluteal-syndrome',
    group: 'compressive',
    label: 'Entrapment of the sciatic nerve in the buttock (piriformis syndrome)',
    produces: [
      at(['sciatic-nerve', 'posterior-femoral-cutaneous-nerve'], 'uncommon'),
      at(['inferior-gluteal-nerve', 'pudendal-nerve', 'sacral-plexus'], 'rare'),
      at(['no-lesion'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 16, to: 80, outside: 0.4 },
    history: [
      told(['leg-pain', 'radicular-leg-pain'], 3, 0.1),
      told(['heavy-exertion', 'prolonged-immobility', 'external-pressure', 'trauma'], 1.6, 0.9),
      told(['back-pain', 'pain-on-straining', 'disc-herniation'], 0.5, 1.2),
      told(['cancer', 'fever', 'weight-loss', 'bladder-disturbance', 'saddle-numbness'], 0.3, 1.05),
    ],
    // It hurts and tingles; a foot that drops has another cause.
    signs: [
      shows(['inspection/foot-drop', 'inspection/wasting'], 0.4, 1),
      shows(['special-tests/crossed-straight-leg-raise'], 0.3, 1),
      shows(['inspection/palpable-mass'], 0.4, 1),
      aboveTheLoins,
    ],
    values: [
      reads('mri-lumbar-spine', [
        ['root-compression', 0.1],
        ['normal', 2],
        ['incidental', 1.5],
      ]),
    ],
    source: limbNerves,
  },
];

import { recalled } from '../kernel/cite.ts';
import { anococcygeal, branch, evenly, posteriorForearm } from './cutaneous-branches.ts';
import { type SkinPlace, skinPlaceIn } from './skin.ts';
import { skinExtents } from './skin-extents.ts';

const face = recalled('blumenfeld', 'trigeminal nerve, divisions');
const scalpAndNeck = recalled('grays-anatomy', 'cervical plexus and dorsal rami, cutaneous branches');
const upper = recalled('mrc-aids', 'upper limb, cutaneous nerve areas');
const trunk = recalled('grays-anatomy', 'thoracic nerves and dorsal rami');
const lower = recalled('mrc-aids', 'lower limb, cutaneous nerve areas');
const saddle = recalled('grays-anatomy', 'sacral plexus, pudendal and perineal branches');

const onFace = skinPlaceIn('head', face);
const onHead = skinPlaceIn('head', scalpAndNeck);
const onNeck = skinPlaceIn('neck', scalpAndNeck);
const onArm = skinPlaceIn('upper-limbs', upper);
const onTrunk = skinPlaceIn('trunk', trunk);
const onLeg = skinPlaceIn('lower-limbs', lower);
const onSaddle = skinPlaceIn('perineum', saddle);

const median = 'median-nerve-wrist';
const ulnarDigital = 'superficial-branch-of-ulnar-nerve';
const superficialFibular = 'superficial-fibular-nerve-ankle';

/**
 * The spots at which sensation is tested at the bedside. Shares are judged. A bony point (where a tuning fork stands) or
 * a joint (where position is tested) goes by the nerves of the skin over it, which are nearly those of bone and joint
 * and need no second table; lengths are to the middle of the site.
 */
export const landmarks = {
  // Face and scalp
  forehead: onFace('Forehead', 'forehead', 8, [branch('ophthalmic-nerve', 1)], {
    code: 'UBERON:0008200',
    display: 'forehead',
  }),
  cheek: onFace('Cheek', 'cheek', 8, [branch('maxillary-nerve', 1)], { code: 'UBERON:0001567', display: 'cheek' }),
  chin: onFace('Chin', 'jaw', 10, [branch('mandibular-nerve', 1)]),
  'angle-of-jaw': onHead('Angle of the jaw', 'jaw', 10, [branch('great-auricular-nerve', 1)]),
  'ear-lobe': onHead('Ear lobe', 'ear', 10, [branch('great-auricular-nerve', 1)]),
  vertex: onHead('Top of the scalp', 'scalp', 15, [
    branch('greater-occipital-nerve', 0.6, { C2: 1 }),
    branch('ophthalmic-nerve', 0.4),
  ]),
  occiput: onHead('Back of the head', 'scalp', 12, [
    branch('greater-occipital-nerve', 0.85),
    branch('cervical-plexus', 0.15),
  ]),

  // Neck and shoulder cape
  'neck-front': onNeck('Front of the neck', 'neck', 10, [branch('transverse-cervical-nerve', 1)]),
  'supraclavicular-fossa': onNeck('Hollow above the collar bone', 'neck', 12, [
    branch('supraclavicular-nerves', 0.8, { C3: 0.8, C4: 0.2 }),
    branch('transverse-cervical-nerve', 0.2, { C3: 1 }),
  ]),
  clavicle: onArm('Collar bone', 'shoulder', 13, [branch('supraclavicular-nerves', 1)]),
  'shoulder-tip': onArm('Tip of the shoulder', 'shoulder', 15, [
    branch('supraclavicular-nerves', 0.9, { C3: 0.15, C4: 0.85 }),
    branch('axillary-nerve', 0.1, { C5: 1 }),
  ]),

  // Arm and forearm
  'outer-upper-arm': onArm('Outer upper arm', 'upper-arm', 27, [
    branch('axillary-nerve', 0.8, { C5: 0.85, C6: 0.15 }),
    branch('radial-nerve-axilla', 0.2, { C5: 0.6, C6: 0.4 }),
  ]),
  'inner-upper-arm': onArm('Inner upper arm', 'upper-arm', 32, [
    branch('intercostobrachial-nerve', 0.45, { T2: 1 }),
    branch('medial-cutaneous-nerve-of-arm', 0.55),
  ]),
  axilla: onArm(
    'Armpit',
    'axilla',
    28,
    [branch('intercostobrachial-nerve', 0.85), branch('medial-cutaneous-nerve-of-arm', 0.15, { T1: 1 })],
    { code: 'UBERON:0009472', display: 'axilla' },
  ),
  'back-of-arm': onArm('Back of the arm', 'upper-arm', 35, [
    branch('posterior-cutaneous-nerve-of-arm', 0.75),
    branch('intercostobrachial-nerve', 0.15, { T2: 1 }),
    branch('axillary-nerve', 0.1),
  ]),
  elbow: onArm(
    'Elbow',
    'elbow',
    45,
    [
      ...posteriorForearm(0.6, { C6: 0.3, C7: 0.5, C8: 0.2 }),
      branch('medial-cutaneous-nerve-of-forearm', 0.2),
      branch('lateral-cutaneous-nerve-of-forearm', 0.2),
    ],
    { code: 'UBERON:0001461', display: 'elbow' },
  ),
  'outer-forearm': onArm('Outer forearm', 'forearm', 52, [
    branch('lateral-cutaneous-nerve-of-forearm', 1, { C5: 0.2, C6: 0.8 }),
  ]),
  'inner-forearm': onArm('Inner forearm', 'forearm', 52, [branch('medial-cutaneous-nerve-of-forearm', 1)]),
  'back-of-forearm': onArm('Back of the forearm', 'forearm', 52, posteriorForearm(1)),
  wrist: onArm(
    'Wrist',
    'wrist',
    63,
    [
      branch('superficial-radial-nerve', 0.35),
      branch('dorsal-branch-of-ulnar-nerve', 0.25),
      branch('lateral-cutaneous-nerve-of-forearm', 0.2),
      branch('medial-cutaneous-nerve-of-forearm', 0.2, { C8: 0.6, T1: 0.4 }),
    ],
    { code: 'UBERON:0004452', display: 'carpal region' },
  ),

  // Hand
  'thenar-eminence': onArm(
    'Ball of the thumb',
    'thenar-eminence',
    66,
    [
      branch('palmar-branch-of-median-nerve', 0.75),
      branch('lateral-cutaneous-nerve-of-forearm', 0.15),
      branch('superficial-radial-nerve', 0.1, { C6: 1 }),
    ],
    { code: 'UBERON:0017716', display: 'thenar eminence' },
  ),
  'hypothenar-eminence': onArm(
    'Ball of the little finger',
    'hypothenar-eminence',
    66,
    // Of 25 hands 4 had a palmar branch from the forearm and 10 a nerve of Henle, 24 had twigs from within Guyon's canal: Martin
    // 1996 (abstract read).
    [branch('palmar-branch-of-ulnar-nerve', 0.5), branch(ulnarDigital, 0.5)],
    { code: 'UBERON:0017717', display: 'hypothenar eminence' },
  ),
  palm: onArm(
    'Palm',
    'palm',
    67,
    [
      branch('palmar-branch-of-median-nerve', 0.6, { C6: 0.35, C7: 0.65 }),
      branch('palmar-branch-of-ulnar-nerve', 0.3),
      branch(median, 0.1),
    ],
    { code: 'UBERON:0008878', display: 'palmar part of manus' },
  ),
  thumb: onArm(
    'Thumb',
    'thumb',
    70,
    [branch(median, 0.6, { C6: 0.8, C7: 0.2 }), branch('superficial-radial-nerve', 0.4, { C6: 0.85, C7: 0.15 })],
    { code: 'UBERON:0001463', display: 'manual digit 1' },
  ),
  'index-finger': onArm(
    'Index finger',
    'index-finger',
    74,
    [branch(median, 0.85, { C6: 0.45, C7: 0.55 }), branch('superficial-radial-nerve', 0.15)],
    { code: 'UBERON:0003622', display: 'manual digit 2' },
  ),
  'middle-finger': onArm(
    'Middle finger',
    'middle-finger',
    75,
    [branch(median, 0.9, { C6: 0.1, C7: 0.8, C8: 0.1 }), branch('superficial-radial-nerve', 0.1, { C6: 0.2, C7: 0.8 })],
    { code: 'UBERON:0003623', display: 'manual digit 3' },
  ),
  'ring-finger': onArm(
    'Ring finger',
    'ring-finger',
    74,
    [branch(median, 0.5, { C7: 0.35, C8: 0.65 }), branch(ulnarDigital, 0.5, { C8: 0.9, T1: 0.1 })],
    { code: 'UBERON:0003624', display: 'manual digit 4' },
  ),
  'ring-finger-radial-half': onArm('Thumb side of the ring finger', 'ring-finger', 74, [
    branch(median, 1, { C7: 0.35, C8: 0.65 }),
  ]),
  'ring-finger-ulnar-half': onArm('Little-finger side of the ring finger', 'ring-finger', 74, [
    branch(ulnarDigital, 1, { C8: 0.9, T1: 0.1 }),
  ]),
  'little-finger': onArm(
    'Little finger',
    'little-finger',
    72,
    [
      branch(ulnarDigital, 0.85, { C8: 0.9, T1: 0.1 }),
      branch('dorsal-branch-of-ulnar-nerve', 0.15, { C8: 0.9, T1: 0.1 }),
    ],
    { code: 'UBERON:0003625', display: 'manual digit 5' },
  ),
  fingertips: onArm('Fingertips', 'fingers', 76, [
    branch(median, 0.7, { C6: 0.3, C7: 0.45, C8: 0.25 }),
    branch(ulnarDigital, 0.3, { C8: 0.9, T1: 0.1 }),
  ]),
  'dorsum-of-hand': onArm('Back of the hand', 'hand', 67, [
    branch('superficial-radial-nerve', 0.6, { C6: 0.45, C7: 0.55 }),
    branch('dorsal-branch-of-ulnar-nerve', 0.4),
  ]),
  'dorsum-of-hand-ulnar-side': onArm('Back of the hand, little-finger side', 'hand', 67, [
    branch('dorsal-branch-of-ulnar-nerve', 1),
  ]),
  'first-dorsal-web-space-of-hand': onArm('Back of the web between thumb and index finger', 'first-web-space', 66, [
    branch('superficial-radial-nerve', 1),
  ]),

  // Trunk
  sternum: onTrunk('Breastbone', 'chest', 32, [branch('intercostal-nerves', 1, evenly('T2', 'T6'))], {
    code: 'UBERON:0000975',
    display: 'sternum',
  }),
  chest: onTrunk('Front of the chest', 'chest', 32, [branch('intercostal-nerves', 1, evenly('T3', 'T6'))], {
    code: 'UBERON:0001443',
    display: 'chest',
  }),
  nipple: onTrunk('Nipple', 'chest', 30, [branch('intercostal-nerves', 1, { T3: 0.1, T4: 0.8, T5: 0.1 })], {
    code: 'UBERON:0002030',
    display: 'nipple',
  }),
  xiphisternum: onTrunk('Lower tip of the breastbone', 'chest', 34, [
    branch('intercostal-nerves', 1, { T5: 0.15, T6: 0.7, T7: 0.15 }),
  ]),
  'costal-margin': onTrunk('Costal margin', 'chest', 34, [
    branch('intercostal-nerves', 1, { T6: 0.1, T7: 0.4, T8: 0.4, T9: 0.1 }),
  ]),
  epigastrium: onTrunk('Pit of the stomach', 'abdomen', 36, [
    branch('intercostal-nerves', 1, { T6: 0.25, T7: 0.5, T8: 0.25 }),
  ]),
  umbilicus: onTrunk('Navel', 'abdomen', 40, [branch('intercostal-nerves', 1, { T9: 0.1, T10: 0.8, T11: 0.1 })], {
    code: 'UBERON:0007118',
    display: 'umbilicus',
  }),
  'lower-abdomen': onTrunk('Lower abdomen', 'abdomen', 40, [
    branch('intercostal-nerves', 0.85, { T11: 0.55, T12: 0.45 }),
    branch('iliohypogastric-nerve', 0.15, { T12: 0.5, L1: 0.5 }),
  ]),
  'anterior-superior-iliac-spine': onTrunk('Front spine of the hip bone', 'abdomen', 35, [
    branch('intercostal-nerves', 0.5, { T12: 1 }),
    branch('iliohypogastric-nerve', 0.5, { T12: 0.2, L1: 0.8 }),
  ]),
  groin: onTrunk(
    'Groin',
    'groin',
    32,
    [
      branch('ilioinguinal-nerve', 0.55),
      branch('iliohypogastric-nerve', 0.2, { T12: 0.2, L1: 0.8 }),
      branch('genitofemoral-nerve', 0.25, { L1: 0.6, L2: 0.4 }),
    ],
    { code: 'UBERON:0008337', display: 'inguinal part of abdomen' },
  ),
  back: onTrunk('Back', 'back', 12, [branch('dorsal-rami', 1)]),
  'lower-back': onTrunk('Lower back', 'back', 12, [
    branch('dorsal-rami', 1, { T11: 0.15, T12: 0.25, L1: 0.25, L2: 0.2, L3: 0.15 }),
  ]),

  // Thigh and knee
  buttock: onLeg(
    'Buttock',
    'buttock',
    22,
    [
      branch('dorsal-rami', 0.6, { L1: 0.3, L2: 0.25, L3: 0.2, S1: 0.1, S2: 0.15 }),
      branch('posterior-femoral-cutaneous-nerve', 0.3, { S1: 0.15, S2: 0.5, S3: 0.35 }),
      branch('iliohypogastric-nerve', 0.1),
    ],
    { code: 'UBERON:0013691', display: 'buttock' },
  ),
  'outer-thigh': onLeg('Outer thigh', 'thigh', 42, [branch('lateral-femoral-cutaneous-nerve', 1)]),
  'front-of-thigh': onLeg('Front of the thigh', 'thigh', 45, [
    branch('femoral-nerve-groin', 0.85),
    branch('lateral-femoral-cutaneous-nerve', 0.1),
    branch('genitofemoral-nerve', 0.05),
  ]),
  'inner-thigh': onLeg('Inner thigh', 'thigh', 45, [
    branch('obturator-nerve', 0.65),
    branch('femoral-nerve-groin', 0.35),
  ]),
  'back-of-thigh': onLeg('Back of the thigh', 'thigh', 45, [branch('posterior-femoral-cutaneous-nerve', 1)]),
  'popliteal-fossa': onLeg(
    'Hollow behind the knee',
    'knee',
    60,
    [
      branch('posterior-femoral-cutaneous-nerve', 0.9, { S1: 0.1, S2: 0.8, S3: 0.1 }),
      branch('sural-nerve', 0.1, { S1: 0.3, S2: 0.7 }),
    ],
    { code: 'UBERON:0013069', display: 'popliteal area' },
  ),
  knee: onLeg(
    'Knee',
    'knee',
    60,
    [branch('femoral-nerve-groin', 0.6, { L2: 0.1, L3: 0.8, L4: 0.1 }), branch('saphenous-nerve', 0.4)],
    { code: 'UBERON:0001465', display: 'knee' },
  ),
  patella: onLeg(
    'Kneecap',
    'knee',
    60,
    [branch('femoral-nerve-groin', 0.6, { L2: 0.1, L3: 0.8, L4: 0.1 }), branch('saphenous-nerve', 0.4)],
    { code: 'UBERON:0002446', display: 'patella' },
  ),

  // Leg and ankle
  'tibial-tuberosity': onLeg('Tibial tuberosity', 'shin', 66, [
    branch('saphenous-nerve', 0.85, { L3: 0.25, L4: 0.75 }),
    branch('lateral-sural-cutaneous-nerve', 0.15),
  ]),
  shin: onLeg('Front of the shin', 'shin', 76, [
    branch('saphenous-nerve', 0.5),
    branch('lateral-sural-cutaneous-nerve', 0.25),
    branch(superficialFibular, 0.25),
  ]),
  'inner-shin': onLeg('Inner side of the shin', 'shin', 78, [branch('saphenous-nerve', 1, { L3: 0.15, L4: 0.85 })]),
  'outer-shin': onLeg('Outer side of the shin', 'shin', 78, [
    branch('lateral-sural-cutaneous-nerve', 0.55, { L4: 0.1, L5: 0.75, S1: 0.15 }),
    branch(superficialFibular, 0.45, { L4: 0.1, L5: 0.75, S1: 0.15 }),
  ]),
  calf: onLeg('Back of the calf', 'calf', 75, [
    branch('sural-nerve', 0.7),
    branch('posterior-femoral-cutaneous-nerve', 0.15, { S1: 0.2, S2: 0.8 }),
    branch('lateral-sural-cutaneous-nerve', 0.15, { L5: 0.3, S1: 0.7 }),
  ]),
  ankle: onLeg(
    'Ankle',
    'ankle',
    90,
    [
      branch('saphenous-nerve', 0.25),
      branch(superficialFibular, 0.35),
      branch('sural-nerve', 0.25),
      branch('tibial-nerve-calf', 0.15),
    ],
    { code: 'UBERON:0001512', display: 'skin of ankle' },
  ),
  'medial-malleolus': onLeg('Inner ankle bone', 'ankle', 90, [branch('saphenous-nerve', 1, { L3: 0.15, L4: 0.85 })]),
  'lateral-malleolus': onLeg(
    'Outer ankle bone',
    'ankle',
    91,
    [branch('sural-nerve', 0.7, { S1: 0.9, S2: 0.1 }), branch(superficialFibular, 0.3)],
    { code: 'UBERON:0012291', display: 'lateral malleolus of fibula' },
  ),

  // Foot
  'dorsum-of-foot': onLeg('Top of the foot', 'foot', 97, [
    branch(superficialFibular, 0.9, { L4: 0.1, L5: 0.8, S1: 0.1 }),
    branch('sural-nerve', 0.1),
  ]),
  'first-web-space-of-foot': onLeg('Web between the first and second toes', 'foot', 101, [
    branch('deep-fibular-nerve-ankle', 1),
  ]),
  'great-toe': onLeg(
    'Great toe',
    'great-toe',
    105,
    [
      branch('medial-plantar-nerve', 0.5, { L4: 0.15, L5: 0.7, S1: 0.15 }),
      branch('deep-fibular-nerve-ankle', 0.3),
      branch(superficialFibular, 0.2, { L4: 0.15, L5: 0.75, S1: 0.1 }),
    ],
    { code: 'UBERON:0003631', display: 'pedal digit 1' },
  ),
  toes: onLeg(
    'Toes',
    'toes',
    104,
    [
      branch('medial-plantar-nerve', 0.4),
      branch('lateral-plantar-nerve', 0.2),
      branch(superficialFibular, 0.3),
      branch('sural-nerve', 0.1),
    ],
    { code: 'UBERON:0001466', display: 'pedal digit' },
  ),
  'little-toe': onLeg(
    'Little toe',
    'toes',
    103,
    [branch('lateral-plantar-nerve', 0.5), branch('sural-nerve', 0.5, { S1: 0.85, S2: 0.15 })],
    { code: 'UBERON:0003635', display: 'pedal digit 5' },
  ),
  heel: onLeg(
    'Heel',
    'heel',
    94,
    [
      branch('medial-calcaneal-nerve', 0.75, { S1: 0.85, S2: 0.15 }),
      branch('sural-nerve', 0.25, { S1: 0.85, S2: 0.15 }),
    ],
    { code: 'UBERON:0015875', display: 'heel' },
  ),
  sole: onLeg(
    'Sole',
    'sole-of-foot',
    100,
    [
      branch('medial-plantar-nerve', 0.45),
      branch('lateral-plantar-nerve', 0.35),
      branch('medial-calcaneal-nerve', 0.2),
    ],
    { code: 'UBERON:0013778', display: 'skin of sole of pes' },
  ),
  'sole-medial': onLeg('Inner half of the sole', 'sole-of-foot', 100, [branch('medial-plantar-nerve', 1)]),
  'sole-lateral': onLeg('Outer half of the sole', 'sole-of-foot', 100, [branch('lateral-plantar-nerve', 1)]),
  'outer-border-of-foot': onLeg('Outer border of the foot', 'foot', 97, [
    branch('sural-nerve', 1, { S1: 0.85, S2: 0.15 }),
  ]),

  // Saddle
  genitals: onSaddle(
    'Genitals',
    'genitalia',
    30,
    [
      branch('pudendal-nerve', 0.75, { S2: 0.25, S3: 0.5, S4: 0.25 }),
      branch('ilioinguinal-nerve', 0.15),
      branch('genitofemoral-nerve', 0.1),
    ],
    { code: 'UBERON:0004176', display: 'external genitalia' },
  ),
  saddle: onSaddle('Saddle area', 'perineum', 27, [
    branch('pudendal-nerve', 0.55),
    branch('posterior-femoral-cutaneous-nerve', 0.3, { S2: 0.4, S3: 0.6 }),
    anococcygeal(0.15),
  ]),
  'perianal-skin': onSaddle(
    'Skin around the anus',
    'perianal-skin',
    25,
    [branch('pudendal-nerve', 0.75, { S3: 0.2, S4: 0.8 }), anococcygeal(0.25)],
    { code: 'UBERON:0012336', display: 'perianal skin' },
  ),

  ...skinExtents,
} as const satisfies Readonly<Record<string, SkinPlace>>;

export type LandmarkKey = keyof typeof landmarks;

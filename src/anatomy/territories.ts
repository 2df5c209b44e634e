import { recalled, type Source } from '../kernel/cite.ts';
import type { Region } from './body-parts.ts';
import { branch, posteriorForearm } from './cutaneous-branches.ts';
import { type SkinPlace, skinPlaceIn } from './skin.ts';

const face = recalled('blumenfeld', 'trigeminal nerve, divisions');
const neck = recalled('grays-anatomy', 'cervical plexus and dorsal rami, cutaneous branches');
const upper = recalled('mrc-aids', 'upper limb, cutaneous nerve areas');
const trunk = recalled('grays-anatomy', 'thoracic nerves and lumbar plexus, cutaneous branches');
const lower = recalled('mrc-aids', 'lower limb, cutaneous nerve areas');
const saddle = recalled('grays-anatomy', 'sacral plexus, pudendal and perineal branches');

function territoryIn(region: Region, source: Source): ReturnType<typeof skinPlaceIn> {
  const place = skinPlaceIn(region, source);
  return (nerve, ...rest) => place(`${nerve} territory`, ...rest);
}

const onFace = territoryIn('head', face);
const onHead = territoryIn('head', neck);
const onNeck = territoryIn('neck', neck);
const onArm = territoryIn('upper-limbs', upper);
const onTrunk = territoryIn('trunk', trunk);
const onLeg = territoryIn('lower-limbs', lower);
const onSaddle = territoryIn('perineum', saddle);

const posteriorForearmRoots = { C6: 0.35, C7: 0.45, C8: 0.2 };

/**
 * The skin that one named nerve supplies, keyed by the nerve. `bodyPart` is where most of it lies, `lengthCm` goes to its
 * middle. A nerve with several cutaneous branches carries each with its share, so that a lesion beyond the point at which
 * one of them leaves spares that part. Divisions of the trigeminal nerve come from no spinal root. Shares are judged.
 */
export const territories = {
  // Head and neck
  'ophthalmic-nerve': onFace('Ophthalmic nerve (V1)', 'face', 8, [branch('ophthalmic-nerve', 1)], {
    code: 'UBERON:0000348',
    display: 'ophthalmic nerve',
  }),
  'maxillary-nerve': onFace('Maxillary nerve (V2)', 'face', 8, [branch('maxillary-nerve', 1)], {
    code: 'UBERON:0000377',
    display: 'maxillary nerve',
  }),
  'mandibular-nerve': onFace('Mandibular nerve (V3)', 'face', 10, [branch('mandibular-nerve', 1)], {
    code: 'UBERON:0000375',
    display: 'mandibular nerve',
  }),
  'mental-nerve': onFace('Mental nerve', 'jaw', 10, [branch('mandibular-nerve', 1)]),
  'greater-occipital-nerve': onHead('Greater occipital nerve', 'scalp', 13, [branch('greater-occipital-nerve', 1)]),
  'lesser-occipital-nerve': onHead('Lesser occipital nerve', 'scalp', 12, [branch('cervical-plexus', 1)]),
  'great-auricular-nerve': onHead('Great auricular nerve', 'ear', 10, [branch('great-auricular-nerve', 1)]),
  'transverse-cervical-nerve': onNeck('Transverse cervical nerve', 'neck', 10, [
    branch('transverse-cervical-nerve', 1),
  ]),
  'supraclavicular-nerves': onArm('Supraclavicular nerves', 'shoulder', 14, [branch('supraclavicular-nerves', 1)]),

  // Upper limb
  'axillary-nerve': onArm('Axillary nerve', 'upper-arm', 27, [branch('axillary-nerve', 1)], {
    code: 'UBERON:0001493',
    display: 'axillary nerve',
  }),
  'radial-nerve': onArm(
    'Radial nerve',
    'hand',
    55,
    [
      branch('radial-nerve-axilla', 0.4, { C5: 0.15, C6: 0.3, C7: 0.4, C8: 0.15 }),
      branch('radial-nerve-spiral-groove', 0.15),
      branch('superficial-radial-nerve', 0.45),
    ],
    { code: 'UBERON:0001492', display: 'radial nerve' },
  ),
  'posterior-cutaneous-nerve-of-arm': onArm('Posterior cutaneous nerve of the arm', 'upper-arm', 35, [
    branch('posterior-cutaneous-nerve-of-arm', 1),
  ]),
  'inferior-lateral-cutaneous-nerve-of-arm': onArm('Inferior lateral cutaneous nerve of the arm', 'upper-arm', 35, [
    branch('radial-nerve-axilla', 1, { C5: 0.6, C6: 0.4 }),
  ]),
  'posterior-cutaneous-nerve-of-forearm': onArm(
    'Posterior cutaneous nerve of the forearm',
    'forearm',
    52,
    posteriorForearm(1, posteriorForearmRoots),
  ),
  'superficial-radial-nerve': onArm('Superficial radial nerve', 'hand', 67, [branch('superficial-radial-nerve', 1)]),
  'lateral-cutaneous-nerve-of-forearm': onArm('Lateral cutaneous nerve of the forearm', 'forearm', 52, [
    branch('lateral-cutaneous-nerve-of-forearm', 1),
  ]),
  'medial-cutaneous-nerve-of-arm': onArm('Medial cutaneous nerve of the arm', 'upper-arm', 34, [
    branch('medial-cutaneous-nerve-of-arm', 1),
  ]),
  'medial-cutaneous-nerve-of-forearm': onArm('Medial cutaneous nerve of the forearm', 'forearm', 52, [
    branch('medial-cutaneous-nerve-of-forearm', 1),
  ]),
  'intercostobrachial-nerve': onArm('Intercostobrachial nerve', 'upper-arm', 30, [
    branch('intercostobrachial-nerve', 1),
  ]),
  'median-nerve': onArm(
    'Median nerve',
    'hand',
    72,
    [branch('median-nerve-wrist', 0.8), branch('palmar-branch-of-median-nerve', 0.2, { C6: 0.45, C7: 0.55 })],
    { code: 'UBERON:0001148', display: 'median nerve' },
  ),
  'palmar-branch-of-median-nerve': onArm(
    'Palmar branch of the median nerve',
    'hand',
    66,
    [branch('palmar-branch-of-median-nerve', 1)],
    { code: 'UBERON:0016430', display: 'palmar branch of median nerve' },
  ),
  'ulnar-nerve': onArm(
    'Ulnar nerve',
    'hand',
    70,
    [
      branch('superficial-branch-of-ulnar-nerve', 0.5),
      branch('dorsal-branch-of-ulnar-nerve', 0.3),
      branch('palmar-branch-of-ulnar-nerve', 0.2),
    ],
    { code: 'UBERON:0001494', display: 'ulnar nerve' },
  ),
  'dorsal-branch-of-ulnar-nerve': onArm('Dorsal branch of the ulnar nerve', 'hand', 68, [
    branch('dorsal-branch-of-ulnar-nerve', 1),
  ]),
  'palmar-branch-of-ulnar-nerve': onArm('Palmar branch of the ulnar nerve', 'hand', 66, [
    branch('palmar-branch-of-ulnar-nerve', 1),
  ]),
  'superficial-branch-of-ulnar-nerve': onArm('Superficial branch of the ulnar nerve', 'fingers', 73, [
    branch('superficial-branch-of-ulnar-nerve', 1),
  ]),

  // Trunk and groin
  'intercostal-nerves': onTrunk('Intercostal nerves', 'chest', 34, [branch('intercostal-nerves', 1)], {
    code: 'UBERON:0003727',
    display: 'intercostal nerve',
  }),
  'dorsal-rami': onTrunk('Dorsal rami', 'back', 12, [branch('dorsal-rami', 1)], {
    code: 'UBERON:0006839',
    display: 'dorsal ramus of spinal nerve',
  }),
  'iliohypogastric-nerve': onTrunk('Iliohypogastric nerve', 'abdomen', 34, [branch('iliohypogastric-nerve', 1)]),
  'ilioinguinal-nerve': onTrunk('Ilioinguinal nerve', 'groin', 34, [branch('ilioinguinal-nerve', 1)]),
  'genitofemoral-nerve': onTrunk('Genitofemoral nerve', 'groin', 32, [branch('genitofemoral-nerve', 1)]),

  // Thigh
  'lateral-femoral-cutaneous-nerve': onLeg('Lateral femoral cutaneous nerve', 'thigh', 42, [
    branch('lateral-femoral-cutaneous-nerve', 1),
  ]),
  'anterior-femoral-cutaneous-nerve': onLeg('Anterior femoral cutaneous nerves', 'thigh', 46, [
    branch('femoral-nerve-groin', 1),
  ]),
  'femoral-nerve': onLeg(
    'Femoral nerve',
    'thigh',
    62,
    [branch('femoral-nerve-groin', 0.55), branch('saphenous-nerve', 0.45)],
    { code: 'UBERON:0001267', display: 'femoral nerve' },
  ),
  'obturator-nerve': onLeg('Obturator nerve', 'thigh', 46, [branch('obturator-nerve', 1)], {
    code: 'UBERON:0005465',
    display: 'obturator nerve',
  }),
  'posterior-femoral-cutaneous-nerve': onLeg('Posterior femoral cutaneous nerve', 'thigh', 45, [
    branch('posterior-femoral-cutaneous-nerve', 1),
  ]),

  // Leg and foot
  'saphenous-nerve': onLeg('Saphenous nerve', 'leg-below-knee', 78, [branch('saphenous-nerve', 1)], {
    code: 'UBERON:0002475',
    display: 'saphenous nerve',
  }),
  'sciatic-nerve': onLeg(
    'Sciatic nerve',
    'leg-below-knee',
    92,
    [
      branch('lateral-sural-cutaneous-nerve', 0.1),
      branch('superficial-fibular-nerve-ankle', 0.3),
      branch('deep-fibular-nerve-ankle', 0.05),
      branch('sural-nerve', 0.2),
      branch('medial-calcaneal-nerve', 0.1),
      branch('medial-plantar-nerve', 0.15),
      branch('lateral-plantar-nerve', 0.1),
    ],
    { code: 'UBERON:0001322', display: 'sciatic nerve' },
  ),
  'common-fibular-nerve': onLeg(
    'Common fibular nerve',
    'leg-below-knee',
    90,
    [
      branch('lateral-sural-cutaneous-nerve', 0.2),
      branch('superficial-fibular-nerve-ankle', 0.65),
      branch('deep-fibular-nerve-ankle', 0.15),
    ],
    { code: 'UBERON:0001324', display: 'common fibular nerve' },
  ),
  'lateral-sural-cutaneous-nerve': onLeg('Lateral sural cutaneous nerve', 'leg-below-knee', 74, [
    branch('lateral-sural-cutaneous-nerve', 1),
  ]),
  'superficial-fibular-nerve': onLeg(
    'Superficial fibular nerve',
    'foot',
    94,
    [branch('superficial-fibular-nerve-ankle', 1)],
    { code: 'UBERON:0035526', display: 'superficial fibular nerve' },
  ),
  'deep-fibular-nerve': onLeg('Deep fibular nerve', 'foot', 101, [branch('deep-fibular-nerve-ankle', 1)], {
    code: 'UBERON:0035207',
    display: 'deep fibular nerve',
  }),
  'sural-nerve': onLeg('Sural nerve', 'foot', 92, [branch('sural-nerve', 1)], {
    code: 'UBERON:0015488',
    display: 'sural nerve',
  }),
  'tibial-nerve': onLeg(
    'Tibial nerve',
    'foot',
    98,
    [
      branch('medial-plantar-nerve', 0.45),
      branch('lateral-plantar-nerve', 0.35),
      branch('medial-calcaneal-nerve', 0.2),
    ],
    { code: 'UBERON:0001323', display: 'tibial nerve' },
  ),
  'medial-calcaneal-nerve': onLeg('Medial calcaneal nerve', 'foot', 94, [branch('medial-calcaneal-nerve', 1)]),
  'medial-plantar-nerve': onLeg('Medial plantar nerve', 'foot', 101, [branch('medial-plantar-nerve', 1)], {
    code: 'UBERON:0035111',
    display: 'medial plantar nerve',
  }),
  'lateral-plantar-nerve': onLeg('Lateral plantar nerve', 'foot', 101, [branch('lateral-plantar-nerve', 1)], {
    code: 'UBERON:0035110',
    display: 'lateral plantar nerve',
  }),

  // Saddle
  'pudendal-nerve': onSaddle('Pudendal nerve', 'perineum', 27, [branch('pudendal-nerve', 1)], {
    code: 'UBERON:0011390',
    display: 'pudendal nerve',
  }),
} as const satisfies Readonly<Record<string, SkinPlace>>;

export type TerritoryKey = keyof typeof territories;

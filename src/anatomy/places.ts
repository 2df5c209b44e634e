import { commonPractice, recalled, type Source } from '../kernel/cite.ts';
import { type Segment, segmentIndex, segments } from './segments.ts';

/**
 * The peripheral wiring from the roots outwards: every plexus part and every stretch of a named nerve at which a focal
 * lesion is known to happen. `proximal` says what the fibres have passed through before they reach this place, so the
 * whole path of any branch follows from the one place where it leaves. Where it depends on the root, it is a table by root.
 */
export interface Place {
  readonly label: string;
  readonly kind: 'plexus' | 'nerve';
  /** The place next nearer to the cord; null where the fibres come straight from the roots. */
  readonly proximal: string | null | Readonly<Partial<Record<Segment, string>>>;
  /** False for a branch that is only ever a way-station of the table, never a site of its own. */
  readonly lesionSite: boolean;
  /** How often lesions here are met, among focal peripheral lesions; 1 = rare, 100 = the commonest. Judged. */
  readonly frequency: number;
  /** True where the fibres leave the cord by rootlets of their own, apart from the roots of the segments that they come from. */
  readonly ownRootlets?: true;
  readonly source: Source;
}

const upper = recalled('mrc-aids', 'upper limb, nerve diagrams');
const lower = recalled('mrc-aids', 'lower limb, nerve diagrams');
const plexus = recalled('mrc-aids', 'brachial plexus diagram');
const lumbosacral = recalled('grays-anatomy', 'lumbar and sacral plexuses');

const nerve = (
  label: string,
  proximal: Place['proximal'],
  frequency: number,
  source: Source,
  lesionSite = frequency > 0,
): Place => ({ label, kind: 'nerve', proximal, lesionSite, frequency, source });

/** A stretch that only part of a nerve's fibres run through: a way-station, so that they can be hit apart. */
const fascicle = (label: string, proximal: Place['proximal'], source: Source): Place =>
  nerve(label, proximal, 0, source, false);

const plexusPart = (label: string, proximal: Place['proximal'], frequency: number, source: Source): Place => ({
  label,
  kind: 'plexus',
  proximal,
  lesionSite: true,
  frequency,
  source,
});

const thoracicRami = recalled('grays-anatomy', 'thoracic ventral rami');
const intercostal = (root: Segment): Place => fascicle(`${root} intercostal nerve`, null, thoracicRami);

/** Each root from `first` down to `last` goes on in the intercostal nerve of its own rib space. */
function intercostalOf(first: Segment, last: Segment): Readonly<Partial<Record<Segment, string>>> {
  const roots = segments.slice(segmentIndex(first), segmentIndex(last) + 1);
  return Object.fromEntries(roots.map((root) => [root, `intercostal-nerve-${root.toLowerCase()}`]));
}

export const places = {
  // Neck and trunk
  'cervical-plexus': plexusPart('Cervical plexus', null, 1, recalled('grays-anatomy', 'cervical plexus')),
  // It climbs through the foramen magnum and comes down again, so that roots of the same segments do not carry it.
  'spinal-accessory-nerve-upper-neck': {
    ...fascicle('Spinal accessory nerve above the sternocleidomastoid', null, recalled('brazis', 'accessory nerve')),
    ownRootlets: true,
  },
  'spinal-accessory-nerve': nerve(
    'Spinal accessory nerve in the posterior triangle',
    'spinal-accessory-nerve-upper-neck',
    5,
    recalled('brazis', 'accessory nerve'),
  ),
  'phrenic-nerve': nerve('Phrenic nerve', 'cervical-plexus', 1, recalled('grays-anatomy', 'phrenic nerve')),
  'greater-occipital-nerve': nerve('Greater occipital nerve', null, 2, recalled('grays-anatomy', 'dorsal rami')),
  'great-auricular-nerve': nerve(
    'Great auricular nerve',
    'cervical-plexus',
    1,
    recalled('grays-anatomy', 'cervical plexus'),
  ),
  'transverse-cervical-nerve': nerve(
    'Transverse cervical nerve',
    'cervical-plexus',
    0.3,
    recalled('grays-anatomy', 'cervical plexus'),
  ),
  'supraclavicular-nerves': nerve(
    'Supraclavicular nerves',
    'cervical-plexus',
    1,
    recalled('grays-anatomy', 'cervical plexus'),
  ),
  'dorsal-rami': nerve('Dorsal rami', null, 0, recalled('grays-anatomy', 'dorsal rami')),
  'intercostal-nerve-t1': intercostal('T1'),
  'intercostal-nerve-t2': intercostal('T2'),
  'intercostal-nerve-t3': intercostal('T3'),
  'intercostal-nerve-t4': intercostal('T4'),
  'intercostal-nerve-t5': intercostal('T5'),
  'intercostal-nerve-t6': intercostal('T6'),
  'intercostal-nerve-t7': intercostal('T7'),
  'intercostal-nerve-t8': intercostal('T8'),
  'intercostal-nerve-t9': intercostal('T9'),
  'intercostal-nerve-t10': intercostal('T10'),
  'intercostal-nerve-t11': intercostal('T11'),
  'intercostal-nerve-t12': intercostal('T12'),
  'intercostal-nerves': nerve('Intercostal nerves', intercostalOf('T1', 'T12'), 2, thoracicRami),

  // Brachial plexus
  'upper-trunk': plexusPart('Upper trunk of the brachial plexus', null, 6, plexus),
  'middle-trunk': plexusPart('Middle trunk of the brachial plexus', null, 1, plexus),
  'lower-trunk': plexusPart('Lower trunk of the brachial plexus', null, 5, plexus),
  // The T1 fibres lie lowest in the trunk, against the first rib or a band, and may be hit apart from those of C8.
  'lower-trunk-c8': fascicle('C8 fibres of the lower trunk', 'lower-trunk', plexus),
  'lower-trunk-t1': fascicle('T1 fibres of the lower trunk', 'lower-trunk', plexus),
  'lateral-cord': plexusPart(
    'Lateral cord of the brachial plexus',
    { C5: 'upper-trunk', C6: 'upper-trunk', C7: 'middle-trunk' },
    1,
    plexus,
  ),
  'posterior-cord': plexusPart(
    'Posterior cord of the brachial plexus',
    { C5: 'upper-trunk', C6: 'upper-trunk', C7: 'middle-trunk', C8: 'lower-trunk-c8', T1: 'lower-trunk-t1' },
    2,
    plexus,
  ),
  'medial-cord': plexusPart(
    'Medial cord of the brachial plexus',
    { C8: 'lower-trunk-c8', T1: 'lower-trunk-t1' },
    2,
    plexus,
  ),

  // Branches of roots, trunks and cords
  'dorsal-scapular-nerve': nerve('Dorsal scapular nerve', null, 1, upper),
  'long-thoracic-nerve': nerve('Long thoracic nerve', null, 8, upper),
  'suprascapular-nerve': nerve('Suprascapular nerve at the suprascapular notch', 'upper-trunk', 6, upper),
  'suprascapular-nerve-spinoglenoid': nerve(
    'Suprascapular nerve at the spinoglenoid notch',
    'suprascapular-nerve',
    5,
    upper,
  ),
  'lateral-pectoral-nerve': nerve('Lateral pectoral nerve', 'lateral-cord', 0.3, upper),
  'medial-pectoral-nerve': nerve('Medial pectoral nerve', 'medial-cord', 0.3, upper),
  'subscapular-nerves': nerve('Subscapular nerves', 'posterior-cord', 0.3, upper),
  'thoracodorsal-nerve': nerve('Thoracodorsal nerve', 'posterior-cord', 1, upper),
  'axillary-nerve': nerve('Axillary nerve at the quadrangular space', 'posterior-cord', 14, upper),
  'medial-cutaneous-nerve-of-arm': nerve('Medial cutaneous nerve of the arm', 'medial-cord', 0.3, upper),
  'medial-cutaneous-nerve-of-forearm': nerve('Medial cutaneous nerve of the forearm', 'medial-cord', 1, upper),
  'intercostobrachial-nerve': nerve('Intercostobrachial nerve', intercostalOf('T2', 'T3'), 2, upper),
  'musculocutaneous-nerve': nerve('Musculocutaneous nerve', 'lateral-cord', 5, upper),
  'lateral-cutaneous-nerve-of-forearm': nerve(
    'Lateral cutaneous nerve of the forearm',
    'musculocutaneous-nerve',
    3,
    upper,
  ),

  // Radial
  'radial-nerve-axilla': nerve('Radial nerve in the axilla', 'posterior-cord', 4, upper),
  'posterior-cutaneous-nerve-of-arm': nerve('Posterior cutaneous nerve of the arm', 'radial-nerve-axilla', 0.3, upper),
  'radial-nerve-spiral-groove': nerve('Radial nerve at the spiral groove', 'radial-nerve-axilla', 20, upper),
  'radial-nerve-elbow': nerve('Radial nerve at the elbow', 'radial-nerve-spiral-groove', 2, upper),
  'posterior-interosseous-nerve': nerve('Posterior interosseous nerve', 'radial-nerve-elbow', 6, upper),
  // Below the supinator it divides: a branch for the long extensors of the fingers and one for those of thumb and index.
  'posterior-interosseous-nerve-recurrent-branch': fascicle(
    'Recurrent branch of the posterior interosseous nerve',
    'posterior-interosseous-nerve',
    upper,
  ),
  'posterior-interosseous-nerve-descending-branch': fascicle(
    'Descending branch of the posterior interosseous nerve',
    'posterior-interosseous-nerve',
    upper,
  ),
  'superficial-radial-nerve': nerve('Superficial radial nerve', 'radial-nerve-elbow', 5, upper),

  // Median
  'median-nerve-upper-arm': nerve(
    'Median nerve in the axilla or upper arm',
    { C5: 'lateral-cord', C6: 'lateral-cord', C7: 'lateral-cord', C8: 'medial-cord', T1: 'medial-cord' },
    2,
    upper,
  ),
  'median-nerve-elbow': nerve('Median nerve at the elbow', 'median-nerve-upper-arm', 4, upper),
  // The branch to the pronator teres leaves above the arch that presses on the nerve.
  'median-nerve-beyond-pronator': fascicle(
    'Median nerve below the branch to the pronator teres',
    'median-nerve-elbow',
    upper,
  ),
  'anterior-interosseous-nerve': nerve('Anterior interosseous nerve', 'median-nerve-beyond-pronator', 6, upper),
  'median-nerve-forearm': nerve('Median nerve in the forearm', 'median-nerve-beyond-pronator', 1, upper),
  'palmar-branch-of-median-nerve': nerve('Palmar branch of the median nerve', 'median-nerve-forearm', 0.5, upper),
  'median-nerve-wrist': nerve('Median nerve at the wrist', 'median-nerve-forearm', 100, upper),

  // Ulnar
  'ulnar-nerve-upper-arm': nerve(
    'Ulnar nerve in the axilla or upper arm',
    // The lateral cord often hands on C7 fibres, meant for the flexor carpi ulnaris.
    { C7: 'lateral-cord', C8: 'medial-cord', T1: 'medial-cord' },
    2,
    upper,
  ),
  'ulnar-nerve-elbow': nerve('Ulnar nerve at the elbow', 'ulnar-nerve-upper-arm', 60, upper),
  'ulnar-nerve-forearm': nerve('Ulnar nerve in the forearm', 'ulnar-nerve-elbow', 2, upper),
  'dorsal-branch-of-ulnar-nerve': nerve('Dorsal branch of the ulnar nerve', 'ulnar-nerve-forearm', 0.8, upper),
  'palmar-branch-of-ulnar-nerve': nerve('Palmar branch of the ulnar nerve', 'ulnar-nerve-forearm', 0.3, upper),
  'ulnar-nerve-wrist': nerve("Ulnar nerve at the wrist (Guyon's canal)", 'ulnar-nerve-forearm', 6, upper),
  'superficial-branch-of-ulnar-nerve': nerve(
    'Superficial branch of the ulnar nerve in the hand',
    'ulnar-nerve-wrist',
    1,
    upper,
  ),
  'deep-branch-of-ulnar-nerve': nerve('Deep branch of the ulnar nerve in the palm', 'ulnar-nerve-wrist', 6, upper),
  // The branch to the little-finger muscles leaves the deep branch where it begins, beside the pisiform.
  'deep-branch-of-ulnar-nerve-beyond-hypothenar': fascicle(
    'Deep branch of the ulnar nerve beyond the hypothenar muscles',
    'deep-branch-of-ulnar-nerve',
    upper,
  ),

  // Lumbar plexus
  'lumbar-plexus': plexusPart('Lumbar plexus', null, 4, lumbosacral),
  // The branches to the psoas leave inside it, beside the femoral nerve.
  'branches-to-psoas': fascicle('Branches of the lumbar plexus to the psoas', 'lumbar-plexus', lumbosacral),
  'iliohypogastric-nerve': nerve('Iliohypogastric nerve', 'lumbar-plexus', 1, lower),
  'ilioinguinal-nerve': nerve('Ilioinguinal nerve', 'lumbar-plexus', 2, lower),
  'genitofemoral-nerve': nerve('Genitofemoral nerve', 'lumbar-plexus', 1, lower),
  'lateral-femoral-cutaneous-nerve': nerve('Lateral femoral cutaneous nerve', 'lumbar-plexus', 20, lower),
  'obturator-nerve': nerve('Obturator nerve', 'lumbar-plexus', 4, lower),
  'femoral-nerve-pelvis': nerve('Femoral nerve above the inguinal ligament', 'lumbar-plexus', 7, lower),
  'femoral-nerve-groin': nerve('Femoral nerve below the inguinal ligament', 'femoral-nerve-pelvis', 5, lower),
  'saphenous-nerve': nerve('Saphenous nerve', 'femoral-nerve-groin', 4, lower),

  // Sacral plexus
  'lumbosacral-trunk': plexusPart('Lumbosacral trunk', null, 2, lumbosacral),
  'sacral-plexus': plexusPart('Sacral plexus', { L4: 'lumbosacral-trunk', L5: 'lumbosacral-trunk' }, 2.5, lumbosacral),
  'superior-gluteal-nerve': nerve('Superior gluteal nerve', 'sacral-plexus', 1.5, lower),
  'inferior-gluteal-nerve': nerve('Inferior gluteal nerve', 'sacral-plexus', 1, lower),
  'posterior-femoral-cutaneous-nerve': nerve('Posterior femoral cutaneous nerve', 'sacral-plexus', 1.5, lower),
  'pudendal-nerve': nerve('Pudendal nerve', 'sacral-plexus', 3, lower),
  'sciatic-nerve': nerve('Sciatic nerve at the buttock or upper thigh', 'sacral-plexus', 20, lower),
  'sciatic-nerve-fibular-division': nerve(
    'Fibular division of the sciatic nerve in the thigh',
    'sciatic-nerve',
    4,
    lower,
  ),
  'common-fibular-nerve': nerve(
    'Common fibular nerve at the fibular neck',
    'sciatic-nerve-fibular-division',
    50,
    lower,
  ),
  'lateral-sural-cutaneous-nerve': nerve('Lateral sural cutaneous nerve', 'sciatic-nerve-fibular-division', 0.4, lower),
  'deep-fibular-nerve': nerve('Deep fibular nerve in the leg', 'common-fibular-nerve', 5, lower),
  'deep-fibular-nerve-ankle': nerve('Deep fibular nerve at the ankle', 'deep-fibular-nerve', 2, lower),
  'superficial-fibular-nerve': nerve('Superficial fibular nerve', 'common-fibular-nerve', 4, lower),
  'superficial-fibular-nerve-ankle': nerve(
    'Cutaneous branches of the superficial fibular nerve',
    'superficial-fibular-nerve',
    0.8,
    lower,
  ),
  'sciatic-nerve-tibial-division': nerve(
    'Tibial division of the sciatic nerve in the thigh',
    'sciatic-nerve',
    1,
    lower,
  ),
  'tibial-nerve-popliteal-fossa': nerve(
    'Tibial nerve in the popliteal fossa',
    'sciatic-nerve-tibial-division',
    3,
    lower,
  ),
  'sural-nerve': nerve('Sural nerve', 'tibial-nerve-popliteal-fossa', 3, lower),
  'tibial-nerve-calf': nerve('Tibial nerve in the calf', 'tibial-nerve-popliteal-fossa', 1, lower),
  'medial-calcaneal-nerve': nerve('Medial calcaneal nerve', 'tibial-nerve-calf', 0.5, lower),
  'tibial-nerve-tarsal-tunnel': nerve('Tibial nerve in the tarsal tunnel', 'tibial-nerve-calf', 6, lower),
  'medial-plantar-nerve': nerve('Medial plantar nerve', 'tibial-nerve-tarsal-tunnel', 1, lower),
  'lateral-plantar-nerve': nerve('Lateral plantar nerve', 'tibial-nerve-tarsal-tunnel', 1, lower),

  // Cranial nerves with a motor or sensory table row of their own
  'ophthalmic-nerve': nerve('Ophthalmic division of the trigeminal nerve', null, 5, commonPractice),
  'maxillary-nerve': nerve('Maxillary division of the trigeminal nerve', null, 5, commonPractice),
  'mandibular-nerve': nerve('Mandibular division of the trigeminal nerve', null, 5, commonPractice),
} as const satisfies Record<string, Place>;

export type PlaceKey = keyof typeof places;

/** The table under one row type, for look-ups by a key that is not a literal. */
export const placeTable: Readonly<Record<PlaceKey, Place>> = places;
export const placeKeys = Object.keys(places) as readonly PlaceKey[];

/**
 * The places that fibres of one root pass on their way out from the cord to `place`: nearest the cord first, `place`
 * last, the root itself left out. A lesion at any of them cuts the branch.
 * Where the table by root of a place does not name `root`, the path starts at that place: right for S1 to S4 in the
 * sacral plexus, which join it straight from the roots, and a fault of the row that asks in any other place.
 * @returns the empty path for `null`, a branch straight from the root
 */
export function pathTo(place: PlaceKey | null, root: Segment): readonly PlaceKey[] {
  const path: PlaceKey[] = [];
  let here: PlaceKey | null = place;
  while (here !== null) {
    path.unshift(here);
    const proximal: Place['proximal'] = placeTable[here].proximal;
    here = (typeof proximal === 'object' && proximal !== null ? (proximal[root] ?? null) : proximal) as PlaceKey | null;
  }
  return path;
}

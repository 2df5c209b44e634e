import { brainFunctions, type WiredFunction } from './brain/functions.ts';
import type { PlaceKey } from './places.ts';
import type { RootShares } from './segments.ts';

/**
 * What a bedside sign looks at, in terms of the wiring. The forward model turns each probe into the chance that the sign
 * is abnormal, given what is damaged; nothing else in the engine knows individual signs.
 */
export type Probe =
  /** Power of a row of the movement table. */
  | { readonly kind: 'movement'; readonly movement: string }
  /** A row of the reflex table. */
  | { readonly kind: 'reflex'; readonly reflex: string }
  /** Sensation of the modality that the item names, at the place that the finding names. */
  | { readonly kind: 'sensation'; readonly modality: Modality }
  /** Plantar response. */
  | { readonly kind: 'plantar' }
  /** Tone of the limb that the finding names. */
  | { readonly kind: 'tone' }
  /** Clonus, judged by the stretch reflex of the same arc. */
  | { readonly kind: 'clonus'; readonly reflex: string }
  /** Wasting or fasciculation of the muscles at the site that the finding names. */
  | { readonly kind: 'denervation'; readonly feature: 'wasting' | 'fasciculation' }
  /** A posture, gait or task that goes wrong when these movements are weak, on the same side or, for midline items, on both. */
  | {
      readonly kind: 'weakness-of';
      readonly movements: readonly string[];
      readonly bilateral?: boolean;
      /** Whether only slack muscles make it: disease of nerve and muscle more than of the tracts. */
      readonly flaccid?: boolean;
      /** Movements that have to be kept for the posture: a claw needs extensors that pull. */
      readonly butKept?: readonly string[];
      /** How many of those whose movement is gone show the sign, 0 to 1; nearly all where it is not given. */
      readonly shownBy?: number;
    }
  /** A bulge of one half of the belly, whose wall is slack on that side and holds on the other. */
  | { readonly kind: 'slack-belly' }
  /** A sign of upper-motor-neuron disturbance of the limb(s). */
  | {
      readonly kind: 'upper-motor';
      readonly limb: 'upper' | 'lower' | 'both';
      /** Functions whose failure makes the same sign: taps are slow in parkinsonism too. */
      readonly orAlso?: readonly Faculty[];
    }
  /** A sign of lost joint position sense: Romberg, pseudoathetosis, stamping gait. */
  | { readonly kind: 'proprioception'; readonly limb: 'upper' | 'lower' }
  /** Limb coordination test: cerebellar when out of proportion to weakness. */
  | {
      readonly kind: 'cerebellar';
      readonly part: 'upper-limb' | 'lower-limb' | 'midline';
      /** True where legs that are weak fail as surely as legs that are unsteady. */
      readonly bearsWeight?: true;
    }
  /** A deformity that takes years of distal muscle imbalance. */
  | { readonly kind: 'long-standing-deformity' }
  /** Pain or tingling provoked by stretching or tapping these roots or this nerve. */
  | { readonly kind: 'provocation'; readonly roots?: RootShares; readonly places?: readonly PlaceKey[] }
  /** A function of the brain, a cranial nerve, the autonomic system or the pelvic floor. */
  | {
      readonly kind: 'faculty';
      readonly faculty: Faculty;
      /** Faculties whose failure makes the same sign: double vision has many causes. */
      readonly orAlso?: readonly Faculty[];
      /** A faculty that has to be kept for the sign to be called so: the forehead, in weakness of the lower face. */
      readonly butSpares?: Faculty;
      /** A faculty that mostly fails as well when the sign is called so: abduction, in an eye that moves in few directions. */
      readonly seldomWithout?: Faculty;
      /** Skin that has to feel for the sign to be kept: the tips of the fingers, in telling two points from one. */
      readonly orSkin?: readonly string[];
      /** Whether the other half has to work to make the sign: it pushes the tongue over, and the jaw. */
      readonly needsOther?: boolean;
    }
  /** Kept and coded, not reasoned from. */
  | { readonly kind: 'recorded-only' };

export const modalities = ['light-touch', 'pinprick', 'temperature', 'vibration', 'joint-position'] as const;
export type Modality = (typeof modalities)[number];

/**
 * Functions that the wiring of the head does not decide, because they belong to cord, roots, muscle, junction, autonomic
 * system, or to no single place.
 */
const otherFaculties = [
  'myoclonus',
  'tics',
  'eye-movement-fatigue',
  'lid-retraction',
  'lid-spasm',
  'bladder-retention',
  'bowel',
  'anal-tone',
  'sexual',
  'saddle-sensation',
  'blood-pressure',
  'heart-rate',
  'sweating',
  'gut',
  'myotonia',
  'fatigability',
  'voice-fatigability',
  'facilitation',
  'effort',
] as const;

/**
 * Functions outside the limbs that signs report on; `brain/functions.ts` has the structures that carry those of the head.
 * The side of a faculty is the side on which the sign shows.
 */
export type Faculty = WiredFunction | (typeof otherFaculties)[number];

export const facultyKeys: readonly Faculty[] = [
  ...(Object.keys(brainFunctions) as readonly WiredFunction[]),
  ...otherFaculties,
];

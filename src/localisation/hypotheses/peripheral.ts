import { movements } from '../../anatomy/movements.ts';
import { type Place, type PlaceKey, pathTo, placeKeys, placeTable } from '../../anatomy/places.ts';
import type { Segment } from '../../anatomy/segments.ts';
import { allSkinPlaces } from '../../anatomy/skin-places.ts';
import type { Supply } from '../../anatomy/supply.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type PaceFactors, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type FacultyChances, facultyKey } from '../process.ts';
import { type Extent, extents, groupFrequency, mixedExtents, shareOf, sideSpreads } from './extents.ts';
import { fascicles, fascicularShare } from './fascicles.ts';
import { plexusHypotheses } from './plexuses.ts';
import { rootHypotheses } from './roots.ts';

const motorSupplies: readonly Supply[] = Object.values(movements).flatMap((movement) => movement.supplies);
const sensorySupplies: readonly Supply[] = allSkinPlaces.flatMap((place) => place.supplies);

function placesServing(supplies: readonly Supply[]): ReadonlySet<PlaceKey> {
  return new Set(
    supplies.flatMap((supply) => {
      const roots = Object.keys(supply.roots) as Segment[];
      return roots.length === 0
        ? [...(supply.via === null ? [] : [supply.via])]
        : roots.flatMap((root) => pathTo(supply.via, root));
    }),
  );
}

/** Extents that make a difference for a structure that may carry only one kind of fibre. */
function extentsOf(carriesMotor: boolean, carriesSensory: boolean): readonly Extent[] {
  if (carriesMotor && carriesSensory) return extents;
  // Of sensory fibres alone the partial loss and the mainly sensory one are the same.
  if (carriesSensory) return mixedExtents;
  return carriesMotor ? extents.filter(({ motor }) => motor >= 0.5) : [];
}

function placeSite(key: PlaceKey, side: Site['side']): Site {
  const { label, kind } = placeTable[key];
  return { key, label, side, level: null, kind };
}

/** Nerves whose lesions are written out below, because they differ from those of a nerve that is hit as one. */
const writtenOut: ReadonlySet<PlaceKey> = new Set(['intercostal-nerves', 'phrenic-nerve']);

/** Share of the findings of its kind that one place stands for, in percent. */
function percentOf(key: PlaceKey): number {
  const { kind, frequency } = placeTable[key];
  return (groupFrequency[kind] * frequency) / totals[kind];
}

const totals = Object.fromEntries(
  (['nerve', 'plexus'] as const).map((kind) => [
    kind,
    placeKeys
      .map((key): Place => placeTable[key])
      .filter((place) => place.lesionSite && place.kind === kind)
      .reduce((sum, { frequency }) => sum + frequency, 0),
  ]),
) as Readonly<Record<Place['kind'], number>>;

/** Lesions of one named nerve or plexus part, on each side, in each extent. */
function placeHypotheses(): Hypothesis[] {
  const motor = placesServing(motorSupplies);
  const sensory = placesServing(sensorySupplies);
  const keys = placeKeys.filter((key) => placeTable[key].lesionSite && !writtenOut.has(key));
  return keys.flatMap((key) => {
    const fitting = extentsOf(motor.has(key), sensory.has(key));
    const shares = fitting.reduce((sum, extent) => sum + shareOf(extent, key), 0);
    const evenly = 1 - fascicularShare(key);
    return bodySides.flatMap((side) =>
      fitting.map((extent) =>
        hypothesis(
          placeSite(key, side),
          extent.key,
          (percentOf(key) * evenly * shareOf(extent, key)) / (shares * 2),
          new LesionBuilder().place(side, key, extent.motor, extent.sensory).build(),
          { faculties: saddleSigns(key, side, extent.sensory), ...paceOf(key) },
        ),
      ),
    );
  });
}

/**
 * Against the humerus the radial nerve is pressed, cut or broken at once; what grows on it little by little does so where it
 * enters the forearm, at and beyond the supinator. Source: Preston and Shapiro, radial neuropathy (recalled). Judged.
 */
const againstTheHumerus = { subacute: 0.7, chronic: 0.2 } as const;
const underTheSupinator = { hyperacute: 0.5, subacute: 1.2, chronic: 1.8 } as const;
const pacesOf: Readonly<Partial<Record<PlaceKey, PaceFactors>>> = {
  'radial-nerve-axilla': againstTheHumerus,
  'radial-nerve-spiral-groove': againstTheHumerus,
  'radial-nerve-elbow': underTheSupinator,
  'posterior-interosseous-nerve': underTheSupinator,
};

function paceOf(key: PlaceKey): { readonly paces?: PaceFactors } {
  const paces = pacesOf[key];
  return paces === undefined ? {} : { paces };
}

/** The pudendal nerve serves half of the pelvic floor and the saddle; the other half keeps the sphincters closed. */
function saddleSigns(key: PlaceKey, side: BodySide, sensory: number): FacultyChances {
  return new Map(key === 'pudendal-nerve' ? [[facultyKey('saddle-sensation', side), 0.7 * sensory]] : []);
}

function fascicularHypotheses(): Hypothesis[] {
  return fascicles.flatMap(({ site, key, share, hits }) =>
    bodySides.map((side) => {
      const lesion = new LesionBuilder();
      for (const [place, motor, sensory] of hits) lesion.place(side, place, motor, sensory);
      return hypothesis(placeSite(site, side), key, (percentOf(site) * share) / 2, lesion.build(), paceOf(site));
    }),
  );
}

const ribSpaces = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;

/** One intercostal nerve beyond its dorsal ramus. The nerves are one site; which rib space it is, the evidence names. */
function intercostalHypotheses(): Hypothesis[] {
  return ribSpaces.flatMap((space) =>
    bodySides.flatMap((side) =>
      extents
        .slice(0, 2)
        .map(({ key, motor, sensory }) =>
          hypothesis(
            placeSite('intercostal-nerves', side),
            `T${space}-${key}`,
            percentOf('intercostal-nerves') / (ribSpaces.length * 4),
            new LesionBuilder().place(side, `intercostal-nerve-t${space}`, motor, sensory).build(),
          ),
        ),
    ),
  );
}

/** Chance of a sign of weak breathing from half of the diaphragm, which few notice, and from the whole of it. Judged. */
const breathlessFrom = { half: 0.3, whole: 0.85 } as const;

function phrenicHypotheses(): Hypothesis[] {
  return ([...bodySides, 'both'] as const).map((side) => {
    const lesion = new LesionBuilder();
    for (const one of bodySides) if (side === 'both' || side === one) lesion.place(one, 'phrenic-nerve', 0.95, 0.9);
    const chance = side === 'both' ? breathlessFrom.whole : breathlessFrom.half;
    return hypothesis(placeSite('phrenic-nerve', side), 'severe', percentOf('phrenic-nerve') / 3, lesion.build(), {
      faculties: new Map([[facultyKey('breathing', 'midline'), chance]]),
    });
  });
}

/** Both pudendal nerves, as after a long labour or from years of straining; a fifth of pudendal lesions. Judged. */
function bothPudendal(): Hypothesis {
  const lesion = new LesionBuilder();
  for (const side of bodySides) lesion.place(side, 'pudendal-nerve', 0.6, 0.6);
  return hypothesis(placeSite('pudendal-nerve', 'both'), 'partial', percentOf('pudendal-nerve') * 0.2, lesion.build(), {
    faculties: new Map([
      [facultyKey('anal-tone', 'midline'), 0.5],
      [facultyKey('bowel', 'midline'), 0.4],
      [facultyKey('saddle-sensation', 'midline'), 0.5],
      [facultyKey('sexual', 'midline'), 0.3],
    ]),
  });
}

/**
 * Share of the lesions at a place that strike it on both sides at once: thighs bent for hours in labour or at an operation,
 * blood behind the peritoneum, a waistband or an operating table, legs that lay or squatted, fat that was lost, muscles that
 * swell after a march, crutches, arms over the back of a bench, handcuffs, lead, hands on handlebars, shoulders put out in a
 * seizure, arms tied down or bent in bed for days, a neck that was cleared of its nodes on both sides, joints that swell on both sides. Judged.
 */
const onBothSides: Readonly<Partial<Record<PlaceKey, number>>> = {
  'spinal-accessory-nerve': 0.08,
  'greater-occipital-nerve': 0.12,
  'suprascapular-nerve': 0.04,
  'suprascapular-nerve-spinoglenoid': 0.04,
  'long-thoracic-nerve': 0.04,
  'axillary-nerve': 0.02,
  'radial-nerve-axilla': 0.06,
  'radial-nerve-spiral-groove': 0.03,
  'posterior-interosseous-nerve': 0.05,
  'superficial-radial-nerve': 0.1,
  'anterior-interosseous-nerve': 0.02,
  'median-nerve-upper-arm': 0.1,
  'median-nerve-wrist': 0.12,
  'ulnar-nerve-elbow': 0.06,
  'ulnar-nerve-wrist': 0.08,
  'deep-branch-of-ulnar-nerve': 0.05,
  'obturator-nerve': 0.08,
  'femoral-nerve-pelvis': 0.2,
  'femoral-nerve-groin': 0.15,
  'lateral-femoral-cutaneous-nerve': 0.14,
  'saphenous-nerve': 0.04,
  'posterior-femoral-cutaneous-nerve': 0.08,
  'superior-gluteal-nerve': 0.05,
  'common-fibular-nerve': 0.1,
  'deep-fibular-nerve': 0.08,
  'deep-fibular-nerve-ankle': 0.06,
  'superficial-fibular-nerve': 0.05,
  'tibial-nerve-tarsal-tunnel': 0.08,
  'tibial-nerve-calf': 0.05,
  'medial-plantar-nerve': 0.08,
  'medial-calcaneal-nerve': 0.1,
  'sciatic-nerve': 0.04,
};

/** The same nerve on both sides by one cause, which is much commoner than two lesions by chance. */
function sameNerveOnBothSides(): Hypothesis[] {
  const motor = placesServing(motorSupplies);
  return (Object.entries(onBothSides) as [PlaceKey, number][]).flatMap(([key, share]) =>
    sideSpreads.flatMap((spread) =>
      mixedExtents.map((extent) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          const depth = spread[side];
          lesion.place(side, key, motor.has(key) ? extent.motor * depth : 0, extent.sensory * depth);
        }
        const frequency = (percentOf(key) * share) / (sideSpreads.length * mixedExtents.length);
        return hypothesis(placeSite(key, 'both'), `${extent.key}-${spread.key}`, frequency, lesion.build());
      }),
    ),
  );
}

/** Every focal lesion outside the cord and brain. */
export function peripheralHypotheses(): Hypothesis[] {
  return [
    ...placeHypotheses(),
    ...fascicularHypotheses(),
    ...intercostalHypotheses(),
    ...phrenicHypotheses(),
    bothPudendal(),
    ...sameNerveOnBothSides(),
    ...plexusHypotheses(),
    ...rootHypotheses(),
  ];
}

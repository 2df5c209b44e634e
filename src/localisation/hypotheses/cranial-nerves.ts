import type { BrainSystem } from '../../anatomy/brain/systems.ts';
import { cranialTerritories as cranial } from '../../anatomy/brain/territories/cranial-territories.ts';
import type { Territory } from '../../anatomy/brain/territory.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { BodySide } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { type FacultyChances, facultyKey } from '../process.ts';
import { comesOnSlowly, facultiesOf, type ProcessSign } from './process-signs.ts';
import { type TerritoryLesion, territoryHypotheses } from './territory-lesions.ts';

const growing: ReadonlySet<string> = new Set([
  'optic-chiasm',
  'optic-tract',
  'cerebellopontine-angle',
  'jugular-foramen',
  'cochlear-nerve',
  'trigeminal-nerve',
]);

/** Systems without which nobody would name a lesion by the place. */
const essentials: Readonly<Record<string, readonly BrainSystem[]>> = {
  'abducens-nerve': ['eye-movement'],
  'cavernous-sinus': ['eye-movement'],
  'orbital-apex': ['vision', 'eye-movement'],
  'cerebellopontine-angle': ['hearing-and-balance'],
  'jugular-foramen': ['throat'],
};

const at =
  (kind: SiteKind) =>
  (site: string, territory: Territory, percent: number, side?: TerritoryLesion['side']): TerritoryLesion => ({
    kind,
    site,
    territory,
    percent,
    ...(side && { side }),
    essential: essentials[site] ?? [],
    mayGrow: growing.has(site),
  });
const sight = at('visual-pathway');
const nerve = at('cranial-nerve');

/** A bleeding pituitary gland or an infected sinus clouds the mind of one in five or so. Judged. */
const drowsyWithIt = facultiesOf([
  ['consciousness', 0.15],
  ['attention', 0.1],
]);

/** A closed artery of the retina blinds within seconds; an inflamed or pressed optic nerve takes days and more. Judged. */
const closedArtery = { hyperacute: 2, acute: 0.8, subacute: 0.1, chronic: 0.05 } as const;
const inflamedNerve = { hyperacute: 0.2, acute: 1.1, subacute: 1.2, chronic: 1.1 } as const;

/** Both eyes fail within minutes by both occipital lobes far oftener than by two retinae. Judged. */
const bothEyes = { hyperacute: 0.2, acute: 0.7, subacute: 1, chronic: 1.2 } as const;

/** One labyrinth is lost within hours, and its nystagmus is gone within weeks. Judged. */
const oneLabyrinth = { hyperacute: 1.1, acute: 1.2, subacute: 0.5, chronic: 0.4 } as const;

/** Zoster of the geniculate ganglion breaks out within days. Judged. */
const inflamedGanglion = { hyperacute: 0.6, acute: 1.3, subacute: 0.7, chronic: 0.1 } as const;

/** A fifth nerve is inflamed, pressed or invaded over weeks; what numbs a face within minutes lies further in. Judged. */
const paceOfTheFifth = { hyperacute: 0.15, acute: 0.45, subacute: 1.3, chronic: 1.6 } as const;

/**
 * In the cerebellopontine angle lie schwannomas and meningiomas, whose signs are 3.7 years old on average when they are
 * found (recalled); hardly anything strikes there within days. Judged.
 */
const paceOfTheAngle = { hyperacute: 0.05, acute: 0.12, subacute: 0.6, chronic: 2 } as const;

/** Infection, inflammation and growth fill sinus and orbit over days to weeks; a bleeding gland is a site beside. Judged. */
const behindTheOrbit = { hyperacute: 0.6, acute: 1.1, subacute: 1.2, chronic: 1 } as const;

/** Zoster and torn vessels take the lowest nerves within days, growths over months. Judged. */
const atTheForamen = { hyperacute: 0.5, acute: 1, subacute: 1, chronic: 1.3 } as const;

/** The ear is lost overnight, or dulls over years. Judged. */
const paceOfTheEar = { hyperacute: 1, acute: 1, subacute: 0.9, chronic: 1.3 } as const;

/** Growths of the base of the skull come first, then torn arteries and operations: Keane, 100 palsies of the twelfth nerve (recalled). */
const paceOfTheTwelfth = { hyperacute: 0.5, acute: 0.8, subacute: 1.2, chronic: 1.5 } as const;

/** A tube, a cuff or the position of the neck has pressed on both by the time the person wakes. Judged. */
const pressedByATube = { hyperacute: 1.5, acute: 1.5, subacute: 0.1, chronic: 0.02 } as const;

/** What takes the like nerve on both sides of the base of the skull grows or spreads there. Judged. */
const alongTheBase = { hyperacute: 0.15, acute: 0.3, subacute: 1, chronic: 1.5 } as const;

/**
 * Thyroid disease swells the eye muscles, the lower one before the inner one, and drags the lids up: retraction in 91, restricted
 * movement in 43, the optic nerve in 6 of 100 (Bartley 1996, recalled). Other chances judged.
 */
const swollenEyeMuscles: readonly ProcessSign[] = [
  ['lid-retraction', 0.75, 0.1],
  ['superior-rectus', 0.5, 0.03],
  ['visual-acuity', 0.06, 0.01],
];
const swollenBySlow = { hyperacute: 0.02, acute: 0.15, subacute: 1, chronic: 1.6 } as const;

/** The nerve that fires closes the eye of its own side first. */
const closingLid = (side: BodySide): FacultyChances => new Map([[facultyKey('lid-spasm', side), 0.8]]);

/** Lesions of the visual pathway and of the cranial nerves. Frequencies judged from what reaches a neurologist. */
const lesions: readonly TerritoryLesion[] = [
  sight('retina', cranial.retina, 0.3),
  { ...sight('retina', cranial['retinal-artery'], 0.15), paces: closedArtery, ages: { from: 45, outside: 0.25 } },
  { ...sight('optic-nerve', cranial['optic-nerve'], 0.9), paces: inflamedNerve },
  sight('optic-nerve', cranial['optic-nerve-head'], 0.5),
  { ...sight('optic-nerve', cranial['optic-nerve-both'], 0.22, 'both'), paces: inflamedNerve },
  { ...sight('retina', cranial['retina-both'], 0.07, 'both'), paces: bothEyes },
  sight('optic-nerve', cranial['optic-nerve-head-both'], 0.07, 'both'),
  // Inflamed optic nerves of children are swollen and of both eyes in most (from-memory).
  {
    ...sight('optic-nerve', cranial['optic-nerves-inflamed-at-the-head'], 0.06, 'both'),
    paces: inflamedNerve,
    ages: { to: 18, outside: 0.02 },
  },
  sight('optic-chiasm', cranial['optic-chiasm'], 0.35, 'midline'),
  sight('optic-chiasm', cranial['optic-chiasm-and-nerve'], 0.1, 'midline'),
  {
    ...sight('optic-chiasm', cranial['optic-chiasm-and-ocular-nerves'], 0.1, 'midline'),
    faculties: drowsyWithIt,
  },
  sight('optic-tract', cranial['optic-tract'], 0.12),
  sight('optic-tract', cranial['optic-tract-and-oculomotor-nerve'], 0.03),
  sight('optic-tract', cranial['lateral-geniculate-body'], 0.04),
  sight('optic-radiation-temporal', cranial['optic-radiation-temporal'], 0.15),
  sight('optic-radiation-parietal', cranial['optic-radiation-parietal'], 0.15),
  nerve('olfactory-nerve', cranial['olfactory-nerve'], 0.2),
  nerve('olfactory-nerve', cranial['olfactory-nerve-both'], 0.25, 'both'),
  nerve('oculomotor-nerve', cranial['oculomotor-nerve-compressed'], 0.5),
  nerve('oculomotor-nerve', cranial['oculomotor-nerve-core'], 0.5),
  nerve('oculomotor-nerve', cranial['oculomotor-nerve-both'], 0.02, 'both'),
  nerve('trochlear-nerve', cranial['trochlear-nerve'], 0.35),
  nerve('abducens-nerve', cranial['abducens-nerve'], 0.8),
  nerve('abducens-nerve', cranial['petrous-apex'], 0.05),
  nerve('trochlear-nerve', cranial['trochlear-nerve-both'], 0.05, 'both'),
  nerve('abducens-nerve', cranial['abducens-nerve-both'], 0.08, 'both'),
  { ...nerve('cavernous-sinus', cranial['cavernous-sinus'], 0.25), faculties: drowsyWithIt, paces: behindTheOrbit },
  // A tenth of the palsies of one ocular nerve come from what grows or fills here (Fang 2017, recalled).
  nerve('cavernous-sinus', cranial['cavernous-sinus-third-nerve'], 0.08),
  nerve('cavernous-sinus', cranial['cavernous-sinus-sixth-nerve'], 0.06),
  nerve('cavernous-sinus', cranial['cavernous-sinus-arterialised'], 0.05),
  { ...nerve('cavernous-sinus', cranial['cavernous-sinus-both'], 0.03, 'both'), faculties: drowsyWithIt },
  { ...nerve('cavernous-sinus', cranial['cavernous-sinus-with-ganglion'], 0.05), paces: comesOnSlowly },
  { ...nerve('orbital-apex', cranial['orbital-apex'], 0.12), paces: behindTheOrbit },
  ...[undefined, 'both' as const].map((side) => ({
    ...nerve('orbital-apex', cranial[side ? 'swollen-eye-muscles-both' : 'swollen-eye-muscles'], 0.05, side),
    isAllOrMost: true,
    essential: ['eye-movement' as const],
    ...(side
      ? { faculties: facultiesOf(swollenEyeMuscles) }
      : { facultiesOnSide: (worse: BodySide) => facultiesOf(swollenEyeMuscles, worse) }),
    paces: swollenBySlow,
  })),
  { ...nerve('trigeminal-nerve', cranial['trigeminal-nerve'], 0.3), paces: paceOfTheFifth },
  { ...nerve('trigeminal-nerve', cranial['trigeminal-nerve-both'], 0.04, 'both'), paces: paceOfTheFifth },
  {
    ...nerve('facial-nerve', cranial['facial-nerve-irritated'], 0.05),
    facultiesOnSide: closingLid,
    paces: comesOnSlowly,
  },
  nerve('facial-nerve', cranial['facial-nerve-canal'], 1.6),
  nerve('facial-nerve', cranial['facial-nerve-beyond'], 0.6),
  nerve('facial-nerve', cranial['facial-nerve-both'], 0.16, 'both'),
  { ...nerve('facial-nerve', cranial['facial-and-eighth-nerves'], 0.08), paces: inflamedGanglion },
  { ...nerve('vestibular-nerve', cranial['vestibular-nerve'], 1), paces: oneLabyrinth },
  nerve('vestibular-nerve', cranial['vestibular-nerve-both'], 0.08, 'both'),
  nerve('vestibular-nerve', cranial['labyrinth-and-cochlea'], 0.25),
  nerve('vestibular-nerve', cranial['semicircular-canal'], 0.5),
  { ...nerve('cochlear-nerve', cranial['cochlear-nerve'], 0.6), paces: paceOfTheEar },
  nerve('cochlear-nerve', cranial['cochlear-nerve-both'], 0.1, 'both'),
  // Hearing is lost in over nine in ten (recalled), so that what takes only a part of everything is rare.
  {
    ...nerve('cerebellopontine-angle', cranial['cerebellopontine-angle'], 0.2),
    paces: paceOfTheAngle,
    isAllOrMost: true,
  },
  {
    ...nerve('cerebellopontine-angle', cranial['cerebellopontine-angle-large'], 0.1),
    paces: paceOfTheAngle,
    isAllOrMost: true,
  },
  { ...nerve('jugular-foramen', cranial['jugular-foramen'], 0.06), paces: atTheForamen },
  { ...nerve('jugular-foramen', cranial['jugular-foramen-and-hypoglossal-canal'], 0.045), paces: atTheForamen },
  { ...nerve('vagus-nerve', cranial['vagus-nerve'], 0.12), paces: paceOfTheTwelfth },
  { ...nerve('vagus-nerve', cranial['carotid-sheath'], 0.02), essential: ['throat'], paces: paceOfTheTwelfth },
  { ...nerve('recurrent-laryngeal-nerve', cranial['thoracic-inlet'], 0.04), paces: paceOfTheTwelfth },
  nerve('recurrent-laryngeal-nerve', cranial['recurrent-laryngeal-nerve'], 0.25),
  nerve('recurrent-laryngeal-nerve', cranial['recurrent-laryngeal-nerve-both'], 0.02, 'both'),
  nerve('spinal-accessory-nerve', cranial['accessory-nerve'], 0.06),
  { ...nerve('hypoglossal-nerve', cranial['hypoglossal-nerve'], 0.12), paces: paceOfTheTwelfth },
  nerve('hypoglossal-nerve', cranial['hypoglossal-nerve-beside-the-vagus'], 0.03),
  nerve('hypoglossal-nerve', cranial['hypoglossal-nerve-beside-the-carotid'], 0.02),
  { ...nerve('hypoglossal-nerve', cranial['hypoglossal-nerve-both'], 0.01, 'both'), paces: alongTheBase },
  { ...nerve('hypoglossal-nerve', cranial['hypoglossal-nerve-both'], 0.015, 'both'), paces: pressedByATube },
  nerve('oculosympathetic-chain', cranial['oculosympathetic-chain'], 0.25),
  nerve('oculosympathetic-chain', cranial['carotid-sympathetic-plexus'], 0.15),
  // A tonic pupil is as frequent as a palsy of the oculomotor nerve: 4.7 and 4.0 in 100,000 a year (recalled).
  nerve('ciliary-ganglion', cranial['ciliary-ganglion'], 0.22),
];

/** Every focal lesion from the eye to the skull base. */
export function cranialHypotheses(): Hypothesis[] {
  return territoryHypotheses(lesions);
}

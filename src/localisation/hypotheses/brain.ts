import type { BrainSystem } from '../../anatomy/brain/systems.ts';
import { brainstemTerritories as brainstem } from '../../anatomy/brain/territories/brainstem-territories.ts';
import { cerebellarTerritories as cerebellum } from '../../anatomy/brain/territories/cerebellar-territories.ts';
import { hemisphereTerritories as hemisphere } from '../../anatomy/brain/territories/hemisphere-territories.ts';
import { medullaryTerritories as medulla } from '../../anatomy/brain/territories/medullary-territories.ts';
import type { Territory } from '../../anatomy/brain/territory.ts';
import type { MuscleGroup } from '../../anatomy/movement.ts';
import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import { bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type Process, processOf } from '../process.ts';
import {
  afterAnOldOne,
  bothFrontalLobes,
  bothPosteriorArteries,
  changedManner,
  cutOffHand,
  frontalLobesBeside,
  inflamedTemporalLobe,
  lockedIn,
  pushedDown,
  silencedBoth,
  swelling,
} from './brain-faculties.ts';
import { foramenMagnum } from './foramen-magnum.ts';
import { facultiesOf } from './process-signs.ts';
import { type TerritoryLesion, territoryHypotheses } from './territory-lesions.ts';

const at = (
  kind: SiteKind,
  site: string,
  territory: Territory,
  percent: number,
  side?: TerritoryLesion['side'],
): TerritoryLesion => ({
  kind,
  site,
  territory,
  percent,
  ...(side && { side }),
  essential: essentials[site] ?? [],
  hardlySpared: hardlySpared[site] ?? [],
  mayGrow: growing.has(site),
});

/** The same where a growth there is met with raised pressure. */
const pressing = (lesion: TerritoryLesion): TerritoryLesion => ({ ...lesion, mayPress: true });

const growing: ReadonlySet<string> = new Set([
  'cortex-parasagittal',
  'cortex-frontal',
  'cortex-temporal',
  'bulbar-motor-nuclei',
  'midbrain-dorsal',
  'brainstem-diffuse',
]);

/** Systems without which nobody would name a lesion by the territory. */
const essentials: Readonly<Record<string, readonly BrainSystem[]>> = {
  'internal-capsule': ['motor'],
  thalamus: ['body-sensation'],
  'thalamus-and-capsule': ['motor', 'body-sensation'],
  'cortex-anterior-cerebral': ['motor'],
  'cortex-posterior-cerebral': ['vision'],
  'cortex-temporal': ['vision', 'language'],
  'midbrain-ventral': ['motor', 'eye-movement'],
  'midbrain-tegmentum': ['eye-movement'],
  'pons-ventral': ['motor'],
  'pons-tegmentum': ['eye-movement'],
  'medulla-medial': ['motor'],
};

/** Systems that a lesion of the territory spares in few. */
const hardlySpared: Readonly<Record<string, readonly BrainSystem[]>> = { 'cortex-middle-cerebral': ['motor'] };

/** A hand that fails from the cortex alone is an embolus in nearly all (Peters 2009, recalled); what grows there takes more than the hand. Judged. */
const handPaces = { hyperacute: 1.2, acute: 1, subacute: 0.3, chronic: 0.2 } as const;

/**
 * Both medial temporal lobes fail within minutes in transient amnesia, 3 to 8 in 100,000 a year, and within weeks when they
 * are inflamed. Judged.
 */
const amnesiaPaces = { hyperacute: 1.2, acute: 0.8, subacute: 1, chronic: 0.3 } as const;

/** The territory of an artery, beside lesions of any kind in the same part. Judged. */
const arteryPaces = { hyperacute: 1.2, acute: 1.2, subacute: 0.3, chronic: 0.1 } as const;

/** One in fifty infarcts lies in its territory alone: Arboix 2009 (recalled). */
const anteriorCerebralPaces = { hyperacute: 0.6, acute: 0.7, subacute: 0.8, chronic: 0.8 } as const;

/** What takes both leg areas is a tumour of the falx in most; a clotted sinus does it over hours to days. Judged. */
const parasagittalPaces = { hyperacute: 0.2, acute: 0.6, subacute: 1, chronic: 1.2 } as const;

/** All that the middle cerebral artery feeds, face to foot and all of language, fails in a stroke; what grows takes a lobe first. Judged. */
const wholeArteryPaces = { hyperacute: 1, acute: 1, subacute: 0.5, chronic: 0.3 } as const;

/** A division of that artery closes in a stroke; what takes the same cortex over weeks or years is named by the lobe. Judged. */
const divisionPaces = { hyperacute: 1, acute: 1, subacute: 0.7, chronic: 0.45 } as const;

/** A wasting takes years. Judged. */
const wastingPaces = { hyperacute: 0.01, acute: 0.03, subacute: 0.5, chronic: 3 } as const;

/** The small arteries of deep nuclei close in the second half of life. Judged. */
const smallVesselAges = { from: 45, outside: 0.3 } as const;

/** One small infarct after another. Judged. */
const bySteps = { hyperacute: 0.3, acute: 0.5, subacute: 1.3, chronic: 3 } as const;

/** Dystonia follows an injury of the striatum after months to years, chorea after days. Judged. */
const striatumPaces = { hyperacute: 0.8, acute: 1.2, subacute: 1.2, chronic: 1.4 } as const;

/** Hardly anything grows in the capsule: what fails over months to years fails elsewhere. Judged. */
const capsulePaces = { hyperacute: 1, acute: 1, subacute: 0.35, chronic: 0.2 } as const;

const inCapsule = (territory: Territory, percent: number): TerritoryLesion => ({
  ...at('hemisphere', 'internal-capsule', territory, percent),
  paces: capsulePaces,
});

/** Behind, what comes on over months grows in a lobe or wastes both. */
const inPosteriorArtery = (territory: Territory, percent: number): TerritoryLesion => ({
  ...at('hemisphere', 'cortex-posterior-cerebral', territory, percent),
  paces: wholeArteryPaces,
});

/** The middle of both thalami never fails without the mind. */
const ofTheMind = (lesion: TerritoryLesion): TerritoryLesion => ({ ...lesion, essential: ['conduct'] });

/** Lesions of the hemispheres by artery, lobe and deep structure. Frequencies judged from what reaches a neurologist. */
const hemisphereLesions: readonly TerritoryLesion[] = [
  {
    ...at('hemisphere', 'cortex-middle-cerebral', hemisphere['cortex-middle-cerebral'], 2),
    isAllOrMost: true,
    paces: wholeArteryPaces,
  },
  { ...at('hemisphere', 'cortex-middle-cerebral', hemisphere['middle-cerebral-stem'], 0.35), isAllOrMost: true },
  {
    ...at('hemisphere', 'cortex-middle-cerebral', hemisphere['middle-cerebral-stem'], 0.35),
    isAllOrMost: true,
    faculties: swelling,
  },
  {
    ...at('hemisphere', 'cortex-middle-cerebral-upper', hemisphere['cortex-middle-cerebral-upper'], 1.8),
    paces: divisionPaces,
  },
  at('hemisphere', 'cortex-middle-cerebral-upper', hemisphere['cortex-inferior-frontal'], 0.4),
  {
    ...at('hemisphere', 'cortex-middle-cerebral-lower', hemisphere['cortex-middle-cerebral-lower'], 1),
    isAllOrMost: true,
    paces: divisionPaces,
  },
  {
    ...at('hemisphere', 'cortex-anterior-cerebral', hemisphere['cortex-anterior-cerebral'], 0.6),
    paces: anteriorCerebralPaces,
  },
  { ...at('hemisphere', 'cortex-anterior-cerebral', hemisphere['parasagittal-of-one-side'], 0.12), mayGrow: true },
  { ...at('hemisphere', 'cortex-anterior-cerebral', hemisphere['cortex-foot-area'], 0.12), paces: handPaces },
  {
    ...at('hemisphere', 'cortex-anterior-cerebral', hemisphere['cortex-anterior-cerebral'], 0.05),
    isAllOrMost: true,
    faculties: cutOffHand,
  },
  {
    ...at('hemisphere', 'cortex-anterior-cerebral', hemisphere['branches-to-the-callosum'], 0.04),
    isAllOrMost: true,
    essential: [],
    faculties: cutOffHand,
  },
  inPosteriorArtery(hemisphere['cortex-posterior-cerebral'], 0.7),
  inPosteriorArtery(hemisphere['posterior-cerebral-lower-branches'], 0.3),
  inPosteriorArtery(hemisphere['posterior-cerebral-with-thalamus'], 0.35),
  inPosteriorArtery(hemisphere['posterior-cerebral-stem'], 0.08),
  {
    ...at('hemisphere', 'cortex-posterior-cerebral', hemisphere['posterior-cerebral-both'], 0.08, 'both'),
    paces: arteryPaces,
    faculties: bothPosteriorArteries,
  },
  {
    ...at('hemisphere', 'cortex-parasagittal', hemisphere['cortex-parasagittal'], 0.26, 'both'),
    paces: parasagittalPaces,
  },
  {
    ...at('hemisphere', 'cortex-parasagittal', hemisphere['cortex-parasagittal'], 0.06, 'both'),
    paces: parasagittalPaces,
    faculties: frontalLobesBeside,
  },
  {
    ...at('hemisphere', 'cortex-parasagittal', hemisphere['anterior-cerebral-both'], 0.04, 'both'),
    paces: arteryPaces,
  },
  {
    ...at('hemisphere', 'cortex-parasagittal', hemisphere['arms-of-both-border-zones'], 0.05, 'both'),
    isAllOrMost: true,
    paces: arteryPaces,
  },
  {
    ...at('hemisphere', 'cortex-parasagittal', hemisphere['arms-and-hands-of-both-border-zones'], 0.04, 'both'),
    isAllOrMost: true,
    paces: arteryPaces,
  },
  { ...at('hemisphere', 'cortex-hand-area', hemisphere['cortex-hand-area'], 0.5), paces: handPaces },
  { ...at('hemisphere', 'cortex-hand-area', hemisphere['cortex-hand-and-arm'], 0.2), paces: handPaces },
  at('hemisphere', 'cortex-frontal', hemisphere['cortex-frontal'], 0.5),
  { ...at('hemisphere', 'cortex-frontal', hemisphere['frontal-base-of-one-side'], 0.05), isAllOrMost: true },
  at('hemisphere', 'cortex-frontal', hemisphere['cortex-frontal-both'], 0.06, 'both'),
  {
    ...at('hemisphere', 'cortex-frontal', hemisphere['cortex-frontal-both'], 0.06, 'both'),
    faculties: bothFrontalLobes,
  },
  at('hemisphere', 'cortex-frontal', hemisphere['cortex-frontal-with-motor-strip'], 0.25),
  at('hemisphere', 'cortex-frontal', hemisphere['frontal-growth-at-the-motor-strip'], 0.1),
  {
    ...at('hemisphere', 'cortex-frontal', hemisphere['cortex-frontal-with-motor-strip'], 0.2),
    faculties: swelling,
  },
  at('hemisphere', 'cortex-frontal', hemisphere['upper-frontal-with-leg-area'], 0.08),
  pressing(at('hemisphere', 'cortex-parietal', hemisphere['cortex-parietal'], 0.4)),
  pressing(at('hemisphere', 'cortex-parietal', hemisphere['cortex-parietal-with-motor-strip'], 0.2)),
  at('hemisphere', 'cortex-parietal', hemisphere['cortex-inferior-parietal'], 0.35),
  at('hemisphere', 'cortex-parietal', hemisphere['cortex-superior-parietal'], 0.2),
  at('hemisphere', 'cortex-parietal', hemisphere['cortex-postcentral'], 0.2),
  at('hemisphere', 'cortex-parietal', hemisphere['parieto-occipital-both'], 0.08, 'both'),
  {
    ...at('hemisphere', 'cortex-parietal', hemisphere['posterior-atrophy-of-one-side-more'], 0.06, 'both'),
    paces: wastingPaces,
    ages: { from: 45, outside: 0.1 },
  },
  at('hemisphere', 'cortex-temporal', hemisphere['cortex-temporal'], 0.3),
  { ...at('hemisphere', 'cortex-temporal', hemisphere['cortex-temporal'], 0.15), faculties: inflamedTemporalLobe },
  {
    ...at('hemisphere', 'cortex-temporal', hemisphere['temporal-lobes-wasting'], 0.08, 'both'),
    essential: [],
    faculties: changedManner,
    paces: wastingPaces,
    ages: { from: 45, outside: 0.1 },
  },
  at('hemisphere', 'cortex-temporal', hemisphere['medial-temporal-lobe'], 0.08),
  {
    ...at('hemisphere', 'cortex-temporal', hemisphere['medial-temporal-lobes-both'], 0.2, 'both'),
    paces: amnesiaPaces,
  },
  pressing(at('hemisphere', 'cortex-occipital', hemisphere['cortex-occipital'], 0.5)),
  at('hemisphere', 'cortex-occipital', hemisphere['cortex-occipital-both'], 0.12, 'both'),
  at('hemisphere', 'cortex-occipital', hemisphere['upper-banks-of-both-calcarine-fissures'], 0.05, 'both'),
  at('hemisphere', 'cortex-occipital', hemisphere['lower-banks-of-both-calcarine-fissures'], 0.05, 'both'),
  at('hemisphere', 'cortex-occipital', hemisphere['cortex-above-calcarine'], 0.12),
  at('hemisphere', 'cortex-occipital', hemisphere['cortex-below-calcarine'], 0.12),
  inCapsule(hemisphere['internal-capsule'], 2),
  { ...at('hemisphere', 'internal-capsule', hemisphere['capsule-with-swelling'], 0.4), faculties: swelling },
  inCapsule(hemisphere.striatocapsular, 0.25),
  inCapsule(hemisphere['corona-radiata'], 1),
  inCapsule(hemisphere['capsule-with-frontopontine-fibres'], 0.35),
  inCapsule(hemisphere['capsule-genu'], 0.4),
  { ...inCapsule(hemisphere['capsule-slight'], 0.25), isAllOrMost: true },
  inCapsule(hemisphere['anterior-choroidal'], 0.2),
  { ...at('hemisphere', 'striatum', hemisphere.striatum, 0.25), paces: striatumPaces },
  { ...at('hemisphere', 'striatum', hemisphere['striatum-and-edge-of-capsule'], 0.12), paces: striatumPaces },
  at('hemisphere', 'thalamus', hemisphere.thalamus, 0.8),
  {
    ...at('hemisphere', 'thalamus', hemisphere['thalamus-ventral-posteromedial'], 0.15),
    ages: smallVesselAges,
  },
  at('hemisphere', 'thalamus', hemisphere['thalamus-lateral'], 0.25),
  at('hemisphere', 'thalamus', hemisphere['thalamus-ventrolateral'], 0.05),
  at('hemisphere', 'thalamus', hemisphere['thalamus-medial'], 0.15),
  ofTheMind(at('hemisphere', 'thalamus', hemisphere['thalamus-medial-and-genu'], 0.1)),
  ofTheMind(at('hemisphere', 'thalamus', hemisphere['thalamus-medial-both-and-one-genu'], 0.05, 'both')),
  ofTheMind(at('hemisphere', 'thalamus', hemisphere['thalamus-medial-both'], 0.06, 'both')),
  ofTheMind(at('hemisphere', 'thalamus', hemisphere['thalamus-medial-both-and-midbrain'], 0.04, 'both')),
  { ...at('hemisphere', 'thalamus-and-capsule', hemisphere['thalamus-and-capsule'], 0.8), paces: capsulePaces },
  at('hemisphere', 'thalamus-and-capsule', hemisphere['thalamus-large'], 0.2),
  {
    ...at('hemisphere', 'thalamus-and-capsule', hemisphere['thalamus-capsule-and-geniculate'], 0.15),
    paces: capsulePaces,
  },
  {
    ...at('hemisphere', 'corticobulbar-both-sides', hemisphere['corticobulbar-both-sides'], 0.5, 'both'),
    paces: bySteps,
  },
  {
    ...at('hemisphere', 'corticobulbar-both-sides', hemisphere['opercula-both'], 0.02, 'both'),
    isAllOrMost: true,
    faculties: silencedBoth,
    paces: capsulePaces,
  },
  {
    ...at('hemisphere', 'corticobulbar-both-sides', hemisphere['second-of-two-hemispheres'], 0.08, 'both'),
    isAllOrMost: true,
    faculties: afterAnOldOne,
    paces: capsulePaces,
  },
];

/** What takes the whole brainstem by halves spreads or swells; a closed basilar artery strikes at once. Judged. */
const spreadingPaces = { hyperacute: 0.35, acute: 1.2, subacute: 1.4, chronic: 1 } as const;

/** A basilar artery closes within minutes, or by steps over days. Judged. */
const basilarPaces = { hyperacute: 1, acute: 1.2, subacute: 0.3, chronic: 0.02 } as const;

/** A pons that fails as a whole bleeds or loses its artery at once; a glioma fills it over weeks. Judged. */
const bleedingPaces = { hyperacute: 1.2, acute: 1, subacute: 0.8, chronic: 0.8 } as const;

/** Inflammation of the brainstem takes days to weeks. Judged. */
const inflamedPaces = { hyperacute: 0.1, acute: 1.5, subacute: 1.5, chronic: 0.3 } as const;

/** Want of thiamine shows over days to weeks, and no artery closes. Adams and Victor, Wernicke disease (recalled); figures judged. */
const starvedPaces = { hyperacute: 0.05, acute: 0.8, subacute: 1.4, chronic: 0.7 } as const;

/** Motor cells of the medulla die over weeks to years; no artery feeds those of both halves alone. Judged. */
const bulbarPaces = { hyperacute: 0.2, acute: 0.4, subacute: 1.2, chronic: 2 } as const;

/** The motor tracts in the base of the brainstem fail by a closed small artery in most. Judged. */
const basePaces = { hyperacute: 1.1, acute: 1.1, subacute: 0.5, chronic: 0.5 } as const;

const inBase = (key: 'midbrain-ventral' | 'pons-ventral', territory: Territory, percent: number): TerritoryLesion => ({
  ...at('brainstem', key, territory, percent),
  paces: basePaces,
});

const brainstemLesions: readonly TerritoryLesion[] = [
  inBase('midbrain-ventral', brainstem['midbrain-ventral'], 0.2),
  inBase('midbrain-ventral', brainstem['midbrain-ventral-and-lemniscus'], 0.09),
  inBase('midbrain-ventral', brainstem['midbrain-peduncle'], 0.06),
  // A temporal lobe that is pushed down presses on peduncle and third nerve, and nobody stays awake.
  { ...inBase('midbrain-ventral', brainstem['midbrain-ventral'], 0.05), isAllOrMost: true, faculties: pushedDown },
  at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-tegmentum'], 0.22),
  at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-tegmentum-and-peduncle'], 0.06),
  at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-oculomotor-nucleus'], 0.06),
  at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-paramedian'], 0.05),
  at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-paramedian-lower'], 0.05, 'both'),
  {
    ...at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-top-of-basilar'], 0.06, 'both'),
    isAllOrMost: true,
    essential: ['eye-movement'],
    paces: arteryPaces,
  },
  at('brainstem', 'midbrain-tegmentum', brainstem['midbrain-dorsolateral'], 0.06),
  at('brainstem', 'midbrain-dorsal', brainstem['midbrain-dorsal'], 0.25, 'midline'),
  inBase('pons-ventral', brainstem['pons-ventral-upper'], 0.45),
  inBase('pons-ventral', brainstem['pons-ventral-lower'], 0.25),
  inBase('pons-ventral', brainstem['pons-ventral-middle'], 0.12),
  at('brainstem', 'pons-ventral', brainstem['pons-ventrolateral'], 0.08),
  at('brainstem', 'pons-ventral', brainstem['pons-ventral-with-lemniscus'], 0.05),
  inBase('pons-ventral', brainstem['pons-half'], 0.08),
  inBase('pons-ventral', brainstem['pons-ventral-with-pontine-nuclei'], 0.25),
  { ...at('brainstem', 'pons-ventral', brainstem['pons-ventral-both'], 0.12, 'both'), faculties: lockedIn },
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum'], 0.2),
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-and-base'], 0.12),
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-and-upper-base'], 0.06),
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-both'], 0.05, 'both'),
  at('brainstem', 'pons-tegmentum', brainstem['one-and-a-half'], 0.08),
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-paramedian'], 0.05),
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-fascicles-of-both-sides'], 0.04, 'both'),
  at('brainstem', 'pons-tegmentum', brainstem['pons-medial-lemniscus'], 0.05),
  at('brainstem', 'pons-tegmentum', brainstem['pons-lemnisci-of-the-midline'], 0.1),
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-upper'], 0.08),
  {
    ...at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-and-cerebellar-paths'], 0.05),
    isAllOrMost: true,
    essential: ['coordination'],
    paces: bySteps,
  },
  at('brainstem', 'pons-tegmentum', brainstem['pons-tegmentum-and-fascicle'], 0.06),
  at('brainstem', 'pons-lateral', brainstem['pons-lateral-lower'], 0.25),
  { ...at('brainstem', 'pons-lateral', brainstem['anterior-inferior-cerebellar'], 0.15), paces: arteryPaces },
  at('brainstem', 'pons-lateral', brainstem['pons-lateral-middle'], 0.1),
  at('brainstem', 'pons-lateral', brainstem['pons-lateral-upper'], 0.12),
  at('brainstem', 'medial-longitudinal-fasciculus', brainstem['medial-longitudinal-fasciculus'], 0.4),
  at('brainstem', 'medial-longitudinal-fasciculus', brainstem['medial-longitudinal-fasciculus-both'], 0.15, 'both'),
  { ...at('brainstem', 'medulla-medial', medulla['medulla-medial'], 0.1), ages: smallVesselAges },
  { ...at('brainstem', 'medulla-medial', medulla['medulla-medial-upper'], 0.15), ages: smallVesselAges },
  at('brainstem', 'medulla-medial', medulla['medulla-medial-both'], 0.03, 'both'),
  at('brainstem', 'medulla-lateral', medulla['medulla-lateral'], 0.6),
  at('brainstem', 'medulla-lateral', medulla['medulla-lateral-and-cerebellum'], 0.2),
  at('brainstem', 'medulla-lateral', medulla['medulla-lateral-lower'], 0.09),
  at('brainstem', 'medulla-half', medulla['medulla-half'], 0.04),
  at('brainstem', 'medulla-half', medulla['medulla-half-below-the-crossing'], 0.03),
  {
    ...at('brainstem', 'bulbar-motor-nuclei', medulla['bulbar-motor-nuclei'], 0.15, 'midline'),
    paces: bulbarPaces,
  },
  { ...at('brainstem', 'brainstem-diffuse', brainstem['brainstem-diffuse'], 0.12, 'midline'), paces: spreadingPaces },
  {
    ...at('brainstem', 'brainstem-diffuse', brainstem['brainstem-one-side-more'], 0.1, 'midline'),
    paces: inflamedPaces,
  },
  {
    ...at('brainstem', 'brainstem-diffuse', brainstem['basilar-artery-one-side-more'], 0.15, 'midline'),
    essential: ['motor'],
    paces: basilarPaces,
  },
  at('brainstem', 'brainstem-diffuse', brainstem['brainstem-long-tracts'], 0.05, 'midline'),
  {
    ...at('brainstem', 'brainstem-diffuse', brainstem['pons-whole'], 0.12, 'midline'),
    faculties: silencedBoth,
    paces: bleedingPaces,
  },
  {
    ...at('brainstem', 'brainstem-diffuse', brainstem['pons-destroyed'], 0.04, 'midline'),
    isAllOrMost: true,
    faculties: lockedIn,
    paces: bleedingPaces,
  },
  { ...at('brainstem', 'brainstem-diffuse', medulla['medulla-dorsal-both'], 0.05, 'midline'), paces: inflamedPaces },
  {
    ...at('brainstem', 'brainstem-diffuse', brainstem['grey-matter-around-ventricles'], 0.15, 'midline'),
    paces: starvedPaces,
  },
];

/**
 * An infarct of the nodule and uvula spins like a lost labyrinth: 25 of 240 with a cerebellar infarct had vertigo and imbalance
 * alone, 24 of them in the medial branch of the posterior inferior cerebellar artery (Lee 2006, recalled). Chances judged.
 */
const likeALostLabyrinth = facultiesOf([
  ['nystagmus-vestibular', 0.6],
  ['trunk-coordination', 0.5],
]);

/** Drink wastes the vermis over months; alone it is struck by fewer strokes than the hemispheres. Judged. */
const vermisPaces = { hyperacute: 0.6, acute: 0.8, subacute: 1, chronic: 1.1 } as const;

/** It fails by degeneration, by medicines and by what crowds the foramen magnum; strokes seldom take it alone. Judged. */
const flocculusPaces = { hyperacute: 0.4, acute: 0.7, subacute: 1, chronic: 1.3 } as const;

const cerebellarLesions: readonly TerritoryLesion[] = [
  pressing(at('cerebellum', 'cerebellar-hemisphere', cerebellum['cerebellar-hemisphere'], 1.2)),
  pressing(at('cerebellum', 'cerebellar-hemisphere', cerebellum['cerebellar-hemisphere-and-vermis'], 0.4)),
  at('cerebellum', 'cerebellar-hemisphere', cerebellum['cerebellar-hemisphere-pressing-on-pons'], 0.18),
  {
    ...at('cerebellum', 'cerebellar-hemisphere', cerebellum['cerebellar-hemisphere-swollen'], 0.25),
    isAllOrMost: true,
    faculties: swelling,
    paces: arteryPaces,
  },
  at('cerebellum', 'cerebellar-hemisphere', cerebellum['cerebellar-hemispheres-both'], 0.06, 'both'),
  {
    ...at('cerebellum', 'cerebellar-hemisphere', cerebellum['cerebellar-nodule-and-uvula'], 0.12),
    isAllOrMost: true,
    faculties: likeALostLabyrinth,
    paces: arteryPaces,
    ages: { from: 45, outside: 0.3 },
  },
  {
    ...pressing(at('cerebellum', 'cerebellar-vermis', cerebellum['cerebellar-vermis'], 0.45, 'midline')),
    paces: vermisPaces,
  },
  {
    ...at('cerebellum', 'flocculonodular-lobe', cerebellum['flocculonodular-lobe'], 0.3, 'midline'),
    paces: flocculusPaces,
  },
];

/**
 * Small lesions of the hand's cortex that take some fingers only and so look like a nerve: those of the thumb side or those
 * of the little finger. Which muscles, by group, and which root's skin lies over them. Fractions and shares judged.
 */
const fingersAlone: readonly {
  readonly key: string;
  readonly groups: readonly MuscleGroup[];
  readonly skin: Segment;
}[] = [
  { key: 'thumb-side', groups: ['hand-thenar', 'forearm-extensors', 'finger-flexors'], skin: 'C6' },
  { key: 'little-finger-side', groups: ['hand', 'finger-flexors'], skin: 'C8' },
];
const percentOfFingersAlone = 0.2;

function handKnob(): Hypothesis[] {
  return fingersAlone.flatMap(({ key, groups, skin }) =>
    bodySides.flatMap((side) =>
      [0.55, 0.3].map((depth) => {
        const body = opposite(side);
        const felt: Process['largeFibre'] = (fibre) =>
          fibre.side === body && fibre.segment === segmentIndex(skin) && fibre.lengthCm > armTouchesHandCm
            ? depth * 0.5
            : 0;
        return hypothesis(
          {
            key: 'cortex-hand-area',
            label: hemisphere['cortex-hand-area'].label,
            side,
            level: null,
            kind: 'hemisphere',
          },
          `${key}-${depth}`,
          percentOfFingersAlone / 8,
          new LesionBuilder().brain(side, 'motor-cortex-hand', 0.15).brain(side, 'sensory-cortex-hand', 0.15).build(),
          {
            paces: handPaces,
            process: processOf({
              motor: (unit) =>
                unit.side === body && unit.group !== undefined && groups.includes(unit.group) ? depth : 0,
              largeFibre: felt,
              smallFibre: felt,
              sparesArcs: true,
              wasting: 'block',
              because: 'a small lesion of the cortex takes the fingers that lie side by side in it',
            }),
          },
        );
      }),
    ),
  );
}

/** Skin further than this from the cord, in cm, is that of the hand. */
const armTouchesHandCm = 65;

/** Every focal lesion of hemispheres, brainstem and cerebellum. */
export function brainHypotheses(): Hypothesis[] {
  return [
    ...territoryHypotheses([...hemisphereLesions, ...brainstemLesions, ...cerebellarLesions]),
    ...foramenMagnum(),
    ...handKnob(),
  ];
}

import { brainFunctionTable } from '../../anatomy/brain/functions.ts';
import { areaOf, type BodyArea, longTracts } from '../../anatomy/brain/long-tracts.ts';
import type { Path } from '../../anatomy/brain/path.ts';
import { brainStructures } from '../../anatomy/brain/structures.ts';
import { movementTable } from '../../anatomy/movements.ts';
import { type PlaceKey, placeKeys, placeTable } from '../../anatomy/places.ts';
import type { Faculty, Modality } from '../../anatomy/probe.ts';
import { reflexTable } from '../../anatomy/reflexes.ts';
import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import type { Item } from '../../exam/catalogue/item.ts';
import { lowerFirst } from '../../exam/describe.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';
import { type BodySide, opposite, type Side, sidesOf } from '../../kernel/side.ts';
import { type BrainBreak, breaksOn, pathOf } from '../brain-path.ts';
import { motorDeficit, motorItem } from '../forward/motor.ts';
import { sensoryDeficit, sensoryItem } from '../forward/sensory.ts';
import { type Strand, strandsOf } from '../forward/strands.ts';
import type { Hypothesis } from '../hypothesis.ts';
import type { Datum } from '../inference/evidence.ts';
import { cordIndex } from '../lesion.ts';
import { limbSegment } from '../observation/probe-target.ts';
import type { Aspect } from '../process.ts';
import { isProcess, siteWords } from './site-words.ts';

/** A stretch of the path that the hypothesis damages, in words. */
interface Break {
  readonly text: string;
  readonly share: number;
}

/** Fraction from which a damaged stretch is worth naming. */
const worthNaming = 0.2;

/**
 * The anatomical path in words: which damaged structure carries the item, or that the item keeps clear of the lesion.
 * A clause that completes "... because ...".
 */
export function because(hypothesis: Hypothesis, datum: Datum, isPredicted: boolean): string {
  if (hypothesis.site.kind === 'none' && isPredicted && hypothesis.process.because !== '')
    return hypothesis.process.because;
  if (hypothesis.site.kind === 'none')
    return datum.abnormal ? 'a healthy nervous system rarely shows it' : 'nothing is damaged';
  const { site, process } = hypothesis;
  // A process that takes cells wherever they are is the reason itself; a path through one of them would be a chance example.
  const first = everywhere.has(site.kind) ? undefined : breaksOf(hypothesis, datum)[0];
  if (datum.abnormal) {
    if (isPredicted && first !== undefined)
      return isSilenced(hypothesis, datum) ? `${first.text}, and ${process.because}` : first.text;
    if (isPredicted && process.because !== '') return process.reasons?.[aspectOf(datum)] ?? process.because;
    if (isPredicted) return `it goes with ${siteWords(site)}`;
    return isProcess(site)
      ? `${siteWords(site)} does not account for it`
      : `its path keeps clear of ${siteWords(site)}`;
  }
  if (first !== undefined)
    return isPredicted ? `only part of the path is affected: ${first.text}` : `${first.text}, so it should suffer`;
  if (isPredicted && process.because !== '' && isProcess(site))
    return process.reasons?.spared ?? `${siteWords(site)} spares it`;
  if (isPredicted) return `${sparedPath(datum)} keeps clear of the lesion`;
  return `${siteWords(site)} should change it`;
}

/** A jerk that is flat or a limb that is slack because the lesion above it is fresh: its fibres alone would not tell why. */
function isSilenced({ process }: Hypothesis, { finding, column }: Datum): boolean {
  const { item, side } = column.target;
  const segment = silencedSegment(item, finding.value);
  return segment !== null && process.shock({ side: side === 'right' ? 'right' : 'left', segment }) > 0.5;
}

/** The segment that a flat jerk or a slack limb tells of; null for anything else. */
function silencedSegment({ probe, region }: Item, value: Finding['value']): number | null {
  if (probe.kind === 'tone') return value === 'reduced' ? segmentIndex(toneSegment(region)) : null;
  if (probe.kind !== 'reflex' || isBrisk(value)) return null;
  const root = reflexTable.get(probe.reflex)?.dominantRoot ?? null;
  return root === null ? null : segmentIndex(root);
}

const toneSegment = (region: string): Segment => limbSegment[region === 'upper-limbs' ? 'upper' : 'lower'];

/** What an item is about, in the terms in which a process gives its reasons. */
function aspectOf({ finding, column }: Datum): Aspect {
  const { probe } = column.target.item;
  switch (probe.kind) {
    case 'denervation':
      return probe.feature === 'wasting' ? 'bulk' : 'twitching';
    case 'sensation':
    case 'proprioception':
      return 'feeling';
    case 'reflex':
      return isBrisk(finding.value) ? 'release' : 'reflex';
    case 'plantar':
    case 'clonus':
    case 'upper-motor':
      return 'release';
    case 'tone':
      return finding.value === 'spastic' ? 'release' : 'strength';
    case 'cerebellar':
      return 'coordination';
    case 'faculty':
      return autonomic.has(probe.faculty) ? 'autonomic' : ofStrength.has(probe.faculty) ? 'strength' : 'head';
    default:
      return 'strength';
  }
}

const autonomic: ReadonlySet<Faculty> = new Set<Faculty>([
  'blood-pressure',
  'heart-rate',
  'sweating',
  'gut',
  'sexual',
  'bowel',
  'bladder-retention',
  'bladder-urgency',
  'pupil-parasympathetic',
]);
const ofStrength: ReadonlySet<Faculty> = new Set<Faculty>([
  'fatigability',
  'voice-fatigability',
  'facilitation',
  'breathing',
  'myotonia',
]);

const everywhere: ReadonlySet<SiteKind> = new Set(['anterior-horn', 'motor-neuron-system']);

function breaksOf(hypothesis: Hypothesis, datum: Datum): readonly Break[] {
  const { probe } = datum.column.target.item;
  const side: BodySide = datum.column.target.side === 'right' ? 'right' : 'left';
  switch (probe.kind) {
    case 'movement':
      return motorBreaks(hypothesis, probe.movement, side);
    case 'weakness-of':
      return probe.movements
        .flatMap((movement) => motorBreaks(hypothesis, movement, side))
        .sort((a, b) => b.share - a.share);
    case 'reflex':
    case 'clonus':
      return reflexBreaks(hypothesis, probe.reflex, side);
    case 'plantar':
      return upperBreaks(hypothesis, 'L5', side, 'the foot');
    case 'upper-motor':
      return upperBreaks(
        hypothesis,
        limbSegment[probe.limb === 'upper' ? 'upper' : 'lower'],
        side,
        probe.limb === 'upper' ? 'the arm' : 'the leg',
      );
    case 'tone':
      return upperBreaks(hypothesis, toneSegment(datum.column.target.item.region), side, 'the limb');
    case 'sensation':
      return sensoryBreaks(hypothesis, datum, side);
    case 'faculty':
      return [
        ...functionBreaks(hypothesis, [probe.faculty, ...(probe.orAlso ?? [])], datum.column.target.side),
        ...(probe.orSkin ?? []).flatMap((key) => skinBreaks(hypothesis, 'landmark', key, 'light-touch', side)),
      ];
    case 'cerebellar':
      return functionBreaks(
        hypothesis,
        [probe.part === 'midline' ? 'trunk-coordination' : 'limb-coordination'],
        datum.column.target.side,
      );
    default:
      return [];
  }
}

/** What a strand has lost on its way, nearest structure first, each with the share of the item that it costs. */
function strandBreaks(
  hypothesis: Hypothesis,
  strands: readonly Strand[],
  fibres: 'motor' | 'sensory',
  what: (strand: Strand) => string,
): readonly Break[] {
  const { damage } = hypothesis.pathways;
  const found = new Map<string, number>();
  const note = (text: string, share: number): void => {
    if (share > 0) found.set(text, (found.get(text) ?? 0) + share);
  };
  for (const strand of strands) {
    const cells = fibres === 'motor' ? damage.motorPlace : damage.sensoryPlace;
    const cut = strand.places.findLast((place) => (cells[place] ?? 0) >= worthNaming);
    if (cut !== undefined) {
      // A lesion that hits the bundles of a nerve unequally is still one of that nerve.
      const named = strand.places.find((place) => placeKeyOf(place) === hypothesis.site.key) ?? cut;
      note(`${what(strand)} through the ${placeName(named)}`, strand.share * (cells[cut] ?? 0));
    }
    if (strand.segment === null || strand.root === null) continue;
    const cell = cordIndex(strand.side, strand.segment);
    const root = fibres === 'motor' ? damage.ventralRoot : damage.dorsalRoot;
    if (strand.throughRoot) note(`${what(strand)} through the ${strand.root} root`, strand.share * (root[cell] ?? 0));
    if (fibres === 'motor')
      note(
        `${what(strand)} from the anterior horn at ${strand.root}, in the lesion`,
        strand.share * (damage.anteriorHorn[cell] ?? 0),
      );
  }
  return [...found]
    .map(([text, share]) => ({ text, share }))
    .filter(({ share }) => share >= 0.1)
    .sort((a, b) => b.share - a.share);
}

function placeKeyOf(index: number): PlaceKey | undefined {
  return placeKeys[index % placeKeys.length];
}

function placeName(index: number): string {
  const key = placeKeyOf(index);
  const label = key === undefined ? '' : placeTable[key].label;
  return lowerFirst(label);
}

function motorBreaks(hypothesis: Hypothesis, movementKey: string, side: BodySide): readonly Break[] {
  const movement = movementTable.get(movementKey);
  if (movement === undefined) return [];
  const item = motorItem(movement, movement.paired ? side : 'midline');
  const named = (strand: Strand): string =>
    `the fibres for ${movement.supplies.find((supply) => supply === strand.supply)?.muscle ?? movement.label.toLowerCase()} run`;
  const lower = strandBreaks(hypothesis, item.strands, 'motor', named);
  const { upper } = motorDeficit(hypothesis, item);
  const above = upper >= 0.1 ? upperBreaks(hypothesis, movement.dominantRoot, side, movement.label.toLowerCase()) : [];
  return [...lower, ...above.map((one) => ({ ...one, share: upper }))].sort((a, b) => b.share - a.share);
}

/** The structure of the head that costs a path most, in words. */
function brainBreak(hypothesis: Hypothesis, path: Path, side: BodySide): string {
  const first = breaksOn(path, hypothesis.pathways.damage.brain, side)[0];
  return first === undefined ? `the ${opposite(side)} side of the brain` : structureWords(first);
}

function structureWords({ structure, side }: BrainBreak): string {
  return `the ${side === null ? '' : `${side} `}${brainStructures[structure].label}`;
}

/** Bundles and groups of nuclei are spoken of in the plural. */
function isPlural({ structure }: BrainBreak): boolean {
  return /\b(fibres|nuclei|canals)\b| and /.test(brainStructures[structure].label);
}

/** What a function of the head has lost on its way. */
function functionBreaks(hypothesis: Hypothesis, faculties: readonly Faculty[], side: Side): readonly Break[] {
  const sides = sidesOf(side);
  return faculties
    .flatMap((faculty) => {
      const row = brainFunctionTable.get(faculty);
      if (row === undefined) return [];
      return sides.flatMap((one) =>
        breaksOn(pathOf(row, one), hypothesis.pathways.damage.brain, one).map(
          (found): Break => ({
            text:
              found.structure === 'intracranial-pressure'
                ? `pressure in the skull disturbs ${row.carries}`
                : `${structureWords(found)} ${isPlural(found) ? 'serve' : 'serves'} ${row.carries}`,
            share: found.share,
          }),
        ),
      );
    })
    .filter(({ share }) => share >= 0.1)
    .sort((a, b) => b.share - a.share);
}

/** Where the corticospinal fibres bound for a segment are interrupted. */
function upperBreaks(hypothesis: Hypothesis, to: Segment, side: BodySide, what: string): readonly Break[] {
  const segment = segments.indexOf(to);
  const lost = 1 - hypothesis.pathways.motorTo(side, segment);
  if (lost < 0.1) return [];
  const { corticospinal } = hypothesis.pathways.damage;
  const level = segments.findIndex(
    (_, index) => index < segment && (corticospinal[cordIndex(side, index)] ?? 0) >= 0.1,
  );
  if (level === -1) {
    const place = brainBreak(hypothesis, longTracts.motor[areaOf(segment)], side);
    return [
      { text: `the corticospinal fibres for ${what} come down through ${place} and cross in the medulla`, share: lost },
    ];
  }
  return [
    {
      text: `the corticospinal fibres for ${what} run down the ${side} side of the cord through ${segments[level]}`,
      share: lost,
    },
  ];
}

function reflexBreaks(hypothesis: Hypothesis, reflexKey: string, side: BodySide): readonly Break[] {
  const row = reflexTable.get(reflexKey);
  if (row === undefined) return [];
  const name = lowerFirst(row.label);
  const inward = strandBreaks(hypothesis, strandsOf(row.afferent, side), 'sensory', () => `the ${name} runs`);
  const outward = strandBreaks(hypothesis, strandsOf(row.efferent, side), 'motor', () => `the ${name} runs`);
  const arc = [...inward, ...outward].sort((a, b) => b.share - a.share);
  if (arc.length > 0 || row.dominantRoot === null) return arc;
  return upperBreaks(hypothesis, row.dominantRoot, side, `the ${name}`);
}

function sensoryBreaks(hypothesis: Hypothesis, datum: Datum, side: BodySide): readonly Break[] {
  const { place, item } = datum.column.target;
  if (place === undefined || item.probe.kind !== 'sensation') return [];
  return skinBreaks(hypothesis, place.kind, place.key, item.probe.modality, side);
}

function skinBreaks(
  hypothesis: Hypothesis,
  kind: string,
  key: string,
  modality: Modality,
  side: BodySide,
): readonly Break[] {
  const row = kind === 'dermatome' || kind === 'landmark' || kind === 'territory' ? skinPlace(kind, key) : undefined;
  if (row === undefined) return [];
  const probe = sensoryItem(row, modality, side);
  const peripheral = strandBreaks(hypothesis, probe.strands, 'sensory', () => 'its fibres run');
  const { central } = sensoryDeficit(hypothesis, probe);
  if (central < 0.2) return peripheral;
  const strand = probe.strands[0];
  const area = strand === undefined || strand.segment === null ? 'face' : areaOf(strand.segment);
  return [...peripheral, { text: centralText(hypothesis, modality, area, side), share: central }].sort(
    (a, b) => b.share - a.share,
  );
}

function centralText(hypothesis: Hypothesis, modality: string, area: BodyArea, side: BodySide): string {
  const other = opposite(side);
  const { brain } = hypothesis.pathways.damage;
  const tract = modality === 'pinprick' || modality === 'temperature' ? 'pain' : 'position';
  const path = longTracts[tract][area];
  if (breaksOn(path, brain, side).some(({ share }) => share >= 0.1))
    return `its fibres run through ${brainBreak(hypothesis, path, side)}`;
  if (modality === 'pinprick' || modality === 'temperature')
    return `pain and temperature cross the cord on entry and go up its ${other} side through the lesion`;
  if (modality === 'light-touch') return 'touch goes up both sides of the cord through the lesion';
  return `vibration and position go up the ${side} dorsal column through the lesion`;
}

function sparedPath(datum: Datum): string {
  const { probe } = datum.column.target.item;
  const movement = probe.kind === 'movement' ? movementTable.get(probe.movement) : undefined;
  const supply = movement?.supplies[0];
  if (supply === undefined) return 'its path';
  const roots = Object.keys(supply.roots).join(', ');
  const via = supply.via === null ? '' : `, ${lowerFirst(placeTable[supply.via].label)}`;
  return `the path of ${supply.muscle} (${roots}${via})`;
}

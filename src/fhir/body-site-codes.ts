import type { CodeableConcept } from 'fhir/r4.js';
import { bodyPartKeys, bodyPartTable, type Region } from '../anatomy/body-parts.ts';
import type { Ontology } from '../anatomy/ontology.ts';
import { segments } from '../anatomy/segments.ts';
import { type SkinPlaceKind, skinPlace, skinPlaceKeys } from '../anatomy/skin-places.ts';
import { items } from '../exam/catalogue/catalogue.ts';
import type { Item } from '../exam/catalogue/item.ts';
import { lowerFirst } from '../exam/describe.ts';
import type { Finding, FindingPlace } from '../exam/finding.ts';
import type { Side } from '../kernel/side.ts';
import { systems } from '../terminology/systems.ts';
import { coding, shared } from './codings.ts';

/** Where a finding may lie, before the side: muscles of a movement, a body part, a patch of skin, the body below a level. */
interface Structure {
  readonly code: string;
  readonly label: string;
  /** Whether there is one on each side; of the others a side means that half. */
  readonly paired: boolean;
  /** Code of the structure that it is a part of; null for a region of the body. */
  readonly partOf: string | null;
  /** UBERON class of the structure without a side. */
  readonly uberon?: Ontology;
}

/** One code of the body-site code system. */
export interface BodySite {
  readonly code: string;
  readonly display: string;
  readonly structure: string;
  /** `midline` for an unpaired structure, `unspecified` for a paired one of which no side was named. */
  readonly side: Side | 'unspecified';
  /** Codes of what it is a part of: the same structure on both sides, and the larger one on its own side. */
  readonly partOf: readonly string[];
  /** UBERON class of the structure; it says no side, so it is wider than a lateralised code. */
  readonly uberon?: Ontology;
}

const sides = ['midline', 'left', 'right'] as const satisfies readonly Side[];

/** Code of the body site of a finding, `ankle-dorsiflexion-muscles.left`; undefined for items of the person as a whole. */
export function bodySiteCode(finding: Pick<Finding, 'item' | 'place' | 'side'>): string | undefined {
  const structure = structureOf(finding);
  return structure === undefined ? undefined : sided(structure, finding.side).code;
}

/** The same as a concept, made once for each site. */
export function bodySiteConcept(finding: Pick<Finding, 'item' | 'place' | 'side'>): CodeableConcept | undefined {
  const structure = structureOf(finding);
  return structure && rememberedConcept(structure, finding.side);
}

/** A region as a concept; without a side the code names the structure as such, which is both of a pair. */
export function regionConcept(region: Region, side: Side): CodeableConcept | undefined {
  const structure = regionStructure(region);
  return structure && rememberedConcept(structure, side);
}

function rememberedConcept(structure: Structure, side: Side): CodeableConcept {
  const key = side === 'midline' ? structure.code : `${structure.code}.${side}`;
  let made = concepts.get(key);
  if (made === undefined) {
    made = shared(siteConcept(sided(structure, side)));
    concepts.set(key, made);
  }
  return made;
}

const concepts = new Map<string, CodeableConcept>();

function siteConcept(site: BodySite): CodeableConcept {
  const codings = [coding(systems.bodySite, site.code, site.display)];
  // Of a paired structure UBERON names both sides, which is more than the site; only in the midline does it say the same.
  if (site.side === 'midline' && site.uberon !== undefined) {
    codings.push(coding(systems.uberon, site.uberon.code, site.uberon.display));
  }
  return { coding: codings, text: site.display };
}

/** Every body site that an Observation of ours can carry, for the published code system. */
export function allBodySites(): readonly BodySite[] {
  const kinds: readonly SkinPlaceKind[] = ['dermatome', 'landmark', 'territory'];
  const structures = [
    ...bodyPartKeys.map(bodyPartStructure),
    ...items.filter((item) => item.probe.kind === 'movement').map(muscles),
    ...kinds.flatMap((kind) => skinPlaceKeys(kind).map((key) => skinStructure(kind, key))),
    ...segments.map(belowLevel),
  ].filter((structure) => structure !== undefined);
  return structures.flatMap((structure) => sides.map((side) => sided(structure, side)));
}

function structureOf({ item, place, side }: Pick<Finding, 'item' | 'place' | 'side'>): Structure | undefined {
  if (place !== undefined) return placeStructure(place);
  if (item.probe.kind === 'movement') return muscles(item);
  // The items of tone and clonus are named after the place.
  const part = item.bodyPart ?? (item.section === 'tone' || item.section === 'clonus' ? item.key : undefined);
  const own = part === undefined ? undefined : bodyPartStructure(part);
  if (own !== undefined || side === 'midline') return own;
  // R4 has no other element for the side, so a sided item without a part of its own goes by its region.
  return regionStructure(item.region);
}

function placeStructure({ kind, key }: FindingPlace): Structure | undefined {
  switch (kind) {
    case 'body-part':
      return bodyPartStructure(key);
    case 'region':
      return regionStructure(key as Region);
    case 'level-below':
      return belowLevel(key);
    default:
      return skinStructure(kind, key);
  }
}

const bodyPartOfRegion: ReadonlyMap<string, string> = new Map(
  Object.entries({
    head: 'head',
    neck: 'neck',
    'upper-limbs': 'upper-limb',
    trunk: 'trunk',
    'lower-limbs': 'lower-limb',
    perineum: 'perineum',
  } satisfies Record<Region, string>),
);

function regionStructure(region: Region): Structure | undefined {
  return bodyPartStructure(bodyPartOfRegion.get(region) ?? region);
}

function bodyPartStructure(key: string): Structure | undefined {
  const part = bodyPartTable.get(key);
  if (part === undefined) return undefined;
  const { label, paired, parent, uberon } = part;
  return { code: key, label, paired, partOf: parent, ...(uberon && { uberon }) };
}

/** The muscles of a movement go by the region that moves, also where some of them lie nearer to the trunk. */
function muscles(item: Item): Structure {
  return {
    code: `${item.key}-muscles`,
    label: `${item.label} muscles`,
    paired: item.sides !== 'midline',
    partOf: bodyPartOfRegion.get(item.region) ?? null,
  };
}

function skinStructure(kind: SkinPlaceKind, key: string): Structure | undefined {
  const place = skinPlace(kind, key);
  if (place === undefined) return undefined;
  const { label, uberon, bodyPart } = place;
  return { code: `${kind}-${key}`, label, paired: true, partOf: bodyPart, ...(uberon && { uberon }) };
}

/** What lies below a segment is a part of what lies below the segment above it. */
function belowLevel(segment: string): Structure {
  const above = (segments as readonly string[])[(segments as readonly string[]).indexOf(segment) - 1];
  return {
    code: `below-${segment}`,
    label: `Body below ${segment}`,
    paired: false,
    partOf: above === undefined ? null : `below-${above}`,
  };
}

function sided(structure: Structure, side: Side): BodySite {
  const { code, label, paired, uberon, partOf: whole } = structure;
  const ending = side === 'midline' ? '' : `.${side}`;
  const partOf = [...(ending === '' ? [] : [code]), ...(whole === null ? [] : [`${whole}${ending}`])];
  const rest = { structure: code, partOf, ...(uberon && { uberon }) };
  if (side === 'midline') return { code, display: label, side: paired ? 'unspecified' : 'midline', ...rest };
  const display = paired ? `${side === 'left' ? 'Left' : 'Right'} ${lowerFirst(label)}` : `${label}, ${side} side`;
  return { code: `${code}${ending}`, display, side, ...rest };
}

import type { Region } from '../../anatomy/body-parts.ts';
import type { OntologyLink } from '../../anatomy/ontology.ts';
import type { Probe } from '../../anatomy/probe.ts';
import type { Source } from '../../kernel/cite.ts';
import type { ScaleKey } from '../scales.ts';

/** The sections of the examination in the order in which they are presented; the keys are the exam's JSON properties. */
export const sectionKeys = [
  'higherFunction',
  'cranialNerves',
  'inspection',
  'involuntaryMovements',
  'tone',
  'clonus',
  'power',
  'reflexes',
  'plantars',
  'sensation',
  'coordination',
  'gait',
  'sphincters',
  'autonomic',
  'specialTests',
] as const;

export type SectionKey = (typeof sectionKeys)[number];

/** How closely an open code says what our item says; only `equivalent` codes are put into an Observation as such. */
export type CodeLink = OntologyLink;

/** One row of the catalogue: something that can be examined. */
export interface Item {
  readonly section: SectionKey;
  /** Trade term in kebab case; with the section it names the item: `power/ankle-dorsiflexion`. */
  readonly key: string;
  readonly label: string;
  /** `paired`: a side must be given; `midline`: a side is a fault; `optional`: either. */
  readonly sides: 'paired' | 'midline' | 'optional';
  /** Body parts that the sign may be placed at; absent when the item has its own place. */
  readonly sites?: readonly string[];
  readonly siteRequired?: boolean;
  readonly scale: ScaleKey | 'beats';
  /** The body part of a paired item without sites; used for limb loss and for the body site of the Observation. */
  readonly bodyPart?: string;
  readonly region: Region;
  /** HPO term for the abnormality, byte for byte as HPO prints it. */
  readonly hpo?: CodeLink;
  /** HPO terms by abnormal value, where one item can go wrong in more than one way: a lost or a brisk reflex. */
  readonly hpoByValue?: Readonly<Record<string, CodeLink>>;
  /** LOINC code of the test or sign. */
  readonly loinc?: CodeLink;
  /** What an abnormal value tells about; `recorded-only` when the engine draws nothing from it. */
  readonly probe: Probe;
  readonly source: Source;
}

/** Stable name of an item, used in `nextExamination`, as code of the local CodeSystem, and in item identifiers. */
export function itemId(item: Pick<Item, 'section' | 'key'>): string {
  return `${sectionCode(item.section)}/${item.key}`;
}

/** Kebab-case code of a section: `cranialNerves` is `cranial-nerves`. */
export function sectionCode(section: SectionKey): string {
  return section.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

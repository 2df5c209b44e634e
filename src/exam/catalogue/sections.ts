import { equivalent, inexact, wider } from './code-links.ts';
import type { CodeLink, SectionKey } from './item.ts';
import { sectionKeys } from './item.ts';

/** A section of the examination. Order of presentation is the order of `sectionKeys`. */
export interface Section {
  readonly key: SectionKey;
  readonly label: string;
  /** The property of a finding's JSON that names the item within the section; null where there is only one item. */
  readonly itemProperty: 'movement' | 'reflex' | 'sign' | 'test' | 'site' | 'modality' | null;
  /** LOINC code of the section as a document section or panel, where one exists. */
  readonly loinc?: CodeLink;
}

const details: Readonly<Record<SectionKey, Omit<Section, 'key'>>> = {
  higherFunction: {
    label: 'Higher function',
    itemProperty: 'sign',
    loinc: equivalent('10190-7', 'Mental status Narrative'),
  },
  cranialNerves: {
    label: 'Cranial nerves',
    itemProperty: 'sign',
    loinc: wider('10202-0', 'Physical findings of Nervous system Narrative'),
  },
  inspection: { label: 'Inspection', itemProperty: 'sign' },
  involuntaryMovements: { label: 'Involuntary movements', itemProperty: 'sign' },
  tone: { label: 'Tone', itemProperty: 'site' },
  clonus: { label: 'Clonus', itemProperty: 'site' },
  power: {
    label: 'Power',
    itemProperty: 'movement',
    loinc: equivalent('10212-9', 'Physical findings of Strength Narrative'),
  },
  reflexes: {
    label: 'Reflexes',
    itemProperty: 'reflex',
    loinc: equivalent('10194-9', 'Physical findings of Neurologic deep tendon reflexes Narrative'),
  },
  plantars: { label: 'Plantar responses', itemProperty: null },
  sensation: {
    label: 'Sensation',
    itemProperty: 'modality',
    loinc: inexact('32473-1', 'Physical findings sensation'),
  },
  coordination: {
    label: 'Coordination',
    itemProperty: 'test',
    loinc: equivalent('10209-5', 'Physical findings of Neurologic balance and Coordination Narrative'),
  },
  gait: { label: 'Gait', itemProperty: 'sign', loinc: equivalent('32433-5', 'Physical findings of Gait') },
  sphincters: { label: 'Sphincters and pelvic floor', itemProperty: 'sign' },
  autonomic: { label: 'Autonomic function and breathing', itemProperty: 'sign' },
  specialTests: { label: 'Special tests', itemProperty: 'test' },
};

export const sections: readonly Section[] = sectionKeys.map((key) => Object.freeze({ key, ...details[key] }));

const byKey: ReadonlyMap<SectionKey, Section> = new Map(sections.map((section) => [section.key, section]));

export function sectionOf(key: SectionKey): Section {
  const section = byKey.get(key);
  if (section === undefined) throw new RangeError(`no section ${key}`);
  return section;
}

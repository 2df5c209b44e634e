import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex, Section } from '../catalogue.ts';
import type { NormalStatement } from '../draft/draft.ts';

/** What is examined in one go at the bedside. */
export interface Part {
  readonly key: string;
  readonly label: string;
  readonly groups: readonly Group[];
}

/** The items of one section in one part, and what "the rest was normal" says of them. */
export interface Group {
  readonly section: string;
  readonly label: string;
  readonly items: readonly Item[];
  readonly statements: readonly NormalStatement[];
}

interface PartRow {
  readonly key: string;
  readonly label: string;
  readonly sections: readonly string[];
  /** Large regions of the body; absent: wherever the items are. */
  readonly regions?: readonly string[];
}

const limbSections = ['tone', 'clonus', 'power', 'reflexes', 'plantars', 'coordination', 'specialTests'];

/** From head to toe, as at the bedside; common practice. What none of them holds comes last by itself. */
const partRows: readonly PartRow[] = [
  { key: 'mind', label: 'Mental state and speech', sections: ['higherFunction'] },
  { key: 'cranial-nerves', label: 'Cranial nerves', sections: ['cranialNerves'] },
  { key: 'inspection', label: 'Inspection', sections: ['inspection', 'involuntaryMovements'] },
  { key: 'arms', label: 'Arms', sections: limbSections, regions: ['upper-limbs'] },
  { key: 'trunk', label: 'Neck and trunk', sections: limbSections, regions: ['head', 'neck', 'trunk', 'perineum'] },
  { key: 'legs', label: 'Legs', sections: limbSections, regions: ['lower-limbs'] },
  { key: 'sensation', label: 'Sensation', sections: ['sensation'] },
  { key: 'gait', label: 'Gait and stance', sections: ['gait'] },
  { key: 'sphincters', label: 'Sphincters and autonomic', sections: ['sphincters', 'autonomic'] },
];

/** The whole catalogue in parts: every item stands in exactly one, so that a new row of the catalogue shows by itself. */
export function partsOf(index: CatalogueIndex): readonly Part[] {
  const left = new Set(index.catalogue.sections.flatMap(({ items }) => items));
  const parts = partRows.map(({ key, label, sections, regions }) => {
    const groups = sections.flatMap((name) => {
      const section = index.section(name);
      if (section === undefined) return [];
      const items = section.items.filter((item) => left.has(item) && (regions?.includes(item.region) ?? true));
      for (const item of items) left.delete(item);
      return items.length === 0 ? [] : [groupOf(section, items, regions)];
    });
    return { key, label, groups };
  });
  const others = index.catalogue.sections.flatMap((section) => {
    const items = section.items.filter((item) => left.has(item));
    return items.length === 0 ? [] : [groupOf(section, items, undefined)];
  });
  return others.length === 0 ? parts : [...parts, { key: 'others', label: 'Others', groups: others }];
}

function groupOf(section: Section, items: readonly Item[], regions: readonly string[] | undefined): Group {
  const present = regions?.filter((region) => items.some((item) => item.region === region));
  const statements: readonly NormalStatement[] =
    present === undefined
      ? [{ section: section.section }]
      : present.map((region) => ({ section: section.section, region }));
  return { section: section.section, label: section.label, items, statements };
}

export function partWith(parts: readonly Part[], section: string, item: string): Part | undefined {
  return parts.find(({ groups }) =>
    groups.some((group) => group.section === section && group.items.some(({ key }) => key === item)),
  );
}

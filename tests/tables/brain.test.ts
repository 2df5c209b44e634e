import { describe, expect, it } from 'vitest';
import { brainFunctions, brainFunctionTable } from '../../src/anatomy/brain/functions.ts';
import { bodyAreas, longTracts } from '../../src/anatomy/brain/long-tracts.ts';
import { type Path, structuresOf } from '../../src/anatomy/brain/path.ts';
import { brainStructures, structureKeys } from '../../src/anatomy/brain/structures.ts';
import { systemStructures } from '../../src/anatomy/brain/systems.ts';
import { brainstemTerritories } from '../../src/anatomy/brain/territories/brainstem-territories.ts';
import { cerebellarTerritories } from '../../src/anatomy/brain/territories/cerebellar-territories.ts';
import { cranialTerritories } from '../../src/anatomy/brain/territories/cranial-territories.ts';
import { hemisphereTerritories } from '../../src/anatomy/brain/territories/hemisphere-territories.ts';
import { medullaryTerritories } from '../../src/anatomy/brain/territories/medullary-territories.ts';
import type { Territory } from '../../src/anatomy/brain/territory.ts';
import { placeTable } from '../../src/anatomy/places.ts';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { works } from '../../src/kernel/works.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';

const territories: readonly (readonly [string, Territory])[] = Object.entries({
  ...hemisphereTerritories,
  ...brainstemTerritories,
  ...cerebellarTerritories,
  ...medullaryTerritories,
  ...cranialTerritories,
});
const pathsOf = ({ path }: { readonly path: Path | { readonly left: Path; readonly right: Path } }): readonly Path[] =>
  'kind' in path ? [path] : [path.left, path.right];

function shares(path: Path): readonly number[] {
  switch (path.kind) {
    case 'at':
      return [];
    case 'partly':
      return [path.share, ...shares(path.path)];
    case 'shared':
      return path.parts.flatMap(([share, part]) => [share, ...shares(part)]);
    default:
      return path.parts.flatMap(shares);
  }
}

describe('the structures of the head', () => {
  it('each carry a function or a tract: what nothing depends on could not be examined', () => {
    const tracts = (['motor', 'position', 'pain'] as const).flatMap((tract) =>
      bodyAreas.flatMap((area) => structuresOf(longTracts[tract][area])),
    );
    const carried = new Set<string>([
      ...tracts,
      ...Object.values(brainFunctions).flatMap((row) => pathsOf(row).flatMap(structuresOf)),
    ]);
    expect(structureKeys.filter((key) => !carried.has(key))).toEqual([]);
  });

  it('each lie in a territory or are damaged by a process', () => {
    const damaged = new Set<number>();
    for (const { pathways } of hypotheses)
      pathways.damage.brain.forEach((loss, cell) => {
        if (loss > 0) damaged.add(cell);
      });
    const cells = structureKeys.flatMap((key, place) =>
      brainStructures[key].paired ? [place, structureKeys.length + place] : [place],
    );
    expect(
      cells.filter((cell) => !damaged.has(cell)).map((cell) => structureKeys[cell % structureKeys.length]),
    ).toEqual([]);
  });

  it('name a work of the bibliography', () => {
    const sources = [
      ...Object.values(brainStructures),
      ...Object.values(brainFunctions),
      ...territories.map(([, row]) => row),
    ];
    expect(sources.filter(({ source }) => !Object.hasOwn(works, source.work))).toEqual([]);
  });
});

describe('the functions of the head', () => {
  it('have shares between 0 and 1, and shared supplies that make up the whole', () => {
    const all = Object.values(brainFunctions).flatMap((row) => pathsOf(row).flatMap(shares));
    expect(all.filter((share) => share <= 0 || share > 1)).toEqual([]);
  });

  it('are each asked for by an item, or by the models of tone, tapping and coordination', () => {
    const asked = new Set<string>(['rigidity', 'limb-coordination', 'trunk-coordination']);
    for (const { probe } of items) {
      if (probe.kind === 'faculty') for (const faculty of [probe.faculty, ...(probe.orAlso ?? [])]) asked.add(faculty);
      if (probe.kind === 'upper-motor') for (const faculty of probe.orAlso ?? []) asked.add(faculty);
    }
    expect([...brainFunctionTable.keys()].filter((key) => !asked.has(key))).toEqual([]);
  });
});

describe('the territories of the head', () => {
  it.each(territories)(
    '%s takes parts of structures and of nerves that exist',
    (_, { holds, across = {}, nerves = {} }) => {
      for (const [key, part] of [...Object.entries(holds), ...Object.entries(across)]) {
        expect(structureKeys).toContain(key);
        expect(part).toBeGreaterThan(0);
        expect(part).toBeLessThanOrEqual(1);
      }
      for (const key of Object.keys(nerves)) expect(Object.hasOwn(placeTable, key)).toBe(true);
    },
  );
});

describe('the systems of the head', () => {
  it('hold every structure once', () => {
    const listed = Object.values(systemStructures).flat();
    expect([...listed].sort()).toEqual([...structureKeys].sort());
  });
});

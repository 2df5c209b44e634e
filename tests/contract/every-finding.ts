import type { Segment } from '../../src/anatomy/segments.ts';
import { skinPlaceKeys } from '../../src/anatomy/skin-places.ts';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { type Item, itemId } from '../../src/exam/catalogue/item.ts';
import type { Finding, FindingPlace } from '../../src/exam/finding.ts';
import { notTestedReasons } from '../../src/exam/finding.ts';
import { type Scale, scales } from '../../src/exam/scales.ts';
import type { Side } from '../../src/kernel/side.ts';

const scaleTable: Readonly<Record<string, Scale>> = scales;

/** Every value of every item of the catalogue, on every side that it may have and at every place that it may be at. */
export function everyFinding(): Finding[] {
  return items.flatMap((item) => {
    const places = placesOf(item, ['T10']);
    return sidesOf(item).flatMap((side) => [
      ...places.flatMap((place) => valuesOf(item).map((value) => finding(item, side, value, place))),
      ...notTestedReasons.map((notTested) => ({ ...finding(item, side, null, places[0]), notTested })),
    ]);
  });
}

function finding(item: Item, side: Side, value: Finding['value'], place?: FindingPlace): Finding {
  const normal = item.scale === 'beats' ? value === 0 : (scaleTable[item.scale]?.normal ?? []).includes(String(value));
  return {
    item,
    side,
    value,
    abnormal: value !== null && !normal,
    pointer: '',
    origin: 'recorded',
    id: `${itemId(item)}@${place?.kind}:${place?.key}|${side}|${value}`,
    ...(place ? { place } : {}),
    ...(item.probe.kind === 'sensation' ? { modality: item.probe.modality } : {}),
  };
}

export function sidesOf(item: Item): readonly Side[] {
  if (item.sides === 'midline') return ['midline'];
  return item.sides === 'paired' ? ['left', 'right'] : ['midline', 'left', 'right'];
}

/** @param levels below which sensation may be lost */
export function placesOf(item: Item, levels: readonly Segment[]): readonly (FindingPlace | undefined)[] {
  if (item.section === 'sensation') {
    const kinds = ['dermatome', 'landmark', 'territory'] as const;
    return [
      ...kinds.flatMap((kind) => skinPlaceKeys(kind).map((key) => ({ kind, key }))),
      ...levels.map((key) => ({ kind: 'level-below' as const, key })),
    ];
  }
  const places = (item.sites ?? []).map((key): FindingPlace => ({ kind: 'body-part', key }));
  return item.siteRequired === true ? places : [undefined, ...places];
}

function valuesOf(item: Item): readonly (string | number)[] {
  return item.scale === 'beats' ? [0, 6] : (scaleTable[item.scale]?.grades ?? []).map(({ key }) => key);
}

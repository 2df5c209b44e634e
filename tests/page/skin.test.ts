import { beforeEach, describe, expect, it } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { cellKey, type Side } from '../../src/page/draft/draft.ts';
import { draft, freshDraft, startAfresh, undo } from '../../src/page/draft/draft-store.ts';
import type { BodyPicture } from '../../src/page/skin/body-pictures.ts';
import { takeInstead, tapPlace, targetOn } from '../../src/page/skin/record-on-skin.ts';
import { bothSides, lastTap } from '../../src/page/skin/skin-choice.ts';
import { findingWords, patchName, patternOf, skinFindings } from '../../src/page/skin/skin-findings.ts';
import {
  areaOf,
  dermatomesBelow,
  meaningOf,
  type Place,
  patchesOf,
  placeOf,
  type TapMeaning,
  tapMeanings,
  tappable,
} from '../../src/page/skin/tap-meaning.ts';
import { bodyPicture } from '../../src/picture/body-picture.ts';
import { catalogue } from './catalogue.ts';

const picture = JSON.parse(JSON.stringify(bodyPicture())) as BodyPicture;
const index = indexCatalogue(catalogue);
const meanings = Object.keys(tapMeanings) as readonly TapMeaning[];

const pinprick = index.item('sensation', 'pinprick');
if (pinprick === undefined) throw new Error('pinprick is not in the catalogue');
const front = picture.views[0];
if (front === undefined) throw new Error('there is no view');

const recorded = () => Object.entries(draft.value.cells).map(([key, { value }]) => [key, value]);
const cell = (place: Place, side: Side) => cellKey({ section: 'sensation', item: 'pinprick', place, side });
const L5: Place = { kind: 'dermatome', key: 'L5' };

describe('what a tap on the body means', () => {
  it('offers every place of the catalogue under one meaning at least, in some view', () => {
    const offered = new Set(
      picture.views.flatMap((view) =>
        meanings.flatMap((meaning) =>
          tappable(view, meaning, picture, catalogue).map((patch) => {
            const place = placeOf(patch, meaning, picture);
            return `${place?.kind}:${place?.key}`;
          }),
        ),
      ),
    );
    const { dermatomes, territories, landmarks } = catalogue.places;
    const wanted = [
      ...dermatomes.map(({ key }) => `dermatome:${key}`),
      ...territories.map(({ key }) => `territory:${key}`),
      ...landmarks.map(({ key }) => `site:${key}`),
    ];
    expect(wanted.filter((name) => !offered.has(name))).toEqual([]);
  });

  it('goes by the order of the catalogue, dermatomes from above downwards', () => {
    const keys = tappable(front, 'dermatome', picture, catalogue).map(({ key }) => key);
    const order = catalogue.places.dermatomes.map(({ key }) => key).filter((key) => keys.includes(key));
    expect(keys).toEqual(order);
  });

  // International Standards for Neurological Classification of Spinal Cord Injury: the sensory level is the lowest segment
  // with normal sensation; what is lost begins with the next one.
  it('takes up with a level all dermatomes below it and not the segment itself', () => {
    expect(dermatomesBelow('T10', picture, catalogue)[0]).toBe('T11');
    expect(dermatomesBelow('S3', picture, catalogue)).toEqual(['S4-5']);
    const below = patchesOf({ kind: 'levelBelow', key: 'T10' }, front, picture, catalogue).map(({ key }) => key);
    expect(below).toEqual(expect.arrayContaining(['T11', 'T12', 'L1', 'L5']));
    expect(below).not.toContain('T10');
    expect(below).not.toContain('C8');
  });

  it('tells a stocking from a spot, and finds the meaning of what was recorded elsewhere', () => {
    expect(meaningOf({ kind: 'site', key: 'stocking-to-knee' }, picture)).toBe('extent');
    expect(meaningOf({ kind: 'site', key: 'nipple' }, picture)).toBe('spot');
    expect(meaningOf({ kind: 'levelBelow', key: 'T4' }, picture)).toBe('levelBelow');
  });

  it('measures a square by the shoelace formula', () => {
    expect(areaOf({ kind: 'dermatome', key: '', at: [0, 0], path: 'M10 10l4 0 0 5-4 0z' })).toBe(20);
  });
});

describe('a tap on the body', () => {
  beforeEach(() => {
    startAfresh(freshDraft());
    bothSides.value = false;
    lastTap.value = undefined;
  });

  it('records the value chosen, takes it back when repeated, and is one change to undo', () => {
    const target = targetOn(pinprick, L5, 'left', index);
    tapPlace(target, 'reduced', 'left', []);
    expect(recorded()).toEqual([[cell(L5, 'left'), 'reduced']]);
    tapPlace(target, 'absent', 'left', []);
    expect(recorded()).toEqual([[cell(L5, 'left'), 'absent']]);
    tapPlace(target, 'absent', 'left', []);
    expect(recorded()).toEqual([]);
    undo();
    expect(recorded()).toEqual([[cell(L5, 'left'), 'absent']]);
  });

  it('records both sides at once when asked to', () => {
    bothSides.value = true;
    tapPlace(targetOn(pinprick, L5, 'left', index), 'reduced', 'left', []);
    expect(recorded().sort()).toEqual([
      [cell(L5, 'left'), 'reduced'],
      [cell(L5, 'right'), 'reduced'],
    ]);
  });

  it('may be moved to what else lies there, as one change', () => {
    const small: Place = { kind: 'territory', key: 'superficial-fibular-nerve' };
    const large: Place = { kind: 'territory', key: 'common-fibular-nerve' };
    tapPlace(targetOn(pinprick, small, 'left', index), 'reduced', 'left', [large]);
    takeInstead(pinprick, large, 'reduced', index);
    expect(recorded()).toEqual([[cell(large, 'left'), 'reduced']]);
    expect(lastTap.value).toEqual({ side: 'left', taken: large, others: [small] });
    undo();
    expect(recorded()).toEqual([[cell(small, 'left'), 'reduced']]);
  });

  it('is told in words', () => {
    tapPlace(targetOn(pinprick, L5, 'left', index), 'reduced', 'left', []);
    expect(skinFindings(draft.value, index).map((finding) => findingWords(finding, index))).toEqual([
      'Pinprick reduced: L5 dermatome, left',
    ]);
    expect(patchName(L5, 'left', pinprick, 'reduced', index)).toBe('L5 dermatome, left: pinprick reduced');
    expect(patchName({ kind: 'levelBelow', key: 'T10' }, 'right', pinprick, undefined, index)).toBe(
      'Everything below T10, right: pinprick not recorded',
    );
  });

  it('gives each value that is not normal a filling of its own', () => {
    const values = Array.isArray(pinprick.values) ? pinprick.values.map(({ key }) => key) : [];
    const fillings = values.map((value) => patternOf(pinprick, value));
    expect(new Set(fillings).size).toBe(values.length);
    expect(patternOf(pinprick, 'normal')).toBe('plain');
  });
});

import { fileURLToPath } from 'node:url';
import type { CodeSystem, Coding, Observation } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { segments } from '../../src/anatomy/segments.ts';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { type Finding, notTestedReasons } from '../../src/exam/finding.ts';
import { scales } from '../../src/exam/scales.ts';
import { allBodySites, bodySiteCode } from '../../src/fhir/body-site-codes.ts';
import { buildBundle } from '../../src/fhir/bundle.ts';
import type { Side } from '../../src/kernel/side.ts';
import { loadConformance } from '../../src/terminology/load.ts';
import { canonicalBase, systems } from '../../src/terminology/systems.ts';
import { placesOf, sidesOf } from '../contract/every-finding.ts';
import { flat } from '../support/code-systems.ts';
import { assessment, exam, finding } from './support/exam-fixture.ts';

/** Every item of the catalogue at every place and side, one value each in turn, and not tested once. */
function everyFinding(): Finding[] {
  let turn = 0;
  return items.flatMap((item) =>
    placesOf(item, segments).flatMap((place) =>
      sidesOf(item).flatMap((side) => {
        const grades = item.scale === 'beats' ? [0, 99] : scales[item.scale].grades.map(({ key }) => key);
        turn += 1;
        const value = grades[turn % grades.length] ?? null;
        const reason = notTestedReasons[turn % notTestedReasons.length] ?? 'other';
        const where = place === undefined ? {} : { place };
        return [
          finding(item, side, value, { ...where, abnormal: true }),
          finding(item, side, null, { ...where, notTested: reason, id: `not tested ${turn}` }),
        ];
      }),
    ),
  );
}

function codingsIn(node: unknown, found: Coding[] = []): Coding[] {
  if (typeof node !== 'object' || node === null) return found;
  if ('system' in node && 'code' in node && 'display' in node) found.push(node as Coding);
  for (const part of Object.values(node)) codingsIn(part, found);
  return found;
}

const published = loadConformance(fileURLToPath(new URL('../../', import.meta.url)));

const displaysOf = ({ concept }: CodeSystem) => new Map(flat(concept).map(({ code, display }) => [code, display]));

describe('the codes of a Bundle', () => {
  const findings = everyFinding();

  it('are all published with the same display, for every item, place and side of the catalogue', () => {
    const bundle = buildBundle(
      { ...exam, findings },
      { ...assessment, causes: [], redFlags: [], localisations: [], proposed: [] },
      { version: 1 },
    );
    const systemsOfOurs = new Map(published.ofType('CodeSystem').map((system) => [system.url, displaysOf(system)]));
    const wrong = new Set<string>();
    for (const { system = '', code = '', display } of codingsIn(bundle)) {
      if (!system.startsWith(canonicalBase)) continue;
      if (systemsOfOurs.get(system)?.get(code) !== display) wrong.add(`${system} ${code} ${display}`);
    }
    expect([...wrong]).toEqual([]);
  });

  it('say the side of every finding that has one', () => {
    const sided = findings.filter(({ side }) => side !== 'midline');
    expect(sided.filter((one) => bodySiteCode(one)?.endsWith(`.${one.side}`) !== true)).toEqual([]);
  });

  it('name a UBERON class only where it says no more than the site', () => {
    const bundle = buildBundle({ ...exam, findings }, assessment, { version: 1 });
    const sites = (bundle.entry ?? []).flatMap(({ resource }) => {
      const site = (resource as Observation | undefined)?.bodySite;
      return site === undefined ? [] : [site];
    });
    const anatomical = sites.filter(({ coding }) => coding?.some(({ system }) => system === systems.uberon));
    expect(anatomical.length).toBeGreaterThan(0);
    expect(anatomical.filter(({ coding }) => /\.(?:left|right)$/.test(coding?.[0]?.code ?? ''))).toEqual([]);
  });
});

describe('the body sites', () => {
  const sites = allBodySites();

  it('have one code and one display each, mirrored on both sides', () => {
    expect(new Set(sites.map(({ code }) => code)).size).toBe(sites.length);
    const mirrored = (side: Side) => sites.filter((site) => site.side === side).map(({ structure }) => structure);
    expect(mirrored('left')).toEqual(mirrored('right'));
    for (const { code, side, structure } of sites) {
      expect(code).toBe(side === 'left' || side === 'right' ? `${structure}.${side}` : structure);
    }
  });

  it.each([
    ['ankle-dorsiflexion-muscles.left', 'Left ankle dorsiflexion muscles'],
    ['dermatome-L5.right', 'Right L5 dermatome'],
    ['below-T10.left', 'Body below T10, left side'],
    ['neck', 'Neck'],
  ])('call %s %s', (code, display) => {
    expect(sites.find((site) => site.code === code)?.display).toBe(display);
  });
});

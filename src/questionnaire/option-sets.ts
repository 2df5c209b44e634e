import { regions } from '../anatomy/body-parts.ts';
import { segments } from '../anatomy/segments.ts';
import { dermatomeKeys } from '../anatomy/skin.ts';
import { dermatomesBelow, landmarkKeys, territoryKeys } from '../anatomy/skin-places.ts';
import { items } from '../exam/catalogue/catalogue.ts';
import type { ScalePart } from '../exam/catalogue/coma-scale.ts';
import { investigations } from '../exam/catalogue/investigations.ts';
import type { Item } from '../exam/catalogue/item.ts';
import type { CodedResult } from '../exam/catalogue/results.ts';
import { sections } from '../exam/catalogue/sections.ts';
import { courses, familyRelations, onsetPaces } from '../exam/exam.ts';
import { notTestedReasons } from '../exam/finding.ts';
import { type Scale, type ScaleKey, scales } from '../exam/scales.ts';
import { allBodySites } from '../fhir/body-site-codes.ts';
import { notTestedCodes } from '../fhir/local-codes.ts';
import { sectionName } from '../fhir/panel-observation.ts';
import { scaleSystem, systems } from '../terminology/systems.ts';
import { answerCode, answerCodes } from './answer-codes.ts';
import type { Option, OptionSet } from './form-item.ts';

/** Sides as HL7 codes them. */
export const sideSystem = 'http://terminology.hl7.org/CodeSystem/v2-0495';
const genderSystem = 'http://hl7.org/fhir/administrative-gender';

const answerTexts = new Map(answerCodes.map(({ code, display }) => [code, display]));

function ownOption(parts: readonly string[], sets: Option['sets'], display?: string): Option {
  const code = answerCode(...parts);
  return { system: systems.examAnswer, code, display: display ?? answerTexts.get(code) ?? code, sets };
}

const reasons = (put: (reason: string) => Option['sets']): readonly Option[] =>
  notTestedReasons.map((code) => ({
    system: systems.notTestedReason,
    code,
    display: notTestedCodes[code].display,
    sets: put(code),
  }));

/** Why something was not tested, where the value is a number and so a question of its own. */
export function notTestedOptions(put: (reason: string) => Option['sets']): OptionSet {
  return { id: 'not-tested-reasons', title: 'Reasons why an item was not tested', options: reasons(put) };
}

const table: Readonly<Record<ScaleKey, Scale>> = scales;

/** The grades of a scale, then the reasons why there is none: one answer says the one or the other. */
export const gradeOptions: Readonly<Record<string, OptionSet>> = Object.fromEntries(
  Object.entries(table).map(([key, { label, property, grades }]) => [
    key,
    {
      id: `${key}-or-not-tested`,
      title: `${label}, or why it was not tested`,
      options: [
        ...grades.map((grade) => ({
          system: scaleSystem(key),
          code: grade.key,
          display: grade.label,
          sets: { [property]: key === 'presence' ? grade.key === 'present' : grade.key },
        })),
        ...reasons((notTested) => ({ notTested })),
      ],
    },
  ]),
);

export const sideOptions: OptionSet = {
  id: 'sides-or-both',
  title: 'Left, right or both',
  options: [
    { system: sideSystem, code: 'L', display: 'Left', sets: { side: 'left' } },
    { system: sideSystem, code: 'R', display: 'Right', sets: { side: 'right' } },
    ownOption(['side', 'both'], { side: 'both' }),
  ],
};

const siteTexts = new Map(allBodySites().map(({ code, display }) => [code, display]));

function siteOption(code: string, sets: Option['sets']): Option {
  return { system: systems.bodySite, code, display: siteTexts.get(code) ?? code, sets };
}

/** Where sensation is tested; the kind of place decides the property of the finding. */
export const sensationOptions: OptionSet = {
  id: 'sensation-places',
  title: 'Places where sensation is tested',
  options: [
    ...dermatomeKeys.map((key) => siteOption(`dermatome-${key}`, { dermatome: key })),
    ...landmarkKeys.map((key) => siteOption(`landmark-${key}`, { site: key })),
    ...territoryKeys.map((key) => siteOption(`territory-${key}`, { territory: key })),
    ...segments
      .filter((segment) => dermatomesBelow(segment).length > 0)
      .map((segment) => siteOption(`below-${segment}`, { levelBelow: segment })),
  ],
};

/** The lists of places that signs may have, each distinct list once, in catalogue order. */
const siteLists = [...new Set(items.flatMap(({ sites }) => (sites === undefined ? [] : [JSON.stringify(sites)])))];
const siteSets = siteLists.map(
  (list, index): OptionSet => ({
    id: `body-parts-${index + 1}`,
    title: 'Body parts at which the sign may be',
    options: (JSON.parse(list) as string[]).map((site) => siteOption(site, { site })),
  }),
);

export function siteOptions(sites: NonNullable<Item['sites']>): OptionSet {
  const set = siteSets[siteLists.indexOf(JSON.stringify(sites))];
  if (set === undefined) throw new Error('a list of sites that no item has');
  return set;
}

export const scoreRange = ({ scores }: ScalePart): readonly [number, number] => {
  const all = scores.map(({ score }) => score);
  return [Math.min(...all), Math.max(...all)];
};

export const paceOptions: OptionSet = {
  id: 'onset-paces',
  title: 'How fast it came on',
  options: onsetPaces.map((pace) => ownOption(['pace', pace], { pace })),
};
export const courseOptions: OptionSet = {
  id: 'courses',
  title: 'How it went on',
  options: courses.map((course) => ownOption(['course', course], { course })),
};
export const relationOptions: OptionSet = {
  id: 'family-relations',
  title: 'Who in the family',
  options: familyRelations.map((relation) => ownOption(['relation', relation], { relation })),
};
export const regionOptions: OptionSet = {
  id: 'regions',
  title: 'Regions of the body',
  options: regions.map((region) => ownOption(['region', region], { region })),
};
export const sectionOptions: OptionSet = {
  id: 'sections',
  title: 'Sections of the examination',
  options: sections.map(({ key, label }) => ({
    system: systems.examItem,
    code: sectionName(key),
    display: label,
    sets: { section: key },
  })),
};
export const sexOptions: OptionSet = {
  id: 'sexes',
  title: 'Administrative gender',
  options: [
    ['male', 'Male'],
    ['female', 'Female'],
    ['other', 'Other'],
    ['unknown', 'Unknown'],
  ].map(([code = '', display = '']) => ({ system: genderSystem, code, display, sets: { sex: code } })),
};

/** `none` says that the list is there and empty, which is not the same as no answer. */
export const requestOptions: OptionSet = {
  id: 'investigations-or-none',
  title: 'Investigations to propose, or none',
  options: [
    ...investigations.map(({ key, label }) => ({
      system: systems.investigation,
      code: key,
      display: label,
      sets: { key },
    })),
    ownOption(['requests', 'none'], { none: true }),
  ],
};

export function resultOptions(row: CodedResult): OptionSet {
  return {
    id: `result-${row.key}`,
    title: row.label,
    options: row.values.map(({ key }) => ownOption(['result', row.key, key], { value: key })),
  };
}

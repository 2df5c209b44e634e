import type { CodeSystem, ConceptMap, ValueSet } from 'fhir/r4.js';
import { items, itemsOf } from '../../exam/catalogue/catalogue.ts';
import { comaScale } from '../../exam/catalogue/coma-scale.ts';
import { type Item, itemId, sectionCode } from '../../exam/catalogue/item.ts';
import { otherNamesOf } from '../../exam/catalogue/other-names.ts';
import { sections } from '../../exam/catalogue/sections.ts';
import { notTestedReasons } from '../../exam/finding.ts';
import { redFlagName } from '../../fhir/derived-observation.ts';
import { conclusionCodes, type LocalCode, localCodes, notTestedCodes } from '../../fhir/local-codes.ts';
import { sectionName } from '../../fhir/panel-observation.ts';
import { patterns } from '../../localisation/explanation/pattern.ts';
import { scaleSystem, systems } from '../../terminology/systems.ts';
import { redFlagRules } from '../../workup/red-flags.ts';
import { type LocalConcept, localCodeSystem } from './code-systems.ts';
import { localMap, type MapRow } from './concept-maps.ts';
import { type HeaderText, header, type Release, valueSetUrl } from './header.ts';
import type { OpenTable, OpenTables } from './open-tables.ts';

const others: readonly LocalCode[] = Object.values(localCodes);

/** Own codes of what is examined and computed, of methods, reasons and conclusions. */
export function examCodeSystems(release: Release): (CodeSystem | ValueSet)[] {
  const [itemCodes, allItems] = localCodeSystem(release, {
    id: 'exam-item',
    title: 'Items of the neurological examination',
    description:
      'What is examined, by section, and what is computed from it. An item says what was looked at; how it came out is the value of the Observation.',
    allCodes: 'exam-items',
    hierarchy: 'grouped-by',
    properties: {
      section: 'Code of the section of the examination.',
      sides: 'paired: left and right are separate; midline: there is no side; optional: either.',
      scale: 'Code system of the values, by its id; beats for a count.',
      region: 'Large region of the body.',
    },
    concepts: [
      ...sections.map((section) => ({
        code: sectionName(section.key),
        display: section.label,
        definition: `Panel of the findings of the section: ${section.label.toLowerCase()}.`,
        children: itemsOf(section.key).map(itemConcept),
      })),
      ...others.filter((code) => code.system === systems.examItem),
      ...redFlagRules.map(({ key, label }) => ({
        code: redFlagName({ key }),
        display: label,
        definition: 'Red flag: a combination of findings and history that calls for urgent action.',
      })),
    ],
  });
  return [
    itemCodes,
    { ...allItems, compose: { include: [...(allItems.compose?.include ?? []), comaScaleCodes] } },
    ...localCodeSystem(release, {
      id: 'not-tested-reason',
      title: 'Reasons why an item was not tested',
      description: 'Why there is no value. Not tested is never normal.',
      allCodes: 'not-tested-reasons',
      concepts: notTestedReasons.map((code) => ({ code, display: notTestedCodes[code].display })),
    }),
    ...localCodeSystem(release, {
      id: 'exam-method',
      title: 'Methods of examining and computing',
      description: 'How a finding was made, or by which kind of computation a result came about.',
      allCodes: 'exam-methods',
      concepts: others.filter((code) => code.system === systems.method),
    }),
    ...localCodeSystem(release, {
      id: 'overall',
      title: 'Values of summary statements',
      description: 'What an examiner may state of a section, a region or a side as a whole.',
      allCodes: 'overall',
      concepts: others.filter((code) => code.system === systems.overall),
    }),
    ...localCodeSystem(release, {
      id: 'localisation-conclusion',
      title: 'Conclusions of the localisation',
      description: 'Whether the findings point to one site, several, a diffuse process, none, or cannot be decided.',
      allCodes: 'localisation-conclusions',
      concepts: Object.entries(conclusionCodes).map(([code, display]) => ({ code, display })),
    }),
    ...localCodeSystem(release, {
      id: 'localisation-pattern',
      title: 'Patterns of the findings',
      description: 'The syndromic pattern that the abnormal findings form.',
      allCodes: 'localisation-patterns',
      concepts: patterns.map(({ key, label }) => ({ code: key, display: label })),
    }),
  ];
}

/** The coma scale is coded with the codes of LOINC, which has one for each part and the total. */
const comaScaleCodes = {
  system: systems.loinc,
  concept: [comaScale.total, ...comaScale.parts.map((part) => part.loinc)].map(({ code, display }) => ({
    code,
    display,
  })),
};

function itemConcept(item: Item): LocalConcept {
  return {
    code: itemId(item),
    display: item.label,
    otherNames: otherNamesOf(item.section, item.key),
    properties: { section: sectionCode(item.section), sides: item.sides, scale: item.scale, region: item.region },
  };
}

/** Maps from items and sections to HPO and LOINC, and from our reasons to those of HL7. */
export function examMaps(release: Release, tables: OpenTables): ConceptMap[] {
  return [
    localMap(release, {
      id: 'exam-item-to-hpo',
      title: 'Abnormal examination items to HPO',
      description: `The HPO term of an item when its result is abnormal, or for one abnormal value. HPO ${tables.hpo.version}.`,
      copyright: [tables.hpo.notice],
      sourceValueSet: valueSetUrl('exam-items'),
      targetValueSet: valueSetUrl('hpo-findings'),
      source: systems.examItem,
      target: systems.hpo,
      targetVersion: tables.hpo.version,
      rows: items.flatMap(phenotypeRows),
    }),
    localMap(release, {
      id: 'exam-item-to-loinc',
      title: 'Examination items and sections to LOINC',
      description: 'The LOINC code of a section or an item, where there is one, and how close it is.',
      copyright: [tables.loinc.notice],
      sourceValueSet: valueSetUrl('exam-items'),
      targetValueSet: valueSetUrl('loinc-codes'),
      source: systems.examItem,
      target: systems.loinc,
      rows: [
        ...sections.flatMap(({ key, label, loinc }): MapRow[] =>
          loinc ? [{ code: sectionName(key), display: label, target: loinc }] : [],
        ),
        ...items.flatMap((item): MapRow[] =>
          item.loinc ? [{ code: itemId(item), display: item.label, target: item.loinc }] : [],
        ),
      ],
    }),
    localMap(release, {
      id: 'not-tested-reason-to-data-absent-reason',
      title: 'Reasons for not testing to the reasons of HL7',
      description: 'The HL7 reason that stands beside ours in an Observation.',
      sourceValueSet: valueSetUrl('not-tested-reasons'),
      targetValueSet: 'http://hl7.org/fhir/ValueSet/data-absent-reason',
      source: systems.notTestedReason,
      target: systems.dataAbsentReason,
      rows: notTestedReasons.map((code) => {
        const { display, absent } = notTestedCodes[code];
        return { code, display, target: { code: absent[0], display: absent[1], relation: 'wider' } };
      }),
    }),
  ];
}

const observation = 'http://hl7.org/fhir/StructureDefinition/Observation';

/** A term asserts an abnormality, so each row holds only for an abnormal result, or for the one value that it names. */
function phenotypeRows(item: Item): MapRow[] {
  const row = { code: itemId(item), display: item.label };
  const { scale, hpo } = item;
  const abnormal = {
    property: `${observation}#Observation.interpretation`,
    system: systems.interpretation,
    value: 'A',
    display: 'Abnormal',
  };
  return [
    ...(hpo ? [{ ...row, target: hpo, dependsOn: [abnormal] }] : []),
    ...Object.entries(item.hpoByValue ?? {}).map(([value, target]) => ({
      ...row,
      target,
      dependsOn: [
        {
          property: `${observation}#Observation.value`,
          ...(scale === 'beats' ? {} : { system: scaleSystem(scale) }),
          value,
        },
      ],
    })),
  ];
}

/** The open codes that findings may carry, as value sets to search with. */
export function openValueSets(release: Release, { hpo, loinc, uberon }: OpenTables): ValueSet[] {
  const phenotypes = new Set(items.flatMap((item) => phenotypeRows(item).map(({ target }) => target.code)));
  return [
    openValueSet(
      release,
      hpo,
      {
        id: 'hpo-findings',
        title: 'HPO terms of findings',
        description: 'The HPO terms that abnormal findings map to.',
      },
      (code) => phenotypes.has(code),
    ),
    openValueSet(
      release,
      loinc,
      {
        id: 'loinc-codes',
        title: 'LOINC codes in use',
        description: 'The LOINC codes of sections, items, scales, results, investigations and of the printed report.',
      },
      () => true,
    ),
    openValueSet(
      release,
      uberon,
      {
        id: 'uberon-classes',
        title: 'UBERON classes in use',
        description: 'The UBERON classes that body sites map to.',
      },
      () => true,
    ),
  ];
}

function openValueSet(
  release: Release,
  table: OpenTable,
  text: HeaderText,
  includes: (code: string) => boolean,
): ValueSet {
  const concept = table.codes.filter(({ code }) => includes(code)).map(({ code, display }) => ({ code, display }));
  return {
    ...header('ValueSet', release, { ...text, copyright: [table.notice] }),
    immutable: false,
    compose: { include: [{ system: table.system, concept }] },
  };
}

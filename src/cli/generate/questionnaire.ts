import type { Questionnaire, QuestionnaireItem, ValueSet } from 'fhir/r4.js';
import { itemById, items } from '../../exam/catalogue/catalogue.ts';
import { uuidV5 } from '../../kernel/uuid.ts';
import { answerCodes } from '../../questionnaire/answer-codes.ts';
import { examForm, questionnaireId } from '../../questionnaire/exam-form.ts';
import type { FormItem, OptionSet } from '../../questionnaire/form-item.ts';
import { systems } from '../../terminology/systems.ts';
import { localCodeSystem } from './code-systems.ts';
import { header, type Release } from './header.ts';

/**
 * The examination as a form, and the codes that only the form has. The answers of each choice stand in the resource
 * itself, so that a form can be shown without a terminology server.
 */
export function examQuestionnaire(release: Release): Questionnaire {
  const sets = new Map<string, OptionSet>();
  const item = examForm.map((one) => questionnaireItem(one, sets));
  const { resourceType, id, text, ...head } = header('Questionnaire', release, {
    id: questionnaireId,
    title: 'Neurological examination',
    description: `The ${items.length} items of the structured neurological examination by section, with history and results. Every question may stay empty: what is not answered was not examined, and is not taken as normal. A QuestionnaireResponse says all that an exam can say: its identifier is that of the exam, \`authored\` the time of the examination, author and source examined. It becomes FHIR resources by the operation QuestionnaireResponse/$extract of the service, which reads it by linkId; no extraction by definition or template is offered.`,
  });
  return {
    resourceType,
    id,
    text,
    contained: [...sets.values()].map((set) => containedSet(set, release)),
    ...head,
    subjectType: ['Patient'],
    item,
  };
}

/** Own codes of the answers about history, regions, results and requests. */
export function answerResources(release: Release) {
  return localCodeSystem(release, {
    id: 'exam-answer',
    title: 'Answers of the examination form',
    description:
      'Answers about onset, course, family, regions, sides, results and requests, as the Questionnaire offers them.',
    allCodes: 'exam-answers',
    concepts: answerCodes,
  });
}

function questionnaireItem(one: FormItem, sets: Map<string, OptionSet>): QuestionnaireItem {
  const { linkId, text, type, code, options, unit, repeats, required, unless, maxLength, items: below = [] } = one;
  if (options !== undefined) sets.set(options.id, options);
  return {
    ...extensions(unit, one.referenceTo),
    linkId,
    ...(code === undefined
      ? {}
      : { code: [{ system: systems.examItem, code, display: itemById.get(code)?.label ?? code }] }),
    text,
    type,
    ...(unless === undefined ? {} : { enableWhen: [{ question: unless, operator: 'exists', answerBoolean: false }] }),
    ...(required === true ? { required } : {}),
    ...(repeats === true ? { repeats } : {}),
    ...(maxLength === undefined ? {} : { maxLength }),
    ...(options === undefined ? {} : { answerValueSet: `#${options.id}` }),
    ...(below.length === 0 ? {} : { item: below.map((inner) => questionnaireItem(inner, sets)) }),
  };
}

/** Source: the extensions of R4, http://hl7.org/fhir/R4/questionnaire-profiles.html */
function extensions(
  unit: string | undefined,
  types: readonly string[] | undefined,
): Pick<QuestionnaireItem, 'extension'> {
  const base = 'http://hl7.org/fhir/StructureDefinition';
  const extension = [
    ...(unit === undefined
      ? []
      : [
          {
            url: `${base}/questionnaire-unitOption`,
            valueCoding: { system: systems.ucum, code: unit, display: unit },
          },
        ]),
    ...(types ?? []).map((valueCode) => ({ url: `${base}/questionnaire-referenceResource`, valueCode })),
  ];
  return extension.length === 0 ? {} : { extension };
}

/** A fixed random UUID. */
const containedNamespace = '3d0a6c52-7f5e-4f0b-8a35-2f9d1f6c4b1e';

/** With the expansion, which form programs read, beside the definition, which validators read. */
function containedSet({ id, title, options }: OptionSet, release: Release): ValueSet {
  const systemsUsed = [...new Set(options.map(({ system }) => system))];
  return {
    resourceType: 'ValueSet',
    id,
    // Validators know value sets by their address; nobody else needs one for what is contained.
    url: `urn:uuid:${uuidV5(id, containedNamespace)}`,
    title,
    status: 'active',
    compose: {
      include: systemsUsed.map((system) => ({
        system,
        concept: options.filter((one) => one.system === system).map(({ code, display }) => ({ code, display })),
      })),
    },
    expansion: {
      timestamp: release.date,
      contains: options.map(({ system, code, display }) => ({ system, code, display })),
    },
  };
}

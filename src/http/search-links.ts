import { RequestError } from '../kernel/errors.ts';
import { parametersOf } from '../search/parameters.ts';
import { isResultParameter } from '../search/result-parameters.ts';
import type { SealedText } from './sealed-text.ts';

type Parameters = readonly (readonly [string, string])[];

/** Types that are about no person, whatever is asked of them. */
const impersonalTypes = ['Device', 'Measure'];

/** What may be asked of the audit trail without saying whose record it is about, or who asked for it. */
const impersonalOfAudit = ['date', 'type', 'subtype', 'action', 'outcome'];

/** How a sealed value begins: with what no id, reference or identifier does. */
const mark = '*';
const sealedForm = /^\*(?<sealed>[A-Za-z0-9_-]{38,})$/;

/**
 * Whether values of a search parameter may say who is meant, so that they do not belong into an address: identifiers,
 * references (to a subject, an encounter, an examiner) and free text. Codes, states, dates and numbers ask for a kind of
 * finding, and `_id` stands in the address of every resource anyway.
 * @param name with its modifier or chain, as sent
 */
export function isPersonal(type: string, name: string): boolean {
  if (impersonalTypes.includes(type) || isResultParameter(name)) return false;
  const [base = '', ...more] = name.split(/[:.]/);
  if (type === 'AuditEvent') return !impersonalOfAudit.includes(base);
  const parameter = parametersOf(type).get(base);
  if (parameter === undefined) return true;
  return parameter.type === 'reference' || parameter.type === 'string' || [base, ...more].some(isOfPerson);
}

function isOfPerson(part: string): boolean {
  return part === 'identifier' || part === 'text' || part === 'contains';
}

/**
 * The parameters of a search as they stand in the links of its answer. R4 has the self link repeat what took effect; each
 * parameter does stand there, so that a caller sees what was understood, but a personal value is sealed. Sent back, it
 * means what it stands for.
 * @param client whom the links are for; of no use to another
 * Source: HL7 FHIR R4, Search, sections 3.1.1.3 (server conformance) and 3.1.1.1 (why a search can be posted).
 */
export function sealParameters(type: string, given: Parameters, { seal }: SealedText, client: string): Parameters {
  return given.map(([name, value]) =>
    isPersonal(type, name) ? [name, `${mark}${seal(value, aboutOf(type, name, client))}`] : [name, value],
  );
}

/** An address with parameters, or as it is without any. */
export function linkTo(address: string, parameters: Parameters): string {
  const query = new URLSearchParams(parameters.map(([name, value]): [string, string] => [name, value]));
  return parameters.length === 0 ? address : `${address}?${query}`;
}

/** What `sealParameters` sealed, opened again. @throws RequestError BAD_REQUEST for what it did not make */
export function openParameters(type: string, given: Parameters, { open }: SealedText, client: string): Parameters {
  return given.map(([name, value]) => {
    const sealed = isPersonal(type, name) ? sealedForm.exec(value)?.groups?.sealed : undefined;
    if (sealed === undefined) return [name, value];
    const text = open(sealed, aboutOf(type, name, client));
    if (text === undefined) {
      throw new RequestError('BAD_REQUEST', 'A value that begins with * is none that a link of this search has given.');
    }
    return [name, text];
  });
}

function aboutOf(type: string, name: string, client: string): string {
  return JSON.stringify([type, name, client]);
}

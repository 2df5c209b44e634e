import { plainText } from '../kernel/plain-text.ts';
import { isObject, itemPath, itemsOf, type Json, type ValidationIssue } from './issue.ts';

const nameForm = /^[A-Za-z][A-Za-z0-9]*$/;

/**
 * References that lead nowhere: to a contained resource that is not there, or, in a Bundle, to the address of an entry
 * that it does not have. Others may lead to another server and are left alone.
 * Source: HL7 FHIR R4, references.html#contained and bundle.html#references
 * @param inBundle type of the resource by `fullUrl`; left out for a resource that stands alone
 */
export function checkReferences(resource: Json, inBundle?: ReadonlyMap<string, string>): readonly ValidationIssue[] {
  const containedIds = new Set(itemsOf(resource.contained).map((one) => isObject(one) && one.id));
  const found: ValidationIssue[] = [];
  const leadsNowhere = (reference: string) => {
    if (reference.startsWith('#')) return reference !== '#' && !containedIds.has(reference.slice(1));
    return inBundle !== undefined && /^urn:(?:uuid|oid):/.test(reference) && !inBundle.has(reference);
  };
  const visit = (value: Json, path: string): void => {
    if (typeof value.reference === 'string' && leadsNowhere(value.reference)) {
      const what = value.reference.startsWith('#') ? 'no contained resource has this id' : 'no entry has this fullUrl';
      const text = `The reference leads nowhere: ${what}.`;
      found.push({ severity: 'error', type: 'not-found', text, expression: `${path}.reference` });
    }
    for (const [name, child] of Object.entries(value)) {
      if (!nameForm.test(name)) continue;
      itemsOf(child).forEach((one, index) => {
        if (isObject(one)) visit(one, itemPath(`${path}.${name}`, child, index));
      });
    }
  };
  visit(resource, plainText(resource.resourceType));
  return found;
}

import { nearestKey } from '../exam/faults/nearest-key.ts';
import { plainText } from '../kernel/plain-text.ts';
import type { Codes } from '../terminology/hierarchy.ts';
import { canonicalBase } from '../terminology/systems.ts';
import { isObject, itemPath, itemsOf, type Json, type ValidationIssue } from './issue.ts';

const nameForm = /^[A-Za-z][A-Za-z0-9]*$/;

/** Codings that say a code system of ours and a code that it does not have, or another display. */
export function checkOwnCodes(resource: Json, codes: Codes): readonly ValidationIssue[] {
  const found: ValidationIssue[] = [];
  const visit = (value: Json, path: string): void => {
    found.push(...faultOf(value, path, codes));
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

function faultOf({ system, code, display }: Json, path: string, codes: Codes): readonly ValidationIssue[] {
  if (typeof system !== 'string' || !system.startsWith(`${canonicalBase}/CodeSystem/`)) return [];
  const here = codes.codeSystem(system) && codes.concepts(system);
  if (here === undefined || typeof code !== 'string') return [];
  const known = here.get(code);
  if (known === undefined) {
    const near = nearestKey(code, here.keys());
    const hint = near === undefined ? '' : ` The nearest known code is ${near}.`;
    const text = `The code is not in its code system, which is published here.${hint}`;
    return [{ severity: 'error', type: 'code-invalid', text, expression: path }];
  }
  if (display === undefined || display === known.display) return [];
  const text = `The display of this code is "${known.display}".`;
  return [{ severity: 'warning', type: 'code-invalid', text, expression: path }];
}

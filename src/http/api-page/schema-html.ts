import type { ReadSchema } from './read-document.ts';
import { anchorOf, escapeHtml, inlineHtml } from './text-to-html.ts';

/** Values that are shown without being asked for. */
const shownValues = 8;

/** Objects inside one another that one table shows. */
const deepest = 4;

const componentPrefix = '#/components/schemas/';

export function schemaAnchor(name: string): string {
  return anchorOf('schema', name);
}

/** A type in words, with a link where it is a schema of its own. */
export function typeHtml(schema: ReadSchema): string {
  if (schema.$ref !== undefined) {
    const name = schema.$ref.slice(componentPrefix.length);
    return `<a href="#${schemaAnchor(name)}">${escapeHtml(name)}</a>`;
  }
  const choices = schema.oneOf ?? (schema.type === undefined ? schema.anyOf : undefined);
  if (choices !== undefined) return choices.map(typeHtml).join(' or ');
  if (schema.const !== undefined) return `<code>${escapeHtml(String(schema.const))}</code>`;
  if (schema.items !== undefined) return `list of ${typeHtml(schema.items)}`;
  const type = [schema.type ?? 'any'].flat().join(' or ');
  return escapeHtml(schema.format === undefined ? type : `${type} (${schema.format})`);
}

/** Which values are allowed: a list, a range, a form. */
export function limitsHtml(schema: ReadSchema): string {
  const { minimum, maximum, pattern } = schema;
  const values = (schema.enum ?? schema.items?.enum ?? []).map((value) => `<code>${escapeHtml(String(value))}</code>`);
  const list =
    values.length <= shownValues
      ? values.join(' ')
      : `<details><summary>${values.length} values</summary><p class="values">${values.join(' ')}</p></details>`;
  const range =
    minimum === undefined && maximum === undefined
      ? ''
      : `from ${minimum ?? 'any'}${maximum === undefined ? '' : ` to ${maximum}`}`;
  return [
    list,
    range,
    pattern === undefined ? '' : `form <code>${escapeHtml(pattern)}</code>`,
    schema.default === undefined ? '' : `default <code>${escapeHtml(String(schema.default))}</code>`,
  ]
    .filter((part) => part !== '')
    .join('; ');
}

interface Row {
  readonly name: string;
  readonly schema: ReadSchema;
  readonly isRequired: boolean;
}

/** Every property, those of inner objects by their path. */
function rowsOf(schema: ReadSchema, prefix = '', depth = 0): readonly Row[] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, part]) => {
    const row = { name: `${prefix}${name}`, schema: part, isRequired: schema.required?.includes(name) === true };
    if (depth >= deepest) return [row];
    const inner = part.items ?? part;
    return [row, ...rowsOf(inner, `${row.name}${part.items === undefined ? '.' : '[].'}`, depth + 1)];
  });
}

/** What an object, or each item of a list, consists of. */
export function schemaHtml(schema: ReadSchema, caption: string): string {
  const about = schema.description === undefined ? '' : `<p>${inlineHtml(schema.description)}</p>`;
  const docs =
    schema.externalDocs === undefined
      ? ''
      : `<p><a href="${escapeHtml(schema.externalDocs.url)}" rel="noreferrer">${escapeHtml(schema.externalDocs.description)}</a></p>`;
  const rows = rowsOf(schema.items ?? schema);
  if (rows.length === 0) return `${about}${docs}<p>${typeHtml(schema)} ${limitsHtml(schema)}</p>`;
  const prefix = schema.items === undefined ? '' : '<p>A list; each item has:</p>';
  return `${about}${docs}${prefix}
<div class="scroll"><table><caption class="unseen">${escapeHtml(caption)}</caption>
<thead><tr><th scope="col">Property</th><th scope="col">Type</th><th scope="col">Meaning</th></tr></thead>
<tbody>${rows.map(rowHtml).join('\n')}</tbody></table></div>`;
}

function rowHtml({ name, schema, isRequired }: Row): string {
  const needed = isRequired ? ' <span class="needed">required</span>' : '';
  const meaning = [inlineHtml(schema.description ?? schema.items?.description ?? ''), limitsHtml(schema)]
    .filter((part) => part !== '')
    .join('<br>');
  return `<tr><th scope="row"><code>${escapeHtml(name)}</code>${needed}</th><td>${typeHtml(schema)}</td><td>${meaning}</td></tr>`;
}

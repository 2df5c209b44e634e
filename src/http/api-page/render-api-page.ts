import { operationAnchor, operationHtml } from './operation-html.ts';
import { pageStyle } from './page-style.ts';
import { groupOperations, type OperationGroup, type ReadDocument, type ReadSchema, resolve } from './read-document.ts';
import { schemaAnchor, schemaHtml } from './schema-html.ts';
import { anchorOf, escapeHtml, inlineHtml, paragraphs } from './text-to-html.ts';

/**
 * The API description as one page of HTML for a person: no scripts, nothing loaded from elsewhere, and one style element
 * whose text is `pageStyle`.
 * @param document an OpenAPI 3.1 document as `apiDocument` makes it
 */
export function renderApiPage(document: ReadDocument): string {
  const groups = groupOperations(document);
  const areas = document.tags
    .map((tag) => ({ ...tag, groups: groups.filter(({ area }) => area === tag.name) }))
    .filter((area) => area.groups.length > 0);
  const schemas = Object.entries(document.components.schemas ?? {}) as [string, ReadSchema][];
  const { title, version, description } = document.info;
  const access = resolve<{ description: string }>(document, { $ref: '#/components/securitySchemes/bearer' });
  return `<!doctype html>
<html lang="en-GB">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)} ${escapeHtml(version)}: interface</title>
<style>${pageStyle}</style></head>
<body><a class="skip" href="#content">To the content</a>
<div class="page">
<nav aria-label="Contents">
${areas.map(({ name, groups: own }) => contents(name, own)).join('\n')}
<p><a href="#schemas">Schemas</a></p>
<ul>${schemas.map(([name]) => `<li><a href="#${schemaAnchor(name)}">${escapeHtml(name)}</a></li>`).join('\n')}</ul>
</nav>
<main id="content">
<h1>${escapeHtml(title)} ${escapeHtml(version)}</h1>
${paragraphs(description)}
<p>For programs: <a href="/openapi.json">OpenAPI 3.1</a>. In the examples <code>$base</code> is the address of the service, such as <code>http://127.0.0.1:8080</code>. Where access is configured, add <code>-H "Authorization: Bearer $token"</code>.</p>
<p>Each operation names the scopes that it needs then. ${inlineHtml(access.description)}</p>
${areas
  .map(
    ({ name, description: about, groups: own }) =>
      `<section aria-labelledby="${anchorOf('area', name)}"><h2 id="${anchorOf('area', name)}">${escapeHtml(name)}</h2>
<p>${inlineHtml(about)}</p>
${own.map((group) => operationHtml(document, group)).join('\n')}</section>`,
  )
  .join('\n')}
<section aria-labelledby="schemas"><h2 id="schemas">Schemas</h2>
${schemas
  .map(
    ([name, schema]) =>
      `<article class="schema" id="${schemaAnchor(name)}"><h3>${escapeHtml(name)}</h3>${schemaHtml(schema, name)}</article>`,
  )
  .join('\n')}</section>
</main></div></body></html>
`;
}

function contents(area: string, groups: readonly OperationGroup[]): string {
  const rows = groups.map(({ method, path }) => {
    const label = `<span class="method ${method.toLowerCase()}">${method}</span> ${escapeHtml(path)}`;
    return `<li><a href="#${operationAnchor({ method, path }, area)}">${label}</a></li>`;
  });
  return `<p><a href="#${anchorOf('area', area)}">${escapeHtml(area)}</a></p><ul>${rows.join('\n')}</ul>`;
}

import { curlOf } from './curl.ts';
import {
  type OperationGroup,
  type OperationMember,
  parametersOf,
  type ReadContent,
  type ReadDocument,
  type ReadParameter,
  type ReadResponse,
  resolve,
} from './read-document.ts';
import { limitsHtml, typeHtml } from './schema-html.ts';
import { scopesHtml } from './scopes-html.ts';
import { anchorOf, escapeHtml, inlineHtml, paragraphs } from './text-to-html.ts';

export function operationAnchor({ method, path }: Pick<OperationGroup, 'method' | 'path'>, area: string): string {
  return anchorOf(area, method, path);
}

/** One operation with parameters, body, answers and an example. */
export function operationHtml(document: ReadDocument, group: OperationGroup): string {
  const { method, path, area, members } = group;
  const shown = members.find((member) => exampleNames(document, member).length > 0) ?? members[0];
  if (shown === undefined) return '';
  const { operation } = shown;
  const types = members.map((member) => member.path.split('/')[2] ?? '');
  return `<article id="${operationAnchor(group, area)}" class="operation">
<h3><span class="method ${method.toLowerCase()}">${method}</span> <code>${escapeHtml(path)}</code></h3>
<p class="lead">${inlineHtml(operation.summary)}</p>
${operation.description === undefined ? '' : paragraphs(operation.description)}
${path.includes('{type}') ? `<p>For ${types.map((type) => `<code>${escapeHtml(type)}</code>`).join(', ')}.</p>` : ''}
${scopesHtml(group)}
${parametersHtml(document, members)}
${operation.requestBody === undefined ? '' : bodyHtml(operation.requestBody)}
<h4>Answers</h4>
<dl class="answers">${Object.entries(operation.responses)
    .map(([status, response]) => answerHtml(status, resolve<ReadResponse>(document, response)))
    .join('\n')}</dl>
${examplesHtml(document, group, shown)}
</article>`;
}

/** What all members take, then what each takes besides. */
function parametersHtml(document: ReadDocument, members: readonly OperationMember[]): string {
  const lists = members.map(({ operation }) => parametersOf(document, operation));
  const [first = []] = lists;
  const keyOf = ({ name, in: place, description }: ReadParameter) => `${place} ${name} ${description}`;
  const common = first.filter((one) => lists.every((list) => list.some((other) => keyOf(other) === keyOf(one))));
  const own = members.flatMap(({ path }, index) => {
    const rest = (lists[index] ?? []).filter((one) => !common.some((other) => keyOf(other) === keyOf(one)));
    const type = path.split('/')[2] ?? '';
    if (rest.length === 0) return [];
    return [
      `<details><summary>${rest.length} more for ${escapeHtml(type)}</summary>${parameterTable(rest, type)}</details>`,
    ];
  });
  if (common.length === 0 && own.length === 0) return '';
  const table = common.length === 0 ? '' : parameterTable(common, 'all');
  return `<h4>Parameters</h4>${table}${own.join('\n')}`;
}

function parameterTable(parameters: readonly ReadParameter[], caption: string): string {
  const rows = parameters.map(({ name, in: place, required, description, schema }) => {
    const needed = required ? ' <span class="needed">required</span>' : '';
    const limits = limitsHtml(schema);
    return `<tr><th scope="row"><code>${escapeHtml(name)}</code>${needed}</th><td>${escapeHtml(place)}</td><td>${typeHtml(schema)}</td><td>${inlineHtml(description)}${limits === '' ? '' : `<br>${limits}`}</td></tr>`;
  });
  return `<div class="scroll"><table><caption class="unseen">Parameters: ${escapeHtml(caption)}</caption>
<thead><tr><th scope="col">Name</th><th scope="col">In</th><th scope="col">Type</th><th scope="col">Meaning</th></tr></thead>
<tbody>${rows.join('\n')}</tbody></table></div>`;
}

function contentHtml(content: ReadContent): string {
  return Object.entries(content)
    .map(([type, { schema }]) => `<code>${escapeHtml(type)}</code>: ${typeHtml(schema)}`)
    .join('<br>');
}

function bodyHtml(body: {
  readonly description: string;
  readonly required: boolean;
  readonly content: ReadContent;
}): string {
  const needed = body.required ? ' <span class="needed">required</span>' : '';
  return `<h4>Body${needed}</h4><p>${inlineHtml(body.description)}<br>${contentHtml(body.content)}</p>`;
}

function answerHtml(status: string, response: ReadResponse): string {
  const headers = Object.keys(response.headers ?? {}).filter((name) => name !== 'X-Request-Id');
  const parts = [
    inlineHtml(response.description),
    ...(response.content === undefined || Number(status) >= 400 ? [] : [contentHtml(response.content)]),
    ...(headers.length === 0 ? [] : [`headers ${headers.map((name) => `<code>${name}</code>`).join(', ')}`]),
  ];
  return `<div><dt>${status}</dt><dd>${parts.join('<br>')}</dd></div>`;
}

function exampleNames(document: ReadDocument, { operation }: OperationMember): readonly string[] {
  const ofContent = (content: ReadContent = {}) =>
    Object.values(content).flatMap(({ examples }) => Object.keys(examples ?? {}));
  const responses = Object.values(operation.responses).map((one) => one as ReadResponse & { 'x-examples'?: object });
  return [
    ...new Set([
      ...responses.flatMap(({ content, 'x-examples': bare }) => [...ofContent(content), ...Object.keys(bare ?? {})]),
      ...ofContent(operation.requestBody?.content),
      ...parametersOf(document, operation).flatMap(({ examples }) => Object.keys(examples ?? {})),
    ]),
  ];
}

function examplesHtml(document: ReadDocument, { method }: OperationGroup, member: OperationMember): string {
  return exampleNames(document, member)
    .map((name) => {
      const call = curlOf(document, { ...member, method }, name);
      const answers = Object.entries(member.operation.responses).flatMap(([status, response]) =>
        Object.values((response as ReadResponse).content ?? {}).flatMap(({ examples }) => {
          const example = examples?.[name];
          return example === undefined ? [] : [{ status, example }];
        }),
      );
      const says = answers[0]?.example.summary ?? '';
      return `<h4>Example${says === '' ? '' : `: ${inlineHtml(says)}`}</h4>
<pre tabindex="0"><code>${escapeHtml(call)}</code></pre>${answers
        .map(
          ({ status, example }) =>
            `<details><summary>Answer ${status}${example['x-excerpt'] ? ', in part' : ''}</summary><pre tabindex="0"><code>${escapeHtml(JSON.stringify(example.value, null, 2))}</code></pre></details>`,
        )
        .join('')}`;
    })
    .join('\n');
}

import { parametersOf, type ReadDocument, type ReadOperation } from './read-document.ts';

/** Name of the shell variable for the address of the service. */
export const baseVariable = '$base';

/** The example of an operation as a call of curl; undefined where there is none of this name. */
export function curlOf(
  document: ReadDocument,
  { path, method, operation }: { readonly path: string; readonly method: string; readonly operation: ReadOperation },
  example: string,
): string {
  const given = (examples: Readonly<Record<string, { value: unknown }>> | undefined) => examples?.[example]?.value;
  let address = path;
  const query: string[] = [];
  const options: string[] = [];
  for (const parameter of parametersOf(document, operation)) {
    const value = given(parameter.examples);
    if (value === undefined) continue;
    const text = String(value);
    if (parameter.in === 'path') address = address.replace(`{${parameter.name}}`, encodeURI(text));
    else if (parameter.in === 'query') query.push(`${parameter.name}=${encodeURIComponent(text)}`);
    else options.push(`-H ${quoted(`${parameter.name}: ${text}`)}`);
  }
  for (const [type, { examples }] of Object.entries(operation.requestBody?.content ?? {})) {
    const body = given(examples);
    if (body === undefined) continue;
    options.push(`-H ${quoted(`Content-Type: ${type}`)}`);
    const text =
      type === 'application/x-www-form-urlencoded'
        ? new URLSearchParams(body as Record<string, string>).toString()
        : JSON.stringify(body, null, 2);
    options.push(`-d ${quoted(text)}`);
  }
  const verb =
    method === 'GET' || (method === 'POST' && options.some((option) => option.startsWith('-d')))
      ? []
      : [`-X ${method}`];
  const asked = query.length === 0 ? '' : `?${query.join('&')}`;
  // A dollar in a path is no variable of the shell.
  const url = `"${baseVariable}${`${address}${asked}`.replaceAll('$', '\\$')}"`;
  return ['curl -s', ...verb, url, ...options].join(' ');
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", `'\\''`)}'`;
}

import type { OperationOutcome } from 'fhir/r4.js';
import { UsageError } from '../commands/surroundings.ts';
import type { Sink } from '../convert/sink.ts';
import type { TableRun } from './table-of-file.ts';

/**
 * The table of a view over what a running service keeps, by its operation `$viewdefinition-run`. The view is sent along,
 * so that the service need not have it.
 * @param base FHIR base of the service
 * @param authorization header of a service that asks for a token
 * @returns whether the service could run the view
 * @throws UsageError when the service cannot be reached, breaks off, or answers no table
 */
export async function tableFromService(
  definition: unknown,
  base: string,
  { format, header, limit, patient, since, tell }: TableRun,
  sink: Sink,
  authorization: Readonly<Record<string, string>> = {},
): Promise<boolean> {
  const parameter = [
    { name: '_format', valueCode: format },
    { name: 'header', valueBoolean: header },
    ...(limit === undefined ? [] : [{ name: '_limit', valueInteger: limit }]),
    ...(patient === undefined ? [] : [{ name: 'patient', valueReference: { reference: patient } }]),
    ...(since === undefined ? [] : [{ name: '_since', valueInstant: since }]),
    { name: 'viewResource', resource: definition },
  ];
  const response = await answerOf(`${base.replace(/\/+$/, '')}/$viewdefinition-run`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/fhir+json', Accept: '*/*', ...authorization },
    body: JSON.stringify({ resourceType: 'Parameters', parameter }),
  });
  if (!response.ok) {
    for (const message of await messagesIn(response)) tell(message);
    if (response.status === 422) return false;
    throw new UsageError(`The service answered ${response.status}.`);
  }
  for await (const piece of piecesOf(response)) await sink.write(piece);
  return true;
}

async function* piecesOf(response: Response): AsyncGenerator<Uint8Array> {
  try {
    yield* response.body ?? [];
  } catch {
    throw new UsageError('The service broke off its answer; what was written is not the whole table.');
  }
}

async function answerOf(url: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(url, request);
  } catch {
    throw new UsageError('There is no service at this address, or it cannot be reached.');
  }
}

/** What an OperationOutcome says; nothing of an answer that is none. */
async function messagesIn(response: Response): Promise<readonly string[]> {
  try {
    const { issue = [] } = (await response.json()) as OperationOutcome;
    return issue.map(({ details, diagnostics }) => {
      // The view stands in the last parameter; its author knows it as a whole.
      const pointer = diagnostics?.replace(/^\/parameter\/\d+\/resource/, '');
      return [pointer, details?.text].filter((part) => part !== undefined && part !== '').join(': ');
    });
  } catch {
    return [];
  }
}

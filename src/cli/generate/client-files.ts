import { type ApiDocument, apiSchemas } from '../../http/api-description/api-document.ts';
import type { ReadDocument } from '../../http/api-page/read-document.ts';
import { clientOperationsText, schemasOfClient } from './client-operations.ts';
import { clientTypes } from './client-types.ts';

const folder = 'src/client/generated';
/** What errors are read as, beside what the functions take and answer. */
const ofErrors = ['Problem', 'OperationOutcome'];

/** The generated part of the client, by path. */
export async function clientFiles(description: ApiDocument): Promise<readonly (readonly [string, string])[]> {
  const document = description as unknown as ReadDocument;
  const names = [...schemasOfClient(document), ...ofErrors];
  return [
    [`${folder}/api-types.ts`, await clientTypes(apiSchemas(), names)],
    [`${folder}/operations.ts`, clientOperationsText(document)],
  ];
}

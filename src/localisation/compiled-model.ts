import { modelVersion } from './model-version.ts';

/** What can be worked out about the hypotheses before any exam is met. It changes no answer, only when the work is done. */
export interface CompiledModel {
  /** Number of hypotheses. */
  readonly hypotheses: number;
  /** By column name, the state of the item under every hypothesis, one byte each. */
  readonly states: ReadonlyMap<string, Uint8Array>;
  /** What each hypothesis makes the patient complain of, one bit for each mark; `coverage.ts` has the marks. */
  readonly complaints: Uint32Array;
}

interface Header {
  readonly modelVersion: string;
  readonly hypotheses: number;
  readonly columns: readonly string[];
}

/** Bytes of the length that stands before the header. */
const lengthBytes = 4;
/** Bytes of the complaints of one hypothesis. */
const maskBytes = 4;

/** As bytes: length of the header, the header as JSON, the complaints with the low byte first, the columns one after the other. */
export function packModel({ hypotheses, states, complaints }: CompiledModel): Uint8Array {
  const header: Header = { modelVersion, hypotheses, columns: [...states.keys()] };
  const json = new TextEncoder().encode(JSON.stringify(header));
  const bytes = new Uint8Array(lengthBytes + json.length + maskBytes * hypotheses + states.size * hypotheses);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, json.length);
  bytes.set(json, lengthBytes);
  let at = lengthBytes + json.length;
  for (const mask of complaints) {
    view.setUint32(at, mask, true);
    at += maskBytes;
  }
  for (const column of states.values()) {
    bytes.set(column, at);
    at += hypotheses;
  }
  return bytes;
}

/** The model from its bytes, whose columns stay views of them; null when they are not of this version of the model. */
export function unpackModel(bytes: Uint8Array): CompiledModel | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < lengthBytes) return null;
  const headerEnd = lengthBytes + view.getUint32(0);
  if (headerEnd > bytes.length) return null;
  const header = JSON.parse(new TextDecoder().decode(bytes.subarray(lengthBytes, headerEnd))) as Header;
  const { hypotheses, columns } = header;
  const statesFrom = headerEnd + maskBytes * hypotheses;
  if (header.modelVersion !== modelVersion || bytes.length !== statesFrom + columns.length * hypotheses) return null;
  const complaints = Uint32Array.from({ length: hypotheses }, (_, index) =>
    view.getUint32(headerEnd + maskBytes * index, true),
  );
  const states = new Map(
    columns.map((name, index) => {
      const from = statesFrom + index * hypotheses;
      return [name, bytes.subarray(from, from + hypotheses)];
    }),
  );
  return { hypotheses, states, complaints };
}

import type { AddressInfo } from 'node:net';
import { connect, createServer, type Server, type Socket } from 'node:net';

/** What may be wrong with a line: cut with a reset, silent, open on one side only, cut in the middle of an answer. */
export const lineFaults = ['reset', 'stall', 'half-open', 'cut answer'] as const;
export type LineFault = (typeof lineFaults)[number];

export interface FaultyLine {
  /** Port of this machine that leads to the target. */
  readonly port: number;
  /** From now on, or until `mend`. Connections that are open meet it, new ones too. */
  spoil(fault: LineFault): void;
  mend(): void;
  close(): Promise<void>;
}

/** A proxy for TCP whose faults are made on purpose. */
export async function faultyLine(target: { readonly host: string; readonly port: number }): Promise<FaultyLine> {
  let fault: LineFault | undefined;
  const pairs = new Set<{ readonly near: Socket; readonly far: Socket }>();
  const server: Server = createServer({ allowHalfOpen: true }, (near) => {
    const far = connect({ ...target, allowHalfOpen: true });
    const pair = { near, far };
    pairs.add(pair);
    const end = () => {
      near.destroy();
      far.destroy();
      pairs.delete(pair);
    };
    near.on('data', (chunk) => {
      if (fault === 'reset') near.resetAndDestroy();
      else if (fault !== 'stall') far.write(chunk);
    });
    far.on('data', (chunk) => {
      if (fault === 'cut answer') near.write(chunk.subarray(0, Math.floor(chunk.length / 2)), end);
      else if (fault === undefined) near.write(chunk);
      else if (fault === 'reset') near.resetAndDestroy();
    });
    near.on('end', () => far.end());
    far.on('end', () => near.end());
    for (const socket of [near, far]) {
      socket.on('error', end);
      socket.on('close', end);
    }
  });
  const cutAll = () => {
    for (const { near, far } of [...pairs]) {
      near.destroy();
      far.destroy();
    }
  };
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    port: (server.address() as AddressInfo).port,
    spoil(next) {
      fault = next;
      if (next === 'reset') for (const { near } of pairs) near.resetAndDestroy();
    },
    mend() {
      // Who was silent stays so for the connections that were open: only new ones are whole.
      if (fault === 'stall' || fault === 'half-open') cutAll();
      fault = undefined;
    },
    async close() {
      cutAll();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

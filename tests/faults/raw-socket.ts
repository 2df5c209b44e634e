import { connect, type Socket } from 'node:net';

export interface RawAnswer {
  readonly text: string;
  /** Whether the other side closed within the time. */
  readonly isClosed: boolean;
}

/**
 * Sends bytes over a plain socket.
 * @param waitMs how long to go on listening after the last byte that came
 */
export function sendRaw(url: string, bytes: string | Buffer, waitMs = 500): Promise<RawAnswer> {
  return new Promise((resolve) => {
    const socket = connectTo(url);
    let text = '';
    let isSilent = false;
    socket.write(bytes);
    socket.setTimeout(waitMs, () => {
      isSilent = true;
      socket.destroy();
    });
    socket.on('data', (chunk) => {
      text += chunk.toString('latin1');
    });
    socket.on('close', () => resolve({ text, isClosed: !isSilent }));
  });
}

export function connectTo(url: string): Socket {
  const { hostname, port } = new URL(url);
  const socket = connect(Number(port), hostname);
  // A refused or broken connection is an outcome here and no fault of the test.
  socket.on('error', () => undefined);
  return socket;
}

/** Statuses of the answers in what came back, in order; bodies here never hold such a line. */
export function statusesIn(text: string): number[] {
  return [...text.matchAll(/HTTP\/1\.1 (\d{3}) /g)].map(([, status]) => Number(status));
}

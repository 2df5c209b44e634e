import type { Request } from 'express';

/**
 * Address of the service for links in answers, without a slash at the end. What a caller writes into `Host` is not
 * believed: a link made of it could lead anywhere.
 * @param publicUrl the configured address; absent, the address of the socket is taken, which is right on this machine
 */
export function baseUrlOf(req: Request, publicUrl: string | undefined): string {
  if (publicUrl !== undefined) return publicUrl;
  const { localAddress = '127.0.0.1', localPort, localFamily } = req.socket;
  const address = localAddress.replace(/^::ffff:/, '');
  const host = localFamily === 'IPv6' && address.includes(':') ? `[${address}]` : address;
  return `http://${host}:${localPort}`;
}

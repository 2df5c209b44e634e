import { isIP } from 'node:net';

/** Whether a host is this machine: its name, or an address of its loopback. Source: RFC 6761, section 6.3; RFC 1122, 3.2.1.3; RFC 4291, 2.5.3. */
export function isLoopback(host: string): boolean {
  return host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.'));
}

/** The same of the host in an address, where IPv6 stands in brackets. */
export function leadsToLoopback({ hostname }: URL): boolean {
  return isLoopback(hostname.replace(/^\[|\]$/g, ''));
}

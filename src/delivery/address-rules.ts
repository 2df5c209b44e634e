import { type LookupAddress, type LookupOptions, lookup } from 'node:dns';
import { isIP, type LookupFunction } from 'node:net';
import ipaddr from 'ipaddr.js';

/**
 * Whether an address is one of the public internet: nothing of this machine, the local network, its router, or the cloud
 * around it, in any notation. Source: IANA special-purpose address registries, by the ranges of ipaddr.js; the rule is
 * that of OWASP API Security Top 10 2023, API7 (server-side request forgery).
 * @param address IPv4 or IPv6 in text
 */
export function isPublicAddress(address: string): boolean {
  if (isIP(address) === 0) return false;
  const parsed = ipaddr.process(address); // an IPv6 form of an IPv4 address becomes that address
  if (parsed.range() !== 'unicast') return false;
  // Addresses of the first IPv6 internet alone; ranges for documentation and tests lie in it and have their own names.
  return parsed.kind() === 'ipv4' || parsed.match(ipaddr.parseCIDR('2000::/3'));
}

/** Names that by their standards never lead out of a machine or network. Sources: RFC 6761, 6762, 8375. */
const localNames = /(^|\.)(localhost|local|internal|intranet|lan|home\.arpa)$/;

/**
 * Whether requests may go to the host of an address as it stands; names are looked at again when they are resolved.
 * @param url parsed, so that decimal, octal and hexadecimal forms have become dotted ones
 */
export function isHostAllowed({ hostname }: URL, allowedHosts: ReadonlySet<string>): boolean {
  const host = hostname
    .replace(/^\[|\]$/g, '')
    .replace(/\.$/, '')
    .toLowerCase();
  if (allowedHosts.has(host)) return true;
  if (isIP(host) !== 0) return isPublicAddress(host);
  return host.includes('.') && !localNames.test(host);
}

/** A name resolved to an address that requests may not go to. */
export class AddressRefusedError extends Error {
  readonly code = 'EADDRREFUSED';
}

/**
 * Resolves names for a connection and refuses those with any address that is not public, so that what was checked is
 * what is connected to, however often the name changes its mind.
 * @param resolve as `dns.lookup`
 */
export function guardedLookup(resolve: typeof lookup = lookup): LookupFunction {
  return (hostname, options, callback) => {
    const all = { ...options, all: true } as LookupOptions & { all: true };
    resolve(hostname, all, (error, addresses: LookupAddress[]) => {
      const [first] = addresses ?? [];
      if (error !== null || first === undefined) callback(error ?? new Error('no address'), '', 0);
      else if (!addresses.every(({ address }) => isPublicAddress(address))) callback(new AddressRefusedError(), '', 0);
      else if (options.all === true) callback(null, addresses);
      else callback(null, first.address, first.family);
    });
  };
}

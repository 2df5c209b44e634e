import ipaddr from 'ipaddr.js';

/** Names of networks that Express knows. */
const named = ['loopback', 'linklocal', 'uniquelocal'];

/**
 * Which proxies are believed about where a request comes from: a number of them, or addresses and networks.
 * @returns what Express takes as `trust proxy`; false for none
 */
export function readTrustedProxies(text: string, problems: string[]): string | number | false {
  if (text === '' || text === '0') return false;
  if (/^[1-9]$/.test(text)) return Number(text);
  const parts = text.split(',').map((part) => part.trim());
  const isAddress = (part: string) => /[.:]/.test(part) && (ipaddr.isValid(part) || ipaddr.isValidCIDR(part));
  const isKnown = (part: string) => named.includes(part) || isAddress(part);
  if (parts.every(isKnown)) return parts.join(', ');
  problems.push(
    `TRUST_PROXY must be a number from 0 to 9, or addresses and networks with commas between (${named.join(', ')}, 10.0.0.0/8).`,
  );
  return false;
}

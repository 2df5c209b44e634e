import type { RequestHandler } from 'express';

/** Seconds for which a browser remembers the answer to its preflight. */
const maxAgeSeconds = 600;

/**
 * Lets the pages of some origins read the answers; without any, no page of another origin can. Credentials of the browser
 * are never asked for: a client shows itself by its token.
 * Source: the Fetch standard, CORS protocol (https://fetch.spec.whatwg.org/#http-cors-protocol).
 */
export function allowedOrigins(origins: readonly string[]): RequestHandler {
  return (req, res, next) => {
    const { origin } = req.headers;
    if (origins.length > 0) res.vary('Origin');
    if (origin !== undefined && origins.includes(origin)) {
      res.setHeader('Access-Control-Allow-Origin', origin);
      res.setHeader('Access-Control-Expose-Headers', 'X-Request-Id');
      res.setHeader('Cross-Origin-Resource-Policy', 'cross-origin');
      if (req.method === 'OPTIONS') {
        res.setHeader('Access-Control-Allow-Methods', 'GET, POST, OPTIONS');
        res.setHeader('Access-Control-Allow-Headers', 'Authorization, Content-Type');
        res.setHeader('Access-Control-Max-Age', maxAgeSeconds);
      }
    }
    next();
  };
}

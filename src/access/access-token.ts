import { errors, type JWTPayload, type JWTVerifyGetKey, jwtVerify } from 'jose';
import { AccessError } from './access-error.ts';
import type { TokenSettings } from './access-settings.ts';
import { isNameOfKey } from './api-key.ts';
import { anyone, type Caller } from './caller.ts';
import { readScope } from './scope.ts';

/** Longest token that is looked at, in characters; the header of a request takes 16 KiB in all. */
export const longestToken = 8_192;
/** Source: OpenID Connect Core 1.0, section 2, `sub`. */
const longestName = 255;

/** Three parts of base64url. Source: RFC 7515, section 7.1. */
const tokenForm = /^[A-Za-z0-9_-]+\.[A-Za-z0-9_-]+\.[A-Za-z0-9_-]+$/;

/** RFC 9068 asks for `at+jwt`; servers older than that say `JWT` or nothing. Tokens for other ends say something else. */
const takenTypes = [undefined, 'jwt', 'at+jwt', 'application/at+jwt'];

/**
 * Who an access token stands for, after every check has passed: signature, algorithm, issuer, audience, times, kind.
 * @throws AccessError INVALID_TOKEN with the reason for the log, ACCESS_UNAVAILABLE when the keys cannot be had
 * Source: RFC 7519; RFC 8725 (best current practices); RFC 9068.
 */
export async function callerWithToken(
  { issuer, audiences, algorithms, clockSkewSeconds }: TokenSettings,
  keys: JWTVerifyGetKey,
  token: string,
  now: Date,
): Promise<Caller> {
  if (token.length > longestToken || !tokenForm.test(token)) throw invalid('form');
  try {
    const { payload, protectedHeader } = await jwtVerify(token, keys, {
      issuer,
      audience: [...audiences],
      algorithms: [...algorithms],
      clockTolerance: clockSkewSeconds,
      requiredClaims: ['exp'],
      currentDate: now,
    });
    if (!takenTypes.includes(protectedHeader.typ?.toLowerCase())) throw invalid('typ');
    return callerOfClaims(payload);
  } catch (error) {
    if (error instanceof AccessError) throw error;
    throw invalid(reasonOf(error), error);
  }
}

/** @throws AccessError INVALID_TOKEN */
function callerOfClaims(claims: JWTPayload): Caller {
  // A token that is bound to a key of its sender is worth nothing without the proof. Source: RFC 9449, section 7.2.
  if (claims.cnf !== undefined) throw invalid('cnf');
  const client = nameIn(claims.client_id) ?? nameIn(claims.azp) ?? nameIn(claims.sub);
  if (client === undefined || isNameOfKey(client) || client === anyone.client) throw invalid('client');
  const user = nameIn(claims.sub);
  const subject = subjectOf(claims.patient);
  return {
    client,
    ...(user === undefined || user === client ? {} : { user }),
    scopes: scopesIn(claims).filter((scope) => readScope(scope) !== undefined),
    ...(subject === undefined ? {} : { subject }),
  };
}

/** Some servers write `scp`, and some a list. */
function scopesIn({ scope, scp }: JWTPayload): readonly string[] {
  return [scope ?? scp ?? []].flat().flatMap((value) => (typeof value === 'string' ? value.split(' ') : []));
}

/** The patient that a token speaks of; one that is there and cannot be understood must not become no limit. */
function subjectOf(patient: unknown): string | undefined {
  if (patient === undefined) return undefined;
  const id =
    typeof patient === 'string' ? /^(?:Patient\/)?(?<id>[A-Za-z0-9.-]{1,64})$/.exec(patient)?.groups?.id : null;
  if (id == null) throw invalid('patient');
  return `Patient/${id}`;
}

function nameIn(value: unknown): string | undefined {
  return typeof value === 'string' && value !== '' && value.length <= longestName ? value : undefined;
}

function invalid(reason: string, cause?: unknown): AccessError {
  return new AccessError('INVALID_TOKEN', { reason, cause });
}

/** The library's name for the check, and the claim that it was about; never a value. */
function reasonOf(error: unknown): string {
  if (error instanceof errors.JWTClaimValidationFailed || error instanceof errors.JWTExpired) {
    return `${error.code} ${error.claim}`;
  }
  return error instanceof errors.JOSEError ? error.code : 'token';
}

import type { TokenSettings } from './access-settings.ts';

/**
 * The discovery document of SMART; undefined where no address for tokens is known, without which it may not be.
 * @param types types of FHIR that can be asked for by scopes
 * Source: SMART App Launch 2.2.0, Conformance, /.well-known/smart-configuration.
 */
export function smartConfiguration(
  { issuer, keys, tokenUrl, authorizeUrl }: TokenSettings,
  types: readonly string[],
): Readonly<Record<string, unknown>> | undefined {
  if (tokenUrl === undefined) return undefined;
  const launches = authorizeUrl !== undefined;
  return {
    issuer,
    ...('url' in keys ? { jwks_uri: keys.url } : {}),
    ...(launches ? { authorization_endpoint: authorizeUrl } : {}),
    token_endpoint: tokenUrl,
    token_endpoint_auth_methods_supported: ['private_key_jwt'],
    token_endpoint_auth_signing_alg_values_supported: ['RS384', 'ES384'],
    grant_types_supported: ['client_credentials', ...(launches ? ['authorization_code'] : [])],
    ...(launches ? { response_types_supported: ['code'] } : {}),
    code_challenge_methods_supported: ['S256'],
    scopes_supported: [
      ...[
        'system/exam.c',
        'system/exam.cru',
        'system/exam.r',
        'system/localisation.c',
        'system/metrics.r',
        'system/AuditEvent.rs',
        'system/*.rs',
      ],
      ...types.map((type) => `system/${type}.rs`),
      ...['system/Measure.cu', 'patient/exam.cru', 'patient/localisation.c', 'patient/*.rs'],
    ],
    capabilities: ['client-confidential-asymmetric', 'permission-v1', 'permission-v2', 'permission-patient'],
  };
}

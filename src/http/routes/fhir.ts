import type { Router } from 'express';
import type { Bundle } from 'fhir/r4.js';
import { open } from '../../access/need.ts';
import { capabilityStatement } from '../../fhir/capability-statement.ts';
import { NotFoundError } from '../../kernel/errors.ts';
import { type ConformanceResource, conformanceTypes } from '../../terminology/load.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { keptTypes, onlyChecked, serverOperations } from '../capabilities.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { checkFormat } from '../fhir-answer.ts';
import { readQuery } from '../query.ts';

/** The FHIR side: what the service says about itself, and read and search of the conformance resources. */
export function fhirRoutes({ access, conformance, software }: AppContext): Router {
  const router = newRouter();
  const served = conformanceTypes.filter((type) => conformance.list().some((entry) => entry.type === type));
  const capabilities = capabilityStatement(software, served, keptTypes(), serverOperations, onlyChecked, access);

  endpoint(router, '/fhir/metadata', open, {
    get: [
      (req, res) => {
        checkFormat(readQuery(req, ['_format']).get('_format'));
        answerJson(res, 200, mediaTypes.fhir, capabilities);
      },
    ],
  });

  for (const type of served) {
    endpoint(router, `/fhir/${type}`, open, {
      get: [
        (req, res) => {
          const query = readQuery(req, ['_format', 'url']);
          checkFormat(query.get('_format'));
          const url = query.get('url');
          const found = url === undefined ? conformance.ofType(type) : [conformance.byUrl(url)];
          const matches = found.filter((resource) => resource?.resourceType === type) as ConformanceResource[];
          answerJson(res, 200, mediaTypes.fhir, searchset(type, url, matches));
        },
      ],
    });
    endpoint(router, `/fhir/${type}/:id`, open, {
      get: [
        (req, res) => {
          checkFormat(readQuery(req, ['_format']).get('_format'));
          const resource = conformance.get(type, String(req.params.id));
          if (resource === undefined) throw new NotFoundError(`There is no ${type} with this id.`);
          answerJson(res, 200, mediaTypes.fhir, resource);
        },
      ],
    });
  }
  return router;
}

function searchset(type: string, url: string | undefined, matches: readonly ConformanceResource[]): Bundle {
  const question = url === undefined ? type : `${type}?url=${encodeURIComponent(url)}`;
  return {
    resourceType: 'Bundle',
    type: 'searchset',
    total: matches.length,
    link: [{ relation: 'self', url: question }],
    ...(matches.length === 0
      ? {}
      : {
          entry: matches.map((resource) => ({
            ...(resource.url === undefined ? {} : { fullUrl: resource.url }),
            resource,
            search: { mode: 'match' as const },
          })),
        }),
  };
}

import type { Request, Response, Router } from 'express';
import { scopes } from '../../access/need.ts';
import { auditEvent } from '../../audit/audit-event.ts';
import { operationOutcome } from '../../fhir/operation-outcome.ts';
import { type ResultLink, searchset } from '../../fhir/result-set.ts';
import { NotFoundError } from '../../kernel/errors.ts';
import { notUnderstoodOfAudit, readAuditSearch } from '../../search/audit-search.ts';
import type { KeptRecord } from '../../store/audit/audit-store.ts';
import type { StoredResource } from '../../store/resource-repository.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess, patientsAskedFor } from '../audit/access-note.ts';
import { baseUrlOf } from '../base-url.ts';
import { callerOf } from '../caller-of.ts';
import { cursorOf, positionOf } from '../cursor.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { answerFhirText, answerResource, checkFormat } from '../fhir-answer.ts';
import { formBody, parametersOf } from '../form-body.ts';
import { prefers } from '../prefer.ts';
import { readQuery } from '../query.ts';
import { linkTo, openParameters, sealParameters } from '../search-links.ts';

/** Read and search of the audit trail, the only ways to it: it is written by what happens and never changed. */
export function auditEventRoutes(context: AppContext): Router {
  const router = newRouter();
  const { audit, sealedText } = context;

  const search = async (req: Request, res: Response): Promise<void> => {
    const { client } = callerOf(res);
    const given = openParameters('AuditEvent', parametersOf(req), sealedText, client);
    const asked = readAuditSearch(given, prefers(req, 'handling=strict'));
    noteAccess(res, { patients: patientsAskedFor(asked.applied) });
    checkFormat(asked.format);
    const pages = `AuditEvent ${client}`;
    const from = asked.cursor === undefined ? undefined : positionOf(asked.cursor, sealedText, pages);
    const found = await audit.search(asked.query, from);
    const base = `${baseUrlOf(req, context.publicUrl)}/fhir`;
    const applied = sealParameters('AuditEvent', asked.applied, sealedText, client);
    const others = applied.filter(([name]) => name !== '_cursor');
    const links: ResultLink[] = [{ relation: 'self', url: linkTo(`${base}/AuditEvent`, applied) }];
    if (found.next !== undefined) {
      links.push({
        relation: 'next',
        url: linkTo(`${base}/AuditEvent`, [...others, ['_cursor', cursorOf(found.next, sealedText, pages)]]),
      });
    }
    const outcome =
      asked.ignored.length === 0
        ? undefined
        : operationOutcome([
            {
              severity: 'warning',
              type: 'not-supported',
              code: 'BAD_REQUEST',
              text: `${notUnderstoodOfAudit(asked.ignored).message} The self link has the parameters that took effect.`,
            },
          ]);
    const json = searchset(base, links, found.total, found.matches.map(served), [], outcome);
    answerFhirText(res, 200, json, asked.isPretty);
  };
  endpoint(router, '/fhir/AuditEvent', scopes('AuditEvent.s'), { get: [search] });
  endpoint(router, '/fhir/AuditEvent/_search', scopes('AuditEvent.s'), {
    get: [search],
    post: [...formBody(context.bodyLimitBytes), search],
  });

  endpoint(router, '/fhir/AuditEvent/:id', scopes('AuditEvent.r'), {
    get: [
      async (req, res) => {
        const query = readQuery(req, ['_format', '_pretty']);
        checkFormat(query.get('_format'));
        const id = String(req.params.id);
        const found = /^[1-9]\d{0,14}$/.test(id) ? await audit.find(Number(id)) : undefined;
        if (found === undefined) throw new NotFoundError('There is no AuditEvent with this id.');
        answerResource(req, res, served(found), { kind: 'whole' }, query.get('_pretty') === 'true');
      },
    ],
  });
  return router;
}

function served({ n, record }: KeptRecord): StoredResource {
  return {
    type: 'AuditEvent',
    id: String(n),
    version: 1,
    updated: Date.parse(record.at),
    json: JSON.stringify(auditEvent(n, record)),
  };
}

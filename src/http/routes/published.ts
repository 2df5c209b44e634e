import type { Request, Response, Router } from 'express';
import { open } from '../../access/need.ts';
import { NotFoundError } from '../../kernel/errors.ts';
import { answerBytes, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { spellings } from '../exam-steps.ts';
import { answerPacked } from '../packed.ts';
import { oneOf, readQuery } from '../query.ts';

/** What a program needs to know before it sends anything: the catalogue, the pictures, the schemas, profiles and terminology. */
export function publishedRoutes({ catalogue, picture, files }: AppContext): Router {
  const router = newRouter();

  endpoint(router, '/catalogue', open, {
    get: [
      (req, res) => {
        const spelling = oneOf('spelling', readQuery(req, ['spelling']).get('spelling') ?? 'uk', spellings);
        mayBeKept(res);
        answerPacked(req, res, catalogue[spelling]);
      },
    ],
  });

  endpoint(router, '/picture', open, {
    get: [
      (req, res) => {
        readQuery(req, []);
        mayBeKept(res);
        answerPacked(req, res, picture());
      },
    ],
  });

  const file = (folder: string) => (req: Request, res: Response) => {
    readQuery(req, []);
    const path = `${folder}/${[req.params.path].flat().join('/')}`;
    const bytes = files.read(path);
    if (bytes === undefined) throw new NotFoundError('There is no such file.');
    mayBeKept(res);
    const isFhir = /(^|\/)[A-Z][A-Za-z]+-[^/]+\.json$/.test(path);
    answerBytes(res, 200, isFhir ? mediaTypes.fhir : mediaTypes.json, bytes);
  };
  const schemaTypes = [mediaTypes.schema, mediaTypes.json, mediaTypes.fhir];
  endpoint(router, '/profiles/*path', open, { get: [file('profiles')] }, schemaTypes);
  endpoint(router, '/terminology/*path', open, { get: [file('terminology')] }, schemaTypes);

  endpoint(
    router,
    '/json-schema/:name',
    open,
    {
      get: [
        (req, res) => {
          readQuery(req, []);
          const name = String(req.params.name).replace(/(\.schema)?(\.json)?$/, '');
          const bytes = files.read(`profiles/json-schema/${name}.schema.json`);
          if (bytes === undefined) throw new NotFoundError('There is no schema of this name.');
          mayBeKept(res);
          answerBytes(res, 200, mediaTypes.schema, bytes);
        },
      ],
    },
    schemaTypes,
  );

  return router;
}

/** These files say nothing about any person and change only with the version of the service. */
function mayBeKept(res: Response): void {
  res.setHeader('Cache-Control', 'public, max-age=300');
}

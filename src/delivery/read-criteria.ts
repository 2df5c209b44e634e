import { RequestError } from '../kernel/errors.ts';
import { linkedTypes } from '../search/parameters.ts';
import type { SearchQuery } from '../search/query.ts';
import { readSearch } from '../search/read-search.ts';
import type { Terminology } from '../search/read-token.ts';
import { isResultParameter } from '../search/result-parameters.ts';

/**
 * Criteria of a subscription, such as `ClinicalImpression?status=in-progress`, as the search that they are: a type made
 * from exams and any parameters by which it can be searched, all of them understood.
 * @throws RequestError BAD_REQUEST
 */
export function readCriteria(criteria: string, terminology: Terminology): SearchQuery {
  const [type = '', ...rest] = criteria.split('?');
  if (!linkedTypes.has(type)) {
    throw new RequestError('BAD_REQUEST', `Criteria begin with one of: ${[...linkedTypes].join(', ')}.`);
  }
  const parameters = [...new URLSearchParams(rest.join('?'))];
  if (parameters.some(([name]) => isResultParameter(name))) {
    throw new RequestError('BAD_REQUEST', 'Criteria say what must hold of a resource, not how a result is shown.');
  }
  return readSearch(type, parameters, { strict: true, ...terminology }).query;
}

/** Which of the suggested tests go out, and which the examiner adds. */
import type { Investigation, LocalisationAnswer } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import type { Draft } from '../draft/draft.ts';

type Workup = LocalisationAnswer['workup'];
type Choice = Pick<Draft, 'requests' | 'offeredTests'>;

export interface TestRow {
  readonly key: string;
  readonly label: string;
  readonly isChosen: boolean;
  /** Suggested only after the examiner had chosen, so that nobody has decided about it. */
  readonly isNew: boolean;
  /** Why, how soon and by whom; undefined for a test that the service does not suggest. */
  readonly suggestion: Investigation | undefined;
}

/** The tests that are suggested, most pressing first, then those that are asked for besides. */
export function testRows(
  { requests, offeredTests }: Choice,
  workup: Workup,
  index: CatalogueIndex,
): readonly TestRow[] {
  const suggested = workup.map((suggestion) => ({
    key: suggestion.key,
    label: suggestion.label,
    isChosen: requests === undefined || requests.includes(suggestion.key),
    isNew:
      requests !== undefined &&
      offeredTests !== undefined &&
      !requests.includes(suggestion.key) &&
      !offeredTests.includes(suggestion.key),
    suggestion,
  }));
  const besides = (requests ?? []).filter((key) => !workup.some((one) => one.key === key));
  return [
    ...suggested,
    ...besides.map((key) => ({
      key,
      label: index.catalogue.investigations.find((one) => one.key === key)?.label ?? key,
      isChosen: true,
      isNew: false,
      suggestion: undefined,
    })),
  ];
}

/** The draft with one test ticked, or left out. All ticked and none besides is the same as no choice. */
export function withTest(draft: Draft, workup: Workup, key: string, isChosen: boolean): Draft {
  const suggested = workup.map((one) => one.key);
  const others = (draft.requests ?? suggested).filter((one) => one !== key);
  const requests = isChosen ? [...others, key] : others;
  const { requests: _requests, offeredTests, ...rest } = draft;
  if (requests.length === suggested.length && suggested.every((one) => requests.includes(one))) return rest;
  return { ...rest, requests, offeredTests: [...new Set([...(offeredTests ?? suggested), key])] };
}

/** Investigations that can still be added. */
export function furtherTests(rows: readonly TestRow[], { catalogue }: CatalogueIndex) {
  return catalogue.investigations.filter(({ key }) => !rows.some((row) => row.key === key));
}

import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import { assessed, builtExam, faults } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { testRows } from './chosen-tests.ts';
import { PlaceLink } from './place-link.tsx';
import { fieldLabels, type Place, placeAt, placeOfWords } from './places.ts';
import { sentence } from './sentence.ts';

/** What the examiner should know of before it goes: flags that could not be decided, and what the service does not take. */
export function OpenPoints({ index }: { readonly index: CatalogueIndex }) {
  const answer = assessed.value?.answer;
  const undecided = answer?.redFlags.filter(({ state }) => state === 'not-assessable') ?? [];
  const refused = faults.value;
  const built = builtExam.value;
  const newTests = answer === undefined ? [] : testRows(draft.value, answer.workup, index).filter(({ isNew }) => isNew);
  const isEmpty = undecided.length === 0 && refused.length === 0 && newTests.length === 0;
  return (
    <section class="block open-points" aria-labelledby="open-title">
      <h3 id="open-title">Still open</h3>
      {isEmpty && (
        <p>
          {answer === undefined
            ? 'Nothing is known yet.'
            : 'No red flag is undecided, and the service takes the record as it is.'}
        </p>
      )}
      {undecided.map((flag) => (
        <UndecidedFlag key={flag.key} flag={flag} index={index} />
      ))}
      {refused.length > 0 && built !== undefined && (
        <div>
          <h4>The service does not take the record as it is</h4>
          <FaultList faults={refused} built={built} index={index} />
        </div>
      )}
      {newTests.length > 0 && (
        <p>
          ◆ Suggested since you chose the tests, and not ticked: {newTests.map(({ label }) => label).join(', ')}.{' '}
          <PlaceLink place={{ kind: 'field', field: 'requests', label: fieldLabels.requests }} index={index} />
        </p>
      )}
    </section>
  );
}

type RedFlag = LocalisationAnswer['redFlags'][number];

function UndecidedFlag({ flag, index }: { readonly flag: RedFlag; readonly index: CatalogueIndex }) {
  const missing = flag.because.filter(({ finding }) => finding === null);
  const places = new Map<string, Place>();
  for (const { text } of missing) {
    const place = placeOfWords(text, index);
    if (place !== undefined) places.set(place.label, place);
  }
  return (
    <div class="undecided">
      <h4>
        <span class="sign">?</span> Not decided: {flag.label}
      </h4>
      <ul>
        {missing.map(({ text }) => (
          <li key={text}>{sentence(text)}</li>
        ))}
      </ul>
      <p class="buttons">
        {[...places.values()].map((place) => (
          <PlaceLink key={place.label} place={place} index={index} />
        ))}
      </p>
    </div>
  );
}

interface FaultListProps {
  readonly faults: readonly { readonly pointer: string | undefined; readonly message: string }[];
  readonly built: NonNullable<typeof builtExam.value>;
  readonly index: CatalogueIndex;
}

/** Each fault with the way to where it is mended. */
export function FaultList({ faults: listed, built, index }: FaultListProps) {
  return (
    <ul class="fault-list">
      {listed.map(({ pointer, message }) => {
        const place = placeAt(pointer, built, index);
        return (
          <li key={`${pointer} ${message}`}>
            <span>
              {place !== undefined && <strong>{place.label}: </strong>}
              {message}
            </span>
            {place !== undefined && <PlaceLink place={place} index={index} />}
          </li>
        );
      })}
    </ul>
  );
}

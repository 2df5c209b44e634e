import { useEffect, useState } from 'preact/hooks';
import type { PracticeWish } from '../../client/generated/api-types.ts';
import { admit, fetchSites, isWaiting, sites } from './practice-case.ts';

type Difficulty = NonNullable<PracticeWish['difficulty']>;
type Part = NonNullable<PracticeWish['part']>;

/** What sort of patient to practise on; the choices are those of the service. */
export function NewPatient() {
  const [difficulty, setDifficulty] = useState<Difficulty>('usual');
  const [part, setPart] = useState<Part | ''>('');
  useEffect(() => void fetchSites(), []);
  return (
    <form
      class="new-patient"
      onSubmit={(event) => {
        event.preventDefault();
        void admit({ difficulty, ...(part !== '' && { part }) });
      }}
    >
      <p>
        Examine a simulated patient item by item, say where the lesion is, then see the answer, the reasons, and how few
        items would have done.
      </p>
      <fieldset class="choices">
        <legend>How hard</legend>
        {(sites.value?.difficulties ?? []).map((one) => (
          <label key={one.difficulty} class="check">
            <input
              type="radio"
              name="difficulty"
              checked={one.difficulty === difficulty}
              onChange={() => setDifficulty(one.difficulty)}
            />
            {one.label}
          </label>
        ))}
      </fieldset>
      <label class="field">
        Part of the nervous system
        <select value={part} onChange={({ currentTarget }) => setPart(currentTarget.value as Part | '')}>
          <option value="">any, or none</option>
          {(sites.value?.parts ?? [])
            .filter((one) => one.part !== 'none')
            .map((one) => (
              <option key={one.part} value={one.part}>
                {one.label}
              </option>
            ))}
        </select>
      </label>
      <button type="submit" class="main" disabled={isWaiting.value}>
        New patient
      </button>
    </form>
  );
}

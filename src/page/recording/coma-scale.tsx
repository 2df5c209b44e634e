import type { CatalogueIndex } from '../catalogue.ts';
import type { ComaScore, NotTestedReason } from '../draft/draft.ts';
import { change, draft } from '../draft/draft-store.ts';
import { reasonWords } from './cell-state.ts';

/** The coma scale by its parts; a part that is passed over while another is scored counts as not done. */
export function ComaScale({ index }: { readonly index: CatalogueIndex }) {
  const { label, parts } = index.catalogue.comaScale;
  const scores = draft.value.comaScale;
  const states = parts.map(({ key }) => scores[key]);
  const total = states.every((state) => state !== undefined && 'score' in state)
    ? states.reduce((sum, state) => sum + (state !== undefined && 'score' in state ? state.score : 0), 0)
    : undefined;
  const set = (part: string, words: string, score: ComaScore | undefined): void =>
    change(`${label}, ${part}: ${words}`, (before) => {
      const { [part]: _before, ...others } = before.comaScale;
      return { ...before, comaScale: score === undefined ? others : { ...others, [part]: score } };
    });
  return (
    <section class="group" aria-labelledby="coma-scale">
      <header>
        <h3 id="coma-scale">{label}</h3>
        <p class="total">{total === undefined ? 'no total yet' : `total ${total}`}</p>
      </header>
      {parts.map((part) => {
        const state = scores[part.key];
        return (
          <fieldset class="strip" key={part.key}>
            <legend>{part.label}</legend>
            <div class="choices">
              {part.scores.map(({ score, label: words }) => (
                <button
                  type="button"
                  key={score}
                  class="choice wide"
                  aria-pressed={state !== undefined && 'score' in state && state.score === score}
                  onClick={() => set(part.key, words, { score })}
                >
                  {score}: {words}
                </button>
              ))}
            </div>
            <label class="note">
              Not tested because
              <select
                value={state !== undefined && 'notTested' in state ? state.notTested : ''}
                onChange={({ currentTarget }) => {
                  const reason = currentTarget.value as NotTestedReason | '';
                  set(
                    part.key,
                    reason === '' ? 'cleared' : 'not tested',
                    reason === '' ? undefined : { notTested: reason },
                  );
                }}
              >
                <option value="">-</option>
                {Object.entries(reasonWords).map(([reason, words]) => (
                  <option key={reason} value={reason}>
                    {words}
                  </option>
                ))}
              </select>
            </label>
          </fieldset>
        );
      })}
    </section>
  );
}

import type { CatalogueIndex } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { differencesOf } from './differences.ts';
import { beginCorrection, placeOver, sendAsNew, sendState } from './send-exam.ts';
import type { KeptExam } from './sent-exam.ts';

interface OtherKeptProps {
  readonly why: 'in-use' | 'overtaken';
  readonly kept: KeptExam | undefined;
  readonly index: CatalogueIndex;
}

/** What is kept in the place of the draft, beside it, for the examiner to choose; neither goes without being asked for. */
export function OtherKept({ why, kept, index }: OtherKeptProps) {
  return (
    <div class="other-kept">
      <h4>
        {why === 'in-use'
          ? 'Not sent: this exam is kept already, in other words'
          : 'Not sent: it was corrected meanwhile'}
      </h4>
      <p>
        {why === 'in-use'
          ? 'An earlier sending of this exam has arrived, and you have changed it since; or its number is taken by another exam.'
          : 'Someone else has sent a correction of this exam after you opened it. Nothing of theirs or yours is lost.'}
      </p>
      {kept === undefined ? <p>What is kept cannot be read from here.</p> : <Differences kept={kept} index={index} />}
      <p class="buttons">
        {kept !== undefined && (
          <>
            <button type="button" class="plain" onClick={() => placeOver(kept, index)}>
              Send mine in its place, as a correction
            </button>
            <button
              type="button"
              class="plain"
              onClick={() => {
                if (globalThis.confirm('Give up your version? It is removed from this device.')) {
                  beginCorrection(kept, undefined);
                }
              }}
            >
              Give mine up and go on from what is kept
            </button>
          </>
        )}
        {why === 'in-use' && (
          <button type="button" class="plain" onClick={() => sendAsNew(index)}>
            Send mine as another exam
          </button>
        )}
        <button
          type="button"
          class="plain"
          onClick={() => {
            sendState.value = { kind: 'idle' };
          }}
        >
          Decide later
        </button>
      </p>
    </div>
  );
}

function Differences({ kept, index }: { readonly kept: KeptExam; readonly index: CatalogueIndex }) {
  const rows = differencesOf(kept.draft, draft.value, index);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that is wider than a phone has to be scrolled by keyboard too
    <section class="wide" tabIndex={0} aria-label="Where the two differ">
      <table>
        <caption>Where the two differ ({rows.length})</caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Kept</th>
            <th scope="col">Mine</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ what, kept: there, mine }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{there}</td>
              <td>{mine}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import type { Draft } from '../draft/draft.ts';
import { type BuiltExam, examOfDraft } from '../draft/exam-of-draft.ts';
import { spelling } from '../settings.ts';
import { referenceWords } from './about-fields.tsx';
import { testRows } from './chosen-tests.ts';
import { presentationWithCaution } from './presentation.tsx';
import { dateInWords } from './sheet-date.ts';
import { comaLine, type SheetCell, type SheetRow, sheetSections, untestedLines } from './sheet-rows.ts';
import { priorityWords } from './test-list.tsx';

interface PrintSheetProps {
  readonly draft: Draft;
  readonly answer: LocalisationAnswer | undefined;
  readonly built: BuiltExam | undefined;
  readonly index: CatalogueIndex;
  /** Id under which the exam is kept; undefined before it is sent. */
  readonly id?: string;
}

const places = 4;
/** More rows than these need smaller print to stay on one page. */
const spaciousRows = 22;

/** The examination on one sheet of paper. It shows in print only. */
export function PrintSheet({ draft, answer, built, index, id }: PrintSheetProps) {
  const flags = answer?.redFlags ?? [];
  const present = flags.filter(({ state }) => state === 'present');
  const undecided = flags.filter(({ state }) => state !== 'present');
  const tests = answer === undefined ? [] : testRows(draft, answer.workup, index).filter(({ isChosen }) => isChosen);
  const sections = sheetSections(draft, answer, built ?? examOfDraft(draft, index), index);
  const untested = untestedLines(draft, index);
  const coma = comaLine(draft, index);
  const hasReinforced = Object.values(draft.cells).some(({ reinforced }) => reinforced === true);
  const isDense = sections.reduce((sum, { rows }) => sum + rows.length, 0) > spaciousRows;
  return (
    <div class={isDense ? 'sheet dense' : 'sheet'}>
      <header>
        <h2>Neurological examination</h2>
        <dl>
          {headOf(draft, id).map(([term, words]) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
      </header>
      {present.length > 0 && (
        <section class="sheet-flags">
          {present.map(({ key, label, urgency, action }) => (
            <p key={key}>
              <strong>
                ⚑ {label} ({urgency.replace('-', ' ')}).
              </strong>{' '}
              {action}
            </p>
          ))}
        </section>
      )}
      {undecided.length > 0 && (
        <p>
          <strong>Not decided:</strong>{' '}
          {undecided
            .map(({ label, because }) => {
              const missing = because.filter(({ finding }) => finding === null).map(({ text }) => text);
              return missing.length === 0 ? label : `${label} (${missing.join('; ')})`;
            })
            .join('. ')}
          .
        </p>
      )}
      {answer !== undefined && (
        <section class="sheet-prose">
          {presentationWithCaution(answer)
            .split(/\n{2,}/)
            .filter((paragraph) => paragraph !== answer.caution && !isOfFlags(paragraph))
            .map((paragraph) => (
              <p key={paragraph}>{paragraph}</p>
            ))}
        </section>
      )}
      <section class="sheet-findings">
        <h3>Findings (◆ abnormal{hasReinforced && ', ʀ with reinforcement'})</h3>
        <div class="columns-of-findings">
          {sections.map(({ label, rows, others }) => (
            <div key={label} class="sheet-section">
              {rows.length > 0 && (
                <table>
                  <thead>
                    <tr>
                      <th scope="col">{label}</th>
                      <th scope="col">Right</th>
                      <th scope="col">Left</th>
                    </tr>
                  </thead>
                  <tbody>
                    {rows.map((row) => (
                      <Row key={row.name} row={row} />
                    ))}
                  </tbody>
                </table>
              )}
              {others.length > 0 && (
                <p>
                  {rows.length === 0 && <strong>{label}. </strong>}
                  {others.map(({ word, names }) => (
                    <span key={word}>
                      <em>{word}:</em> {names.join('; ')}.{' '}
                    </span>
                  ))}
                </p>
              )}
            </div>
          ))}
        </div>
        {coma !== undefined && <p>{coma}</p>}
        {untested.length > 0 && (
          <p>
            {untested.map(({ reason, names }) => (
              <span key={reason}>
                <strong>Not tested ({reason}):</strong> {names.join('; ')}.{' '}
              </span>
            ))}
          </p>
        )}
      </section>
      {answer !== undefined && (
        <section class="sheet-ranks">
          <Ranks
            title="Leading sites"
            rows={answer.localisations.slice(0, places).map(({ label, side, level, probability }) => ({
              words: [label, level ?? '', side === 'both' ? 'both sides' : (side ?? '')].filter(Boolean).join(', '),
              probability,
            }))}
          />
          <Ranks
            title="Leading causes"
            rows={answer.causes.slice(0, places).map(({ label, probability }) => ({ words: label, probability }))}
          />
          <div>
            <h3>Tests proposed</h3>
            {tests.length === 0 ? (
              <p>None.</p>
            ) : (
              <p>
                {tests
                  .map(
                    ({ label, suggestion }) =>
                      `${label} (${suggestion === undefined ? 'asked for by the examiner' : priorityWords[suggestion.priority]})`,
                  )
                  .join('; ')}
                .
              </p>
            )}
          </div>
        </section>
      )}
      {answer !== undefined && (
        <footer>
          {answer.caution} Model {answer.modelVersion}.{id === undefined ? ' Not sent when this was printed.' : ''}
        </footer>
      )}
    </div>
  );
}

function Row({ row: { name, right, left, midline, note } }: { readonly row: SheetRow }) {
  return (
    <tr>
      <th scope="row">
        {name}
        {note !== '' && <em> {note}</em>}
      </th>
      {midline !== undefined && right === undefined && left === undefined ? (
        <td colSpan={2} class="midline">
          {cellWords(midline)}
        </td>
      ) : (
        <>
          <td>{cellWords(right)}</td>
          <td>
            {cellWords(left)}
            {midline !== undefined && ` (side not stated: ${cellWords(midline)})`}
          </td>
        </>
      )}
    </tr>
  );
}

function cellWords(cell: SheetCell | undefined): string {
  if (cell === undefined) return '–';
  return cell.isAbnormal ? `◆ ${cell.text}` : cell.text;
}

interface RankRow {
  readonly words: string;
  readonly probability: number;
}

function Ranks({ title, rows }: { readonly title: string; readonly rows: readonly RankRow[] }) {
  return (
    <div>
      <h3>{title}</h3>
      <ol>
        {rows.map(({ words, probability }) => (
          <li key={words}>
            {words}, {percent(probability)}
          </li>
        ))}
      </ol>
    </div>
  );
}

function percent(probability: number): string {
  const whole = Math.round(100 * probability);
  if (whole === 100) return 'over 99 %';
  return whole === 0 ? 'under 1 %' : `${whole} %`;
}

/** The sheet lists red flags above the prose, so that the prose need not say them again. */
function isOfFlags(paragraph: string): boolean {
  return /^(Red flags?|Not examined, and it matters)/.test(paragraph);
}

function headOf(draft: Draft, id: string | undefined): readonly (readonly [string, string])[] {
  const { person, carried } = draft;
  const about = [person.ageYears === undefined ? '' : `${person.ageYears} years`, person.sex ?? ''].filter(Boolean);
  const reference = (field: 'subject' | 'encounter' | 'performer'): string =>
    carried?.[field] === undefined ? draft[field] : referenceWords(carried[field]);
  const rows: readonly (readonly [string, string])[] = [
    ['Person', [reference('subject'), ...about].filter(Boolean).join(', ') || 'not stated'],
    ['Stay or visit', reference('encounter')],
    ['Examined', dateInWords(draft.examinedAt, spelling.value)],
    ['Examiner', reference('performer') || 'not stated'],
    ['Status', draft.status.replaceAll('-', ' ')],
    ['Exam', id ?? ''],
  ];
  return rows.filter(([, words]) => words !== '');
}

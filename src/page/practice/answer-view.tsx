import { useEffect, useRef } from 'preact/hooks';
import type { PracticeAnswer } from '../../client/generated/api-types.ts';
import { countWords } from './commit-form.tsx';
import { type Answered, dismiss } from './practice-case.ts';

type Grade = PracticeAnswer['verdict']['grade'];
type Stance = PracticeAnswer['reasons'][number]['stance'];

const grades: Readonly<Record<Grade, { readonly sign: string; readonly label: string }>> = {
  right: { sign: '✓', label: 'Right' },
  near: { sign: '≈', label: 'Near' },
  wrong: { sign: '✗', label: 'Not there' },
};

const stances: Readonly<Record<Stance, string>> = {
  follows: 'Follows from the lesion',
  spared: 'Normal, as the lesion leaves it',
  unexpected: 'Not as this lesion would have it',
  unexplained: 'Abnormal, but not from the lesion',
};
const stanceKeys = Object.keys(stances) as readonly Stance[];

/** The lesion, how near the learner came, why each finding follows, and how few items would have done. */
export function AnswerView({ answer, found }: Answered) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.scrollIntoView();
    heading.current?.focus({ preventScroll: true });
  }, []);
  const { verdict, lesion, commitment, reasons, supported, leftOut } = answer;
  const { sign, label } = grades[verdict.grade];
  return (
    <div class="answer">
      <section class={`verdict ${verdict.grade}`}>
        <h3 ref={heading} tabIndex={-1}>
          <span aria-hidden="true">{sign}</span> {label}: {siteName(lesion)}
        </h3>
        <p>{verdict.because}</p>
        <p class="soft">
          You said: {siteName(commitment)}. The lesion lies in: {lesion.partLabel.toLowerCase()}. Code{' '}
          {lesion.code.code}.
        </p>
        <button type="button" class="main" onClick={dismiss}>
          Next patient
        </button>
      </section>
      <section>
        <h4>Why</h4>
        {reasons.length === 0 && <p>Nothing was examined that speaks for or against it.</p>}
        {stanceKeys.map((stance) => {
          const own = reasons.filter((reason) => reason.stance === stance);
          if (own.length === 0) return null;
          return (
            <details key={stance} class={`reasons-of ${stance}`} open={stance !== 'spared'}>
              <summary>
                {stances[stance]} ({own.length})
              </summary>
              <ul>
                {own.map(({ text, because, examined }) => (
                  <li key={`${examined} ${text}`}>
                    <b>{text}</b>: {because}
                  </li>
                ))}
              </ul>
            </details>
          );
        })}
      </section>
      <section>
        <h4>What your findings supported</h4>
        <ol class="supported">
          {supported.localisations.map((one) => (
            <li key={`${one.site} ${one.side} ${one.level}`} class={isLesion(one, answer) ? 'true-site' : undefined}>
              {siteName(one)} <span class="share">{percent(one.probability)}</span>
              {isLesion(one, answer) && <b> ← the lesion</b>}
            </li>
          ))}
        </ol>
        <p class="soft">On these findings the site of the lesion had {percent(supported.probabilityOfLesion)}.</p>
      </section>
      {leftOut.length > 0 && (
        <section>
          <h4>Left out, and would have told more</h4>
          <ul>
            {leftOut.map((one) => (
              <li key={`${one.label} ${one.side}`}>
                <b>{one.text ?? one.label}</b>: {one.because}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Comparison answer={answer} found={found} />
      <p class="onward">
        <button type="button" class="main" onClick={dismiss}>
          Next patient
        </button>
      </p>
    </div>
  );
}

function Comparison({ answer, found }: Answered) {
  const { efficient, items } = answer;
  const { steps, sureFrom } = efficient;
  return (
    <section>
      <h4>
        You: {countWords(items.yours)}. An efficient examiner:{' '}
        {items.efficient === null ? 'not sure either' : countWords(items.efficient)}
      </h4>
      <p class="soft">
        That examiner begins with the complaint, then always does what is expected to tell most, and stops when one site
        has {percent(sureFrom)}. {outcomeOf(answer.efficient)}
      </p>
      <div class="beside-each-other">
        <div>
          <h5>Your items</h5>
          {found.length === 0 && <p>None.</p>}
          <ol>
            {found.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ol>
        </div>
        <div>
          <h5>The efficient examiner's</h5>
          <ol>
            {steps.map(({ text, because, leading }) => (
              <li key={text}>
                <b>{text}</b>
                <br />
                <span class="soft">
                  Chosen: {because}. Then leading: {siteName(leading)}, {percent(leading.probability)}.
                </span>
              </li>
            ))}
          </ol>
        </div>
      </div>
    </section>
  );
}

function outcomeOf({ steps, itemsAtMost, isSure, ledFrom }: PracticeAnswer['efficient']): string {
  const end = isSure
    ? ''
    : steps.length < itemsAtMost
      ? 'Here nothing more was worth doing, and no site had that. '
      : `Here ${countWords(itemsAtMost)} did not bring that. `;
  return ledFrom === null
    ? `${end}Another site led at the end: examinations mislead too.`
    : `${end}The lesion itself led from item ${ledFrom} on.`;
}

interface NamedSite {
  readonly label: string;
  readonly side: string | null;
}

function siteName({ label, side }: NamedSite): string {
  return side === 'left' || side === 'right' ? `${label}, ${side}` : label;
}

function isLesion(
  one: { readonly site: string; readonly side: string | null; readonly level: string | null },
  { lesion }: PracticeAnswer,
): boolean {
  const isSameLevel = lesion.part === 'spinal-cord' || one.level === lesion.level;
  return one.site === lesion.site && one.side === lesion.side && isSameLevel;
}

function percent(share: number): string {
  return share > 0 && share < 0.005 ? 'less than 1 %' : `${Math.round(100 * share)} %`;
}

import { useEffect, useRef, useState } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import { saysAnything } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { NeuroexamApiError, noteRefusal, service } from '../service.ts';
import { hrefOf } from '../view.ts';
import { downloadJson } from './download.ts';
import { Presentation } from './presentation.tsx';
import { PrintSheet } from './print-sheet.tsx';
import { beginCorrection, beginNew } from './send-exam.ts';
import { openAgain, openingProblem, type SentExam, sentExam } from './sent-exam.ts';

const bundleTypes = ['transaction', 'collection', 'document'] as const;
const titles = { new: 'Sent', repeat: 'Sent: it had arrived before', correction: 'Correction sent' } as const;

/** An exam that the service keeps, until the examiner leaves it. */
export function SentView({ id, index }: { readonly id: string; readonly index: CatalogueIndex }) {
  const exam = sentExam.value;
  const problem = openingProblem.value;
  if (exam?.id === id) return <Kept exam={exam} index={index} />;
  return (
    <div class="finish">
      <h2>An exam that was sent</h2>
      {problem === undefined ? (
        <p role="status">Opening …</p>
      ) : (
        <>
          <p role="alert">{problem.message}</p>
          <p class="buttons">
            <button type="button" class="plain" onClick={() => openAgain(id)}>
              Try again
            </button>
            <a class="plain" href={hrefOf('finish')}>
              Back to the draft
            </a>
          </p>
        </>
      )}
    </div>
  );
}

function Kept({ exam, index }: { readonly exam: SentExam; readonly index: CatalogueIndex }) {
  const { id, etag, draft: kept, answer, built, counts, sentAs } = exam;
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), [id]);
  const isWithdrawn = kept.status === 'entered-in-error';
  const isChangedSince = draft.value.corrects?.id === id;
  const flags = answer?.redFlags.filter(({ state }) => state === 'present') ?? [];
  const leaves = (): boolean =>
    !saysAnything(draft.peek()) ||
    globalThis.confirm('Another examination on this device has not been sent. Discard it?');
  return (
    <div class="finish">
      <h2 ref={title} tabIndex={-1}>
        {isWithdrawn
          ? 'Withdrawn as entered in error'
          : sentAs === undefined
            ? 'An exam that was sent'
            : titles[sentAs]}
      </h2>
      <section class="block sent">
        <dl>
          <div>
            <dt>Id</dt>
            <dd>
              <code>{id}</code>
            </dd>
          </div>
          <div>
            <dt>Version</dt>
            <dd>{etag.replaceAll(/\D/g, '')}</dd>
          </div>
        </dl>
        {sentAs !== undefined && !isChangedSince && (
          <p>Nothing of it is kept on this device; it shows here until you leave this view.</p>
        )}
        {isChangedSince && (
          <p>
            <strong>You have changed the record while it was being sent.</strong> The change is a correction that is not
            sent yet: <a href={hrefOf('finish')}>go to the correction</a>.
          </p>
        )}
        <p class="buttons">
          <button type="button" class="main" onClick={beginNew}>
            {saysAnything(draft.value) ? 'Go to the examination under way' : 'Begin a new examination'}
          </button>
          {!isChangedSince && (
            <button
              type="button"
              class="plain"
              onClick={() => {
                if (leaves())
                  beginCorrection(
                    exam,
                    answer?.workup.map(({ key }) => key),
                  );
              }}
            >
              Correct this exam
            </button>
          )}
        </p>
        <Downloads id={id} />
        {/* Below the buttons, for it comes later than they do, and a button that moves away is missed. */}
        <dl>
          <div>
            <dt>Made of it</dt>
            <dd>
              {counts === null && 'The Bundle cannot be read.'}
              {counts && <Counts counts={counts} />}
            </dd>
          </div>
        </dl>
      </section>
      {flags.length > 0 && (
        <section class="block kept-flags" aria-label="Red flags of this exam">
          {flags.map(({ key, label, action }) => (
            <p key={key}>
              <strong>⚑ {label}.</strong> {action}
            </p>
          ))}
        </section>
      )}
      {answer ? (
        <Presentation answer={answer} />
      ) : (
        <p class="block" role="status">
          {answer === null ? 'What the service makes of it could not be fetched.' : 'What the service makes of it …'}
        </p>
      )}
      <PrintSheet draft={kept} answer={answer ?? undefined} built={built} index={index} id={id} />
    </div>
  );
}

function Downloads({ id }: { readonly id: string }) {
  const [said, setSaid] = useState('');
  const fetchBundle = async (type: (typeof bundleTypes)[number]): Promise<void> => {
    setSaid('Fetching …');
    try {
      const { body } = await service.readExamBundle(id, { type });
      downloadJson(`neuro-exam-${id.slice(0, 8)}-${type}.json`, body, 'application/fhir+json');
      setSaid(`Downloaded as a ${type}.`);
    } catch (error) {
      noteRefusal(error);
      setSaid(error instanceof NeuroexamApiError ? error.message : 'The service cannot be reached; try again later.');
    }
  };
  return (
    <fieldset class="downloads">
      <legend>FHIR Bundle as a file</legend>
      <p class="buttons">
        {bundleTypes.map((type) => (
          <button key={type} type="button" class="plain" onClick={() => void fetchBundle(type)}>
            {type}
          </button>
        ))}
        <span role="status">{said}</span>
      </p>
    </fieldset>
  );
}

function Counts({ counts }: { readonly counts: Readonly<Record<string, number>> }) {
  const rows = Object.entries(counts).sort(([, one], [, other]) => other - one);
  return (
    <ul class="counts">
      {rows.map(([type, count]) => (
        <li key={type}>
          {count} {type}
        </li>
      ))}
    </ul>
  );
}

import { useEffect, useRef } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import { addressOf, type Draft } from '../draft/draft.ts';
import { draft, isSameStatement, stateNormal } from '../draft/draft-store.ts';
import { SkinRecorder } from '../skin/skin-recorder.tsx';
import { hrefOf, view, wantedCell } from '../view.ts';
import { ComaScale } from './coma-scale.tsx';
import { GroupView } from './group-view.tsx';
import { KeyHelp } from './key-help.tsx';
import { type Part, partsOf } from './parts.ts';
import { QuickEntry } from './quick-entry.tsx';

/** The record: the parts of the examination in bedside order, one of them open, and a line to type findings into. */
export function RecordingView({ index }: { readonly index: CatalogueIndex }) {
  const parts = partsOf(index);
  const at = Math.max(
    0,
    parts.findIndex(({ key }) => key === view.value.detail),
  );
  const part = parts[at];
  const shownBefore = useRef(part?.key);
  useEffect(() => {
    document.querySelector('.parts a[aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'center' });
    if (shownBefore.current === part?.key) return;
    shownBefore.current = part?.key;
    if (wantedCell.peek() !== undefined) return;
    scrollTo({ top: 0 });
    document.getElementById('part-name')?.focus({ preventScroll: true });
  }, [part?.key]);
  if (part === undefined) return null;
  const next = parts[at + 1];
  return (
    <div class="recording">
      <QuickEntry index={index} />
      <nav class="parts" aria-label="Parts of the examination">
        <ul>
          {parts.map((one) => (
            <li key={one.key}>
              <a href={hrefOf('examine', one.key)} aria-current={one === part ? 'page' : undefined}>
                {one.label}
                <PartTally part={one} index={index} />
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <div class="part">
        <PartHeader part={part} />
        <p class="columns" aria-hidden="true">
          <span class="for-row">both sides</span>
          <span>right</span>
          <span>left</span>
        </p>
        {part.key === 'sensation' && <SkinRecorder index={index} />}
        {part.groups.map((group) =>
          group.section === 'sensation' ? null : (
            <GroupView key={`${part.key} ${group.section}`} group={group} index={index} />
          ),
        )}
        {part.groups.some(({ section }) => section === 'higherFunction') && <ComaScale index={index} />}
        <KeyHelp />
        {next !== undefined && (
          <p class="onward">
            <a class="plain" href={hrefOf('examine', next.key)}>
              Next: {next.label}
            </a>
          </p>
        )}
      </div>
    </div>
  );
}

/** How much of a part is recorded, and how much of that is abnormal. */
export function tallyOf({ groups }: Part, { cells, otherwiseNormal }: Draft, index: CatalogueIndex) {
  let recorded = 0;
  let abnormal = 0;
  for (const [key, cell] of Object.entries(cells)) {
    const { section, item } = addressOf(key);
    const row = groups.find((group) => group.section === section)?.items.find((one) => one.key === item);
    if (row === undefined || (cell.value === undefined && cell.notTested === undefined)) continue;
    recorded += 1;
    const value = cell.value;
    if (value !== undefined && index.item(section, item) !== undefined) {
      const isNormal = typeof value === 'number' ? value === 0 : row.normal.includes(value);
      if (!isNormal) abnormal += 1;
    }
  }
  const isRestNormal = groups.every(({ statements }) =>
    statements.every((statement) => otherwiseNormal.some((one) => isSameStatement(one, statement))),
  );
  return { recorded, abnormal, isRestNormal };
}

function PartTally({ part, index }: { readonly part: Part; readonly index: CatalogueIndex }) {
  const { recorded, abnormal, isRestNormal } = tallyOf(part, draft.value, index);
  if (recorded === 0 && !isRestNormal) return null;
  return (
    <span class="tally">
      {abnormal > 0 && (
        <span class="abnormal-count" title="abnormal">
          ◆ {abnormal}
        </span>
      )}
      {recorded - abnormal > 0 && <span title="recorded, not abnormal"> ✓ {recorded - abnormal}</span>}
      {isRestNormal && <span title="the rest was normal"> ○</span>}
    </span>
  );
}

function PartHeader({ part }: { readonly part: Part }) {
  const statements = part.groups.flatMap((group) => group.statements);
  const isRestNormal = statements.every((statement) =>
    draft.value.otherwiseNormal.some((one) => isSameStatement(one, statement)),
  );
  return (
    <header class="part-header">
      <h2 id="part-name" tabIndex={-1}>
        {part.label}
      </h2>
      <button
        type="button"
        class="rest-normal"
        aria-pressed={isRestNormal}
        onClick={() =>
          stateNormal(
            `${part.label}: ${isRestNormal ? 'no longer "rest normal"' : 'rest normal'}`,
            statements,
            !isRestNormal,
          )
        }
      >
        <span class="sign" aria-hidden="true">
          {isRestNormal ? '✓' : '○'}
        </span>{' '}
        The rest of this part was normal
      </button>
    </header>
  );
}

import { isCurrent } from '../assessment.ts';
import { catalogueIndex } from '../catalogue.ts';
import { FlagStrip } from '../reasoning/flag-strip.tsx';
import { ReasoningPanel } from '../reasoning/reasoning-panel.tsx';
import { RecordingView } from '../recording/recording-view.tsx';
import { hrefOf, type ViewKey, view } from '../view.ts';
import { catalogueIsMissing } from './follow-catalogue.ts';
import { Header } from './header.tsx';
import { KeyDialog } from './key-dialog.tsx';
import { lazy } from './lazy.tsx';

const StoryView = lazy(() => import('../story/story-view.tsx').then((part) => part.StoryView));
const FinishView = lazy(() => import('../send/finish-view.tsx').then((part) => part.FinishView));
const PracticeView = lazy(() => import('../practice/practice-view.tsx').then((part) => part.PracticeView));

export const viewLabels: Readonly<Record<ViewKey, string>> = {
  examine: 'Examine',
  story: 'History, results',
  reasoning: 'Where and what',
  finish: 'Finish',
  practice: 'Practise',
};

const caution =
  'Decision support for trained clinicians, not a diagnosis. Local protocols and licensed practice come first; treat an emergency as one.';

/** The frame of every view: red flags above everything, the caution always in sight, the reasoning beside where there is room. */
export function App() {
  const index = catalogueIndex.value;
  const { key } = view.value;
  return (
    <div class={`frame shows-${key}`} data-assessment={isCurrent.value ? 'current' : 'behind'}>
      <a class="skip" href="#content">
        Skip to the content
      </a>
      <Header />
      {key !== 'practice' && <FlagStrip />}
      <nav class="views" aria-label="Views">
        <ul>
          {Object.entries(viewLabels).map(([one, label]) => (
            <li key={one}>
              <a href={hrefOf(one as ViewKey)} aria-current={one === key ? 'page' : undefined}>
                {label}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <main id="content" tabIndex={-1}>
        {index === undefined ? (
          <p role="status">
            {catalogueIsMissing.value
              ? 'The service cannot be reached. Trying again …'
              : 'The catalogue is being fetched …'}
          </p>
        ) : (
          <>
            {key === 'examine' && <RecordingView index={index} />}
            {key === 'reasoning' && <ReasoningPanel index={index} />}
            {key === 'story' && <StoryView index={index} />}
            {key === 'finish' && <FinishView index={index} />}
            {key === 'practice' && <PracticeView index={index} />}
          </>
        )}
      </main>
      {index !== undefined && key !== 'practice' && key !== 'reasoning' && (
        <aside class="beside" aria-label="Where the lesion may be, and what it may be">
          <ReasoningPanel index={index} />
        </aside>
      )}
      <footer class="caution">
        <p>{caution}</p>
      </footer>
      <KeyDialog />
    </div>
  );
}

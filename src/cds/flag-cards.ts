import type { Assessment, RedFlag, Urgency } from '../workup/assessment.ts';
import type { Card, CardFrame } from './card.ts';
import { bullets, paragraphs, plain, summaryOf } from './markdown.ts';

const urgencies: readonly Urgency[] = ['immediate', 'same-day', 'urgent'];
const urgencyTexts = {
  immediate: 'at once',
  'same-day': 'today',
  urgent: 'urgently',
} as const satisfies Record<Urgency, string>;

/** One card for each red flag that is there, the most pressing first, then one for those that nobody can decide. */
export function flagCards(assessment: Assessment, frame: CardFrame): readonly Card[] {
  const { redFlags, caution } = assessment;
  const present = redFlags
    .filter(({ state }) => state === 'present')
    .sort((a, b) => urgencies.indexOf(a.urgency) - urgencies.indexOf(b.urgency));
  const open = redFlags.filter(({ state }) => state === 'not-assessable');
  return [
    ...present.map((flag) => presentCard(flag, caution, frame)),
    ...(open.length === 0 ? [] : [openCard(open, caution, frame)]),
  ];
}

function presentCard(flag: RedFlag, caution: string, frame: CardFrame): Card {
  return {
    uuid: frame.uuid(`flag/${flag.key}`),
    summary: summaryOf(`Red flag, ${urgencyTexts[flag.urgency]}: ${flag.label} (examined ${frame.day})`),
    detail: paragraphs(
      `**${plain(flag.action)}**`,
      bullets(flag.because.map(({ text }) => plain(text))),
      `Source: ${plain(flag.source)}`,
      plain(caution),
    ),
    // An old exam says what was, and must not interrupt as if it were today.
    indicator: frame.isRecent ? 'critical' : 'info',
    source: frame.source,
  };
}

function openCard(open: readonly RedFlag[], caution: string, frame: CardFrame): Card {
  const count = open.length === 1 ? 'A red flag' : `${open.length} red flags`;
  return {
    uuid: frame.uuid('flags-not-assessable'),
    summary: summaryOf(`${count} cannot be decided from the exam of ${frame.day}: something was not examined`),
    detail: paragraphs(
      bullets(
        open.map(({ label, because }) => `**${plain(label)}**: ${because.map(({ text }) => plain(text)).join('; ')}`),
      ),
      plain(caution),
    ),
    indicator: frame.isRecent ? 'warning' : 'info',
    source: frame.source,
  };
}

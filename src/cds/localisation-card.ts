import { conclusionCodes } from '../fhir/local-codes.ts';
import type { RankedLocalisation } from '../localisation/localisation.ts';
import { namesAPlace } from '../localisation/localisation.ts';
import type { Assessment } from '../workup/assessment.ts';
import type { Card, CardFrame } from './card.ts';
import { bullets, paragraphs, percent, plain, summaryOf } from './markdown.ts';

/** Sites, reasons, causes and further tests that a card has room for. */
const most = { sites: 3, reasons: 4, causes: 5, tests: 5 } as const;

/** Where the lesion is, or what to examine next where that cannot be said; none where nothing is abnormal. */
export function localisationCards(assessment: Assessment, frame: CardFrame): readonly Card[] {
  const { conclusion, caution } = assessment;
  if (conclusion === 'no-abnormality') return [];
  const isPlace = namesAPlace(conclusion);
  return [
    {
      uuid: frame.uuid('localisation'),
      summary: summaryOf(isPlace ? placeSummary(assessment, frame) : openSummary(assessment, frame)),
      detail: paragraphs(
        isPlace ? sitesText(assessment) : '',
        isPlace ? causesText(assessment) : '',
        nextText(assessment),
        plain(caution),
        `Model version ${plain(assessment.modelVersion)}; computed and not reviewed by a clinician.`,
      ),
      indicator: 'info',
      source: frame.source,
    },
  ];
}

function placeSummary({ localisations, conclusion }: Assessment, { day }: CardFrame): string {
  const [leading] = localisations;
  const place = leading === undefined ? conclusionCodes[conclusion] : siteName(leading);
  const several = conclusion === 'multiple-sites' ? ' and further sites' : '';
  const chance = leading === undefined ? '' : `, ${percent(leading.probability)}`;
  return `Localisation: ${place}${several}${chance} (examined ${day})`;
}

function openSummary({ conclusion, nextExamination }: Assessment, { day }: CardFrame): string {
  const [next] = nextExamination;
  const hint = next === undefined ? '' : `; examine next: ${nextName(next)}`;
  return `${conclusionCodes[conclusion]} (examined ${day})${hint}`;
}

function siteName({ label, side, level }: RankedLocalisation): string {
  const where = [side ?? '', level ?? ''].filter((part) => part !== '').join(', ');
  return where === '' ? label : `${label} (${where})`;
}

function sitesText({ localisations }: Assessment): string {
  return localisations
    .slice(0, most.sites)
    .map((site, index) => {
      const reasons = [
        ...site.supporting.slice(0, most.reasons).map(({ text, because }) => `for: ${text}: ${because}`),
        ...site.against.slice(0, most.reasons).map(({ text, because }) => `against: ${text}: ${because}`),
        ...site.unexplained.slice(0, most.reasons).map(({ text }) => `not explained: ${text}`),
      ];
      const heading = `**${index + 1}. ${plain(siteName(site))}**, ${percent(site.probability)}`;
      return reasons.length === 0 ? heading : `${heading}\n\n${bullets(reasons.map(plain))}`;
    })
    .join('\n\n');
}

function causesText({ causes }: Assessment): string {
  if (causes.length === 0) return '';
  const rows = causes.slice(0, most.causes).map(({ label, probability }) => `${plain(label)}, ${percent(probability)}`);
  return `**What it may be**\n\n${bullets(rows)}`;
}

function nextText({ nextExamination }: Assessment): string {
  if (nextExamination.length === 0) return '';
  const rows = nextExamination.slice(0, most.tests).map((next) => plain(`${nextName(next)}: ${next.because}`));
  return `**What to examine next**\n\n${bullets(rows)}`;
}

function nextName({ label, side, place }: Assessment['nextExamination'][number]): string {
  const where = [side ?? '', place ?? ''].filter((part) => part !== '').join(', ');
  return where === '' ? label : `${label} (${where})`;
}

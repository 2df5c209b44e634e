import type { Evidence, RankedLocalisation } from '../../localisation/localisation.ts';
import { wrap } from '../demo/layout.ts';
import type { Expectation } from './evaluation-case.ts';
import type { Judgement } from './judge.ts';

/** Cases whose answer is wrong in anything that they fix, worst first: by site, then by side and level, then by conclusion. */
export function worstMisses(judgements: readonly Judgement[]): readonly Judgement[] {
  return judgements.filter((one) => gravity(one) > 0).toSorted((a, b) => gravity(b) - gravity(a) || b.brier - a.brier);
}

function gravity({ hasSite, rank, isRight, conclusion, isSureAndWrong }: Judgement): number {
  if (hasSite && rank !== 1) return 3;
  if (isSureAndWrong || (hasSite && !isRight)) return 2;
  return conclusion === false ? 1 : 0;
}

const indent = 14;
const reasonsShown = 3;

/** One miss as a reader needs it: what was expected, what came, and the reasons that were given. */
export function describeMiss(judgement: Judgement, place: number, width: number): string {
  const { evaluated, answer, rank, accepted } = judgement;
  const { name, file, line, kind, picture, expect } = evaluated;
  const [first] = answer.localisations;
  const row = (label: string, text: string): string =>
    wrap(text, width, ' '.repeat(indent), `  ${label.padEnd(indent - 2)}`);
  return [
    wrap(`${place}. ${name}${kind === undefined ? '' : ` (${kind})`}, ${file}:${line}`, width, '   ', ''),
    ...(picture === undefined ? [] : [row('picture', picture)]),
    row('expected', expected(expect)),
    row('answered', `${first === undefined ? 'nothing' : answered(first)}; ${answer.conclusion}`),
    ...reasons(first?.supporting).map((text) => row('for', text)),
    ...reasons(first?.against).map((text) => row('against', text)),
    ...reasons(first?.unexplained).map((text) => row('unexplained', text)),
    ...(judgement.hasSite && rank !== 1 ? [row('right site', whereabouts(judgement, rank, accepted))] : []),
  ].join('\n');
}

function expected({ sites, sides, levels, levelWithin, conclusions }: Expectation): string {
  const parts = [
    sites.join(' or '),
    sides?.map((side) => side ?? 'no side').join(' or '),
    levels === undefined ? undefined : `${levels.join(' or ')} within ${levelWithin}`,
    conclusions?.join(' or '),
  ];
  return parts.filter((part) => part !== undefined && part !== '').join(', ');
}

function answered({ site, side, level, probability, fit }: RankedLocalisation): string {
  const where = [site, side, level].filter((part) => part !== null).join(', ');
  return `${where} with probability ${probability.toFixed(2)}, fit ${fit.toFixed(2)}`;
}

function reasons(evidence: readonly Evidence[] = []): readonly string[] {
  const left = evidence.length - reasonsShown;
  return [
    ...evidence.slice(0, reasonsShown).map(({ text, because, weight }) => `${text} (${weight.toFixed(1)}): ${because}`),
    ...(left > 0 ? [`and ${left} more`] : []),
  ];
}

function whereabouts({ answer }: Judgement, rank: number | null, accepted: number): string {
  const found = rank === null ? undefined : answer.localisations[rank - 1];
  if (rank === null || found === undefined) return 'not among the answers';
  return `answer ${rank}: ${answered(found)}; ${accepted.toFixed(2)} for all right answers together`;
}

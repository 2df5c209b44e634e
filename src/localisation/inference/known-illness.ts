import type { Exam } from '../../exam/exam.ts';
import type { Hypothesis, Site } from '../hypothesis.ts';
import type { Companions } from './combination-prior.ts';
import { kinds, sites } from './history/history-weight.ts';
import { softmax } from './score.ts';
import type { Applies } from './shift.ts';

interface Mark {
  readonly condition: string;
  readonly applies: Applies;
  readonly share: number;
  /** Whether a new lesion may lie there as well, so that the place is not put down to what is known. */
  readonly mayBeNew?: boolean;
}

/** Illnesses that the person is known to have, where they have left their mark, and how often an examination still shows it. Judged. */
const marks: readonly Mark[] = [
  { condition: 'dementia', applies: sites('diffuse-encephalopathy'), share: 0.9 },
  { condition: 'parkinson-disease', applies: sites('akinetic-rigid-syndrome'), share: 0.95 },
  {
    condition: 'known-neuropathy',
    applies: kinds('polyneuropathy'),
    share: 0.8,
  },
  { condition: 'optic-neuritis', applies: sites('optic-nerve'), share: 0.5, mayBeNew: true },
  { condition: 'carpal-tunnel-syndrome', applies: sites('median-nerve-wrist'), share: 0.5 },
  { condition: 'myasthenia-gravis', applies: sites('postsynaptic-junction'), share: 0.6 },
  { condition: 'poliomyelitis', applies: sites('lower-motor-neuron-system'), share: 0.7 },
];

const marksOf = (history: Exam['history']): readonly Mark[] =>
  marks.filter(({ condition }) =>
    history.some(({ kind, key, present }) => present && kind === 'condition' && key === condition),
  );

/** Whether a site is where an illness that is known anyway has its place, which nobody asks for. */
export function isKnownAnyway(site: Site, { history }: Exam): boolean {
  return marksOf(history).some(({ applies, mayBeNew }) => mayBeNew !== true && applies(site));
}

/** Whatever is known, a new lesion alone stays likelier than this many times less. Judged. */
const most = 20;

/**
 * A known illness needs no chance meeting: beside a new lesion its place is damaged as often as it leaves a mark, and not as seldom
 * as in people of whom nothing is known.
 */
export class KnownIllness implements Companions {
  /** Factor by hypothesis; 0 where nothing known has its place. */
  private readonly factors: Float64Array;

  /** @param logPrior natural log of the prior weight of each hypothesis for this person */
  constructor({ history }: Exam, hypotheses: readonly Hypothesis[], logPrior: Float64Array) {
    this.factors = new Float64Array(hypotheses.length);
    const known = marksOf(history);
    if (known.length === 0) return;
    const prior = softmax(logPrior);
    for (const { applies, share } of known) {
      const own = hypotheses.flatMap(({ site }, index) => (applies(site) ? [index] : []));
      const chance = own.reduce((sum, index) => sum + (prior[index] ?? 0), 0);
      const factor = Math.min(most, share / chance);
      for (const index of own) this.factors[index] = Math.max(this.factors[index] ?? 0, factor);
    }
  }

  besides(member: number): (added: number) => number {
    const own = this.factors[member] ?? 0;
    return (added) => Math.max(own, this.factors[added] ?? 0);
  }
}

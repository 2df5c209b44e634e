import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { Exam, OnsetPace } from '../../exam/exam.ts';
import { daysPerYear } from '../../kernel/days.ts';
import type { AgeRange, Hypothesis, Lasting, Site } from '../hypothesis.ts';
import { allShifts } from './all-shifts.ts';
import { SiteFactors } from './shift.ts';

/** How much likelier a kind of site is when the trouble began at this pace, relative to no knowledge of the pace. Judged. */
const paceFactor: Readonly<Record<SiteKind, Readonly<Record<OnsetPace, number>>>> = {
  none: { hyperacute: 1, acute: 1, subacute: 1, chronic: 1 },
  muscle: { hyperacute: 0.1, acute: 0.4, subacute: 1.2, chronic: 1.4 },
  junction: { hyperacute: 0.2, acute: 0.8, subacute: 1.3, chronic: 1.1 },
  nerve: { hyperacute: 1, acute: 1.1, subacute: 1, chronic: 1 },
  'multiple-nerves': { hyperacute: 0.4, acute: 1, subacute: 1.4, chronic: 1 },
  polyneuropathy: { hyperacute: 0.02, acute: 0.14, subacute: 0.8, chronic: 1.6 },
  polyradiculoneuropathy: { hyperacute: 0.04, acute: 4, subacute: 2.5, chronic: 0.7 },
  ganglion: { hyperacute: 0.1, acute: 0.5, subacute: 1.6, chronic: 1 },
  plexus: { hyperacute: 1.15, acute: 1.4, subacute: 1.2, chronic: 0.9 },
  root: { hyperacute: 0.8, acute: 1.3, subacute: 1.2, chronic: 0.9 },
  'cauda-equina': { hyperacute: 1, acute: 2, subacute: 1.2, chronic: 0.7 },
  'anterior-horn': { hyperacute: 0.1, acute: 0.4, subacute: 0.9, chronic: 1.3 },
  'motor-neuron-system': { hyperacute: 0.03, acute: 0.05, subacute: 0.7, chronic: 1.6 },
  cord: { hyperacute: 1.25, acute: 1.4, subacute: 1.4, chronic: 1 },
  brainstem: { hyperacute: 3.6, acute: 1.4, subacute: 0.8, chronic: 0.5 },
  cerebellum: { hyperacute: 2.5, acute: 1.3, subacute: 1, chronic: 0.8 },
  hemisphere: { hyperacute: 4.2, acute: 1.8, subacute: 0.8, chronic: 0.5 },
  'visual-pathway': { hyperacute: 2, acute: 1.5, subacute: 1, chronic: 0.7 },
  'cranial-nerve': { hyperacute: 1.2, acute: 1.6, subacute: 1, chronic: 0.7 },
  'basal-ganglia': { hyperacute: 0.1, acute: 0.3, subacute: 0.7, chronic: 1.6 },
  meninges: { hyperacute: 2, acute: 2.5, subacute: 1, chronic: 0.3 },
  'intracranial-pressure': { hyperacute: 0.7, acute: 1.3, subacute: 1.3, chronic: 0.7 },
  encephalopathy: { hyperacute: 0.7, acute: 1.6, subacute: 1, chronic: 1 },
  'multiple-sites': { hyperacute: 1, acute: 1, subacute: 1, chronic: 1 },
};

const logPaceFactor = Object.fromEntries(
  Object.entries(paceFactor).map(([kind, byPace]) => [
    kind,
    Object.fromEntries(Object.entries(byPace).map(([pace, factor]) => [pace, Math.log(factor)])),
  ]),
) as typeof paceFactor;

const day = { hyperacute: 1, acute: 14, subacute: 84 } as const;

/** Pace as stated, else guessed from how long it has lasted: what is days old began within days. */
function paceOf(onset: Exam['onset']): OnsetPace | undefined {
  const { pace, durationDays } = onset;
  if (pace !== undefined || durationDays === undefined) return pace;
  if (durationDays <= day.hyperacute) return 'hyperacute';
  if (durationDays <= day.acute) return 'acute';
  return durationDays <= day.subacute ? 'subacute' : undefined;
}

/** A wasting of the whole cerebellum or of tracts of the cord comes on as slowly as other degenerations. */
function tempoKind({ kind, isDiffuse }: Site): SiteKind {
  return isDiffuse === true && kind === 'cerebellum' ? 'basal-ganglia' : kind;
}

/**
 * Power to which the frequency of a site is raised: who asks for help with a localisation asks more often about what is
 * rare than it is met. Judged, and checked on the cases.
 */
export const sentFor = 0.85;

/** Natural log of the odds factor of a site that is no hypothesis of its own, from all that was told, seen and measured. */
export function logShiftOf(site: Site, exam: Exam): number {
  return allShifts(exam).reduce((sum, { applies, factor }) => (applies(site) ? sum + Math.log(factor) : sum), 0);
}

/** What the priors need of the hypotheses, worked out once. */
export class Priors {
  private readonly hypotheses: readonly Hypothesis[];
  private readonly sites: SiteFactors;
  private readonly ofSomeAges: readonly { readonly index: number; readonly ages: AgeRange }[];
  private readonly ofSomeDuration: readonly { readonly index: number; readonly lasting: Lasting }[];
  /** Natural logs of frequency times the factor of the pace, by pace. */
  private readonly logWeight = new Map<OnsetPace | undefined, Float64Array>();

  constructor(hypotheses: readonly Hypothesis[]) {
    this.hypotheses = hypotheses;
    this.sites = new SiteFactors(hypotheses.map(({ site }) => site));
    this.ofSomeAges = hypotheses.flatMap(({ ages }, index) =>
      [ages ?? []].flat().map((range) => ({ index, ages: range })),
    );
    this.ofSomeDuration = hypotheses.flatMap(({ lasting }, index) =>
      lasting === undefined ? [] : [{ index, lasting }],
    );
  }

  /** [H] Natural log of the prior weight of each hypothesis for this person, tempo, history and results; not normalised. */
  logWeights(exam: Exam): Float64Array {
    const weights = Float64Array.from(this.atPace(paceOf(exam.onset)));
    const { ageYears } = exam.person;
    if (ageYears !== undefined) this.weighAge(weights, ageYears);
    this.weighDuration(weights, exam.onset.durationDays ?? 0);
    const factors = this.sites.factors(allShifts(exam));
    if (factors === null) return weights;
    for (let index = 0; index < weights.length; index += 1) {
      const factor = factors[index] ?? 1;
      if (factor !== 1) weights[index] = (weights[index] ?? 0) + Math.log(factor);
    }
    return weights;
  }

  private weighAge(weights: Float64Array, ageYears: number): void {
    for (const { index, ages } of this.ofSomeAges) {
      const { from = 0, to = Number.POSITIVE_INFINITY, outside } = ages;
      if (ageYears < from || ageYears > to) weights[index] = (weights[index] ?? 0) + Math.log(outside);
    }
  }

  private weighDuration(weights: Float64Array, days: number): void {
    for (const { index, lasting } of this.ofSomeDuration)
      if (days > lasting.years * daysPerYear) weights[index] = (weights[index] ?? 0) + Math.log(lasting.beyond);
  }

  private atPace(pace: OnsetPace | undefined): Float64Array {
    const known = this.logWeight.get(pace);
    if (known !== undefined) return known;
    const weights = Float64Array.from(
      this.hypotheses,
      ({ frequency, site, paces }) =>
        sentFor * Math.log(frequency) +
        (pace === undefined ? 0 : logPaceFactor[tempoKind(site)][pace] + Math.log(paces?.[pace] ?? 1)),
    );
    this.logWeight.set(pace, weights);
    return weights;
  }
}

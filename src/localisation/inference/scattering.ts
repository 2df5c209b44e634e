import type { SiteKind } from '../../anatomy/site-kind.ts';
import { causesAt } from '../../causes/causes-at.ts';
import { queryExam } from '../../causes/exam-query.ts';
import { allCauses } from '../../causes/table/all-causes.ts';
import type { Cause } from '../../causes/table/cause.ts';
import { weighCause } from '../../causes/weigh-cause.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { isDiffuse } from '../localisation.ts';
import type { Companions } from './combination-prior.ts';
import { softmax } from './score.ts';
import { tells } from './told.ts';

/**
 * Diseases that strike brain, optic nerves and cord in several places, with the share of those who have one in whom an
 * examination shows more than one place; the larger share where something told says that it is of the kind that scatters.
 * Judged.
 */
const scattering: readonly {
  readonly cause: string;
  readonly share: number;
  readonly told?: { readonly anyOf: ReadonlySet<string>; readonly share: number };
}[] = [
  // Old places are found beside the new one: pale discs, brisk jerks, an eye that lags.
  { cause: 'multiple-sclerosis', share: 0.5 },
  { cause: 'neuromyelitis-optica-spectrum-disorder', share: 0.3 },
  { cause: 'mog-antibody-disease', share: 0.2 },
  { cause: 'acute-disseminated-encephalomyelitis', share: 0.5 },
  { cause: 'progressive-multifocal-leukoencephalopathy', share: 0.35 },
  { cause: 'cerebral-toxoplasmosis', share: 0.35 },
  { cause: 'tuberculoma', share: 0.2 },
  { cause: 'neurocysticercosis', share: 0.15 },
  { cause: 'brain-abscess', share: 0.1, told: { anyOf: new Set(['valve-disease-or-endocarditis']), share: 0.25 } },
  { cause: 'central-nervous-system-lymphoma', share: 0.2 },
  { cause: 'cns-vasculitis', share: 0.35 },
  { cause: 'neuro-behcet', share: 0.25 },
  { cause: 'neurosarcoidosis', share: 0.25 },
  // A growth that starts in the brain is one; of those that come from elsewhere half are several when they are found.
  { cause: 'brain-tumour', share: 0.02, told: { anyOf: new Set(['cancer', 'lymphoma']), share: 0.3 } },
  {
    cause: 'ischaemic-stroke',
    share: 0.04,
    told: {
      anyOf: new Set(['atrial-fibrillation', 'valve-disease-or-endocarditis', 'cardiomyopathy', 'cancer']),
      share: 0.15,
    },
  },
  { cause: 'cerebral-venous-thrombosis', share: 0.1 },
];

/**
 * A pair is worked out in one extent of each place and stands for all of them, while a single place has the sum over its extents
 * and levels. Judged.
 */
const extents = 4;

/** However well a disease that scatters explains two places together, they stay two. Judged. */
const most = 15;

/** Kinds of place over which such a disease is scattered. */
export const scatteredKinds: ReadonlySet<SiteKind> = new Set([
  'hemisphere',
  'brainstem',
  'cerebellum',
  'cord',
  'visual-pathway',
]);

/** The places over which such a disease scatters, numbered once. */
interface Places {
  /** Number of its place by hypothesis; -1 for what is no place of brain, optic nerves and cord. */
  readonly of: Int16Array;
  readonly causes: readonly (readonly (readonly [Cause, number])[])[];
}

let known: { readonly hypotheses: readonly Hypothesis[]; readonly places: Places } | undefined;

function placesOf(hypotheses: readonly Hypothesis[]): Places {
  if (known?.hypotheses === hypotheses) return known.places;
  const numbers = new Map<string, number>();
  const causes: (readonly (readonly [Cause, number])[])[] = [];
  const of = Int16Array.from(hypotheses, ({ site }) => {
    if (!scatteredKinds.has(site.kind) || isDiffuse(site)) return -1;
    const id = `${site.key} ${site.kind} ${site.level}`;
    const number = numbers.get(id) ?? numbers.size;
    if (number === numbers.size) {
      numbers.set(id, number);
      causes.push(causesAt({ site: site.key, kind: site.kind, level: site.level }));
    }
    return number;
  });
  known = { hypotheses, places: { of, causes } };
  return known.places;
}

/**
 * How much commoner than chance two places of brain, optic nerves and cord are together in this person, because one disease may
 * have struck both. With P(i) the prior of a place and s(i) the share of a disease D among the causes of a lesion there, one
 * that strikes places one by one takes two of them with P(i) s(i) P(j) s(j) / P(D), that is s(i) s(j) / P(D) times as often as
 * the places would meet by chance; of that, the part in whom both show at an examination.
 */
export class Scattering implements Companions {
  private readonly places: Places;
  /** Of each disease, its share by place and how much each share counts. */
  private readonly diseases: readonly { readonly shares: Float64Array; readonly weight: number }[];

  /** @param logPrior natural log of the prior weight of each hypothesis for this person */
  constructor(exam: Exam, hypotheses: readonly Hypothesis[], logPrior: Float64Array) {
    this.places = placesOf(hypotheses);
    const prior = this.priorOfPlaces(logPrior);
    const query = queryExam(exam);
    const ratios = new Map(allCauses.map((cause) => [cause.key, weighCause(cause, query).ratio]));
    const totals = this.places.causes.map((causes) =>
      causes.reduce((sum, [cause, share]) => sum + share * (ratios.get(cause.key) ?? 1), 0),
    );
    this.diseases = scattering.map((row) => {
      const shares = Float64Array.from(this.places.causes, (causes, place) => {
        const own = causes.find(([cause]) => cause.key === row.cause);
        return own === undefined ? 0 : (own[1] * (ratios.get(row.cause) ?? 1)) / (totals[place] ?? 1);
      });
      const chance = shares.reduce((sum, share, place) => sum + share * (prior[place] ?? 0), 0);
      const several = row.told !== undefined && tells(exam.history, row.told.anyOf) ? row.told.share : row.share;
      return { shares, weight: chance === 0 ? 0 : (several * extents) / chance };
    });
  }

  /** The factor of a hypothesis beside another; 0 where no such disease takes both. */
  besides(member: number): (added: number) => number {
    const { of } = this.places;
    const own = of[member] ?? -1;
    if (own < 0) return () => 0;
    const byPlace = Float64Array.from(this.places.causes, (_, place) =>
      Math.min(
        most,
        this.diseases.reduce((sum, { shares, weight }) => sum + weight * (shares[own] ?? 0) * (shares[place] ?? 0), 0),
      ),
    );
    return (added) => byPlace[of[added] ?? -1] ?? 0;
  }

  private priorOfPlaces(logPrior: Float64Array): Float64Array {
    const sums = new Float64Array(this.places.causes.length);
    softmax(logPrior).forEach((probability, index) => {
      const place = this.places.of[index] ?? -1;
      if (place >= 0) sums[place] = (sums[place] ?? 0) + probability;
    });
    return sums;
  }
}

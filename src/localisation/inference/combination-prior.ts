import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { Hypothesis, Site } from '../hypothesis.ts';
import type { SiteGroups } from './site-groups.ts';

/**
 * Prior weight of a further independent lesion in one person, on top of the product of the lesions' own priors. Judged:
 * about one examination in 25 has two. Commoner than chance are the same site on both sides (both wrists, both elbows)
 * and several single nerves; and a process that has picked out two peripheral sites goes on to a third. Nerves that are ill
 * along their length give way where they are pressed: of those with diabetic neuropathy a third have a wrist that is
 * (Perkins 2002, recalled). Neuromyelitis, multiple sclerosis and want of vitamin B12 or copper strike optic nerves and
 * cord. A torn carotid artery takes nerves beside it, and eye and hemisphere beyond it.
 */
const anotherLesion = {
  unrelated: 0.08,
  sameSiteOtherSide: 0.5,
  twoNerves: 0.4,
  onePeripheralMore: 0.6,
  nerveOnPolyneuropathy: 0.5,
  opticNerveAndCord: 0.6,
  besideAndBeyondCarotid: 2,
} as const;

const logAnother = {
  unrelated: Math.log(anotherLesion.unrelated),
  sameSiteOtherSide: Math.log(anotherLesion.sameSiteOtherSide),
  twoNerves: Math.log(anotherLesion.twoNerves),
  onePeripheralMore: Math.log(anotherLesion.onePeripheralMore),
  nerveOnPolyneuropathy: Math.log(anotherLesion.nerveOnPolyneuropathy),
  opticNerveAndCord: Math.log(anotherLesion.opticNerveAndCord),
  besideAndBeyondCarotid: Math.log(anotherLesion.besideAndBeyondCarotid),
} as const;

/**
 * A disease that picks out single nerves (vasculitis, neuralgic amyotrophy, conduction block): how often it is met, and
 * the chance that it has hit a given nerve to a given extent. Judged.
 */
const logNervePicker = Math.log(0.012);
const logPickedNerve = Math.log(0.035);

const peripheral: ReadonlySet<SiteKind> = new Set(['nerve', 'plexus', 'root', 'multiple-nerves']);

/** What lies beside the carotid artery below the skull or is fed by its branch to the eye, and what it feeds of the brain. */
const besideCarotid: ReadonlySet<string> = new Set([
  'jugular-foramen',
  'hypoglossal-nerve',
  'vagus-nerve',
  'oculosympathetic-chain',
  'retina',
  'optic-nerve',
]);
const beyondCarotid: ReadonlySet<string> = new Set([
  'cortex-middle-cerebral',
  'cortex-middle-cerebral-upper',
  'cortex-middle-cerebral-lower',
  'cortex-anterior-cerebral',
  'internal-capsule',
  'striatum',
]);

function areOfOneCarotid(one: Site | undefined, other: Site | undefined): boolean {
  if (one === undefined || other === undefined || one.side !== other.side) return false;
  return (
    (besideCarotid.has(one.key) && beyondCarotid.has(other.key)) ||
    (besideCarotid.has(other.key) && beyondCarotid.has(one.key))
  );
}

function areOpticNerveAndCord(one: Site | undefined, other: Site | undefined): boolean {
  return (
    (one?.key === 'optic-nerve' && other?.kind === 'cord') || (other?.key === 'optic-nerve' && one?.kind === 'cord')
  );
}

/** Why two sites are found together more often than chance has it. */
export interface Companions {
  /** Factor of a hypothesis beside another; 0 where this is no reason. */
  readonly besides: (member: number) => (added: number) => number;
}

/** Priors of several sites at once, from the natural logs of the priors of each alone. */
export class CombinationPrior {
  private readonly hypotheses: readonly Hypothesis[];
  private readonly sites: SiteGroups;
  private readonly logPrior: Float64Array;
  private readonly logTotal: number;
  private readonly logPicker: number;
  private readonly companions: readonly Companions[];

  /**
   * @param logPicker natural log of how much likelier a disease that picks out single nerves is for this person
   * @param companions further reasons for two sites in this person
   */
  constructor(
    hypotheses: readonly Hypothesis[],
    sites: SiteGroups,
    logPrior: Float64Array,
    logPicker: number,
    companions: readonly Companions[],
  ) {
    this.hypotheses = hypotheses;
    this.sites = sites;
    this.logPrior = logPrior;
    this.logTotal = logSum(logPrior);
    this.logPicker = logNervePicker + logPicker;
    this.companions = companions;
  }

  /** Natural log of the prior of some sites with one more, as a function of the index of the one more. */
  besides(members: readonly number[]): (index: number) => number {
    const independentOfMembers = this.independentOf(members);
    const factor = this.additionFactor(members);
    const areNerves = members.every((member) => this.isOneNerve(member));
    const picked = this.logTotal + this.logPicker + (members.length + 1) * logPickedNerve;
    return (index) => {
      const independent = independentOfMembers + (this.logPrior[index] ?? 0) - this.logTotal + factor(index);
      return areNerves && this.isOneNerve(index) ? Math.max(independent, picked) : independent;
    };
  }

  /** Natural log of the prior of sites that have nothing to do with each other, in the order in which they were found. */
  private independentOf(members: readonly number[]): number {
    let log = this.logPrior[members[0] ?? 0] ?? 0;
    for (let count = 1; count < members.length; count += 1) {
      const added = members[count] ?? 0;
      log = log + (this.logPrior[added] ?? 0) - this.logTotal + this.additionFactor(members.slice(0, count))(added);
    }
    return log;
  }

  /** Natural log of how much commoner than chance a further site is: by itself, or for a reason of this person. */
  private additionFactor(present: readonly number[]): (added: number) => number {
    const apart = this.factorApart(present);
    const beside = this.companions.flatMap((reason) => present.map((member) => reason.besides(member)));
    return (added) => {
      let together = 0;
      for (const factor of beside) together = Math.max(together, factor(added));
      return together === 0 ? apart(added) : Math.max(apart(added), Math.log(together));
    };
  }

  private factorApart(present: readonly number[]): (added: number) => number {
    const { siteOf, placeOf } = this.sites;
    const isPicking = present.length > 1 || present.some((member) => this.kindOf(member) === 'multiple-nerves');
    const arePeripheral = isPicking && present.every((member) => peripheral.has(this.kindOf(member)));
    const isNerveAmong = present.some((member) => this.kindOf(member) === 'nerve');
    const isPolyneuropathyAmong = present.some((member) => this.kindOf(member) === 'polyneuropathy');
    return (added) => {
      const kind = this.kindOf(added);
      const site = this.hypotheses[added]?.site;
      if (present.some((member) => areOfOneCarotid(this.hypotheses[member]?.site, site)))
        return logAnother.besideAndBeyondCarotid;
      if (arePeripheral && peripheral.has(kind)) return logAnother.onePeripheralMore;
      if (present.some((member) => areOpticNerveAndCord(this.hypotheses[member]?.site, site)))
        return logAnother.opticNerveAndCord;
      for (const member of present) {
        if (placeOf[member] === placeOf[added] && siteOf[member] !== siteOf[added]) return logAnother.sameSiteOtherSide;
      }
      if ((isNerveAmong && kind === 'polyneuropathy') || (isPolyneuropathyAmong && kind === 'nerve'))
        return logAnother.nerveOnPolyneuropathy;
      return isNerveAmong && kind === 'nerve' ? logAnother.twoNerves : logAnother.unrelated;
    };
  }

  /** A nerve of one side; what takes it on both sides at once does not pick out single nerves. */
  private isOneNerve(index: number): boolean {
    const site = this.hypotheses[index]?.site;
    return site?.kind === 'nerve' && site.side !== 'both';
  }

  private kindOf(index: number): SiteKind {
    return this.hypotheses[index]?.site.kind ?? 'none';
  }
}

function logSum(values: Float64Array): number {
  let top = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < values.length; index += 1) top = Math.max(top, values[index] ?? top);
  let sum = 0;
  for (let index = 0; index < values.length; index += 1) sum += Math.exp((values[index] ?? 0) - top);
  return top + Math.log(sum);
}

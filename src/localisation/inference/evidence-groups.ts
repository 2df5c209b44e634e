import type { Item } from '../../exam/catalogue/item.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';

/**
 * Correlation of data within a group: a group of n has the weight of n to the power of (1 - correlation). Judged from how
 * examinations are done: neighbouring patches of skin are hardly tested apart, muscles one by one.
 */
export const correlation = {
  power: 0.3,
  faculty: 0.5,
  effort: 0.5,
  otherHalf: 0.5,
  brisk: 0.4,
  regions: 0.4,
  sensation: 0.4,
  task: 0.5,
  upperMotor: 0.35,
  summary: 0.5,
  other: 0.1,
} as const;

/** The data that a finding is correlated with, by name, and how strongly. */
export interface Group {
  readonly name: string;
  readonly strength: number;
}

/** By item and grade, then by what else of the finding decides. */
const groups = new Map<Item, Map<Finding['value'], Map<string, Group>>>();

export function groupOf(finding: Finding): Group {
  const { item, side, abnormal, origin, value } = finding;
  const ofItem = groups.get(item) ?? new Map<Finding['value'], Map<string, Group>>();
  groups.set(item, ofItem);
  // Numbers are left out, of which there may be any.
  const grade = typeof value === 'string' ? value : null;
  const ofValue = ofItem.get(grade) ?? new Map<string, Group>();
  ofItem.set(grade, ofValue);
  const key = keys[side][origin][abnormal ? 'abnormal' : 'normal'];
  const known = ofValue.get(key);
  if (known !== undefined) return known;
  const [name, strength] = namedGroup(finding);
  const group = { name: `${origin}|${name}`, strength };
  ofValue.set(key, group);
  return group;
}

const byResult = (name: string) => ({ abnormal: `${name}|abnormal`, normal: `${name}|normal` });
const byOrigin = (name: string) => ({
  recorded: byResult(`${name}|recorded`),
  'otherwise-normal': byResult(`${name}|otherwise-normal`),
});
const keys = { left: byOrigin('left'), right: byOrigin('right'), midline: byOrigin('midline') } as const;

function namedGroup({ item, side, abnormal, value }: Finding): readonly [string, number] {
  switch (item.probe.kind) {
    case 'movement':
      return [`power|${item.region}|${side}|${abnormal}`, correlation.power];
    case 'weakness-of':
      return [`task|${item.probe.movements.join('+')}|${side}`, correlation.task];
    case 'upper-motor':
    case 'clonus':
    case 'tone':
      return [`upper-motor|${item.region}|${side}`, correlation.upperMotor];
    case 'cerebellar':
      return [`coordination|${item.region}|${side}`, correlation.upperMotor];
    case 'denervation':
      return [`denervation|${item.region}|${side}`, correlation.upperMotor];
    case 'reflex':
      // Who has one lively reflex has several: together they say one thing, that control from above is loosened, or nothing.
      return isBrisk(value)
        ? [`brisk|${item.scale}|${side}`, correlation.brisk]
        : [`${item.section}|${side}`, correlation.other];
    case 'faculty':
      // Effort that varies does so for reasons that have no side.
      if (item.probe.faculty === 'effort') return [`faculty|effort|${abnormal}`, correlation.effort];
      // Signs of one function say nearly the same thing; those of different ones are told apart by where they run.
      return [`faculty|${item.probe.faculty}|${side}|${abnormal}`, correlation.faculty];
    default:
      return [`${item.section}|${side}`, correlation.other];
  }
}

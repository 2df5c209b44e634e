import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';
import { kinds } from './history/history-weight.ts';
import { hasSignOfTheHead, lostFeeling, shiftBy, sidesOf } from './limb-patterns.ts';
import { showsTracts } from './nerve-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/**
 * Odds where a shoulder hurts and its muscles were tried. One adult in ten has a painful shoulder in a month, by its tendons and its
 * capsule (Luime 2004, from memory); inflammation of the plexus strikes one in a thousand in a year (van Alfen 2015, from memory)
 * and weakens. Judged.
 */
const joint = { strong: 12, nearlyStrong: 10, nerves: 0.3 } as const;

const painOfTheShoulder: ReadonlySet<string> = new Set(['shoulder-pain']);
const ofTheShoulder = /^shoulder-/;
/** What a hurt joint does not do: it neither wastes a muscle in weeks nor wings a shoulder blade nor tingles. */
const ofNerves: ReadonlySet<string> = new Set([
  ...['wasting', 'fasciculation', 'scapular-winging', 'fat-pad-loss', 'spurling'],
]);
const toldOfNerves: ReadonlySet<string> = new Set([
  ...['numbness', 'paraesthesiae', 'muscle-thinning', 'arm-weakness', 'weakness', 'radicular-arm-pain', 'neck-pain'],
  ...['trauma', 'limb-fracture-or-dislocation', 'recent-surgery', 'neck-or-chest-surgery', 'recent-vaccination'],
  ...['preceding-infection', 'cancer', 'herpes-zoster'],
]);

/** A grade that pain alone may bring about. */
const almostFull: Finding['value'] = '4+';

/**
 * A shoulder that hurts, whose muscles are strong or give way a little: that is the joint. Weakness that shows, thin muscles, lost feeling
 * and what hurts nerves or roots leave the odds as they are.
 */
export function painfulShoulderShifts(exam: Exam): readonly Shift[] {
  const { findings, history } = exam;
  if (!tells(history, painOfTheShoulder) || tells(history, toldOfNerves)) return [];
  if (showsTracts(exam) || hasSignOfTheHead(findings) || lostFeeling(findings).length > 0) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ item }) => ofNerves.has(item.key) || item.section === 'reflexes')) return [];
  const tried = findings.filter(
    ({ item, value }) => item.probe.kind === 'movement' && ofTheShoulder.test(item.key) && value !== null,
  );
  const [first] = tried;
  const weak = wrong.filter(({ item }) => item.probe.kind === 'movement');
  const isSlight = weak.every(({ item, value }) => ofTheShoulder.test(item.key) && value === almostFull);
  if (first === undefined || !isSlight) return [];
  const because = 'the shoulder hurts and its muscles are strong or nearly so, as where the joint is at fault';
  const named = weak[0] ?? first;
  return [
    shiftBy(named, { applies: kinds('none'), factor: weak.length > 0 ? joint.nearlyStrong : joint.strong, because }),
    shiftBy(named, { applies: kinds('nerve', 'plexus'), factor: joint.nerves, because }),
  ];
}

/** Odds where both shoulders hurt within weeks and muscles waste or jerks fade under it: of muscle and junction, and of the plexus. Judged. */
const bothThinned = { muscle: 0.25, plexus: 2 } as const;
/** What makes it the roots of the neck, or a pull on them. */
const ofTheRoots: ReadonlySet<string> = new Set(['radicular-arm-pain', 'neck-pain', 'trauma', 'neck-trauma']);
const soon: ReadonlySet<string> = new Set(['hyperacute', 'acute', 'subacute']);
const hurts: ReadonlySet<string> = new Set(['shoulder-pain', 'arm-pain', 'neck-pain']);

/** Muscles that are ill keep their jerks and do not thin within weeks; inflammation of the plexus takes both arms in a third. */
export function bothShouldersThinShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (!soon.has(onset.pace ?? '') || !tells(history, hurts)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const weak = wrong.filter(({ item }) => item.probe.kind === 'movement');
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2 || !weak.every(({ item }) => item.region === 'upper-limbs'))
    return [];
  const isThin = wrong.some(({ item }) => item.key === 'wasting');
  const isFaint = wrong.some(
    ({ item, value }) => item.section === 'reflexes' && item.region === 'upper-limbs' && !isBrisk(value),
  );
  if (!isThin && !isFaint) return [];
  const because =
    'both arms hurt and failed within weeks, and muscles thin or jerks fade, which ill muscle does not do';
  return [
    shiftBy(first, { applies: kinds('muscle', 'junction'), factor: bothThinned.muscle, because }),
    ...(tells(history, ofTheRoots)
      ? []
      : [shiftBy(first, { applies: kinds('plexus'), factor: bothThinned.plexus, because })]),
  ];
}

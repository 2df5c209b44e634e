import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { sites } from './history/history-weight.ts';
import { shiftBy, sidesOf } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';

/** Age from which a jerk of the ankle or vibration at the toes may be lost in health. Source: Vrancken 2006. */
const agedFrom = 60;

/**
 * Odds of health for each quality that age has taken at both feet, and of what lies on one side and leaves the other foot to age. Age
 * takes both feet alike, so that the loss at the second says hardly anything more once the first has it: of two independent feet
 * the second would be lost in 29 % of people from 60 on and in half of those from 85 on (Vrancken 2006, Mold). Judged from these shares.
 */
const alikeAtBothFeet = { health: 2.2, oneSide: 0.35 } as const;

const oneSidedKinds: ReadonlySet<SiteKind> = new Set(['nerve', 'plexus', 'root']);
const health: Applies = ({ kind }) => kind === 'none';
const oneSide: Applies = ({ kind, side }) => oneSidedKinds.has(kind) && (side === 'left' || side === 'right');

const farLandmarks: ReadonlySet<string> = new Set(['great-toe', 'toes', 'ankle']);

/** What age alone may take: the ankle jerk, and vibration at toes and ankles. */
function mayBeOfAge({ item, place }: Finding): boolean {
  if (item.section === 'reflexes') return item.key === 'ankle';
  return item.section === 'sensation' && item.key === 'vibration' && farLandmarks.has(place?.key ?? '');
}

const qualityOf = ({ item, place }: Finding): string => `${item.section}/${item.key}@${place?.key ?? ''}`;

/** Age from which three in ten, and later half, walk and move a little like people with parkinsonism. Source: Bennett 1996 (recalled). */
const slowFrom = 75;
/** Odds where that is all, on both sides alike, and what tells the disease was looked for and is not there: in health each is held for rare. Judged. */
const slowOfAge = { health: 40, nigra: 0.4 } as const;

/** What age brings to walk, hands and face without any disease of the basal ganglia. */
const ofOldAge: ReadonlySet<string> = new Set([
  ...['cautious', 'reduced-arm-swing', 'tandem', 'postural-tremor', 'snout-reflex', 'glabellar-reflex'],
  ...['palmomental-reflex', 'broken-pursuit', 'small-pupil'],
]);
/** What tells the disease: one of them at least was tried. */
const ofParkinsonism: ReadonlySet<string> = new Set([
  'resting-tremor',
  'finger-tapping',
  'bradykinesia',
  'foot-tapping',
]);

/** Somebody old whose steps are careful and whose arms swing little on both sides, without tremor at rest, slowness or rigidity. */
function slowOfAgeShifts(wrong: readonly Finding[], { findings, person }: Exam): readonly Shift[] {
  const [first] = wrong;
  if (first === undefined || (person.ageYears ?? 0) < slowFrom) return [];
  const isOfAge = wrong.every((one) => ofOldAge.has(one.item.key) || mayBeOfAge(one));
  const isSided = wrong.some(
    ({ side, item }) => side !== 'midline' && !isOnBoth(wrong.filter((one) => one.item.key === item.key)),
  );
  const isTried = findings.some(({ item, abnormal }) => !abnormal && ofParkinsonism.has(item.key));
  if (!isOfAge || isSided || !isTried) return [];
  const because =
    'age makes steps careful and arms swing less on both sides, and no tremor at rest or slowness is there';
  return [
    shiftBy(first, { applies: health, factor: slowOfAge.health, because }),
    shiftBy(first, { applies: sites('akinetic-rigid-syndrome'), factor: slowOfAge.nigra, because }),
  ];
}

const isOnBoth = (findings: readonly Finding[]): boolean => sidesOf(findings).size === 2;

/** Where nothing is wrong but what age takes, and at both feet alike, one lesion on one side is hardly an answer, and health is. */
export function ageingShifts(exam: Exam): readonly Shift[] {
  const { findings, person } = exam;
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || (person.ageYears ?? 0) < agedFrom) return [];
  if (!wrong.every(mayBeOfAge)) return slowOfAgeShifts(wrong, exam);
  const qualities = new Set(wrong.map(qualityOf));
  const isAlike = [...qualities].every((quality) => isOnBoth(wrong.filter((one) => qualityOf(one) === quality)));
  if (!isAlike) return [];
  const jerkAndFeeling = new Set(wrong.map(({ item }) => item.section)).size;
  return [
    shiftBy(first, {
      applies: health,
      factor: alikeAtBothFeet.health ** jerkAndFeeling,
      because: 'age takes the ankle jerks and vibration of both feet alike',
    }),
    shiftBy(first, { applies: oneSide, factor: alikeAtBothFeet.oneSide, because: 'both feet have lost the same' }),
  ];
}

import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy, sidesOf } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/** Up to this age a child is held, fed and watched rather than asked to do something. Judged. */
const infancyYears = 1.5;

/**
 * Odds where an infant is limp or without jerks in all limbs and nothing speaks of the cord: it is torn at birth or malformed, and hardly
 * ever inflamed. Source: common practice (Dubowitz, the floppy infant, recalled); judged.
 */
const limp = { cord: 0.06, foramenMagnum: 0.2, brainstem: 0.5, territory: 0.01 } as const;
/** A part of the brainstem that one artery feeds: arteries of infants hardly ever close there. */
const territoryOfTheBrainstem: Applies = ({ key, kind }) =>
  kind === 'brainstem' && key !== 'brainstem-diffuse' && key !== 'foramen-magnum';
const ofTheCord: ReadonlySet<string> = new Set([
  ...['trauma', 'neck-trauma', 'shoulder-dystocia', 'difficult-delivery', 'perinatal-injury', 'spina-bifida'],
  ...['back-pain', 'neck-pain', 'bladder-disturbance', 'spinal-surgery'],
]);
const seenOfTheCord: ReadonlySet<string> = new Set([
  ...['urinary-retention', 'palpable-bladder', 'reduced-anal-tone', 'lumbosacral-skin-mark', 'spinal-tenderness'],
]);

function isLimp({ abnormal, item: { probe }, value }: Finding): boolean {
  if (probe.kind === 'tone') return value === 'reduced';
  return abnormal && probe.kind === 'reflex' && (value === '0' || value === 'trace');
}

function limpShifts({ findings, history }: Exam): readonly Shift[] {
  const found = findings.filter((finding) => isLimp(finding));
  const [first] = found;
  const limbs = new Set(found.map(({ item: { region }, side }) => `${region} ${side}`));
  if (first === undefined || limbs.size < 3 || tells(history, ofTheCord)) return [];
  const isOfTheCord = ({ abnormal, item, place, modality }: Finding): boolean =>
    abnormal && (seenOfTheCord.has(item.key) || place?.kind === 'level-below' || modality !== undefined);
  if (
    findings.some((finding) => isOfTheCord(finding) || (finding.item.probe.kind === 'reflex' && isBrisk(finding.value)))
  )
    return [];
  const because =
    'limp infants have an ill brain, motor cells, junctions or muscles, and a cord that was torn or malformed in few';
  return [
    shiftBy(first, { applies: kinds('cord'), factor: limp.cord, because }),
    shiftBy(first, { applies: sites('foramen-magnum'), factor: limp.foramenMagnum, because }),
    shiftBy(first, { applies: sites('brainstem-diffuse'), factor: limp.brainstem, because }),
    shiftBy(first, { applies: territoryOfTheBrainstem, factor: limp.territory, because }),
  ];
}

/** Odds where an infant does not suck, swallow or cry as it should, and neither half is named. Judged. */
const feedsBadly = { oneNerve: 0.08, junction: 3, bulbarCells: 1.5 } as const;
/** The same where a parent has it too: of the receptor, by the mother's antibodies or by descent, and not of a poison. Judged. */
const likeAParent = { receptor: 4, poison: 0.3 } as const;
const ofTheParents: ReadonlySet<string> = new Set(['similar-disorder', 'autoimmune-disease']);
const ofTheThroat: ReadonlySet<string> = new Set([
  ...['drooling', 'weak-suck-or-cry', 'absent-gag-reflex', 'dysphagia', 'nasal-speech', 'dysphonia'],
]);
const nervesOfOneSide: Applies = (site) => site.kind === 'cranial-nerve' && site.side !== 'both';

/** One nerve of face or throat leaves an infant its suck; who loses it has lost both halves, to a poison of the junction first. */
function throatShifts({ findings, history, onset }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const throat = wrong.find(({ item }) => ofTheThroat.has(item.key));
  const halves = sidesOf(wrong.filter(({ item, side }) => item.section === 'cranialNerves' && side !== 'midline'));
  if (throat === undefined || halves.size === 1) return [];
  const because = 'an infant that no longer sucks or swallows has lost both halves of face and throat';
  const isLikeAParent = history.some(({ present, kind, key }) => present && kind === 'family' && ofTheParents.has(key));
  const descent = 'an infant that does not suck has it of a parent who is ill alike';
  const atOnce = onset.pace === 'acute' || onset.pace === 'subacute';
  return [
    shiftBy(throat, { applies: nervesOfOneSide, factor: feedsBadly.oneNerve, because }),
    ...(atOnce && !isLikeAParent
      ? [shiftBy(throat, { applies: sites('presynaptic-junction'), factor: feedsBadly.junction, because })]
      : []),
    ...(isLikeAParent
      ? [
          shiftBy(throat, { applies: sites('postsynaptic-junction'), factor: likeAParent.receptor, because: descent }),
          shiftBy(throat, { applies: sites('presynaptic-junction'), factor: likeAParent.poison, because: descent }),
        ]
      : []),
    shiftBy(throat, { applies: sites('bulbar-motor-nuclei'), factor: feedsBadly.bulbarCells, because }),
  ];
}

/** Odds where an infant loses skills: of the cerebellum by itself, and of the whole brain, more where mind or wakefulness dim too. Judged. */
const losesSkills = { cerebellum: 0.03, brain: 2.5, brainThatDims: 6 } as const;
const skills: ReadonlySet<string> = new Set(['loss-of-skills']);
const ofTheMind: ReadonlySet<string> = new Set(['seizure', 'behaviour-change', 'cognitive-change', 'visual-loss']);
const shakesOrSways: ReadonlySet<string> = new Set([
  ...['ataxic', 'titubation', 'intention-tremor', 'finger-nose', 'heel-shin', 'nystagmus', 'gaze-evoked-nystagmus'],
  ...[
    'cerebellar-dysarthria',
    'opsoclonus',
    'ocular-flutter',
    'vertical-nystagmus',
    'downbeat-nystagmus',
    'past-pointing',
  ],
]);
const unsteadiness: ReadonlySet<string> = new Set(['unsteadiness', 'clumsiness']);

/** To sit and to hold the head are steps that an infant takes with its whole brain; lost, they say nothing of the cerebellum alone. */
function skillsShifts({ findings, history }: Exam): readonly Shift[] {
  if (!tells(history, skills) || tells(history, unsteadiness)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || wrong.some(({ item }) => shakesOrSways.has(item.key))) return [];
  const dims = tells(history, ofTheMind) || wrong.some(({ item }) => item.section === 'higherFunction');
  const because = 'an infant that loses skills has the whole brain ill; to sit is one of them';
  return [
    shiftBy(first, { applies: kinds('cerebellum'), factor: losesSkills.cerebellum, because }),
    shiftBy(first, {
      applies: sites('diffuse-encephalopathy'),
      factor: dims ? losesSkills.brainThatDims : losesSkills.brain,
      because,
    }),
  ];
}

/** What the signs of an infant say together of the place, where they would say something else of who walks and talks. */
export function infantPatternShifts(exam: Exam): readonly Shift[] {
  const { ageYears } = exam.person;
  if (ageYears === undefined || ageYears === null || ageYears > infancyYears) return [];
  return [...limpShifts(exam), ...throatShifts(exam), ...skillsShifts(exam)];
}

import type { Exam } from '../../exam/exam.ts';
import { cameFast } from '../../exam/pace.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import { showsTracts } from './nerve-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/** Odds where lids of both sides and the throat fail within days in somebody whose mind is not said to dim. Judged. */
const lidsAndThroat = { junction: 2, brain: 0.25, midbrain: 0.5, brainstem: 0.5 } as const;
const lids: ReadonlySet<string> = new Set(['ptosis', 'fatigable-ptosis']);
const ofTheThroat: ReadonlySet<string> = new Set([
  ...[
    'absent-gag-reflex',
    'dysphagia',
    'nasal-speech',
    'palatal-weakness',
    'dysphonia',
    'flaccid-dysarthria',
    'dysarthria',
  ],
  ...['drooling', 'weak-suck-or-cry', 'jaw-weakness'],
]);
const ofTheMind: ReadonlySet<string> = new Set([
  ...['cognitive-change', 'behaviour-change', 'seizure', 'loss-of-consciousness', 'headache', 'new-headache', 'fever'],
  ...['vertigo', 'speech-difficulty', 'unsteadiness', 'head-injury', 'alcohol-excess', 'malnutrition'],
]);
/** Both eyes that do not turn one way are moved from above. */
const ofGaze: ReadonlySet<string> = new Set([
  ...['gaze-palsy', 'vertical-gaze-palsy', 'upgaze-palsy', 'downgaze-palsy', 'skew-deviation', 'hemiplegic'],
]);
const midbrainOrThalamus: Applies = ({ key, kind }) =>
  key === 'thalamus' || (kind === 'brainstem' && /^midbrain/.test(key));

/** Odds where lids or eyes and both pupils fail within days beside weak limbs that are not said to tingle. Judged. */
const pupilsToo = { presynaptic: 2.5, postsynaptic: 0.3 } as const;
const ofPupils: ReadonlySet<string> = new Set(['sluggish-pupil', 'unreactive-pupil', 'dilated-pupil']);
const ofEyes: ReadonlySet<string> = new Set([...lids, 'ophthalmoplegia', 'third-nerve-palsy', 'sixth-nerve-palsy']);
const ofNerves: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae', 'unsteadiness', 'back-pain']);

/**
 * A poison that keeps acetylcholine from leaving the nerve stops pupils with lids and limbs; inflamed roots, which may stop pupils too, tingle or
 * sway in most, and antibodies against the receptor leave pupils alone. Source: Amato and Russell, botulism (recalled).
 */
export function pupilsAndLidsShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const pupils = wrong.filter(({ item }) => ofPupils.has(item.key));
  const eyes = wrong.filter(({ item }) => ofEyes.has(item.key));
  const [first] = pupils;
  if (first === undefined || sidesOf(pupils).size < 2 || sidesOf(eyes).size < 2) return [];
  const isOfNerves = wrong.some(({ modality, item }) => modality !== undefined || item.probe.kind === 'cerebellar');
  if (isOfNerves || tells(history, ofNerves)) return [];
  const because = 'both pupils fail with lids or eyes, and nothing tingles or sways';
  return [
    shiftBy(first, { applies: sites('presynaptic-junction'), factor: pupilsToo.presynaptic, because }),
    shiftBy(first, { applies: sites('postsynaptic-junction'), factor: pupilsToo.postsynaptic, because }),
  ];
}

/**
 * Lids and throat have nuclei at the two ends of the brainstem; what takes both sides of both, in somebody awake whose tracts are
 * well, stops the junctions. Source: Amato and Russell, botulism and envenomation (recalled).
 */
export function lidsAndThroatShifts(exam: Exam): readonly Shift[] {
  const { findings, history, onset } = exam;
  if (!cameFast(onset)) return [];
  if (showsTracts(exam) || tells(history, ofTheMind)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const dropped = wrong.filter(({ item }) => lids.has(item.key));
  const [first] = dropped;
  if (first === undefined || sidesOf(dropped).size < 2) return [];
  if (!wrong.some(({ item }) => ofTheThroat.has(item.key))) return [];
  if (wrong.some(({ item, modality }) => modality !== undefined || item.section === 'higherFunction')) return [];
  const isOfOneHalf = sidesOf(weakMovements(wrong).filter(({ side }) => side !== 'midline')).size === 1;
  if (isOfOneHalf || wrong.some(({ item }) => ofGaze.has(item.key))) return [];
  const because = 'both lids droop and the throat fails in somebody whose mind and tracts are not said to be ill';
  return [
    shiftBy(first, { applies: kinds('junction'), factor: lidsAndThroat.junction, because }),
    shiftBy(first, { applies: sites('diffuse-encephalopathy'), factor: lidsAndThroat.brain, because }),
    shiftBy(first, { applies: sites('brainstem-diffuse'), factor: lidsAndThroat.brainstem, because }),
    shiftBy(first, { applies: midbrainOrThalamus, factor: lidsAndThroat.midbrain, because }),
  ];
}

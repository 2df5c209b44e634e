import { type FacultyChances, facultyKey } from '../process.ts';
import { facultiesOf } from './process-signs.ts';

/**
 * What a large or swelling lesion of one hemisphere does to wakefulness and attention, though the structures for these lie
 * elsewhere. A third to a half of deep haemorrhages and of infarcts of the whole middle cerebral artery are drowsy. Judged.
 */
export const swelling = facultiesOf([
  ['consciousness', 0.4],
  ['attention', 0.5],
  ['orientation', 0.3],
]);

/** An inflamed or pressed temporal lobe seldom leaves the mind clear. Judged. */
export const inflamedTemporalLobe = facultiesOf([
  ['consciousness', 0.4],
  ['attention', 0.65],
  ['orientation', 0.6],
  ['memory', 0.6],
  ['mood-behaviour', 0.5],
]);

/**
 * Behind a lesion of the callosum, which the anterior cerebral artery of either side feeds, the left hand no longer hears of
 * what the left hemisphere knows: it does not obey, write or name what it holds (Geschwind 1962, recalled). Judged.
 */
export const cutOffHand: FacultyChances = new Map([
  [facultyKey('praxis', 'left'), 0.7],
  [facultyKey('limb-ownership', 'left'), 0.4],
  [facultyKey('calculation', 'left'), 0.45],
  [facultyKey('cortical-sensation', 'left'), 0.3],
]);

/** With the poles of the temporal lobes manner and feeling for others waste as well. Judged. */
export const changedManner = facultiesOf([
  ['mood-behaviour', 0.55],
  ['executive', 0.25],
  ['memory', 0.2],
]);

/** Who has lost both frontal lobes is adrift in time, forgets to remember and knows of nothing wrong: it is taken for dementia. Judged. */
export const bothFrontalLobes = facultiesOf([
  ['orientation', 0.5],
  ['attention', 0.5],
  ['memory', 0.35],
  ['construction', 0.2],
  ['language-repetition', 0.2],
]);

/** What grows from the falx presses on the frontal lobes in front of the leg areas too: drive, manner, attention and the bladder. Judged. */
export const frontalLobesBeside = facultiesOf([
  ['mood-behaviour', 0.5],
  ['attention', 0.45],
  ['executive', 0.4],
  ['memory', 0.25],
  ['frontal-release', 0.3],
  ['bladder-urgency', 0.4],
]);

/**
 * An old lesion of the other hemisphere, long made up for, is felt again when the second one leaves throat and speech
 * without either. Judged.
 */
export const afterAnOldOne = facultiesOf([
  ['pseudobulbar', 0.8],
  ['speech-articulation', 0.85],
  ['swallowing', 0.75],
  ['speech-initiation', 0.25],
]);

/**
 * Who has lost both tracts to face, throat and limbs can no longer utter a sound, and is found awake and mute: locked in (Patterson
 * and Grabois 1986, 139 cases, recalled). Judged.
 */
export const lockedIn = facultiesOf([
  ['speech-initiation', 0.65],
  ['speech-articulation', 0.9],
  ['swallowing', 0.9],
]);

/** The same where tracts to face and throat alone are lost. Judged. */
export const silencedBoth = facultiesOf([
  ['speech-initiation', 0.5],
  ['speech-articulation', 0.9],
  ['swallowing', 0.8],
]);

/** Who wakes blind in both halves of space is confused in a third or more. Judged. */
export const bothPosteriorArteries = facultiesOf([
  ['orientation', 0.35],
  ['attention', 0.35],
]);

export const pushedDown = facultiesOf([
  ['consciousness', 0.75],
  ['attention', 0.5],
]);

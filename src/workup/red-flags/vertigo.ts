import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing } from '../../causes/reasons.ts';
import type { Finding } from '../../exam/finding.ts';
import { agedFrom, type BedsideFacts } from '../bedside-facts.ts';
import { absent, notAssessable, present, type Verdict } from './rule.ts';
import { badArteries } from './stroke-stories-that-raise.ts';
import { onOneSide } from './sudden-deficit.ts';

/** Eyes that stand or beat as no lesion of the ear makes them. */
const centralEyes = [
  'cranial-nerves/direction-changing-nystagmus',
  'cranial-nerves/vertical-nystagmus',
  'cranial-nerves/upbeat-nystagmus',
  'cranial-nerves/pendular-nystagmus',
  'cranial-nerves/downbeat-nystagmus',
  'cranial-nerves/skew-deviation',
];

/** Signs of a central cause in continuous vertigo, beside a head impulse without a corrective saccade. */
const centralVestibularSigns = [
  ...centralEyes,
  'cranial-nerves/hearing-loss',
  'cranial-nerves/horner-syndrome',
  'cranial-nerves/facial-numbness',
  'cranial-nerves/facial-weakness',
  'cranial-nerves/lower-facial-weakness',
  'cranial-nerves/gaze-palsy',
  'cranial-nerves/internuclear-ophthalmoplegia',
  'cranial-nerves/dysphagia',
  'cranial-nerves/dysarthria',
  'cranial-nerves/cerebellar-dysarthria',
  'gait/unable-to-stand',
  'gait/unable-to-walk',
];

/** The ear moves the eyes and the trunk; an arm or a leg that sinks or misses is of the brain. */
const limbsThatMiss = [
  'coordination/finger-nose',
  'coordination/heel-shin',
  'coordination/rapid-alternating-movements',
  'special-tests/pronator-drift',
  'special-tests/leg-drift',
];

/** Vertigo that is of brainstem or cerebellum and not of the ear. */
export function checkVertigo(facts: BedsideFacts): Verdict | null {
  const { query } = facts;
  const lasting = facts.told('continuous-vertigo');
  const isZoster = isZosterOfTheEar(facts);
  const signs = [
    ...query.abnormal(centralVestibularSigns).filter(({ item }) => !(isZoster && ofTheTemporalBone.has(item.key))),
    ...pupilOfOneSide(facts),
  ];
  // Dizziness is how many call it: with the eyes of a central lesion it is the same.
  const eyes = query.abnormal(centralEyes);
  const limbs = [...new Set([...query.abnormal(limbsThatMiss), ...limbsOfOneSide(facts)])];
  const vertigo = [
    ...lasting,
    ...facts.told(
      'vertigo',
      ...(eyes.length > 0 ? ['dizziness'] : []),
      ...(limbs.length > 0 ? ['positional-vertigo'] : []),
    ),
  ];
  const { pace } = facts.exam.onset;
  if (vertigo.length === 0 || pace === 'chronic' || pace === 'subacute') return null;
  // Vertigo that has not stopped is of days, though nobody says of how many; so is what came with a limb that misses.
  const isUndated = (facts.isUntimed && lasting.length > 0) || (pace !== undefined && limbs.length > 0);
  const began = facts.beganWithin(14);
  if (began !== 'yes' && !(isUndated && began !== 'no')) return null;
  const isKnown = facts.told('similar-attacks-before', 'positional-vertigo').length > 0;
  const told = [
    ...(isZoster || (isKnown && badArteries(facts).length === 0) ? [] : facts.told('hearing-loss')),
    ...facts.told('speech-difficulty', 'slurred-speech', 'diplopia', 'numbness', 'dysphagia'),
    ...facts.told('arm-weakness', 'leg-weakness', 'loss-of-consciousness', 'thunderclap-headache'),
    // Pain of the head or neck with a first vertigo: bleeding or swelling in the cerebellum, or a torn artery.
    ...(isKnown || isZoster ? [] : facts.told('headache', 'new-headache', 'neck-pain')),
  ];
  const nystagmus = query.abnormal(['cranial-nerves/nystagmus', 'cranial-nerves/gaze-evoked-nystagmus']);
  const impulse = query.tested(['cranial-nerves/abnormal-head-impulse']);
  const normalImpulse = nystagmus.length > 0 && impulse.length > 0 && !impulse.some(({ abnormal }) => abnormal);
  if (signs.length + limbs.length + told.length > 0 || normalImpulse)
    return present([
      ...vertigo,
      ...findingReasons([...signs, ...limbs], 4),
      ...told,
      ...(normalImpulse ? findingReasons(impulse, 1) : []),
    ]);
  // A walk that is ataxic, in the old or the sick of artery, where the ear was not shown to be at fault: what still sways has not stopped.
  const balance = query.abnormalWhere(
    ({ item, value }) =>
      item.key === 'ataxic' || (item.probe.kind === 'cerebellar' && value !== 'impaired-by-weakness'),
  );
  // The impulse tells of the ear in an eye that beats: without nystagmus it was not tested in the attack that it is meant for.
  const isOfTheEar = (impulse.some(({ abnormal }) => abnormal) && nystagmus.length > 0) || isKnown;
  if (balance.length > 0 && !isOfTheEar && facts.maybeProgressing) {
    const risk = [...agedFrom(60, facts), ...badArteries(facts)];
    if (risk.length > 0) return present([...vertigo, ...findingReasons(balance, 2), ...risk.slice(0, 2)]);
  }
  if (lasting.length === 0) return null;
  const gaps: Reason[] = [];
  if (impulse.length === 0) gaps.push(missing('the head impulse was not tested, and it matters'));
  if (query.sign('cranial-nerves/skew-deviation') === 'unknown')
    gaps.push(missing('skew of the eyes was not looked for'));
  return gaps.length > 0 ? notAssessable([...gaps, ...vertigo]) : absent(findingReasons(impulse));
}

/** A narrow pupil, or two that differ, of one side alone: half of a Horner syndrome, whose lid is easily missed. */
function pupilOfOneSide({ query, told }: BedsideFacts): readonly Finding[] {
  const pupils = onOneSide(query.abnormal(['cranial-nerves/small-pupil', 'cranial-nerves/anisocoria']));
  return told('eye-drops', 'opioid', 'glaucoma', 'red-eye').length > 0 ? [] : pupils;
}

/** Zoster of the ear takes balance, hearing and face together, and hurts. */
function isZosterOfTheEar({ query, told }: BedsideFacts): boolean {
  const blisters = [...told('herpes-zoster'), ...findingReasons(query.abnormal(['inspection/vesicular-rash']))];
  return blisters.length > 0 && told('ear-pain', 'rash').length > 0;
}

/** What the nerves of the inner ear canal do. */
const ofTheTemporalBone: ReadonlySet<string> = new Set(['hearing-loss', 'facial-weakness']);

/** Limbs of one side that miss their aim, sink, are weak or stiff: beside vertigo, even of one change of position, it is central. */
function limbsOfOneSide({ query }: BedsideFacts): readonly Finding[] {
  return onOneSide(
    query.abnormalWhere(
      ({ item: { key, probe }, value, side }) =>
        side !== 'midline' &&
        ((probe.kind === 'cerebellar' && value !== 'impaired-by-weakness') ||
          ['movement', 'tone', 'plantar'].includes(probe.kind) ||
          ['pronator-drift', 'leg-drift'].includes(key)),
    ),
  );
}

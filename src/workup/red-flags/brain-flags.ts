import { findingReasons, missing } from '../../causes/reasons.ts';
import type { Finding } from '../../exam/finding.ts';
import { read, recalled } from '../../kernel/cite.ts';
import { isBodySide } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { clouded, reducedConsciousness } from './consciousness.ts';
import { unknownOnset } from './cord.ts';
import { isSimpleFebrileSeizure } from './febrile-seizure.ts';
import { feverReasons, trueFever } from './fever.ts';
import { isOfBothHalves } from './not-of-a-mass.ts';
import { absent, notAssessable, present, type RedFlagRule, type Verdict } from './rule.ts';
import { centralSigns, isKnownAura, oneSidedWeakness, onOneSide, suddenFocalSigns } from './sudden-deficit.ts';
import { isAtLeast, isUnder, written } from './thresholds.ts';
import { isToldOfOneSide, oneSidedComplaints } from './told-sides.ts';
import { checkWernicke } from './wernicke.ts';

/** Autoimmune encephalitis comes on in under three months (Graus 2016). */
const underThreeMonths = 92;

export const headache = ['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'] as const;
/** Flags of the brain, the meninges and the cranial nerves. */
export const brainFlags: readonly RedFlagRule[] = [
  {
    key: 'suspected-stroke',
    label: 'Sudden focal deficit, suspected stroke',
    urgency: 'immediate',
    action: 'Emergency stroke pathway now; check the blood glucose first.',
    source: read('nice-ng128'),
    check: (facts) => {
      const signs = suddenFocalSigns(facts);
      if (signs.length > 0) return present(signs);
      // A plain sign of the brain of which nobody has said since when, nor how it goes on, may have come this morning.
      const plain = facts.isUntimed && !isOldAndScattered(facts) ? centralSigns(facts.query) : [];
      return plain.length > 0 ? notAssessable([unknownOnset, ...findingReasons(plain, 3)]) : null;
    },
  },
  {
    key: 'suspected-transient-ischaemic-attack',
    label: 'Sudden focal deficit that has resolved',
    urgency: 'same-day',
    action: 'Specialist assessment within 24 hours; aspirin 300 mg unless it is contraindicated.',
    source: read('nice-ng128'),
    check: (facts) => {
      const lasting = [
        ...facts.told('visual-loss'),
        ...findingReasons(
          facts.query.abnormal(['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/optic-disc-swelling']),
        ),
      ];
      const resolved = [
        ...facts.told('resolved-deficit'),
        ...(lasting.length > 0 || isSightUnderPressure(facts) ? [] : facts.told('transient-visual-loss')),
      ];
      // What is still there is treated as a stroke.
      const { pace } = facts.exam.onset;
      const isRecent = pace !== 'chronic' && (facts.beganWithin(twoWeeks) !== 'no' || attacksGoOn(facts));
      // Somebody known to have fits has had one, and nothing else was told to have gone.
      const isKnownFit = facts.told('epilepsy').length > 0 && facts.told('seizure').length > 0;
      const isKnown = isKnownAura(facts) || isKnownFit;
      return resolved.length > 0 && isRecent && !isKnown && suddenFocalSigns(facts).length === 0
        ? present(resolved)
        : null;
    },
  },
  {
    key: 'hypoglycaemia-with-deficit',
    label: 'Low glucose with a neurological deficit',
    urgency: 'immediate',
    action: 'Give glucose (with thiamine where it may be short) and examine again.',
    source: recalled('nice-ng128', 'exclude hypoglycaemia'),
    check: (facts) => {
      const glucose =
        facts.query.quantity('glucose-random', 'mmol/L') ?? facts.query.quantity('glucose-fasting', 'mmol/L');
      if (glucose === undefined || !isUnder(glucose, 4) || facts.localisation.conclusion === 'no-abnormality')
        return null;
      return present([{ pointer: glucose.pointer, text: `glucose ${written(glucose)} mmol/L` }]);
    },
  },
  {
    key: 'thunderclap-headache',
    label: 'Thunderclap headache',
    urgency: 'immediate',
    action: 'CT of the head as soon as possible; lumbar puncture if the CT was late and negative.',
    source: read('nice-ng228'),
    check: (facts) => {
      const sudden = facts.query.history('thunderclap-headache');
      if (sudden?.present === true) return present(facts.told('thunderclap-headache'));
      const told = facts.told('headache', 'new-headache');
      if (sudden === undefined || told.length === 0) return null;
      return absent([{ pointer: sudden.pointer, text: 'no thunderclap headache' }]);
    },
  },
  {
    key: 'suspected-meningitis',
    label: 'Meningism, or suspected bacterial meningitis',
    urgency: 'immediate',
    action:
      'Hospital now; antibiotics within one hour of arrival if infection is likely; lumbar puncture unless it is unsafe; a stiff neck without fever may be bleeding.',
    source: read('nice-ng240'),
    check: checkMeningitis,
  },
  {
    key: 'suspected-encephalitis',
    label: 'Suspected encephalitis or other infection of the brain',
    urgency: 'immediate',
    action: 'Aciclovir without delay; MRI, and lumbar puncture as soon as it is safe.',
    source: recalled('adams-victor', 'herpes simplex encephalitis'),
    check: (facts) => {
      const psychotic =
        facts.told('seizure').length > 0 ? ['higher-function/mutism', 'higher-function/hallucinations'] : [];
      const altered = facts.query.abnormal([...clouded, ...psychotic]);
      const fever = trueFever(facts);
      const also = [...fever, ...facts.told('seizure', 'behaviour-change')];
      const focal = [...centralSigns(facts.query), ...oneSidedWeakness(facts)];
      const pain = facts.told(...headache);
      // Without defence an infection of the brain comes with headache and a deficit, and no fever.
      const defenceless = facts.told('hiv-infection', 'immunosuppression');
      const toldFocal = defenceless.length > 0 && facts.maybeProgressing ? oneSidedComplaints(facts) : [];
      const isFocal = focal.length + toldFocal.length > 0 && pain.length > 0 && fever.length + defenceless.length > 0;
      // Relatives tell of odd behaviour, wrong words or a fit before anybody has tested the mind.
      const changed = facts.told('behaviour-change', 'speech-difficulty', 'seizure');
      const toldChange = fever.length > 0 && !isSimpleFebrileSeizure(facts) ? changed : [];
      const fit = facts.told('seizure');
      // Odd behaviour of a known disorder of the mind under its medicine, which also lowers the threshold for a fit, is not new.
      const isKnown = facts.told('psychiatric-disorder').length > 0 && facts.told('antipsychotic').length > 0;
      const isOdd = fit.length > 0 && facts.told('behaviour-change').length > 0 && !isKnown;
      // After a transplant the medial temporal lobes are inflamed without fever: what happened is not kept.
      const forgetting = defenceless.length > 0 ? facts.query.abnormal(['higher-function/amnesia']) : [];
      const isLimbic = forgetting.length > 0 && facts.maybeProgressing && facts.exam.onset.pace !== 'hyperacute';
      const isAltered = altered.length > 0 && also.length > 0;
      const recent = facts.beganWithin(underThreeMonths);
      const inTime = recent === 'yes' || (recent === 'unknown' && fever.length > 0);
      return (isAltered || isFocal || isOdd || isLimbic || toldChange.length > 0) && inTime
        ? present([
            ...findingReasons([...forgetting, ...altered, ...focal], 4),
            ...toldFocal,
            ...also,
            ...toldChange,
            ...defenceless,
          ])
        : null;
    },
  },
  {
    key: 'raised-intracranial-pressure',
    label: 'Raised intracranial pressure',
    urgency: 'same-day',
    action: 'Blood pressure, then CT or MRI of the head with venography the same day; at once if consciousness falls.',
    source: read('iih-consensus-2018'),
    check: (facts) => {
      const disc = swollenByPressure(facts);
      const pain = facts.told(...headache);
      const sixth = facts.query
        .abnormal([
          'cranial-nerves/sixth-nerve-palsy',
          'cranial-nerves/eye-abduction-weakness',
          'cranial-nerves/esotropia',
          'cranial-nerves/upgaze-palsy',
          'cranial-nerves/convergence-retraction-nystagmus',
        ])
        .filter(({ side }) => !isBesideOtherNerves(facts, side));
      const falling = facts.query.abnormal(reducedConsciousness);
      if (disc.length === 0 && (pain.length === 0 || sixth.length + falling.length === 0)) {
        const typical = [
          ...facts.told('morning-headache'),
          ...(pain.length > 0 ? facts.told('transient-visual-loss') : []),
        ];
        const isUnseen = facts.query.sign('cranial-nerves/optic-disc-swelling') === 'unknown';
        if (typical.length === 0) return null;
        return isUnseen
          ? notAssessable([missing('the optic discs were not examined, and it matters'), ...typical])
          : absent(findingReasons(facts.query.findings('cranial-nerves/optic-disc-swelling')));
      }
      return present(
        [...findingReasons([...disc, ...falling, ...sixth]), ...pain],
        falling.length > 0 ? 'immediate' : 'same-day',
      );
    },
  },
  {
    key: 'suspected-wernicke-encephalopathy',
    label: 'Suspected Wernicke encephalopathy',
    urgency: 'immediate',
    action: 'Intravenous thiamine before any carbohydrate.',
    source: read('caine-1997', 'two of diet, eye signs, cerebellar signs and altered mental state'),
    check: checkWernicke,
  },
  {
    key: 'status-epilepticus',
    label: 'Seizure that has not stopped',
    urgency: 'immediate',
    action: 'Resuscitation and a benzodiazepine now; glucose; second-line drug if it does not stop.',
    source: read('nice-ng217'),
    check: (facts) => {
      const trace = facts.query.result('eeg');
      const seen =
        trace?.value === 'status-epilepticus'
          ? [{ pointer: trace.pointer, text: 'status epilepticus on the electroencephalogram' }]
          : [];
      const seizure = [...facts.told('ongoing-seizure'), ...seen];
      return seizure.length > 0 ? present(seizure) : null;
    },
  },
  {
    key: 'suspected-space-occupying-lesion',
    label: 'Progressive focal deficit of the brain',
    urgency: 'urgent',
    action: 'Urgent MRI of the brain; the same day if there is vomiting or drowsiness.',
    source: recalled('nice-ng127'),
    check: (facts) => {
      if (isOfBothHalves(facts)) return null;
      const inBrain = shareOfTheBrain(facts) + chiasmProbability(facts) >= 0.5;
      const focal = inBrain ? facts.abnormalFindings : centralSigns(facts.query);
      const { pace } = facts.exam.onset;
      const isWeeks = pace !== 'chronic';
      const also = facts.told(
        'seizure',
        ...(isWeeks ? ['headache'] : []),
        'new-headache',
        'morning-headache',
        'cognitive-change',
        'vomiting',
      );
      // What has grown for more than three days is no stroke, even where its pace was called acute.
      const isUndated = pace === undefined && facts.beganWithin(3) === 'unknown' && facts.exam.course === 'progressive';
      const slow =
        isUndated ||
        pace === 'subacute' ||
        pace === 'chronic' ||
        (pace !== 'hyperacute' && facts.beganWithin(3) === 'no');
      const isRecent = (facts.exam.onset.durationDays ?? 0) <= 730;
      // A brain lesion that grows over weeks or months is a mass until shown otherwise, with headache or without.
      // Where nobody has said for how long, months are meant if it shows on one side: what wastes both hemispheres takes years.
      const { durationDays } = facts.exam.onset;
      const isMonths = durationDays === undefined ? onOneSide(focal).length > 0 : durationDays <= 365;
      // Over months the cerebellum and the brainstem mostly degenerate, and a hemisphere or the chiasm mostly is pressed on.
      const overMonths =
        (isMonths || isUndated) && facts.kindProbability('hemisphere') + chiasmProbability(facts) >= 0.5;
      // Of what came within days and was not said to grow, most has come and stayed.
      const hasStayed = pace === 'acute' && facts.exam.course !== 'progressive';
      // What is called subacute after three months is a matter of months too.
      const overWeeks = pace === 'subacute' && facts.beganWithin(underThreeMonths) !== 'no';
      // Movements of no side, with nothing else, are those of blood, glands and drugs: a mass shows on one.
      const isFocal = onOneSide(focal).length > 0 || focal.some(({ item }) => item.section !== 'involuntaryMovements');
      const isGrowing = inBrain && isFocal && (overWeeks || overMonths) && !hasStayed;
      // Of what is called chronic it must be said that it grows: guidance asks for a loss of function that progresses.
      const grows = isWeeks ? facts.isProgressive : facts.exam.course === 'progressive';
      const isSuspected =
        focal.length > 0 && (also.length > 0 || (isGrowing && !areEyesOutOfStep(focal))) && slow && isRecent && grows;
      if (!isSuspected) return null;
      const image = facts.query.result('mri-brain');
      // The MRI that the flag asks for has been done and shows no mass.
      if (image !== undefined && !massOnImage.has(String(image.value)))
        return absent([{ pointer: image.pointer, text: 'no mass on the MRI of the brain' }]);
      return present([...findingReasons(focal, 4), ...also]);
    },
  },
];

/** Eyes that no longer keep step, with nothing else: a plaque or a small infarct, which a growth in the brainstem does not stop at. */
const areEyesOutOfStep = (focal: readonly Finding[]): boolean =>
  focal.some(({ item }) => item.key === 'internuclear-ophthalmoplegia') &&
  focal.every(({ item }) => ofTheFasciculus.has(item.key));
const ofTheFasciculus: ReadonlySet<string> = new Set([
  ...['internuclear-ophthalmoplegia', 'eye-adduction-weakness', 'monocular-nystagmus', 'nystagmus', 'diplopia'],
  ...['gaze-evoked-nystagmus', 'vertical-nystagmus', 'upbeat-nystagmus', 'impaired-convergence', 'skew-deviation'],
]);

/** Beside a place outside these that is as good as certain, a second one is no sign of where a mass lies. */
function shareOfTheBrain({ localisation, brainProbability }: BedsideFacts): number {
  const [first] = localisation.localisations;
  const isBeside = localisation.conclusion === 'multiple-sites' && first?.kind === 'basal-ganglia';
  return isBeside && first.probability >= 0.9 ? 0 : brainProbability;
}

/** What presses on the chiasm or the tract is mostly a mass, though neither is of the brain's own kinds. */
function chiasmProbability({ localisation }: BedsideFacts): number {
  return localisation.localisations
    .filter(({ site }) => site === 'optic-chiasm' || site === 'optic-tract')
    .reduce((sum, { probability }) => sum + probability, 0);
}

/** Results of an MRI of the brain that are a mass, act as one, or may hide one. */
export const massOnImage: ReadonlySet<string> = new Set([
  'space-occupying',
  'ring-enhancing',
  'haemorrhage',
  'hydrocephalus',
  'meningeal-enhancement',
  'cavernous-malformation',
]);

/** Attacks that began weeks ago and still come at once and pass: the last may be of today, and of its age nothing was said. */
function attacksGoOn(facts: BedsideFacts): boolean {
  const { onset, course } = facts.exam;
  const comesAgain = course === 'fluctuating' || facts.told('similar-attacks-before').length > 0;
  const isOther = facts.told('migraine', 'epilepsy', 'seizure', 'multiple-sclerosis', 'positional-vertigo').length > 0;
  return onset.pace === 'hyperacute' && facts.beganWithin(92) === 'yes' && comesAgain && !isOther;
}

/** A disease of several places of which one is a known multiple sclerosis, or shows what takes months to come: pale discs, wasting, settled spasms. */
function isOldAndScattered({ query, told, localisation, abnormalFindings }: BedsideFacts): boolean {
  // A disc is far from whatever else of the brain has failed.
  const isScattered =
    localisation.conclusion === 'multiple-sites' ||
    localisation.conclusion === 'diffuse-process' ||
    query.hasAbnormal('cranial-nerves/optic-disc-pallor');
  const old = abnormalFindings.filter(({ item, value }) => tookMonths.has(item.key) || value === 'spastic');
  const sudden = query.abnormal(['higher-function/global-aphasia', 'cranial-nerves/forced-gaze-deviation']);
  return (isScattered && old.length > 0 && sudden.length === 0) || told('multiple-sclerosis').length > 0;
}

const tookMonths: ReadonlySet<string> = new Set([
  'optic-disc-pallor',
  'wasting',
  'tongue-wasting',
  'pes-cavus',
  'joint-contracture',
  'scoliosis',
]);

/** Nerves that pass the cavernous sinus and the orbit of this side with the sixth: where they fail too, it is hurt there, and not by pressure. */
function isBesideOtherNerves({ query }: BedsideFacts, side: Finding['side']): boolean {
  if (!isBodySide(side)) return false;
  const other = ['third-nerve-palsy', 'fourth-nerve-palsy', 'facial-numbness', 'horner-syndrome', 'ptosis'];
  return query.abnormal([...other.map((key) => `cranial-nerves/${key}`), 'inspection/proptosis'], side).length > 0;
}

/** Days for which an attack that has passed still foretells a stroke. */
const twoWeeks = 14;

/** Swollen discs, but for one of an eye that sees badly: that is a disease of its own nerve. */
function swollenByPressure({ query }: BedsideFacts): readonly Finding[] {
  const discs = query.abnormal(['cranial-nerves/optic-disc-swelling']);
  const [only] = discs;
  if (discs.length !== 1 || only === undefined) return discs;
  const nerve = ['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/relative-afferent-pupillary-defect'];
  return query.abnormal(nerve).some(({ side }) => side === only.side) ? [] : discs;
}

function checkMeningitis(facts: BedsideFacts): Verdict | null {
  const { query } = facts;
  // Old and weak people have meningitis without fever: a C-reactive protein of 50 mg/L stands for it where the mind is clouded.
  const protein = query.quantity('crp', 'mg/L');
  const isInflamed = protein !== undefined && isAtLeast(protein, 50) && query.abnormal(clouded).length > 0;
  const fever = isInflamed ? feverReasons(facts) : trueFever(facts);
  const pain = facts.told('headache', 'new-headache', 'thunderclap-headache');
  const rash = query.abnormal(['inspection/non-blanching-rash']);
  const stiff = query.abnormal(['special-tests/neck-stiffness', 'special-tests/kernig', 'special-tests/brudzinski']);
  const altered = query.abnormal(clouded);
  // A stiff neck with a new headache is blood or pus until shown otherwise, with fever or without.
  if (fever.length === 0 && pain.length > 0 && stiff.length > 0 && facts.beganWithin(42) !== 'no')
    return present([...pain, ...findingReasons([...stiff, ...altered])]);
  const isFresh = facts.beganWithin(42) === 'yes';
  // The old have neither fever nor words for their headache.
  if (fever.length === 0 && stiff.length > 0 && altered.length > 0 && isFresh)
    return present(findingReasons([...stiff, ...altered]));
  // Pus or cells at the base of the brain take the cranial nerves that leave it.
  if (fever.length === 0 && stiff.length > 0 && facts.cranialNerveSigns.length > 0 && facts.beganWithin(14) === 'yes')
    return present(findingReasons([...stiff, ...facts.cranialNerveSigns], 4));
  const defenceless = facts.told('hiv-infection', 'immunosuppression');
  if (defenceless.length > 0 && pain.length > 0 && altered.length > 0 && isFresh)
    return present([...defenceless, ...pain, ...findingReasons(altered)]);
  // Nor does a neck stiffen in them, and a fever with a headache is enough.
  if (defenceless.length > 0 && pain.length > 0 && fever.length > 0 && facts.beganWithin(42) !== 'no')
    return present([...defenceless, ...pain, ...fever]);
  const sudden = facts.told('thunderclap-headache');
  if (fever.length === 0 && sudden.length > 0 && query.sign('special-tests/neck-stiffness') === 'unknown')
    return notAssessable([missing('neck stiffness was not examined, and it matters'), ...sudden]);
  if (fever.length === 0 || (pain.length === 0 && stiff.length === 0 && rash.length === 0)) return null;
  const signs = [...stiff, ...altered, ...rash];
  if (signs.length > 0) return present([...fever, ...pain, ...findingReasons(signs)]);
  if (query.sign('special-tests/neck-stiffness') === 'unknown') {
    return notAssessable([missing('neck stiffness was not examined, and it matters'), ...fever, ...pain]);
  }
  return absent(findingReasons(query.findings('special-tests/neck-stiffness')));
}

/** Sight that blurs for moments, not of one eye, in weeks of headache before fifty: discs that swell, and no artery. */
function isSightUnderPressure(facts: BedsideFacts): boolean {
  const { exam, told } = facts;
  const isWeeks = exam.onset.pace === 'subacute' && facts.beganWithin(3) !== 'yes';
  const vessels = told('hypertension', 'diabetes-mellitus', 'tobacco', 'atrial-fibrillation', 'thrombophilia');
  return (
    told(...headache).length > 0 &&
    isWeeks &&
    !isToldOfOneSide(facts, 'transient-visual-loss') &&
    (exam.person.ageYears ?? 50) < 50 &&
    vessels.length === 0
  );
}

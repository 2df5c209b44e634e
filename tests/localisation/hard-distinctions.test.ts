/**
 * Pictures that differ in one or two signs, with the anatomical path that has to stand in the reasons. The telling signs
 * are those of Brazis, Localization in Clinical Neurology, and of Aids to the Examination of the Peripheral Nervous System
 * (both recalled). Invented people.
 */
import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import {
  coordination,
  type ExamDraft,
  examBody,
  midline,
  plantars,
  power,
  reflexes,
  sensation,
  signs,
  tests,
  tone,
  wasting,
} from './case-writing.ts';

interface Distinction extends ExamDraft {
  readonly name: string;
  readonly site: string | readonly string[];
  readonly side?: string | null;
  /** Words of a path that a supporting reason has to name. */
  readonly path: RegExp;
}

const footDrop = { 'ankle-dorsiflexion': ['5', '2'], 'great-toe-extension': ['5', '2'] } as const;
const acute = { onset: { pace: 'hyperacute', durationDays: 1 } } as const;

const distinctions: readonly Distinction[] = [
  {
    name: 'foot drop that spares inversion and hip abduction: common fibular nerve',
    site: 'common-fibular-nerve',
    side: 'right',
    path: /common fibular nerve/,
    findings: {
      power: power({
        ...footDrop,
        'ankle-eversion': ['5', '3'],
        'ankle-inversion': '5',
        'hip-abduction': '5',
        'knee-flexion': '5',
      }),
      reflexes: reflexes({ ankle: '2' }),
      sensation: sensation('pinprick', { 'dorsum-of-foot': ['normal', 'reduced'], sole: 'normal' }),
    },
  },
  {
    name: 'foot drop with weak inversion and hip abduction: L5 root',
    site: 'nerve-root',
    side: 'right',
    path: /L5 root/,
    findings: {
      power: power({
        ...footDrop,
        'ankle-inversion': ['5', '3'],
        'hip-abduction': ['5', '4'],
        'ankle-plantarflexion': '5',
      }),
      reflexes: reflexes({ ankle: '2', knee: '2' }),
      sensation: sensation('pinprick', {
        'dorsum-of-foot': ['normal', 'reduced'],
        'inner-shin': 'normal',
        sole: 'normal',
      }),
    },
  },
  {
    name: 'foot drop with weak knee flexion and plantarflexion and a lost ankle jerk: sciatic nerve',
    site: 'sciatic-nerve',
    side: 'right',
    path: /sciatic nerve/,
    findings: {
      power: power({
        ...footDrop,
        'ankle-plantarflexion': ['5', '3'],
        'knee-flexion': ['5', '3'],
        'ankle-inversion': ['5', '3'],
        'hip-abduction': '5',
        'hip-extension': '5',
        'knee-extension': '5',
      }),
      reflexes: reflexes({ ankle: ['2', '0'], knee: '2' }),
      sensation: sensation('pinprick', {
        'dorsum-of-foot': ['normal', 'reduced'],
        sole: ['normal', 'reduced'],
        'inner-shin': 'normal',
      }),
    },
  },
  {
    name: 'foot drop with a brisk ankle jerk, an upgoing toe and a strong arm: cortex of the other side',
    site: ['cortex-anterior-cerebral', 'cortex-parasagittal'],
    path: /motor cortex, foot area/,
    ...acute,
    findings: {
      power: power({
        ...footDrop,
        'ankle-plantarflexion': ['5', '3'],
        'hip-flexion': ['5', '4'],
        'finger-extension': '5',
        'shoulder-abduction': '5',
      }),
      reflexes: reflexes({ ankle: ['2', '3'], knee: ['2', '3'] }),
      plantars: plantars('flexor', 'extensor'),
      higherFunction: [{ sign: 'apathy', present: true }],
      cranialNerves: signs({ 'lower-facial-weakness': false }),
    },
  },
  {
    name: 'whole half of the face: facial nerve',
    site: 'facial-nerve',
    side: 'left',
    path: /facial nerve/,
    findings: {
      cranialNerves: signs({
        'facial-weakness': [true, false],
        'eye-abduction-weakness': false,
        'hearing-loss': false,
      }),
    },
    otherwiseNormal: [{ section: 'power' }],
  },
  {
    name: 'lower face with arm and leg, forehead spared: fibres above the nucleus on the other side',
    site: ['internal-capsule', 'pons-ventral'],
    side: 'left',
    path: /left (genu|posterior limb) of the internal capsule|left corona radiata|in the base of the pons/,
    ...acute,
    findings: {
      cranialNerves: signs({ 'lower-facial-weakness': [false, true], 'homonymous-hemianopia': false }),
      power: power({
        'shoulder-abduction': ['5', '3'],
        'finger-extension': ['5', '3'],
        'hip-flexion': ['5', '3'],
        'ankle-dorsiflexion': ['5', '3'],
      }),
      plantars: plantars('flexor', 'extensor'),
      higherFunction: [
        { sign: 'expressive-aphasia', present: false },
        { sign: 'neglect', side: 'right', present: false },
      ],
      sensation: sensation('pinprick', { 'whole-arm': 'normal', 'whole-leg': 'normal' }),
    },
  },
  {
    name: 'third nerve with the pupil, other half of the body weak: ventral midbrain',
    site: 'midbrain-ventral',
    side: 'left',
    path: /left (oculomotor fascicle|cerebral peduncle)/,
    ...acute,
    findings: {
      cranialNerves: signs({
        'third-nerve-palsy': [true, false],
        'dilated-pupil': [true, false],
        'lower-facial-weakness': [false, true],
      }),
      power: power({ 'shoulder-abduction': ['5', '3'], 'finger-extension': ['5', '2'], 'hip-flexion': ['5', '3'] }),
      plantars: plantars('flexor', 'extensor'),
    },
  },
  {
    name: 'third nerve alone: the nerve',
    site: 'oculomotor-nerve',
    side: 'left',
    path: /left oculomotor nerve/,
    findings: {
      cranialNerves: signs({
        'third-nerve-palsy': [true, false],
        ptosis: [true, false],
        'dilated-pupil': false,
        'eye-abduction-weakness': false,
        'facial-numbness': false,
      }),
    },
    otherwiseNormal: [{ section: 'power' }, { section: 'coordination' }],
  },
  {
    name: 'pain lost in the face on one side and the body on the other, with Horner syndrome: lateral medulla',
    site: 'medulla-lateral',
    side: 'right',
    path: /right (spinal trigeminal tract|spinothalamic tract) in the medulla/,
    ...acute,
    findings: {
      cranialNerves: [
        ...signs({ 'horner-syndrome': [false, true], 'palatal-weakness': [false, true] }),
        ...midline({ dysphagia: true }),
      ],
      sensation: sensation('pinprick', {
        forehead: ['normal', 'reduced'],
        'whole-arm': ['reduced', 'normal'],
        'whole-leg': ['reduced', 'normal'],
      }),
      coordination: coordination({ 'finger-nose': ['normal', 'impaired'] }),
      power: power({ 'hip-flexion': '5', 'finger-extension': '5' }),
    },
  },
  {
    name: 'half a field with sharp sight: behind the chiasm, not the eye',
    site: ['cortex-occipital', 'cortex-posterior-cerebral', 'optic-tract'],
    side: 'right',
    path: /right (occipital cortex|optic tract)/,
    ...acute,
    findings: {
      cranialNerves: signs({
        'homonymous-hemianopia': [true, false],
        'reduced-visual-acuity': false,
        'relative-afferent-pupillary-defect': false,
      }),
    },
    otherwiseNormal: [{ section: 'power' }, { section: 'sensation' }],
  },
  {
    name: 'both temporal halves: chiasm',
    site: 'optic-chiasm',
    side: null,
    path: /optic chiasm/,
    findings: {
      cranialNerves: [...midline({ 'bitemporal-hemianopia': true }), ...signs({ 'homonymous-hemianopia': false })],
    },
    otherwiseNormal: [{ section: 'power' }],
  },
  {
    name: 'one eye with a lost light reflex: optic nerve',
    site: 'optic-nerve',
    side: 'left',
    path: /left optic nerve/,
    findings: {
      cranialNerves: signs({
        'reduced-visual-acuity': [true, false],
        'reduced-colour-vision': [true, false],
        'central-scotoma': [true, false],
        'relative-afferent-pupillary-defect': [true, false],
        'homonymous-hemianopia': false,
      }),
    },
  },
  {
    name: 'clumsy limbs of one side without weakness: cerebellar hemisphere of that side',
    site: 'cerebellar-hemisphere',
    side: 'left',
    path: /left cerebellar hemisphere/,
    findings: {
      coordination: coordination({
        'finger-nose': ['impaired', 'normal'],
        'heel-shin': ['impaired', 'normal'],
        'rapid-alternating-movements': ['impaired', 'normal'],
      }),
      power: power({ 'finger-extension': '5', 'hip-flexion': '5' }),
      plantars: plantars('flexor'),
      sensation: sensation('joint-position', { 'great-toe': 'normal', 'index-finger': 'normal' }),
    },
  },
  {
    name: 'gait and trunk without the limbs: vermis',
    site: 'cerebellar-vermis',
    side: null,
    path: /cerebellar vermis/,
    findings: {
      gait: midline({ ataxic: true, romberg: false }),
      coordination: [
        ...coordination({ 'finger-nose': 'normal', 'heel-shin': 'normal' }),
        { test: 'sitting-balance', result: 'impaired' },
      ],
      power: power({ 'hip-flexion': '5', 'ankle-dorsiflexion': '5' }),
      sensation: sensation('joint-position', { 'great-toe': 'normal' }),
    },
  },
  {
    name: 'slow, stiff and trembling on one side: basal ganglia',
    site: 'akinetic-rigid-syndrome',
    path: /substantia nigra/,
    onset: { pace: 'chronic', durationDays: 700 },
    findings: {
      involuntaryMovements: [
        { sign: 'resting-tremor', site: 'hand', side: 'right', present: true },
        { sign: 'bradykinesia', site: 'hand', side: 'right', present: true },
        { sign: 'bradykinesia', site: 'hand', side: 'left', present: false },
      ],
      tone: tone({ 'upper-limb': ['normal', 'rigid'] }),
      power: power({ 'finger-extension': '5' }),
      plantars: plantars('flexor'),
    },
  },
  {
    // Both bellies of the shoulder have the root; only the deltoid and its patch of skin have the nerve.
    name: 'wasted deltoid and a numb patch over it after a blow: axillary nerve before C5',
    site: 'axillary-nerve',
    side: 'left',
    path: /axillary nerve/,
    onset: { pace: 'acute', durationDays: 150 },
    history: { exposures: [{ key: 'trauma', present: true }] },
    findings: {
      inspection: wasting({ shoulder: [true, null] }),
      power: power({ 'shoulder-abduction': ['4-', '5'], 'shoulder-external-rotation': '5', 'elbow-flexion': '5' }),
      sensation: sensation('light-touch', { 'outer-upper-arm': ['reduced', 'normal'] }),
    },
  },
  {
    name: 'a weak pinch whose owner denies any numbness: deep branch of the ulnar nerve',
    site: 'deep-branch-of-ulnar-nerve',
    side: 'left',
    path: /deep branch of the ulnar nerve/,
    history: {
      symptoms: [
        { key: 'numbness', present: false },
        { key: 'paraesthesiae', present: false },
      ],
      exposures: [{ key: 'external-pressure', present: true }],
    },
    findings: {
      power: power({
        'thumb-adduction': ['3', null],
        'finger-adduction': ['3', null],
        'finger-abduction': ['3', null],
      }),
    },
  },
  {
    name: 'numb inner forearm and Tinel above the clavicle: lower trunk before C8',
    site: 'lower-trunk',
    side: 'right',
    path: /lower trunk/,
    onset: { pace: 'chronic', durationDays: 900 },
    findings: {
      power: power({ 'thumb-abduction': [null, '4'], 'finger-abduction': [null, '4'] }),
      sensation: sensation('light-touch', { 'inner-forearm': [null, 'reduced'], 'little-finger': [null, 'reduced'] }),
      specialTests: tests({ 'tinel-supraclavicular': [null, 'positive'] }),
    },
  },
  {
    name: 'a thigh that gives way after shingles of that leg: roots of that side',
    site: ['nerve-root', 'adjacent-nerve-roots'],
    side: 'left',
    path: /root/,
    onset: { pace: 'acute', durationDays: 14 },
    history: { conditions: [{ key: 'herpes-zoster', present: true }] },
    findings: {
      inspection: signs({ 'vesicular-rash': [true, null] }),
      power: power({ 'knee-extension': ['1', null] }),
      reflexes: reflexes({ knee: ['0', null] }),
    },
  },
  {
    name: 'a knee that does not straighten after an operation at the hip: femoral nerve before the plexus',
    site: ['femoral-nerve-pelvis', 'femoral-nerve-groin'],
    side: 'right',
    path: /femoral nerve/,
    onset: { pace: 'hyperacute', durationDays: 20 },
    history: {
      conditions: [{ key: 'hip-replacement', present: true }],
      exposures: [{ key: 'recent-surgery', present: true }],
    },
    findings: {
      power: power({ 'hip-flexion': [null, '3'], 'knee-extension': [null, '1'] }),
      sensation: sensation('light-touch', { 'territory:femoral-nerve': [null, 'reduced'] }),
    },
  },
  {
    name: 'knees that give way the day after a birth: femoral nerves before the cord',
    site: ['femoral-nerve-groin', 'femoral-nerve-pelvis'],
    side: 'both',
    path: /femoral nerve/,
    onset: { pace: 'acute', durationDays: 1 },
    history: { conditions: [{ key: 'pregnancy', present: true }] },
    findings: {
      power: power({ 'knee-extension': ['2', '3'] }),
      reflexes: reflexes({ knee: ['0', '1'], ankle: '2' }),
      sensation: sensation('pinprick', { 'front-of-thigh': 'reduced' }),
      gait: midline({ 'unable-to-stand': true }),
    },
  },
  {
    name: 'a shoulder blade that stands out and power called normal: long thoracic nerve',
    site: 'long-thoracic-nerve',
    side: 'left',
    path: /long thoracic nerve/,
    onset: { pace: 'acute', durationDays: 60 },
    history: { symptoms: [{ key: 'shoulder-pain', present: true }] },
    findings: { inspection: signs({ 'scapular-winging': [true, null] }) },
    otherwiseNormal: [{ section: 'power' }, { section: 'sensation' }],
  },
  // Ditunno 2004, Spinal shock revisited (from memory): jerks flat and limbs slack in the first days.
  {
    name: 'slack legs without jerks a day after back pain: the cord in shock before the cauda equina',
    site: 'spinal-cord-transverse',
    path: /a fresh lesion silences the cord below it/,
    onset: { pace: 'acute', durationDays: 1 },
    history: { symptoms: [{ key: 'back-pain', present: true }] },
    findings: {
      power: power({ 'hip-flexion': '0', 'knee-extension': '0', 'ankle-dorsiflexion': '0' }),
      reflexes: reflexes({ knee: '0', ankle: '0' }),
      tone: tone({ 'lower-limb': 'reduced' }),
    },
  },
  // Grade B of the International Standards (recalled): strength lost, some feeling kept.
  {
    name: 'limbs that do not move and feel less, not nothing: the whole cord before its front alone',
    site: 'spinal-cord-transverse',
    path: /through C4/,
    onset: { pace: 'acute', durationDays: 3 },
    history: { symptoms: [{ key: 'neck-pain', present: true }] },
    findings: {
      power: power({ 'elbow-flexion': '0', 'finger-abduction': '0', 'hip-flexion': '0', 'ankle-dorsiflexion': '0' }),
      sensation: ['light-touch', 'pinprick', 'vibration'].flatMap((modality) =>
        sensation(modality, { 'below:C4': 'reduced' }),
      ),
    },
  },
  // Nations 1999, distal myasthenia (from memory).
  {
    name: 'fingers of both hands that drop and tire: junction before the cord of the neck',
    site: 'postsynaptic-junction',
    path: /transmission to the muscle fails/,
    onset: { pace: 'subacute' },
    history: { symptoms: [{ key: 'fatigable-weakness', present: true }] },
    findings: {
      inspection: signs({ 'finger-drop': true }),
      power: power({ 'finger-extension': '3', 'wrist-extension': '4', 'elbow-extension': '4' }),
      reflexes: reflexes({ triceps: '2' }),
    },
  },
];

const localiser = createLocaliser();

describe('hard distinctions, for the right reason', () => {
  it.each(distinctions.map((one) => [one.name, one] as const))('%s', (_, one) => {
    const exam = bedsideExam(examBody(one));
    const [first] = localiser.localise(exam).localisations;
    expect([one.site].flat()).toContain(first?.site);
    if (one.side !== undefined) expect(first?.side).toBe(one.side);
    expect(first?.supporting.map(({ because }) => because).join('; ')).toMatch(one.path);
  });
});

describe('legs that are slack and have no jerks', () => {
  const slack = (onset: NonNullable<ExamDraft['onset']>): ExamDraft => ({
    onset,
    findings: {
      power: power({ 'hip-flexion': '1', 'knee-extension': '1', 'ankle-dorsiflexion': '1' }),
      reflexes: reflexes({ knee: '0', ankle: '0' }),
      sensation: sensation('pinprick', { 'inner-shin': 'absent' }),
    },
  });
  const cord = (onset: NonNullable<ExamDraft['onset']>): number =>
    localiser
      .localise(bedsideExam(examBody(slack(onset))))
      .localisations.filter(({ site }) => site.startsWith('spinal-cord'))
      .reduce((sum, { probability }) => sum + probability, 0);

  // Shock passes within weeks. Ditunno 2004 (from memory).
  it('speak for the cord when it happened yesterday, and little after half a year', () => {
    expect(cord({ pace: 'hyperacute', durationDays: 1 })).toBeGreaterThan(
      2 * cord({ pace: 'chronic', durationDays: 180 }),
    );
  });
});

describe('a report of one leg alone', () => {
  const oneLeg: ExamDraft = {
    onset: { pace: 'acute', durationDays: 6 },
    history: { symptoms: [{ key: 'fever', present: true }] },
    findings: {
      power: power({ 'hip-flexion': ['3', null], 'knee-extension': ['2', null], 'ankle-dorsiflexion': ['4', null] }),
      reflexes: reflexes({ knee: ['0', null] }),
    },
    otherwiseNormal: [{ section: 'sensation' }],
  };
  const chanceOf = (draft: ExamDraft, key: string): number =>
    localiser.localise(bedsideExam(examBody(draft))).localisations.find(({ site }) => site === key)?.probability ?? 0;

  // Poliomyelitis and its like begin with fever and stay uneven; with fever polyneuritis is doubtful. Adams and Victor (recalled).
  it('speaks for the anterior horn before a polyneuritis of both sides', () => {
    expect(chanceOf(oneLeg, 'lower-motor-neuron-system')).toBeGreaterThan(
      chanceOf(oneLeg, 'demyelinating-polyradiculoneuropathy'),
    );
  });

  // Who tells of a lost jerk on one side has tapped the other.
  it('takes the jerk of the other leg for kept', () => {
    const told = {
      ...oneLeg,
      findings: { ...oneLeg.findings, reflexes: reflexes({ knee: ['0', '0'] }) },
    };
    expect(chanceOf(oneLeg, 'demyelinating-polyradiculoneuropathy')).toBeLessThan(
      chanceOf(told, 'demyelinating-polyradiculoneuropathy'),
    );
  });
});

// Neck pain and a face that is spared are the clues to the neck's cord in a sudden weak half: Zhou 2022 (read).
describe('a half of the body that grows weak at once', () => {
  const weakHalf = (...symptoms: readonly string[]): ExamDraft => ({
    onset: { pace: 'hyperacute', durationDays: 1 },
    history: { symptoms: symptoms.map((key) => ({ key, present: true })) },
    findings: {
      power: power({
        'shoulder-abduction': [null, '2'],
        'elbow-extension': [null, '2'],
        'finger-abduction': [null, '2'],
        'hip-flexion': [null, '2'],
        'ankle-dorsiflexion': [null, '2'],
      }),
    },
    otherwiseNormal: [{ section: 'cranialNerves' }, { section: 'sensation' }],
  });
  const halfCord = (draft: ExamDraft): number =>
    localiser
      .localise(bedsideExam(examBody(draft)))
      .localisations.find(({ site, side }) => site === 'spinal-cord-hemisection' && side === 'right')?.probability ?? 0;

  it('makes the cord of the neck a rival of the brain when the neck hurts', () => {
    const hurting = halfCord(weakHalf('neck-pain'));
    expect(hurting).toBeGreaterThan(2 * halfCord(weakHalf()));
    expect(hurting).toBeGreaterThan(0.1);
  });
});

const chancesOf = (draft: ExamDraft): ReadonlyMap<string, number> =>
  new Map(
    localiser
      .localise(bedsideExam(examBody(draft)))
      .localisations.map(({ site, probability }): [string, number] => [site, probability]),
  );

describe('how long it has lasted', () => {
  const fallingLids = (years: number): ExamDraft => ({
    age: 30,
    onset: { pace: 'chronic', durationDays: years * 365 + 10 },
    findings: { cranialNerves: signs({ ptosis: true, ophthalmoplegia: true }) },
  });

  // Lids and eyes that fail evenly over years point to muscle, not to the junction: Amato and Russell (recalled).
  it('speaks for muscle where lids and eyes have failed for years', () => {
    const [early, late] = [1, 6].map((years) => chancesOf(fallingLids(years)).get('oculopharyngeal-myopathy') ?? 0);
    expect(late).toBeGreaterThan(1.5 * (early ?? 0));
  });

  // A fifth live longer than five years with amyotrophic lateral sclerosis (from memory).
  it('speaks against a disease of upper and lower motor neurons after many years', () => {
    const [early, late] = [2, 9].map(
      (years) =>
        chancesOf({
          age: 70,
          onset: { pace: 'chronic', durationDays: years * 365 },
          findings: { power: power({ 'finger-flexion': ['2', '4'], 'ankle-dorsiflexion': ['4', '4'] }) },
        }).get('motor-neuron-system') ?? 0,
    );
    expect(late).toBeLessThan(0.7 * (early ?? 0));
  });
});

describe('pressure on the whole cord within days', () => {
  // The corticospinal fibres suffer before the sensory ones (from memory).
  it('may leave feeling alone, and is not taken for a slow disease of the lateral columns', () => {
    const chances = chancesOf({
      onset: { pace: 'acute', durationDays: 2 },
      history: { symptoms: [{ key: 'back-pain', present: true }] },
      findings: {
        power: power({ 'hip-flexion': '4', 'knee-flexion': '4', 'ankle-dorsiflexion': '4' }),
        reflexes: reflexes({ knee: '4', ankle: '4' }),
        plantars: plantars('extensor'),
      },
      otherwiseNormal: [{ section: 'sensation' }, { section: 'cranialNerves' }],
    });
    expect(chances.get('spinal-cord-transverse') ?? 0).toBeGreaterThan(chances.get('spinal-cord-lateral') ?? 0);
  });
});

describe('fingers that wander with the eyes shut', () => {
  // One nerve leaves some fingers their position sense; pseudoathetosis comes from columns, ganglia and cortex: DeJong (recalled).
  it('are not of one nerve', () => {
    const chances = chancesOf({
      onset: { pace: 'subacute', durationDays: 30 },
      findings: {
        involuntaryMovements: signs({ pseudoathetosis: [true, false] }),
        sensation: sensation('joint-position', { fingertips: ['reduced', null] }),
      },
    });
    expect(chances.get('median-nerve-wrist') ?? 0).toBeLessThan(chances.get('cortex-parietal') ?? 0);
  });
});

describe('brisk jerks in arms and legs with an ataxia of the family', () => {
  // Pyramidal signs are common in the dominant ataxias: Klockgether and others, Nat Rev Dis Primers 2019 (from memory).
  it('belong to the degeneration of the cerebellum', () => {
    const chances = chancesOf({
      age: 50,
      onset: { pace: 'chronic', durationDays: 2000 },
      history: { family: [{ key: 'ataxia', present: true }] },
      findings: {
        reflexes: reflexes({ biceps: '3', knee: '3' }),
        coordination: coordination({ 'finger-nose': 'impaired', 'heel-shin': 'impaired' }),
        gait: midline({ ataxic: true }),
      },
    });
    expect([...chances.keys()][0]).toBe('cerebellar-degeneration');
  });
});

describe('eye signs that are taken for those of another place', () => {
  const leading = (draft: ExamDraft): string | undefined => [...chancesOf(draft).keys()][0];

  // Eyes that see no light at all have wide pupils: Brazis (recalled).
  it('finds the optic nerves where both eyes are blind and both pupils wide', () => {
    const cranialNerves = signs({ 'reduced-visual-acuity': true, 'dilated-pupil': true, 'unreactive-pupil': true });
    expect(
      leading({
        age: 49,
        onset: { pace: 'acute', durationDays: 1 },
        history: { symptoms: [{ key: 'visual-loss', present: true }] },
        findings: { cranialNerves },
        otherwiseNormal: [{ section: 'higherFunction' }, { section: 'power' }],
      }),
    ).toBe('optic-nerve');
  });

  // A weak medial rectus mimics an internuclear palsy: Glaser 1966 (recalled).
  it('finds the junction where eyes that do not adduct go with drooping lids and choking', () => {
    const eyes = signs({ ptosis: true, 'internuclear-ophthalmoplegia': true });
    expect(
      leading({
        age: 31,
        onset: { pace: 'acute', durationDays: 2 },
        history: { symptoms: ['diplopia', 'dysphagia', 'drooping-eyelids'].map((key) => ({ key, present: true })) },
        findings: { cranialNerves: [...eyes, ...midline({ diplopia: true, dysphagia: true })] },
      }),
    ).toMatch(/synaptic-junction$/);
  });

  // The abducens nucleus turns the eyes in gaze and in the vestibulo-ocular reflex alike (recalled).
  it('finds the pontine tegmentum where gaze to both sides and both head impulses fail', () => {
    const eyes = signs({ 'gaze-palsy': true, 'abnormal-head-impulse': true });
    expect(leading({ age: 60, onset: { pace: 'hyperacute' }, findings: { cranialNerves: eyes } })).toBe(
      'pons-tegmentum',
    );
  });

  // Both upper banks of the calcarine fissure see the lower half of space with either eye (Brazis, recalled).
  it('finds both occipital lobes where the lower half of the world goes in both eyes at once', () => {
    expect(
      leading({
        age: 63,
        onset: { pace: 'hyperacute' },
        history: { symptoms: [{ key: 'visual-loss', present: true }] },
        findings: { cranialNerves: signs({ 'altitudinal-field-defect': true, 'optic-disc-swelling': false }) },
      }),
    ).toBe('cortex-occipital');
  });

  it('finds the midbrain where both lids fall, gaze fails and one half of the body is weak', () => {
    const eyes = signs({ ptosis: true, 'eye-elevation-weakness': true, 'eye-depression-weakness': true });
    expect(
      leading({
        age: 61,
        onset: { pace: 'hyperacute' },
        findings: {
          cranialNerves: [...eyes, ...midline({ dysarthria: true })],
          power: power({ 'elbow-flexion': ['3', null], 'hip-flexion': ['3', null] }),
        },
      }),
    ).toMatch(/^midbrain/);
  });

  it('names no akinetic-rigid disorder where nothing is slow or stiff', () => {
    const gaze = midline({ 'vertical-gaze-palsy': true, 'impaired-convergence': true, 'skew-deviation': true });
    expect(leading({ age: 60, onset: { pace: 'hyperacute' }, findings: { cranialNerves: gaze } })).toMatch(
      /^(midbrain|thalamus)/,
    );
  });

  it('finds the whole cerebellum where a child sways and slurs a week after an infection', () => {
    expect(
      leading({
        age: 4,
        onset: { pace: 'acute', durationDays: 2 },
        history: { symptoms: [{ key: 'preceding-infection', present: true }] },
        findings: {
          cranialNerves: midline({ 'cerebellar-dysarthria': true }),
          coordination: coordination({ 'finger-nose': 'impaired', 'heel-shin': 'impaired' }),
          gait: midline({ ataxic: true }),
        },
      }),
    ).toMatch(/^cerebell/);
  });

  it('finds the inner face of the hemisphere where the leg is far weaker than the arm', () => {
    expect(
      leading({
        age: 66,
        onset: { pace: 'hyperacute' },
        findings: {
          power: power({
            'shoulder-abduction': [null, '4'],
            'hip-flexion': [null, '1'],
            'ankle-dorsiflexion': [null, '1'],
          }),
          higherFunction: [{ sign: 'grasp-reflex', side: 'right', present: true }],
        },
      }),
    ).toBe('cortex-anterior-cerebral');
  });
});

describe('a bulge of one side of the belly', () => {
  // The flank is slack where its roots or intercostal nerves fail: LaBan 2007 (from memory).
  it('is of a root or a nerve round the trunk of that side', () => {
    const chances = chancesOf({
      age: 60,
      onset: { pace: 'acute', durationDays: 3 },
      history: { symptoms: [{ key: 'flank-pain', present: true }] },
      findings: { inspection: signs({ 'abdominal-bulge': [true, null] }) },
    });
    expect([...chances.keys()][0]).toMatch(/^(nerve-root|intercostal-nerves)$/);
  });
});

describe('arm and leg of one half that fail with sudden pain', () => {
  const weak = (symptoms: readonly string[]) =>
    chancesOf({
      age: 60,
      onset: { pace: 'hyperacute', durationDays: 1 },
      history: { symptoms: symptoms.map((key) => ({ key, present: true })) },
      findings: {
        power: power({
          'shoulder-abduction': ['5', '3'],
          'finger-extension': ['5', '3'],
          'hip-flexion': ['5', '3'],
          'ankle-dorsiflexion': ['5', '3'],
        }),
      },
    });

  // Blood outside the dura of the neck is taken for a stroke: Groen 2004 (from memory).
  it('is of half of the cord where the neck hurts, and of the brain where nothing does', () => {
    expect([...weak(['neck-pain', 'weakness']).keys()][0]).toBe('spinal-cord-hemisection');
    expect([...weak(['weakness']).keys()][0]).not.toBe('spinal-cord-hemisection');
  });
});

describe('hands and feet that have lost all sense of where they are', () => {
  // Cells of the ganglia are lost whatever the length of their axons: Camdessanche 2009 (recalled).
  it('speak for the ganglia before the dorsal columns', () => {
    const chances = chancesOf({
      age: 63,
      onset: { pace: 'subacute', durationDays: 40 },
      findings: {
        sensation: sensation('joint-position', { fingertips: 'absent', toes: 'absent' }),
        reflexes: reflexes({ biceps: '0', knee: '0', ankle: '0' }),
      },
    });
    expect([...chances.keys()][0]).toBe('sensory-ganglionopathy');
  });
});

describe('one hand that has lost its position sense, the leg spared', () => {
  // The useless hand: Oppenheim (from memory).
  it('may be of the outer half of one dorsal column', () => {
    const chances = chancesOf({
      age: 30,
      onset: { pace: 'subacute', durationDays: 10 },
      history: { symptoms: [{ key: 'electric-shock-on-neck-flexion', present: true }] },
      findings: {
        involuntaryMovements: signs({ pseudoathetosis: [true, false] }),
        sensation: [
          ...sensation('joint-position', { fingertips: ['absent', 'normal'], toes: 'normal' }),
          ...sensation('vibration', { 'index-finger': ['absent', 'normal'], 'great-toe': 'normal' }),
          ...sensation('pinprick', { 'index-finger': 'normal' }),
        ],
      },
      otherwiseNormal: [{ section: 'power' }],
    });
    expect(chances.get('spinal-cord-hemisection') ?? 0).toBeGreaterThan(0.05);
  });
});

describe('an infant that grows limp within days, with a head that lags', () => {
  // A face that does not move and lids that droop pass for drowsiness in botulism: Arnon (from memory).
  it('may have blocked junctions, drowsy or not', () => {
    const limp = (age: number) =>
      chancesOf({
        age,
        onset: { pace: 'acute', durationDays: 1 },
        findings: {
          higherFunction: midline({ drowsiness: true }),
          tone: tone({ 'upper-limb': 'reduced', 'lower-limb': 'reduced' }),
          power: [{ movement: 'neck-flexion', grade: '2' }],
        },
      }).get('presynaptic-junction') ?? 0;
    expect(limp(0.5)).toBeGreaterThan(0.08);
    expect(limp(40)).toBeLessThan(limp(0.5) / 3);
  });
});

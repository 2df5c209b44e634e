import { describe, expect, it } from 'vitest';
import { type MovementKey, movements } from '../../src/anatomy/movements.ts';
import { placeKeys, placeTable } from '../../src/anatomy/places.ts';
import type { Modality } from '../../src/anatomy/probe.ts';
import { type ReflexKey, reflexes } from '../../src/anatomy/reflexes.ts';
import { type Segment, segments } from '../../src/anatomy/segments.ts';
import { skinPlace } from '../../src/anatomy/skin-places.ts';
import type { BodySide, Side } from '../../src/kernel/side.ts';
import { motorDeficit, motorItem } from '../../src/localisation/forward/motor.ts';
import { arcState, reflexItem } from '../../src/localisation/forward/reflex-arc.ts';
import { sensoryDeficit, sensoryItem } from '../../src/localisation/forward/sensory.ts';
import { cordHypotheses } from '../../src/localisation/hypotheses/cord.ts';
import { peripheralHypotheses } from '../../src/localisation/hypotheses/peripheral.ts';
import type { Hypothesis } from '../../src/localisation/hypothesis.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import {
  type ExamDraft,
  examBody,
  midline,
  plantars,
  power,
  reflexes as reflexFindings,
  sensation,
} from './case-writing.ts';

const peripheral = peripheralHypotheses();
const cord = cordHypotheses();
const all = [...peripheral, ...cord];

function find(key: string, side: Side | 'both', variant: string, level: Segment | null = null): Hypothesis {
  const found = all.find(
    ({ site, variant: own }) => site.key === key && site.side === side && site.level === level && own === variant,
  );
  if (found === undefined) throw new RangeError(`no hypothesis ${key} ${side} ${level} ${variant}`);
  return found;
}

const weakness = (one: Hypothesis, key: MovementKey, side: BodySide) =>
  motorDeficit(one, motorItem(movements[key], side));
const arc = (one: Hypothesis, key: ReflexKey, side: Side) => arcState(one, reflexItem(reflexes[key], side));
function numbness(one: Hypothesis, modality: Modality, dermatome: string, side: BodySide): number {
  const place = skinPlace('dermatome', dermatome);
  if (place === undefined) throw new RangeError(dermatome);
  return sensoryDeficit(one, sensoryItem(place, modality, side)).total;
}

describe('the hypotheses outside the brain', () => {
  it('are no more than 3,050', () => {
    expect(all.length).toBeLessThanOrEqual(3050);
  });

  it('spare the hamstrings where the sciatic nerve is hit in the thigh', () => {
    const thigh = find('sciatic-nerve', 'right', 'in-the-thigh-severe');
    for (const movement of ['ankle-dorsiflexion', 'ankle-plantarflexion', 'great-toe-extension'] as const)
      expect(weakness(thigh, movement, 'right').total).toBeGreaterThan(0.8);
    expect(weakness(thigh, 'knee-flexion', 'right').total).toBeLessThan(0.25);
  });

  it('hold every place that is a site of lesions, on each side', () => {
    for (const key of placeKeys.filter((place) => placeTable[place].lesionSite)) {
      // The divisions of the trigeminal nerve stand with the cranial nerves.
      if (['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'].includes(key)) continue;
      for (const side of ['left', 'right'] as const) {
        expect(
          peripheral.some(({ site }) => site.key === key && site.side === side),
          `${side} ${key}`,
        ).toBe(true);
      }
    }
  });

  it('hold every root that has skin or a movement of its own, from C2 to S4', () => {
    for (const level of segments.slice(segments.indexOf('C2'), segments.indexOf('S4') + 1)) {
      for (const side of ['left', 'right'] as const) {
        expect(
          peripheral.some(({ site }) => site.key === 'nerve-root' && site.level === level && site.side === side),
        ).toBe(true);
      }
    }
  });

  it.each(['transverse', 'hemisection', 'central', 'anterior', 'posterior'])(
    'hold the %s cord at every segment from C1 to S1',
    (part) => {
      const levels = new Set(
        cord.filter(({ site }) => site.key === `spinal-cord-${part}`).map(({ site }) => site.level),
      );
      for (const level of segments.slice(0, segments.indexOf('S1') + 1)) expect(levels.has(level), level).toBe(true);
    },
  );

  it('hold the conus from L2 down to S4', () => {
    const tops = cord.filter(({ site }) => site.key === 'conus-medullaris').map(({ variant }) => variant.split('-')[0]);
    expect(new Set(tops)).toEqual(new Set(['L2', 'L4', 'L5', 'S1', 'S2', 'S3', 'S4']));
  });

  it('are met as often on the left as on the right', () => {
    const share = (side: BodySide) =>
      all.reduce((sum, { site, frequency }) => (site.side === side ? sum + frequency : sum), 0);
    expect(share('left')).toBeCloseTo(share('right'), 9);
  });
});

// The crossed tract lies in the front of each half: Brazis, Localization in Clinical Neurology (recalled).
describe('the crossed tract of one half alone', () => {
  it('takes pain of the other side and leaves touch, position and strength', () => {
    const front = find('spinal-cord-hemisection', 'left', '0.9-pain-alone', 'C5');
    expect(numbness(front, 'pinprick', 'L4', 'right')).toBeGreaterThan(0.8);
    expect(numbness(front, 'pinprick', 'L4', 'left')).toBeCloseTo(0, 10);
    expect(numbness(front, 'joint-position', 'L4', 'right')).toBeCloseTo(0, 10);
    expect(weakness(front, 'hip-flexion', 'left').total).toBeCloseTo(0, 10);
  });
});

// Source: Preston and Shapiro, 4th ed: ulnar neuropathy, sciatic neuropathy, neurogenic thoracic outlet syndrome.
describe('a lesion of some fascicles', () => {
  it('of the ulnar nerve at the elbow may leave the forearm flexors strong', () => {
    const elbow = find('ulnar-nerve-elbow', 'left', 'hand-fibres-severe');
    expect(weakness(elbow, 'index-finger-abduction', 'left').lower).toBeGreaterThan(0.8);
    expect(weakness(elbow, 'wrist-flexion-ulnar', 'left').lower).toBeLessThan(0.15);
    expect(weakness(elbow, 'thumb-abduction', 'left').lower).toBeCloseTo(0, 10);
  });

  it('of the lower trunk weakens the thumb more than the finger flexors when T1 is worse', () => {
    const trunk = find('lower-trunk', 'right', 't1-worse-severe');
    const thumb = weakness(trunk, 'thumb-abduction', 'right').lower;
    expect(thumb).toBeGreaterThan(weakness(trunk, 'finger-abduction', 'right').lower);
    expect(thumb).toBeGreaterThan(weakness(trunk, 'finger-flexion', 'right').lower + 0.2);
    expect(numbness(trunk, 'pinprick', 'T1', 'right')).toBeGreaterThan(0.6);
  });

  it('of the sciatic nerve drops the foot and reaches the short head of biceps', () => {
    const sciatic = find('sciatic-nerve', 'left', 'fibular-severe');
    expect(weakness(sciatic, 'ankle-dorsiflexion', 'left').lower).toBeGreaterThan(0.85);
    expect(weakness(sciatic, 'knee-flexion-lateral', 'left').lower).toBeGreaterThan(0.4);
    expect(weakness(sciatic, 'hip-abduction', 'left').lower).toBeCloseTo(0, 10);
    expect(arc(sciatic, 'ankle', 'left').arc).toBeLessThan(0.6);
  });
});

describe('a branch or a neighbour at the place of a nerve', () => {
  // Source: Preston and Shapiro, 4th ed, posterior interosseous and femoral neuropathy (recalled).
  it('drops the fingers without the thumb when the recurrent branch of the posterior interosseous nerve is the worse', () => {
    const branch = find('posterior-interosseous-nerve', 'right', 'recurrent-branch-worse');
    expect(weakness(branch, 'little-finger-extension', 'right').lower).toBeGreaterThan(0.8);
    expect(weakness(branch, 'thumb-extension', 'right').lower).toBeLessThan(0.5);
    expect(weakness(branch, 'wrist-extension-radial', 'right').lower).toBeLessThan(0.1);
  });

  it('takes hip flexion with the femoral nerve when the psoas bleeds, and leaves the adductors', () => {
    const psoas = find('femoral-nerve-pelvis', 'left', 'with-psoas');
    expect(weakness(psoas, 'hip-flexion', 'left').lower).toBeGreaterThan(0.7);
    expect(weakness(psoas, 'hip-adduction', 'left').lower).toBeLessThan(0.1);
  });

  // Source: Aids to the Examination of the Peripheral Nervous System, 5th ed, branches of the brachial plexus (recalled).
  it('lets the shoulder blade stand out when the plexus is torn above its trunks', () => {
    const torn = find('brachial-plexus', 'left', 'above-the-trunks-severe');
    for (const movement of [
      'elbow-flexion',
      'shoulder-abduction',
      'scapular-protraction',
      'scapular-retraction',
    ] as const)
      expect(weakness(torn, movement, 'left').lower, movement).toBeGreaterThan(0.7);
    expect(weakness(torn, 'finger-abduction', 'left').lower).toBeCloseTo(0, 10);
  });
});

// Source: Pham 1995, femoral neuropathy on both sides after childbirth (read).
describe('the same nerve on both sides', () => {
  it('takes both knee jerks with both femoral nerves and leaves the ankle jerks', () => {
    const both = find('femoral-nerve-groin', 'both', 'severe-even');
    for (const side of ['left', 'right'] as const) {
      expect(weakness(both, 'knee-extension', side).lower).toBeGreaterThan(0.9);
      expect(arc(both, 'knee', side).arc).toBeLessThan(0.2);
      expect(arc(both, 'ankle', side).arc).toBe(1);
    }
  });

  it('may be worse on one of them', () => {
    const uneven = find('common-fibular-nerve', 'both', 'severe-left-worse');
    expect(weakness(uneven, 'ankle-dorsiflexion', 'right').lower).toBeLessThan(
      weakness(uneven, 'ankle-dorsiflexion', 'left').lower,
    );
  });

  it('numbs the outer thighs alone where the nerve holds no motor fibres', () => {
    const thighs = find('lateral-femoral-cutaneous-nerve', 'both', 'severe-even');
    expect(weakness(thighs, 'hip-flexion', 'left').lower).toBeCloseTo(0, 10);
  });
});

// Source: Blumenfeld, 3rd ed, spinal cord syndromes; DeJong, 8th ed, conus and cauda equina (recalled).
describe('the cross-section of the cord', () => {
  it('loses both lateral columns without any sense but the vibration of the feet', () => {
    const columns = find('spinal-cord-lateral', 'both', '0.65-0-tracts');
    for (const side of ['left', 'right'] as const) {
      expect(weakness(columns, 'hip-flexion', side).upper).toBeGreaterThan(0.3);
      expect(weakness(columns, 'finger-abduction', side).total).toBeCloseTo(0, 10);
      expect(arc(columns, 'knee', side).arc).toBeCloseTo(1, 10);
      expect(arc(columns, 'knee', side).released).toBeGreaterThan(0.6);
      for (const dermatome of ['C6', 'T10', 'L5', 'S4-5']) {
        expect(numbness(columns, 'pinprick', dermatome, side)).toBeCloseTo(0, 10);
        expect(numbness(columns, 'vibration', dermatome, side)).toBeCloseTo(0, 10);
      }
    }
  });

  it('loses pain in a cape and the arcs of the arms to a long cavity, and neither touch nor legs', () => {
    const cavity = find('spinal-cord-central', 'both', 'cavity-0.9', 'C5');
    expect(numbness(cavity, 'pinprick', 'C7', 'left')).toBeGreaterThan(0.8);
    expect(numbness(cavity, 'light-touch', 'C7', 'left')).toBeLessThan(0.55);
    expect(numbness(cavity, 'vibration', 'C7', 'left')).toBeCloseTo(0, 10);
    expect(numbness(cavity, 'pinprick', 'L4', 'left')).toBeCloseTo(0, 10);
    expect(arc(cavity, 'biceps', 'left').arc).toBeLessThan(0.4);
    expect(arc(cavity, 'knee', 'left').arc).toBe(1);
  });

  it('takes half of a side and spares one quarter of it in the partial forms', () => {
    const front = find('spinal-cord-hemisection', 'right', '0.85-anterolateral', 'T6');
    expect(weakness(front, 'ankle-dorsiflexion', 'right').upper).toBeGreaterThan(0.8);
    expect(numbness(front, 'pinprick', 'L4', 'left')).toBeGreaterThan(0.8);
    expect(numbness(front, 'vibration', 'L4', 'right')).toBeCloseTo(0, 10);
  });

  // Half a body weak without any loss of feeling: cervical haematoma that is taken for a stroke (case report PMC4831268, read).
  it('may weaken one side and leave all feeling', () => {
    const tract = find('spinal-cord-hemisection', 'left', '0.95-lateral', 'C4');
    expect(weakness(tract, 'ankle-dorsiflexion', 'left').upper).toBeGreaterThan(0.8);
    expect(weakness(tract, 'ankle-dorsiflexion', 'right').total).toBeCloseTo(0, 10);
    expect(numbness(tract, 'pinprick', 'L4', 'right')).toBeCloseTo(0, 10);
    expect(numbness(tract, 'vibration', 'L4', 'left')).toBeCloseTo(0, 10);
  });

  it('paralyses extensors with flexors in the last stage of the lateral columns', () => {
    const late = find('spinal-cord-lateral', 'both', '0.97-0-tracts');
    expect(weakness(late, 'knee-extension', 'left').upper).toBeGreaterThan(0.7);
    expect(numbness(late, 'pinprick', 'L4', 'left')).toBeCloseTo(0, 10);
  });

  it('ends in a conus whose lowest segments serve saddle and sphincters and no leg', () => {
    const conus = find('conus-medullaris', 'both', 'S3-all-modalities-0.9');
    for (const side of ['left', 'right'] as const) {
      expect(numbness(conus, 'pinprick', 'S4-5', side)).toBeGreaterThan(0.7);
      expect(numbness(conus, 'pinprick', 'L5', side)).toBeLessThan(0.01);
      expect(weakness(conus, 'ankle-plantarflexion', side).total).toBeLessThan(0.01);
      expect(arc(conus, 'ankle', side).arc).toBeCloseTo(1, 10);
    }
    expect(arc(conus, 'bulbocavernosus', 'midline').arc).toBeLessThan(0.5);
  });

  it('leaves touch in the saddle when the conus fails in its grey matter', () => {
    const grey = find('conus-medullaris', 'both', 'S2-dissociated-0.9');
    expect(numbness(grey, 'pinprick', 'S3', 'left')).toBeGreaterThan(0.7);
    expect(numbness(grey, 'vibration', 'S3', 'left')).toBeLessThan(0.5);
  });
});

const localiser = createLocaliser();

interface Distinction {
  readonly name: string;
  readonly source: string;
  readonly draft: ExamDraft;
  readonly site: string;
  readonly side: string;
  readonly level?: string;
  /** A finding that decides it, and what its path must be said to be. */
  readonly finding: RegExp;
  readonly path: RegExp;
}

const mrc = 'Aids to the Examination of the Peripheral Nervous System, 5th ed';
const preston = 'Preston and Shapiro, 4th ed';
const blumenfeld = 'Blumenfeld, 3rd ed';
const left = (grade: string) => [grade, null] as const;
const right = (grade: string) => [null, grade] as const;

const distinctions: readonly Distinction[] = [
  {
    name: 'a foot drop with weak inversion comes from the L5 root',
    source: mrc,
    draft: {
      findings: {
        power: power({
          'great-toe-extension': left('3'),
          'ankle-dorsiflexion': left('4'),
          'ankle-inversion': left('4'),
          'hip-abduction': left('4'),
          'ankle-plantarflexion': left('5'),
        }),
        reflexes: reflexFindings({ ankle: '2', knee: '2' }),
      },
    },
    site: 'nerve-root',
    side: 'left',
    level: 'L5',
    finding: /ankle inversion/,
    path: /tibialis posterior run through the L5 root/,
  },
  {
    name: 'a foot drop with strong inversion comes from the fibular neck',
    source: mrc,
    draft: {
      findings: {
        power: power({
          'ankle-dorsiflexion': right('2'),
          'ankle-eversion': right('3'),
          'ankle-inversion': right('5'),
          'ankle-plantarflexion': right('5'),
        }),
      },
    },
    site: 'common-fibular-nerve',
    side: 'right',
    finding: /ankle eversion/,
    path: /through the common fibular nerve at the fibular neck/,
  },
  {
    name: 'a wrist drop with strong triceps comes from the spiral groove',
    source: preston,
    draft: {
      findings: {
        power: power({
          'wrist-extension': right('1'),
          'finger-extension': right('1'),
          'elbow-flexion-midprone': right('3'),
          'elbow-extension': right('5'),
        }),
        reflexes: reflexFindings({ triceps: '2', brachioradialis: ['2', '0'] }),
      },
    },
    site: 'radial-nerve-spiral-groove',
    side: 'right',
    finding: /brachioradialis reflex absent/,
    path: /runs through the radial nerve at the spiral groove/,
  },
  {
    name: 'weak triceps, wrist flexion and pronation come from the C7 root',
    source: preston,
    draft: {
      findings: {
        power: power({
          'elbow-extension': left('4-'),
          'wrist-flexion-radial': left('4'),
          'finger-extension': left('4'),
          'forearm-pronation': left('4'),
          'elbow-flexion-midprone': left('5'),
          'shoulder-abduction': left('5'),
        }),
        reflexes: reflexFindings({ triceps: ['0', '2'], biceps: '2', brachioradialis: '2' }),
      },
    },
    site: 'nerve-root',
    side: 'left',
    level: 'C7',
    finding: /forearm pronation/,
    path: /run through the C7 root/,
  },
  {
    name: 'half of the cord weakens its own side and numbs the other',
    source: blumenfeld,
    draft: {
      findings: {
        power: power({ 'hip-flexion': left('3'), 'ankle-dorsiflexion': left('3') }),
        reflexes: reflexFindings({ knee: left('4') }),
        plantars: plantars('extensor', null),
        sensation: [
          ...sensation('pinprick', { 'dorsum-of-foot': right('reduced'), 'front-of-thigh': right('reduced') }),
          ...sensation('joint-position', { 'great-toe': left('reduced') }),
        ],
      },
    },
    site: 'spinal-cord-hemisection',
    side: 'left',
    finding: /pinprick reduced at the top of the right foot/,
    path: /cross the cord on entry and go up its left side/,
  },
  {
    name: 'symmetrical saddle loss with strong legs comes from the conus',
    source: 'DeJong, 8th ed',
    draft: {
      onset: { pace: 'acute' },
      findings: {
        sphincters: midline({ 'urinary-retention': true, 'reduced-anal-tone': true }),
        sensation: sensation('pinprick', {
          saddle: 'absent',
          'perianal-skin': 'absent',
          'outer-border-of-foot': 'normal',
        }),
        power: power({ 'ankle-dorsiflexion': '5', 'ankle-plantarflexion': '5' }),
        reflexes: [...reflexFindings({ ankle: '2', knee: '2' }), { reflex: 'anal', grade: '0' }],
      },
    },
    site: 'conus-medullaris',
    side: 'both',
    finding: /anal reflex absent/,
    path: /from the anterior horn at S4|through the S4 root/,
  },
];

describe('the hard distinctions', () => {
  it.each(distinctions.map((one) => [one.name, one] as const))('%s, and its path is said', (_, one) => {
    const [leading] = localiser.localise(bedsideExam(examBody(one.draft))).localisations;
    expect([leading?.site, leading?.side]).toEqual([one.site, one.side]);
    if (one.level !== undefined) expect(leading?.level).toBe(one.level);
    const evidence = leading?.supporting.find(({ text }) => one.finding.test(text));
    expect(evidence?.because, one.source).toMatch(one.path);
  });
});

describe('the level of a cord lesion', () => {
  // A level of sensation and the arcs of its segment point to one range. Source: Brazis, 7th ed, spinal cord (recalled).
  it.each<[string, ExamDraft, readonly Segment[]]>([
    [
      'T10 by the skin',
      {
        findings: {
          power: power({ 'hip-flexion': '3', 'ankle-dorsiflexion': '3', 'finger-abduction': '5' }),
          reflexes: reflexFindings({ knee: '4', biceps: '2' }),
          plantars: plantars('extensor'),
          sensation: sensation('pinprick', { 'below:T10': 'reduced' }),
        },
      },
      ['T9', 'T10', 'T11'],
    ],
    [
      'C5 by the arcs of the arm',
      {
        findings: {
          power: power({ 'elbow-flexion': '4', 'finger-abduction': '4', 'hip-flexion': '4' }),
          reflexes: reflexFindings({ biceps: '0', brachioradialis: '0', triceps: '4', knee: '4' }),
          plantars: plantars('extensor'),
        },
      },
      ['C4', 'C5', 'C6'],
    ],
  ])('%s', (_, draft, levels) => {
    const [leading] = localiser.localise(bedsideExam(examBody(draft))).localisations;
    expect(leading?.kind).toBe('cord');
    expect(levels).toContain(leading?.level);
  });
});

describe('the lumbosacral plexus', () => {
  it('loses no more of the fibres of L4 and L5, which run through two of its parts, than of S1', () => {
    const whole = find('lumbosacral-plexus', 'left', 'even-severe-one-side');
    const loss = (key: MovementKey) => weakness(whole, key, 'left').total;
    expect(loss('ankle-dorsiflexion')).toBeCloseTo(loss('ankle-plantarflexion'), 2);
  });
});

describe('loss that keeps to the territory of a nerve', () => {
  // Aids to the examination of the peripheral nervous system, axillary nerve (recalled).
  it('is of the nerve rather than of the trunk through which its fibres run', () => {
    const draft: ExamDraft = {
      history: { exposures: [{ key: 'trauma', present: true }] },
      findings: {
        power: power({ 'shoulder-abduction': [null, '2'] }),
        sensation: sensation('light-touch', { 'territory:axillary-nerve': [null, 'reduced'] }),
      },
    };
    const [leading] = localiser.localise(bedsideExam(examBody(draft))).localisations;
    expect([leading?.site, leading?.side]).toEqual(['axillary-nerve', 'right']);
  });
});

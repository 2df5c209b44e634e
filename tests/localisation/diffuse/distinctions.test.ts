import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../../src/localisation/localise.ts';
import { bedsideExam } from '../../support/bedside.ts';
import {
  type ExamDraft,
  examBody,
  fasciculation,
  feelingKept,
  midline,
  plantars,
  power,
  reflexes,
  sensation,
  signs,
  tests,
  tone,
  wasting,
} from '../case-writing.ts';

const localiser = createLocaliser();

const leads = (exam: ExamDraft) => {
  const { localisations } = localiser.localise(bedsideExam(examBody(exam)));
  const leading = localisations[0];
  return {
    site: leading?.site,
    probability: leading?.probability ?? 0,
    reasons: leading?.supporting.map(({ text }) => text).join('; ') ?? '',
  };
};

const girdlesWeak = power({
  'shoulder-abduction': '4',
  'elbow-flexion': '4+',
  'hip-flexion': '4-',
  'knee-extension': '4',
  'finger-abduction': '5',
  'ankle-dorsiflexion': '5',
});
const months = { pace: 'subacute', durationDays: 100 } as const;

// Amato and Russell, Neuromuscular Disorders, approach to weakness without sensory loss (recalled): one weakness of the
// girdles, told apart by jerks, eyes, fasciculation, autonomic signs and feeling.
describe('the same weak girdles', () => {
  it('are muscle when jerks, eyes and feeling are kept', () => {
    const answer = leads({
      onset: months,
      findings: {
        power: [...girdlesWeak, { movement: 'neck-flexion', grade: '4' }],
        reflexes: reflexes({ biceps: '2', knee: '2', ankle: '2' }),
        sensation: feelingKept,
        cranialNerves: signs({ ptosis: false }),
      },
    });
    expect(answer.site).toBe('proximal-myopathy');
    expect(answer.reasons).toMatch(/hip flexion/i);
  });

  it('are the postsynaptic junction when lids and eyes tire', () => {
    const answer = leads({
      onset: months,
      findings: {
        power: [...girdlesWeak, { movement: 'neck-flexion', grade: '4' }],
        reflexes: reflexes({ biceps: '2', knee: '2', ankle: '2' }),
        sensation: feelingKept,
        cranialNerves: [...signs({ 'fatigable-ptosis': [true, true] }), ...midline({ 'fatigable-diplopia': true })],
      },
    });
    expect(answer.site).toBe('postsynaptic-junction');
    expect(answer.reasons).toMatch(/ptosis/i);
  });

  // Titulaer 2011: jerks are lost and come back after effort; the mouth is dry.
  it('are the presynaptic junction when jerks are lost, come back after effort, and the mouth is dry', () => {
    const answer = leads({
      onset: months,
      findings: {
        power: girdlesWeak,
        reflexes: reflexes({ biceps: '1', knee: '0', ankle: '0' }),
        sensation: feelingKept,
        autonomic: midline({ 'dry-mouth': true }),
        specialTests: tests({ 'post-exercise-facilitation': 'positive' }),
      },
    });
    expect(answer.site).toBe('presynaptic-junction');
    expect(answer.reasons).toMatch(/dry mouth/i);
  });

  it('are anterior horn cells when muscles twitch and waste and the knee jerks are lost', () => {
    const answer = leads({
      onset: { pace: 'chronic', durationDays: 2000 },
      findings: {
        inspection: [
          ...wasting({ thigh: true }),
          ...fasciculation(['thigh', 'left'], ['thigh', 'right'], ['upper-arm', 'left']),
        ],
        power: girdlesWeak,
        reflexes: reflexes({ biceps: '1', knee: '0', ankle: '1' }),
        plantars: plantars('flexor'),
        sensation: feelingKept,
      },
    });
    expect(answer.site).toBe('lower-motor-neuron-system');
    expect(answer.reasons).toMatch(/fasciculation/i);
  });

  // EAN/PNS 2021: near and far muscles, jerks lost in all limbs, large fibres.
  it('are roots and nerves when far muscles are as weak, all jerks are lost and vibration fails', () => {
    const answer = leads({
      onset: { pace: 'chronic', durationDays: 150 },
      findings: {
        power: power({
          'shoulder-abduction': '4',
          'hip-flexion': '4-',
          'knee-extension': '4',
          'finger-abduction': '4-',
          'ankle-dorsiflexion': '4-',
        }),
        reflexes: reflexes({ biceps: '0', triceps: '0', knee: '0', ankle: '0' }),
        sensation: [
          ...sensation('vibration', { 'great-toe': 'absent', 'index-finger': 'reduced' }),
          ...sensation('pinprick', { 'great-toe': 'reduced' }),
        ],
      },
    });
    expect(answer.site).toBe('demyelinating-polyradiculoneuropathy');
  });
});

// Amato and Russell, distal weakness (recalled).
describe('the same weak feet', () => {
  const feetWeak = {
    'ankle-dorsiflexion': '3',
    'great-toe-extension': '3',
    'knee-extension': '5',
    'hip-flexion': '5',
    'finger-abduction': '5',
  };
  const slow = { pace: 'chronic', durationDays: 1200 } as const;

  it('are a polyneuropathy when the ankle jerks and the feeling of the feet have gone', () => {
    const answer = leads({
      onset: slow,
      findings: {
        power: power(feetWeak),
        reflexes: reflexes({ knee: '2', ankle: '0' }),
        sensation: [
          ...sensation('pinprick', { 'great-toe': 'reduced', knee: 'normal' }),
          ...sensation('vibration', { 'great-toe': 'absent', ankle: 'reduced', knee: 'normal' }),
        ],
      },
    });
    expect(answer.site).toBe('length-dependent-polyneuropathy');
    expect(answer.reasons).toMatch(/vibration/i);
  });

  it('are muscle when the ankle jerks and feeling are kept', () => {
    const { site } = leads({
      onset: slow,
      findings: {
        power: power({ ...feetWeak, 'ankle-plantarflexion': '5', 'ankle-inversion': '5', 'hip-abduction': '5' }),
        reflexes: reflexes({ knee: '2', ankle: '2' }),
        plantars: plantars('flexor'),
        sensation: [
          ...sensation('pinprick', { 'great-toe': 'normal', 'dorsum-of-foot': 'normal' }),
          ...sensation('vibration', { 'great-toe': 'normal' }),
        ],
      },
    });
    expect(site).toBe('distal-myopathy');
  });

  it('are myotonic muscle when the grip lets go late and lids and face are weak', () => {
    const answer = leads({
      onset: slow,
      findings: {
        power: [...power({ ...feetWeak, 'finger-flexion': '4' }), { movement: 'neck-flexion', grade: '3' }],
        involuntaryMovements: signs({ 'grip-myotonia': true }),
        cranialNerves: signs({ ptosis: true, 'facial-weakness': true }),
        reflexes: reflexes({ knee: '1', ankle: '1' }),
        sensation: feelingKept,
      },
    });
    expect(answer.site).toBe('myotonic-myopathy');
    expect(answer.reasons).toMatch(/myotonia/i);
  });
});

// Amato and Russell, sensory neuronopathy (recalled): what tells ganglia from long axons is where the loss begins and ends.
describe('the same sensory ataxia without weakness', () => {
  const strong = power({ 'finger-abduction': '5', 'hip-flexion': '5', 'ankle-dorsiflexion': '5' });

  it('is length-dependent when it fades up the leg and spares the hands', () => {
    const { site } = leads({
      onset: { pace: 'chronic' },
      findings: {
        power: strong,
        reflexes: reflexes({ biceps: '2', knee: '2', ankle: '0' }),
        sensation: [
          ...sensation('vibration', {
            'great-toe': 'absent',
            ankle: 'absent',
            knee: 'normal',
            'index-finger': 'normal',
          }),
          ...sensation('joint-position', { 'great-toe': 'absent', 'index-finger': 'normal' }),
          ...sensation('pinprick', { 'great-toe': 'reduced', knee: 'normal' }),
        ],
        gait: midline({ romberg: true }),
      },
    });
    expect(['sensory-polyneuropathy', 'length-dependent-polyneuropathy']).toContain(site);
  });

  it('is ganglia when near joints, trunk and face are lost as well and one side is worse', () => {
    const answer = leads({
      onset: { pace: 'subacute', durationDays: 70 },
      findings: {
        power: strong,
        reflexes: reflexes({ biceps: '0', knee: '0', ankle: '0' }),
        sensation: [
          ...sensation('vibration', {
            'great-toe': 'absent',
            knee: 'absent',
            'index-finger': 'absent',
            elbow: 'reduced',
          }),
          ...sensation('joint-position', { 'great-toe': 'absent', 'index-finger': ['absent', 'reduced'] }),
          ...sensation('pinprick', { T6: ['reduced', 'normal'], 'outer-upper-arm': ['reduced', 'normal'] }),
        ],
        cranialNerves: signs({ 'facial-numbness': [true, false] }),
        gait: midline({ romberg: true }),
        involuntaryMovements: signs({ pseudoathetosis: true }),
      },
    });
    expect(answer.site).toBe('sensory-ganglionopathy');
    expect(answer.reasons).toMatch(/pseudoathetosis/i);
  });
});

// Gold Coast criteria 2020; EFNS/PNS 2010 on multifocal motor neuropathy; Cook 2010 on cervical myelopathy (recalled).
describe('the same wasted hand', () => {
  const hand = {
    'finger-abduction': ['3', '4'],
    'thumb-abduction': ['3', '4'],
    'finger-extension': ['4', '4+'],
    'elbow-flexion': ['5', '5'],
    'shoulder-abduction': ['5', '5'],
  } as const;
  const slow = { pace: 'chronic', durationDays: 300 } as const;

  it('is upper and lower motor neurons when jerks are brisk, the tongue twitches and feeling is kept', () => {
    const answer = leads({
      age: 60,
      onset: slow,
      findings: {
        inspection: [...wasting({ hand: true }), ...fasciculation(['upper-arm', 'left'], ['thigh', 'right'])],
        cranialNerves: midline({ 'tongue-fasciculation': true }),
        power: power({ ...hand, 'hip-flexion': '4+', 'ankle-dorsiflexion': '4+' }),
        reflexes: [{ reflex: 'jaw', grade: '3' }, ...reflexes({ biceps: '3', triceps: '3', knee: '4', ankle: '3' })],
        plantars: plantars('extensor'),
        sensation: feelingKept,
      },
    });
    expect(answer.site).toBe('motor-neuron-system');
    expect(answer.reasons).toMatch(/tongue/i);
  });

  it('is the cervical cord when hands and feet have lost feeling and the jaw jerk is normal', () => {
    const { site } = leads({
      age: 60,
      onset: slow,
      findings: {
        inspection: wasting({ hand: true }),
        cranialNerves: midline({ 'tongue-fasciculation': false, dysarthria: false }),
        tone: tone({ 'lower-limb': 'spastic' }),
        power: power({ ...hand, 'hip-flexion': '4', 'ankle-dorsiflexion': '4' }),
        reflexes: [{ reflex: 'jaw', grade: '2' }, ...reflexes({ biceps: '2', triceps: '1', knee: '4', ankle: '4' })],
        plantars: plantars('extensor'),
        sensation: [
          ...sensation('pinprick', { 'little-finger': 'reduced', 'index-finger': 'reduced' }),
          ...sensation('vibration', { 'great-toe': 'reduced' }),
          ...sensation('joint-position', { 'great-toe': 'reduced' }),
        ],
        gait: midline({ spastic: true }),
      },
    });
    expect(site).toMatch(/^spinal-cord/);
  });

  it('is lower motor neurons alone when it twitches and spreads, jerks go and no sign is upper', () => {
    const { site } = leads({
      age: 60,
      onset: slow,
      findings: {
        inspection: [
          ...wasting({ hand: true, forearm: [true, false] }),
          ...fasciculation(['forearm', 'left'], ['upper-arm', 'left'], ['upper-arm', 'right']),
        ],
        tone: tone({ 'lower-limb': 'normal' }),
        power: power({ ...hand, 'elbow-flexion': ['4', '5'], 'hip-flexion': '5', 'ankle-dorsiflexion': '5' }),
        reflexes: [
          { reflex: 'jaw', grade: '2' },
          ...reflexes({ biceps: ['1', '2'], triceps: ['1', '1'], knee: '2', ankle: '2' }),
        ],
        plantars: plantars('flexor'),
        sensation: feelingKept,
      },
    });
    expect(site).toBe('lower-motor-neuron-system');
  });

  it('is several motor nerves when muscles of named nerves are weak, others beside them strong, and nothing twitches', () => {
    const { site } = leads({
      age: 44,
      onset: slow,
      findings: {
        power: power({
          'finger-extension': ['2', '5'],
          'wrist-extension-ulnar': ['3', '5'],
          'elbow-extension': '5',
          'thumb-abduction': '5',
          'finger-abduction': ['5', '3'],
          'little-finger-abduction': ['5', '3'],
          'elbow-flexion': '5',
          'hip-flexion': '5',
          'ankle-dorsiflexion': '5',
        }),
        inspection: wasting({ hand: false, forearm: false }),
        reflexes: reflexes({ biceps: '2', triceps: '2', knee: '2', ankle: '2' }),
        plantars: plantars('flexor'),
        sensation: [
          ...sensation('pinprick', { 'little-finger': 'normal', 'first-dorsal-web-space-of-hand': 'normal' }),
          ...sensation('vibration', { 'index-finger': 'normal' }),
        ],
      },
    });
    expect(site).toBe('multiple-mononeuropathy');
  });
});

// van Doorn 2023: jerks lost and no level; early bladder failure and a level speak for the cord.
describe('legs weak within days', () => {
  const legs = power({
    'hip-flexion': '3',
    'knee-extension': '3',
    'ankle-dorsiflexion': '3',
    'finger-abduction': '5',
    'shoulder-abduction': '5',
  });
  const days = { pace: 'acute', durationDays: 5 } as const;

  it('are roots when the jerks have gone and there is no level', () => {
    const { site } = leads({
      onset: days,
      findings: {
        power: legs,
        reflexes: reflexes({ biceps: '1', knee: '0', ankle: '0' }),
        plantars: plantars('flexor'),
        sensation: [
          ...sensation('pinprick', { T10: 'normal', L2: 'normal', 'perianal-skin': 'normal', toes: 'reduced' }),
        ],
        sphincters: midline({ 'urinary-retention': false }),
      },
    });
    expect(site).toBe('demyelinating-polyradiculoneuropathy');
  });

  it('are the cord when pain is lost below a level and the bladder fails', () => {
    const { site } = leads({
      onset: days,
      findings: {
        power: legs,
        reflexes: reflexes({ biceps: '2', knee: '3', ankle: '3' }),
        plantars: plantars('extensor'),
        sensation: sensation('pinprick', { 'below:T8': 'reduced' }),
        sphincters: midline({ 'urinary-retention': true }),
      },
    });
    expect(site).toMatch(/^spinal-cord/);
  });
});

// DeJong, power limited by pain; Daum 2014 on positive signs (recalled).
describe('weakness that gives way', () => {
  const { conclusion } = localiser.localise(
    bedsideExam(
      examBody({
        findings: {
          specialTests: tests({ 'give-way-weakness': [null, 'positive'] }),
          power: power({
            'shoulder-abduction': [null, '4'],
            'shoulder-external-rotation': [null, '4'],
            'elbow-flexion': [null, '5'],
            'finger-abduction': [null, '5'],
          }),
          reflexes: reflexes({ biceps: '2', triceps: '2' }),
          inspection: wasting({ shoulder: [null, false] }),
          sensation: sensation('pinprick', { 'outer-upper-arm': [null, 'normal'] }),
        },
      }),
    ),
  );

  it('follows no anatomy when all else is normal', () => {
    expect(conclusion).toBe('not-anatomical');
  });
});

// Nagashima 2007 (read): in 48 of 100 the limbs failed as in the usual form of Guillain-Barré syndrome.
describe('throat, neck and arms that fail within days, and the legs less', () => {
  it('are the roots and nerves when the jerks of the arms go and those of the legs stay', () => {
    const { site } = leads({
      onset: { pace: 'acute', durationDays: 6 },
      findings: {
        cranialNerves: signs({ 'palatal-weakness': true, ophthalmoplegia: false }),
        power: power({
          'shoulder-abduction': '2',
          'finger-abduction': '3',
          'hip-flexion': '4',
          'ankle-dorsiflexion': '4',
        }),
        reflexes: reflexes({ biceps: '0', triceps: '0', knee: '2', ankle: '2' }),
      },
    });
    expect(site).toBe('demyelinating-polyradiculoneuropathy');
  });
});

// Adams and Victor, periodic paralysis (recalled): limbs limp within hours, face, eyes and feeling spared.
it('puts limbs that all go limp within hours, feeling and face kept, into the muscle', () => {
  const gone = power({
    'shoulder-abduction': '0',
    'elbow-flexion': '0',
    'elbow-extension': '0',
    'wrist-extension': '0',
    'hip-flexion': '0',
    'knee-extension': '0',
    'ankle-dorsiflexion': '0',
  });
  const answer = leads({
    onset: { pace: 'hyperacute', durationDays: 1 },
    findings: {
      power: gone,
      reflexes: reflexes({ biceps: '1', triceps: '1', knee: '1', ankle: '1' }),
      plantars: plantars('flexor'),
      sensation: feelingKept,
      cranialNerves: signs({ 'facial-weakness': false, ophthalmoplegia: false }),
    },
  });
  expect(answer.site).toBe('proximal-myopathy');
});

// Lids alone are the first sign of one in four with myasthenia. Grob 2008 (recalled).
it('puts lids that droop alone, eyes and pupils well, into the postsynaptic junction', () => {
  const answer = leads({
    onset: { pace: 'subacute', durationDays: 40 },
    findings: { cranialNerves: signs({ ptosis: true, ophthalmoplegia: false, 'unreactive-pupil': false }) },
  });
  expect(answer.site).toBe('postsynaptic-junction');
});

// Guideline on vasculitic neuropathy (recalled): nerve after nerve, until the patches nearly run together.
it('tells many nerves hit unevenly from a neuropathy of the longest axons', () => {
  const nerve = (key: string, side: string) => ({
    modality: 'pinprick',
    territory: key,
    side,
    result: 'reduced',
  });
  const { localisations } = localiser.localise(
    bedsideExam(
      examBody({
        onset: { pace: 'subacute', durationDays: 40 },
        findings: {
          power: [
            { movement: 'ankle-dorsiflexion', side: 'left', grade: '2' },
            { movement: 'ankle-plantarflexion', side: 'left', grade: '5' },
            { movement: 'ankle-dorsiflexion', side: 'right', grade: '5' },
            { movement: 'finger-abduction', side: 'left', grade: '3' },
            { movement: 'finger-abduction', side: 'right', grade: '3' },
            { movement: 'thumb-abduction', side: 'right', grade: '3' },
            { movement: 'thumb-abduction', side: 'left', grade: '5' },
          ],
          sensation: [
            nerve('common-fibular-nerve', 'left'),
            nerve('ulnar-nerve', 'left'),
            nerve('ulnar-nerve', 'right'),
            nerve('median-nerve', 'right'),
          ],
        },
      }),
    ),
  );
  expect(localisations[0]?.site).toBe('multiple-mononeuropathy');
});

import { describe, expect, it } from 'vitest';
import { territoryKeys } from '../../src/anatomy/skin-places.ts';
import { itemsOf } from '../../src/exam/catalogue/catalogue.ts';
import { historyLists } from '../../src/exam/catalogue/history.ts';
import { nearestKey } from '../../src/exam/faults/nearest-key.ts';
import { scales } from '../../src/exam/scales.ts';
import { requestWithFindings } from './support/exam-request.ts';
import { faultsOf } from './support/read.ts';

const keysOf = (section: Parameters<typeof itemsOf>[0]) => itemsOf(section).map(({ key }) => key);
describe('the nearest key', () => {
  it.each([
    ['gait', 'steppage-gait', 'high-stepping'],
    ['gait', 'spastic-gait', 'spastic'],
    ['gait', 'rombergs', 'romberg'],
    ['reflexes', 'reflex knee-jerk', 'knee'],
    ['reflexes', 'patellar', 'knee'],
    ['reflexes', 'achilles', 'ankle'],
    ['reflexes', 'supinator', 'brachioradialis'],
    ['sensation', 'pin-prick', 'pinprick'],
    ['sensation', 'proprioception', 'joint-position'],
    ['power', 'dorsiflexion', 'ankle-dorsiflexion'],
    ['power', 'hallux_extension', 'great-toe-extension'],
    ['coordination', 'finger-to-nose', 'finger-nose'],
  ] as const)('of %s to %s is %s', (section, unknown, key) => {
    expect(nearestKey(unknown, keysOf(section))).toBe(key);
  });

  it('is found among places and values as well', () => {
    expect(nearestKey('peroneal-nerve', territoryKeys)).toBe('common-fibular-nerve');
    expect(nearestKey('superficial peroneal', territoryKeys)).toBe('superficial-fibular-nerve');
    expect(
      nearestKey(
        'babinski',
        scales['plantar-response'].grades.map(({ key }) => key),
      ),
    ).toBe('extensor');
  });

  it.each(['flexion', 'extension', 'tinel', 'toe'])('is none for %s, which several keys have', (unknown) => {
    expect(nearestKey(unknown, [...keysOf('power'), ...keysOf('specialTests')])).toBeUndefined();
  });

  it('is found in the spelling of either side of the Atlantic', () => {
    const symptoms = historyLists.symptoms.map(({ key }) => key);
    expect(nearestKey('dyspnea', symptoms)).toBe('breathlessness');
    expect(nearestKey('urinary_incontinence', symptoms)).toBe('bladder-disturbance');
  });
});

describe('a name of the trade that is no key', () => {
  it.each([
    ['gait', { sign: 'steppage-gait', present: true }, "No such sign 'steppage-gait'. Did you mean 'high-stepping'?"],
    [
      'reflexes',
      { reflex: 'babinski', side: 'left', grade: '2' },
      "No such reflex 'babinski'. Did you mean 'plantar-response' in `findings.plantars`?",
    ],
    ['gait', { sign: 'broad-based', present: true }, "No such sign 'broad-based'. Did you mean 'ataxic'?"],
    [
      'cranialNerves',
      { sign: 'brisk-jaw-jerk', present: true },
      "No such sign 'brisk-jaw-jerk'. Did you mean 'jaw' in `findings.reflexes`?",
    ],
    [
      'cranialNerves',
      { sign: 'facial-weakness-lower-motor-neuron', side: 'left', present: true },
      "Did you mean 'facial-weakness'?",
    ],
    ['higherFunction', { sign: 'headache', present: true }, "Did you mean 'headache' in `history.symptoms`?"],
    ['plantars', { side: 'left', response: 'babinski' }, "Did you mean 'extensor'?"],
    [
      'higherFunction',
      { sign: 'aphasia', present: true },
      "No such sign 'aphasia'. Did you mean 'expressive-aphasia', 'receptive-aphasia' or 'global-aphasia'?",
    ],
  ])('is refused with the key that it stands for: %s', (section, entry, words) => {
    const faults = faultsOf(requestWithFindings({ [section]: [entry] }));
    expect(faults.map(({ code }) => code)).toEqual(['UNKNOWN_KEY']);
    expect(faults[0]?.message).toContain(words);
  });
});

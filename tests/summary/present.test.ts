import { describe, expect, it } from 'vitest';
import { historyListKeys, historyLists } from '../../src/exam/catalogue/history.ts';
import { joinWords, sentence } from '../../src/kernel/words.ts';
import { siteWords } from '../../src/localisation/explanation/site-words.ts';
import type { Localisation, RankedLocalisation } from '../../src/localisation/localisation.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { caution } from '../../src/summary/caution.ts';
import { fullest } from '../../src/summary/detail.ts';
import { findingClauses, notTestedClauses } from '../../src/summary/findings-prose.ts';
import { durationWords, openingSentences, personWords } from '../../src/summary/opening.ts';
import { percent } from '../../src/summary/site-prose.ts';
import { spell } from '../../src/summary/spelling.ts';
import { bedsideExam, exampleRead, localised, nothingFound, site } from '../support/bedside.ts';

const saying = (localisation: Localisation) => createAssessor({ localise: () => localisation });
const fibular: RankedLocalisation = {
  ...site('common-fibular-nerve', 'nerve', 0.81),
  label: 'Common fibular nerve at the fibular neck',
  side: 'left',
  supporting: [
    {
      finding: '/findings/power/5',
      findingId: 'power/ankle-dorsiflexion|left',
      side: 'left',
      text: 'left ankle dorsiflexion 2/5',
      weight: 3,
      because: 'its fibres run in this nerve',
      abnormal: true,
    },
  ],
};

describe('joining words', () => {
  it('says one, two and three things', () => {
    expect(joinWords([])).toBe('');
    expect(joinWords(['a'])).toBe('a');
    expect(joinWords(['a', 'b'])).toBe('a and b');
    expect(joinWords(['a', 'b', 'c'], 'or')).toBe('a, b or c');
  });

  it('makes a sentence once', () => {
    expect(sentence('no weakness')).toBe('No weakness.');
    expect(sentence('Done.')).toBe('Done.');
    expect(sentence(' ')).toBe('');
  });
});

describe('opening', () => {
  it('says every statement of the history whole, with no comma that a list would tear apart', () => {
    for (const list of historyListKeys) {
      for (const { key } of historyLists[list]) {
        const said = openingSentences(bedsideExam({ history: { [list]: [{ key, present: true }] } }), fullest).join(
          ' ',
        );
        expect(said).toMatch(/(?:The history includes|Medicines:) [^,()]+(?: \([^,()]+\))?\.$/);
      }
    }
  });

  it.each([
    [{ ageYears: 46, sex: 'female' }, 'A 46-year-old woman'],
    [{ ageYears: 81, sex: 'male' }, 'An 81-year-old man'],
    [{ ageYears: 11, sex: 'female' }, 'An 11-year-old girl'],
    [{ ageYears: 30 }, 'A 30-year-old person'],
    [{}, 'A person of unstated age and sex'],
    [{ sex: 'male' }, 'A man of unstated age'],
  ] as const)('names the person %j', (person, words) => {
    expect(personWords(person)).toBe(words);
  });

  it.each([
    [0.2, '5 hours'],
    [1, '1 day'],
    [12, '12 days'],
    [21, '3 weeks'],
    [240, '8 months'],
    [1500, '4 years'],
  ])('says %d days as %s', (days, words) => {
    expect(durationWords(days)).toBe(words);
  });

  it('states tempo, what was told and what was denied', () => {
    const exam = bedsideExam({
      person: { ageYears: 63, sex: 'male' },
      history: {
        onset: { pace: 'chronic', durationDays: 240 },
        course: 'progressive',
        symptoms: [
          { key: 'neck-pain', present: true },
          { key: 'fever', present: false },
        ],
        family: [{ key: 'similar-disorder', present: false }],
      },
    });
    expect(openingSentences(exam, fullest)).toEqual([
      'A 63-year-old man with an 8-month progressive history.',
      'The history includes neck pain; no fever or similar disorder in the family.',
    ]);
  });

  it('says a complaint once where another one says it more exactly', () => {
    const symptoms = ['headache', 'new-headache', 'weakness', 'vomiting'].map((key) => ({ key, present: true }));
    expect(openingSentences(bedsideExam({ history: { symptoms } }), fullest).join(' ')).toContain(
      'The history includes new headache, weakness and vomiting.',
    );
  });

  it('says that onset and course are not stated', () => {
    expect(openingSentences(bedsideExam({ person: { ageYears: 30, sex: 'female' } }), fullest)[0]).toBe(
      'A 30-year-old woman; onset and course are not stated.',
    );
  });
});

describe('the opening', () => {
  it('makes no hours of a trouble that began today', () => {
    const { onset, ...exam } = bedsideExam({ findings: {} });
    expect(openingSentences({ ...exam, onset: { ...onset, durationDays: 0 } }, fullest)[0]).toContain(
      'with a history of less than a day',
    );
  });
});

describe('findings in prose', () => {
  it('merges both sides and the same grade', () => {
    const { findings } = bedsideExam({
      findings: {
        power: [
          { movement: 'ankle-dorsiflexion', side: 'left', grade: '3' },
          { movement: 'ankle-eversion', side: 'left', grade: '3' },
          { movement: 'great-toe-extension', side: 'left', grade: '1' },
        ],
        reflexes: [
          { reflex: 'knee', side: 'left', grade: '0' },
          { reflex: 'knee', side: 'right', grade: '0' },
          { reflex: 'ankle', side: 'both', grade: '0' },
        ],
        plantars: [
          { side: 'left', response: 'extensor' },
          { side: 'right', response: 'flexor' },
        ],
        sensation: [
          { modality: 'pinprick', dermatome: 'L4', side: 'both', result: 'reduced' },
          { modality: 'pinprick', dermatome: 'L5', side: 'both', result: 'reduced' },
          { modality: 'pinprick', dermatome: 'S1', side: 'both', result: 'reduced' },
          { modality: 'light-touch', dermatome: 'L4', side: 'both', result: 'reduced' },
          { modality: 'light-touch', dermatome: 'L5', side: 'both', result: 'reduced' },
          { modality: 'light-touch', dermatome: 'S1', side: 'both', result: 'reduced' },
        ],
      },
    });
    expect(findingClauses(findings)).toEqual([
      'ankle dorsiflexion and eversion 3/5 and great toe extension 1/5 on the left',
      'knee and ankle reflexes absent on both sides',
      'the left plantar response extensor',
      'the right plantar response flexor',
      'light touch and pinprick reduced in L4 to S1 on both sides',
    ]);
  });

  it('names the limb where every movement of it that was tested has one grade', () => {
    const movements = ['shoulder-abduction', 'elbow-flexion', 'elbow-extension', 'wrist-extension', 'finger-abduction'];
    const arm = movements.map((movement) => ({ movement, side: 'right', grade: '0' }));
    const leg = [{ movement: 'hip-flexion', side: 'right', grade: '0' }];
    const said = (power: readonly object[]) => {
      const { findings } = bedsideExam({ findings: { power } });
      return findingClauses(
        findings.filter(({ abnormal }) => abnormal),
        findings,
      );
    };
    expect(said([...arm, ...leg])).toEqual(['hip flexion and all movements tested of the upper limb 0/5 on the right']);
    const spared = { movement: 'finger-flexion', side: 'right', grade: '5' };
    expect(said([...arm, spared])[0]).toMatch(/^shoulder abduction, .* and finger abduction 0\/5 on the right$/);
  });

  it('compares nothing where both sides have it', () => {
    const palate = (side?: string) => {
      const sign = { sign: 'palatal-weakness', present: true, ...(side && { side }) };
      return findingClauses(bedsideExam({ findings: { cranialNerves: [sign] } }).findings);
    };
    expect(palate('left')).toEqual(['weakness of the palate on the left side with the uvula drawn to the other']);
    expect(palate('both')).toEqual(['weakness of the palate on each side']);
    expect(palate()).toEqual(['weakness of the palate']);
  });

  it('says a denied sign of both sides as of either side', () => {
    const { findings } = bedsideExam({
      findings: { cranialNerves: [{ sign: 'ptosis', side: 'both', present: false }] },
    });
    expect(findingClauses(findings)).toEqual(['no ptosis on either side']);
  });

  it('says of a difference between two sides that there is none', () => {
    const cranialNerves = [{ sign: 'anisocoria', side: 'both', present: false }];
    expect(findingClauses(bedsideExam({ findings: { cranialNerves } }).findings)).toEqual(['no unequal pupils']);
  });

  it('gives the reason why something was not tested', () => {
    const { findings } = bedsideExam({
      findings: {
        power: [{ movement: 'ankle-dorsiflexion', side: 'left', notTested: 'pain' }],
        reflexes: [{ reflex: 'knee', side: 'both', notTested: 'not-done' }],
      },
    });
    expect(notTestedClauses(findings)).toEqual([
      'left ankle dorsiflexion (pain)',
      'knee reflex on both sides (not done)',
    ]);
  });
});

describe('place and certainty in prose', () => {
  it('puts the side where it belongs', () => {
    expect(siteWords(fibular)).toBe('a lesion of the left common fibular nerve at the fibular neck');
    expect(
      siteWords({ ...fibular, side: null, label: 'Length-dependent polyneuropathy', kind: 'polyneuropathy' }),
    ).toBe('length-dependent polyneuropathy');
    const medulla = { ...fibular, side: 'left', label: 'Half of the medulla', kind: 'brainstem' } as const;
    expect(siteWords(medulla)).toBe('a lesion of the left half of the medulla');
  });

  it('says that a paired place is hurt on both sides, and a single one only that it is', () => {
    const optic = { ...fibular, side: 'both', label: 'Optic nerve', kind: 'cranial-nerve' } as const;
    expect(siteWords(optic)).toBe('a lesion of the optic nerve on both sides');
    expect(siteWords({ ...optic, label: 'Cauda equina', kind: 'cauda-equina' })).toBe('a lesion of the cauda equina');
    const parasagittal = { ...optic, label: 'Parasagittal cortex of both hemispheres', kind: 'hemisphere' } as const;
    expect(siteWords(parasagittal)).toBe('a lesion of the parasagittal cortex of both hemispheres');
  });

  it('never claims certainty', () => {
    expect([percent(0.999), percent(0.814), percent(0.0001)]).toEqual(['over 99 %', '81 %', 'under 1 %']);
  });
});

describe('presentation', () => {
  it('begins with the red flags and ends with the caution', () => {
    const { presentation } = saying(
      localised(site('demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')),
    ).assess(exampleRead('ascending-weakness'));
    expect(presentation.startsWith('Red flag')).toBe(true);
    expect(presentation.endsWith(caution)).toBe(true);
  });

  it('names every red flag with its urgency, and what was not examined although it decides', () => {
    const { presentation, redFlags } = saying(
      localised(site('demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')),
    ).assess(exampleRead('ascending-weakness'));
    const present = redFlags.filter(({ state }) => state === 'present');
    expect(present.length).toBeGreaterThan(0);
    for (const { label } of present) expect(presentation.toLowerCase()).toContain(label.toLowerCase());
    const gaps = redFlags.filter(({ state }) => state === 'not-assessable').flatMap(({ because }) => because);
    const isGap = gaps.some(({ pointer }) => pointer === null);
    expect(presentation.includes('Not examined, and it matters: ')).toBe(isGap);
  });

  it('says a sign of several places once', () => {
    const inspection = ['hand', 'forearm'].map((place) => ({
      sign: 'wasting',
      site: place,
      side: 'left',
      present: true,
    }));
    const { presentation } = saying(localised(fibular)).assess(bedsideExam({ findings: { inspection } }));
    expect(presentation).toContain('muscle wasting at the forearm and hand on the left.');
  });

  it('names the side once where all that was found is on it', () => {
    const findings = {
      inspection: [{ sign: 'wasting', site: 'hand', side: 'left', present: true }],
      power: [{ movement: 'finger-abduction', side: 'left', grade: '3' }],
      reflexes: [{ reflex: 'triceps', side: 'left', grade: '0' }],
    };
    const said = (more: object = {}) =>
      saying(localised(fibular)).assess(bedsideExam({ findings: { ...findings, ...more } })).presentation;
    expect(said()).toContain(
      'On examination of the left side, muscle wasting at the hand. Finger abduction 3/5. Triceps reflex absent.',
    );
    const bothAnkles = { reflexes: [{ reflex: 'ankle', side: 'both', grade: '0' }] };
    expect(said(bothAnkles)).toContain('On examination, muscle wasting at the left hand.');
  });

  it('names a part of the body once for all that is said to be normal there', () => {
    const otherwiseNormal = [
      { section: 'cranialNerves' },
      { section: 'power', region: 'upper-limbs' },
      { section: 'reflexes', region: 'upper-limbs' },
    ];
    const { presentation } = saying(localised(fibular)).assess(bedsideExam({ otherwiseNormal }));
    expect(presentation).toContain('Otherwise normal: cranial nerves; power and reflexes of the upper limbs.');
  });

  it('says a reason that stands on both sides once, with the path on both', () => {
    const reason = (side: 'left' | 'right', because: string) => ({
      finding: `/findings/power/${side === 'left' ? 0 : 1}`,
      findingId: `power/hip-flexion|${side}`,
      side,
      text: `${side} hip flexion 2/5`,
      weight: 3,
      because,
      abnormal: true,
    });
    const said = (path: (side: string) => string) => {
      const supporting = (['left', 'right'] as const).map((side) => reason(side, path(side)));
      return saying(localised({ ...site('spinal-cord-transverse', 'cord', 0.9), supporting })).assess(bedsideExam())
        .presentation;
    };
    expect(said((side) => `its fibres run down the ${side} side of the cord`)).toContain(
      'because of hip flexion 2/5 on both sides (its fibres run down both sides of the cord).',
    );
    expect(said((side) => `its fibres cross to the ${side}`)).toContain('because of hip flexion 2/5 on both sides.');
  });

  it('names place, reason, cause and the test for the invented foot drop', () => {
    const { presentation } = saying(localised(fibular)).assess(exampleRead('foot-drop'));
    expect(presentation).toContain('A 46-year-old woman with a 12-day history');
    expect(presentation).toContain('a lesion of the left common fibular nerve at the fibular neck (81 %)');
    expect(presentation).toContain('because of left ankle dorsiflexion 2/5');
    expect(presentation).toContain('compression of the common fibular nerve at the fibular neck');
    expect(presentation).toContain('nerve conduction study');
    expect(presentation).not.toContain('Red flag');
    expect(presentation).toContain('Not tested: temperature sense');
  });

  it('names the image beside the first blood test, before a panel is read to its end, and that both are wanted at once', () => {
    const { presentation } = createAssessor().assess(
      bedsideExam({
        history: {
          onset: { pace: 'acute', durationDays: 3 },
          symptoms: ['new-headache', 'vomiting'].map((key) => ({ key, present: true })),
        },
        findings: { higherFunction: ['confusion', 'disorientation'].map((sign) => ({ sign, present: true })) },
      }),
    );
    expect(presentation).toMatch(/Suggested next\. At once: blood glucose, CT of the head/);
    expect(presentation).not.toMatch(/ fits[ .;]/);
  });

  it('says what a red flag rests on of many results, and counts the rest', () => {
    const result = (code: string, value: number, unit: string) => ({
      code: { system: 'http://loinc.org', code },
      valueQuantity: { value, unit, system: 'http://unitsofmeasure.org', code: unit },
    });
    const usual = [result('718-7', 140, 'g/L'), result('777-3', 250, '10*9/L'), result('2345-7', 5.5, 'mmol/L')];
    const { presentation, redFlags } = createAssessor().assess(
      bedsideExam({
        history: { symptoms: [{ key: 'seizure', present: true }], onset: { pace: 'hyperacute', durationDays: 0 } },
        results: [...usual, result('2160-0', 80, 'umol/L'), result('2951-2', 112, 'mmol/L')],
      }),
    );
    expect(redFlags.find(({ key }) => key === 'dangerous-sodium-or-calcium')?.state).toBe('present');
    expect(presentation).toMatch(/Results: sodium 112 mmol\/L; .*and [1-4] more\./);
  });

  it('says that a normal examination does not exclude a lesion', () => {
    const { presentation } = saying(nothingFound).assess(
      bedsideExam({ findings: { plantars: [{ side: 'both', response: 'flexor' }] } }),
    );
    expect(presentation).toContain('On examination nothing abnormal was found.');
    expect(presentation).toContain('A normal examination does not exclude a lesion.');
    expect(presentation).toContain('both plantar responses flexor');
  });

  it('has no doubled stops, spaces or empty brackets', () => {
    for (const name of ['foot-drop', 'cervical-cord', 'ascending-weakness'] as const) {
      const { presentation } = saying(localised(fibular)).assess(exampleRead(name));
      expect(presentation).not.toMatch(/\.\.| {2}|\(\)|undefined|null| ,|;\./);
    }
  });

  it('spells as asked', () => {
    expect(spell('Haematoma, paraesthesiae, fibre, paralysis', 'us')).toBe('Hematoma, paresthesiae, fiber, paralysis');
    expect(spell('Haematoma', 'uk')).toBe('Haematoma');
    const exam = bedsideExam({
      history: {
        symptoms: [
          { key: 'paraesthesiae', present: true },
          { key: 'preceding-gastroenteritis', present: true },
        ],
      },
    });
    const us = saying(nothingFound).assess(exam, { spelling: 'us' }).presentation;
    expect(us).toContain('diarrhea');
    expect(us).not.toContain('diarrhoea');
  });
});

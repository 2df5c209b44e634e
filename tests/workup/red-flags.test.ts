import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import type { RedFlag } from '../../src/workup/assessment.ts';
import { assessRedFlags, redFlagRules } from '../../src/workup/red-flags.ts';
import { bedsideExam, exampleRead, localised, nothingFound, site, weakLegsBothSides } from '../support/bedside.ts';

const stateOf = (flags: readonly RedFlag[], key: string) => flags.find((flag) => flag.key === key)?.state;
const anywhere = localised(site('common-fibular-nerve', 'nerve'));
const acute = { onset: { pace: 'acute', durationDays: 4 }, course: 'progressive' };
const areflexia = [
  { reflex: 'knee', side: 'both', grade: '0' },
  { reflex: 'ankle', side: 'both', grade: '0' },
];

describe('red flags', () => {
  it('knows at least eighteen, each under its own key', () => {
    expect(redFlagRules.length).toBeGreaterThanOrEqual(18);
    expect(new Set(redFlagRules.map((rule) => rule.key)).size).toBe(redFlagRules.length);
  });

  it('raises none for a normal examination and none for a chronic stable foot drop', () => {
    expect(assessRedFlags(bedsideExam(), nothingFound)).toEqual([]);
    const exam = bedsideExam({
      history: { onset: { pace: 'chronic', durationDays: 700 }, course: 'static' },
      findings: {
        power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '2' }],
        gait: [{ sign: 'high-stepping', side: 'left', present: true }],
      },
    });
    expect(assessRedFlags(exam, anywhere)).toEqual([]);
  });

  it('asks since when, where a sign of the brain is undated: it may have come today', () => {
    const findings = { higherFunction: [{ sign: 'expressive-aphasia', present: true }] };
    const stroke = (history: object) =>
      stateOf(assessRedFlags(bedsideExam({ history, findings }), anywhere), 'suspected-stroke');
    expect(stroke({})).toBe('not-assessable');
    expect(stroke({ course: 'static' })).toBeUndefined();
  });

  it('raises none for the invented foot drop of twelve days', () => {
    expect(assessRedFlags(exampleRead('foot-drop'), anywhere)).toEqual([]);
  });
});

// GIRFT pathway 2023: saddle sensation, bladder, bowel or sexual change with back or leg symptoms.
describe('cauda equina syndrome', () => {
  const history = { ...acute, symptoms: [{ key: 'back-pain', present: true }] };
  const findings = { power: weakLegsBothSides };

  it('is present with altered saddle sensation', () => {
    const exam = bedsideExam({
      history,
      findings: { ...findings, sphincters: [{ sign: 'saddle-anaesthesia', present: true }] },
    });
    expect(stateOf(assessRedFlags(exam, anywhere), 'suspected-cauda-equina-syndrome')).toBe('present');
  });

  it('is not assessable, and says what is missing, when saddle sensation and bladder were not examined', () => {
    const flag = assessRedFlags(bedsideExam({ history, findings }), anywhere).find(
      ({ key }) => key === 'suspected-cauda-equina-syndrome',
    );
    expect(flag?.state).toBe('not-assessable');
    expect(flag?.because[0]).toEqual({ pointer: null, text: 'saddle sensation was not examined, and it matters' });
  });

  it('is not asked for where the brainstem explains numb limbs beside a painful neck', () => {
    const exam = bedsideExam({
      history: { onset: { pace: 'hyperacute', durationDays: 1 }, symptoms: [{ key: 'neck-pain', present: true }] },
      findings: {
        cranialNerves: [{ sign: 'palatal-weakness', side: 'left', present: true }],
        sensation: [{ modality: 'pinprick', site: 'dorsum-of-foot', side: 'right', result: 'reduced' }],
      },
    });
    const flags = assessRedFlags(exam, localised(site('medulla-lateral', 'brainstem')));
    expect(stateOf(flags, 'suspected-cauda-equina-syndrome')).toBeUndefined();
  });

  it('is absent when both were examined and normal', () => {
    const sphincters = [
      { sign: 'saddle-anaesthesia', present: false },
      { sign: 'urinary-retention', present: false },
    ];
    const flags = assessRedFlags(bedsideExam({ history, findings: { ...findings, sphincters } }), anywhere);
    expect(stateOf(flags, 'suspected-cauda-equina-syndrome')).toBe('absent');
  });

  // The pathway: 200 mL or more makes the syndrome likelier, less does not exclude it.
  it.each([
    [250, 'present'],
    [150, 'not-assessable'],
  ])('is not excluded by a residual volume alone: %i mL gives %s', (value, state) => {
    const results = [
      {
        key: 'post-void-residual',
        valueQuantity: { value, unit: 'mL', system: 'http://unitsofmeasure.org', code: 'mL' },
      },
    ];
    expect(
      stateOf(assessRedFlags(bedsideExam({ history, findings, results }), anywhere), 'suspected-cauda-equina-syndrome'),
    ).toBe(state);
  });
});

describe('cord', () => {
  const cordFindings = {
    power: weakLegsBothSides,
    plantars: [{ side: 'both', response: 'extensor' }],
    sensation: [{ modality: 'pinprick', levelBelow: 'T8', side: 'both', result: 'reduced' }],
  };

  it('suspects compression in an acute cord syndrome, whatever the ranking says', () => {
    const flags = assessRedFlags(bedsideExam({ history: acute, findings: cordFindings }), anywhere);
    expect(stateOf(flags, 'suspected-cord-compression')).toBe('present');
  });

  it('suspects compression in spinal shock, when reflexes are lost below a sensory level', () => {
    const findings = { ...cordFindings, plantars: [{ side: 'both', response: 'mute' }], reflexes: areflexia };
    expect(
      stateOf(assessRedFlags(bedsideExam({ history: acute, findings }), anywhere), 'suspected-cord-compression'),
    ).toBe('present');
  });

  // NICE NG234: cancer with a neurological sign of the cord needs the coordinator at once.
  it('adds metastatic compression when there is a cancer', () => {
    const history = { ...acute, conditions: [{ key: 'cancer', present: true }] };
    const flags = assessRedFlags(bedsideExam({ history, findings: cordFindings }), anywhere);
    expect(stateOf(flags, 'suspected-metastatic-cord-compression')).toBe('present');
    expect(flags[0]?.urgency).toBe('immediate');
  });

  it('asks for urgent imaging, not an emergency, when cord signs progress over months', () => {
    const flags = assessRedFlags(exampleRead('cervical-cord'), anywhere);
    expect(stateOf(flags, 'progressive-cord-signs')).toBe('present');
    expect(flags.filter((flag) => flag.state === 'present').map((flag) => flag.urgency)).toEqual(['urgent']);
  });
});

// EAN/PNS 2023: weakness that progresses within four weeks; 20/30/40 rule after Lawn 2001.
describe('acute neuromuscular weakness', () => {
  const findings = { power: weakLegsBothSides, reflexes: areflexia };

  it('suspects Guillain-Barré syndrome and misses the vital capacity', () => {
    const flags = assessRedFlags(bedsideExam({ history: acute, findings }), anywhere);
    expect(stateOf(flags, 'acute-ascending-weakness')).toBe('present');
    expect(stateOf(flags, 'neuromuscular-respiratory-failure')).toBe('not-assessable');
  });

  it.each([
    ['vital-capacity-per-kg', 'mL/kg', 19, 'present'],
    ['vital-capacity-per-kg', 'mL/kg', 20, 'absent'],
    ['max-inspiratory-pressure', 'cm[H2O]', 29, 'present'],
    ['max-inspiratory-pressure', 'cm[H2O]', 30, 'absent'],
    ['max-expiratory-pressure', 'cm[H2O]', 39, 'present'],
    ['max-expiratory-pressure', 'cm[H2O]', 40, 'absent'],
  ])('%s of %s: %i is %s', (key, code, value, state) => {
    const results = [{ key, valueQuantity: { value, unit: code, system: 'http://unitsofmeasure.org', code } }];
    const flags = assessRedFlags(bedsideExam({ history: acute, findings, results }), anywhere);
    expect(stateOf(flags, 'neuromuscular-respiratory-failure')).toBe(state);
  });

  it('divides a volume by the body weight', () => {
    const flags = assessRedFlags(exampleRead('ascending-weakness'), anywhere);
    const flag = flags.find(({ key }) => key === 'neuromuscular-respiratory-failure');
    expect(flag?.state).toBe('present');
    expect(flag?.because[0]?.text).toContain('18.9 mL/kg');
  });

  it('is left to the cauda equina flag when the saddle is numb and the arms are strong', () => {
    const numb = { ...findings, sphincters: [{ sign: 'saddle-anaesthesia', present: true }] };
    const flags = assessRedFlags(bedsideExam({ history: acute, findings: numb }), anywhere);
    expect(stateOf(flags, 'acute-ascending-weakness')).toBeUndefined();
    expect(stateOf(flags, 'suspected-cauda-equina-syndrome')).toBe('present');
  });

  // International consensus guidance on myasthenia gravis 2021: bulbar weakness calls for measuring the breathing.
  it('misses the vital capacity in a junction disorder with weak swallowing, however long it lasts', () => {
    const exam = bedsideExam({
      history: { onset: { pace: 'subacute', durationDays: 60 }, symptoms: [{ key: 'dysphagia', present: true }] },
      findings: { cranialNerves: [{ sign: 'fatigable-ptosis', side: 'left', present: true }] },
    });
    const flags = assessRedFlags(exam, localised(site('postsynaptic-junction', 'junction')));
    expect(stateOf(flags, 'neuromuscular-respiratory-failure')).toBe('not-assessable');
  });

  it('is not suspected after four weeks', () => {
    const history = { onset: { pace: 'subacute', durationDays: 60 }, course: 'progressive' };
    expect(
      stateOf(assessRedFlags(bedsideExam({ history, findings }), anywhere), 'acute-ascending-weakness'),
    ).toBeUndefined();
  });
});

describe('brain', () => {
  const sudden = { onset: { pace: 'hyperacute', durationDays: 0.2 } };
  const hemiparesis = {
    power: [
      { movement: 'elbow-extension', side: 'right', grade: '3' },
      { movement: 'hip-flexion', side: 'right', grade: '4' },
    ],
  };

  it('suspects stroke only when the onset was sudden', () => {
    const brain = localised(site('internal-capsule', 'hemisphere'));
    expect(
      stateOf(assessRedFlags(bedsideExam({ history: sudden, findings: hemiparesis }), brain), 'suspected-stroke'),
    ).toBe('present');
    const slow = { onset: { pace: 'subacute', durationDays: 30 } };
    expect(
      stateOf(assessRedFlags(bedsideExam({ history: slow, findings: hemiparesis }), brain), 'suspected-stroke'),
    ).toBeUndefined();
  });

  it('does not call a wrist drop found on waking a stroke', () => {
    const findings = { power: [{ movement: 'wrist-extension', side: 'right', grade: '1' }] };
    const radial = localised(site('radial-nerve-spiral-groove', 'nerve'));
    expect(
      stateOf(assessRedFlags(bedsideExam({ history: sudden, findings }), radial), 'suspected-stroke'),
    ).toBeUndefined();
  });

  it('reports a thunderclap headache even when the examination is normal', () => {
    const history = { symptoms: [{ key: 'thunderclap-headache', present: true }] };
    expect(stateOf(assessRedFlags(bedsideExam({ history }), nothingFound), 'thunderclap-headache')).toBe('present');
  });

  // NICE NG240: fever and headache with neck stiffness, altered state or a non-blanching rash.
  it('cannot decide on meningitis when neck stiffness was not examined', () => {
    const history = {
      symptoms: [
        { key: 'fever', present: true },
        { key: 'headache', present: true },
      ],
    };
    expect(stateOf(assessRedFlags(bedsideExam({ history }), nothingFound), 'suspected-meningitis')).toBe(
      'not-assessable',
    );
    const findings = { specialTests: [{ test: 'neck-stiffness', result: 'positive' }] };
    expect(stateOf(assessRedFlags(bedsideExam({ history, findings }), nothingFound), 'suspected-meningitis')).toBe(
      'present',
    );
  });

  // NICE NG128 and the guideline on Bell palsy of 2013: the forehead tells the brain from the nerve.
  it('asks for the forehead of a face that is told to have fallen within three days', () => {
    const history = { onset: { pace: 'acute', durationDays: 2 }, symptoms: [{ key: 'face-droop', present: true }] };
    const flags = (exam: Record<string, unknown>) => assessRedFlags(bedsideExam(exam), nothingFound);
    expect(stateOf(flags({ history }), 'acute-facial-palsy')).toBe('not-assessable');
    const findings = { cranialNerves: [{ sign: 'facial-weakness', side: 'left', present: true }] };
    expect(stateOf(flags({ history, findings }), 'acute-facial-palsy')).toBe('present');
    const forehead = { cranialNerves: [{ sign: 'upper-facial-weakness', side: 'left', present: false }] };
    expect(flags({ history, findings: forehead }).map(({ key }) => key)).not.toContain('acute-facial-palsy');
  });

  // Fang 2017: compressive palsies are those with a pupil, pain or youth.
  it('suspects an aneurysm in a third nerve palsy with a large pupil, and asks for a pupil that is not recorded where small vessels are at risk', () => {
    const person = { ageYears: 66 };
    const palsy = { sign: 'third-nerve-palsy', side: 'left', present: true };
    const pupil = { sign: 'dilated-pupil', side: 'left', present: true };
    const diabetic = { ...acute, conditions: [{ key: 'diabetes-mellitus', present: true }] };
    const flags = (cranialNerves: unknown[], history: object = diabetic) =>
      assessRedFlags(bedsideExam({ person, history, findings: { cranialNerves } }), anywhere);
    expect(stateOf(flags([palsy, pupil]), 'compressive-third-nerve-palsy')).toBe('present');
    expect(stateOf(flags([palsy]), 'compressive-third-nerve-palsy')).toBe('not-assessable');
    expect(stateOf(flags([palsy], acute), 'compressive-third-nerve-palsy')).toBe('present');
    expect(stateOf(flags([palsy, { ...pupil, present: false }]), 'compressive-third-nerve-palsy')).toBe('absent');
  });
});

describe('every present flag', () => {
  it('comes first of those that press alike where its causes are likely, so that its action is said', () => {
    const exam = bedsideExam({
      history: { ...acute, symptoms: ['fever', 'headache', 'seizure'].map((key) => ({ key, present: true })) },
      findings: {
        higherFunction: [
          { sign: 'confusion', present: true },
          { sign: 'receptive-aphasia', present: true },
        ],
      },
    });
    const localisation = localised(site('cortex-temporal', 'hemisphere'));
    const [first, ...others] = assessRedFlags(exam, localisation, rankCauses(exam, localisation));
    expect(first?.key).toBe('suspected-encephalitis');
    expect(others.map(({ key }) => key)).toContain('suspected-meningitis');
  });

  // NICE NG217: a seizure that does not stop is treated before anything else.
  it('gives way to what kills within minutes', () => {
    const exam = bedsideExam({
      history: {
        ...acute,
        symptoms: ['fever', 'headache', 'seizure', 'ongoing-seizure'].map((key) => ({ key, present: true })),
      },
      findings: { higherFunction: [{ sign: 'confusion', present: true }] },
    });
    const localisation = localised(site('diffuse-encephalopathy', 'encephalopathy'));
    expect(assessRedFlags(exam, localisation, rankCauses(exam, localisation))[0]?.key).toBe('status-epilepticus');
  });

  it('is not asked for in the cauda equina where lids and limbs tire', () => {
    const exam = bedsideExam({
      history: { onset: { pace: 'subacute', durationDays: 21 } },
      findings: {
        cranialNerves: [{ sign: 'fatigable-ptosis', side: 'both', present: true }],
        power: [{ movement: 'hip-flexion', side: 'both', grade: '4' }],
      },
    });
    const flags = (where: ReturnType<typeof localised>) => assessRedFlags(exam, where).map(({ key }) => key);
    expect(flags(localised(site('postsynaptic-junction', 'junction')))).not.toContain(
      'suspected-cauda-equina-syndrome',
    );
    expect(flags(localised(site('proximal-myopathy', 'muscle')))).toContain('suspected-cauda-equina-syndrome');
  });

  it('stays, whatever sites and causes are held likely beside it', () => {
    const exams = (['ascending-weakness', 'cervical-cord'] as const).map(exampleRead);
    const kinds = ['nerve', 'muscle', 'polyneuropathy', 'junction', 'root', 'hemisphere', 'none'] as const;
    const anySite = fc.record({
      kind: fc.constantFrom(...kinds),
      probability: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    const present = (flags: readonly RedFlag[]) =>
      flags.filter((flag) => flag.state === 'present').map((flag) => flag.key);
    fc.assert(
      fc.property(fc.constantFrom(...exams), fc.array(anySite, { maxLength: 4 }), (exam, sites) => {
        const alone = present(assessRedFlags(exam, localised()));
        const beside = sites.map(({ kind, probability }) => site('any', kind, probability));
        expect(present(assessRedFlags(exam, localised(...beside)))).toEqual(expect.arrayContaining(alone));
      }),
      { numRuns: 60 },
    );
  });

  it('gives reasons, an action and a source', () => {
    for (const flag of assessRedFlags(exampleRead('ascending-weakness'), anywhere)) {
      expect(flag.because.length, flag.key).toBeGreaterThan(0);
      expect(flag.action).not.toBe('');
      expect(flag.source).not.toBe('');
    }
  });
});

// A remedy of its own is said in place of the usual action, and a known poison comes first.
describe('what is said of a danger that has its own remedy', () => {
  const result = (key: string, value: number, unit: string) => ({
    key,
    valueQuantity: { value, unit, code: unit, system: 'http://unitsofmeasure.org' },
  });
  const flagsOf = (parts: Record<string, unknown>, where = anywhere) => assessRedFlags(bedsideExam(parts), where);
  const actionOf = (key: string, parts: Record<string, unknown>) =>
    flagsOf(parts).find((flag) => flag.key === key)?.action ?? '';
  const confused = { higherFunction: [{ sign: 'confusion', present: true }] };

  it('a toxic level of lithium is said first, with dialysis and the level after six hours', () => {
    const parts = {
      history: { onset: { pace: 'subacute', durationDays: 6 }, medications: [{ key: 'lithium', present: true }] },
      findings: { higherFunction: [{ sign: 'drowsiness', present: true }] },
      results: [result('lithium-level', 2.6, 'mmol/L')],
    };
    expect(flagsOf(parts)[0]?.key).toBe('suspected-poisoning');
    expect(actionOf('suspected-poisoning', parts)).toMatch(/dialysis.*6 hours/);
  });

  it('an organophosphate is met with atropine, and a metal of months with the usual action', () => {
    const poisoned = (key: string, onset: object) => ({
      history: { onset, exposures: [{ key, present: true }], symptoms: [{ key: 'vomiting', present: true }] },
    });
    const hours = { pace: 'hyperacute', durationDays: 0.2 };
    expect(actionOf('suspected-poisoning', poisoned('organophosphate', hours))).toContain('atropine');
    expect(actionOf('suspected-poisoning', poisoned('thallium', { durationDays: 10 }))).toContain('poisons service');
    expect(actionOf('suspected-poisoning', poisoned('thallium', { durationDays: 10 }))).not.toContain('atropine');
  });

  it('a low sodium under a fit is met with hypertonic saline, and one under a clear mind slowly', () => {
    const low = [result('sodium', 118, 'mmol/L')];
    const fit = { history: { symptoms: [{ key: 'ongoing-seizure', present: true }] }, results: low };
    expect(actionOf('dangerous-sodium-or-calcium', fit)).toContain('150 mL');
    expect(actionOf('dangerous-sodium-or-calcium', { results: low })).toMatch(/^Monitored correction/);
  });

  it('a short magnesium goes with the thiamine', () => {
    const eyes = { cranialNerves: [{ sign: 'ophthalmoplegia', side: 'both', present: true }], ...confused };
    const parts = (value: number) => ({
      history: { onset: { pace: 'acute', durationDays: 4 }, exposures: [{ key: 'alcohol-excess', present: true }] },
      findings: eyes,
      results: [result('magnesium', value, 'mmol/L')],
    });
    expect(actionOf('suspected-wernicke-encephalopathy', parts(0.5))).toContain('magnesium');
    expect(actionOf('suspected-wernicke-encephalopathy', parts(0.9))).not.toContain('magnesium');
  });

  it('a Horner syndrome over a failing hand for months is the apex of the lung, a fresh one the artery', () => {
    const parts = (onset: object) => ({
      history: { onset, symptoms: [{ key: 'arm-pain', side: 'left', present: true }] },
      findings: {
        cranialNerves: [{ sign: 'horner-syndrome', side: 'left', present: true }],
        power: [{ movement: 'finger-abduction', side: 'left', grade: '4' }],
      },
    });
    const old = parts({ pace: 'chronic', durationDays: 80 });
    expect(flagsOf(old).find(({ key }) => key === 'painful-horner-syndrome')?.urgency).toBe('urgent');
    expect(actionOf('painful-horner-syndrome', old)).toContain('lung');
    const fresh = parts({ pace: 'acute', durationDays: 3 });
    expect(flagsOf(fresh).find(({ key }) => key === 'painful-horner-syndrome')?.urgency).toBe('immediate');
    expect(actionOf('painful-horner-syndrome', fresh)).toContain('angiography');
  });
});

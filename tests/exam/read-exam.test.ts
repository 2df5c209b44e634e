import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Exam } from '../../src/exam/exam.ts';
import type { Finding } from '../../src/exam/finding.ts';
import { footDropRequest, requestWith, requestWithFindings } from './support/exam-request.ts';
import { faultsOf, read } from './support/read.ts';

const recorded = (exam: Exam): readonly Finding[] => exam.findings.filter((finding) => finding.origin === 'recorded');
const byId = (exam: Exam, id: string): Finding | undefined => exam.findings.find((finding) => finding.id === id);

describe('reading an exam', () => {
  it('reads a request that uses every part', () => {
    const exam = read(footDropRequest);
    expect(exam).toMatchObject({
      identifier: { system: 'https://clinic.example/exams', value: 'EX-2041' },
      status: 'final',
      subject: { reference: 'Patient/4711' },
      performer: [{ reference: 'Practitioner/7' }],
      person: { ageYears: 46, sex: 'female' },
      onset: { pace: 'acute', durationDays: 3 },
      course: 'static',
    });
    expect(exam.history.map(({ kind, key, present }) => [kind, key, present])).toEqual([
      ['symptom', 'back-pain', false],
      ['condition', 'diabetes-mellitus', true],
      ['exposure', 'alcohol-excess', false],
      ['family', 'similar-disorder', true],
      ['medication', 'vincristine', true],
    ]);
  });

  it('gives each finding its id, value and place in the request', () => {
    expect(
      recorded(read(footDropRequest)).map(({ id, value, abnormal, pointer }) => [id, value, abnormal, pointer]),
    ).toEqual([
      ['higher-function/expressive-aphasia|midline', 'absent', false, '/findings/higherFunction/0'],
      ['cranial-nerves/ptosis|right', 'present', true, '/findings/cranialNerves/0'],
      ['inspection/wasting@leg-below-knee|left', 'present', true, '/findings/inspection/0'],
      ['involuntary-movements/resting-tremor@hand|right', 'present', true, '/findings/involuntaryMovements/0'],
      ['tone/lower-limb|left', 'normal', false, '/findings/tone/0'],
      ['clonus/ankle|left', 0, false, '/findings/clonus/0'],
      ['power/ankle-dorsiflexion|left', '3', true, '/findings/power/0'],
      ['reflexes/ankle|left', '2', false, '/findings/reflexes/0'],
      ['reflexes/ankle|right', '2', false, '/findings/reflexes/0'],
      ['plantars/plantar-response|left', 'flexor', false, '/findings/plantars/0'],
      ['sensation/light-touch@dermatome:L5|left', 'altered', true, '/findings/sensation/1'],
      ['sensation/pinprick@dorsum-of-foot|left', 'reduced', true, '/findings/sensation/0'],
      [
        'sensation/temperature@territory:lateral-femoral-cutaneous-nerve|left',
        'normal',
        false,
        '/findings/sensation/2',
      ],
      ['sensation/vibration@level-below:T10|left', 'normal', false, '/findings/sensation/3'],
      ['sensation/vibration@level-below:T10|right', 'normal', false, '/findings/sensation/3'],
      ['coordination/heel-shin|left', 'normal', false, '/findings/coordination/0'],
      ['gait/high-stepping|left', 'present', true, '/findings/gait/0'],
      ['sphincters/urinary-retention|midline', 'absent', false, '/findings/sphincters/0'],
      ['autonomic/orthostatic-hypotension|midline', 'absent', false, '/findings/autonomic/0'],
      ['special-tests/straight-leg-raise|left', 'negative', false, '/findings/specialTests/0'],
    ]);
  });

  it('needs neither identifier nor subject for a localisation', () => {
    const { identifier, subject, ...body } = footDropRequest;
    expect(faultsOf(body, 'localise')).toEqual([]);
    expect(faultsOf(body, 'record').map((fault) => fault.suggestion)).toEqual(['identifier', 'subject']);
    expect(read(body, 'localise').subject).toBeUndefined();
    expect(identifier).toBeDefined();
    expect(subject).toBeDefined();
  });

  it('takes a status of final when none is sent', () => {
    expect(read(requestWith({})).status).toBe('final');
  });

  it('keeps "not tested" apart from normal and from a deficit', () => {
    const exam = read(
      requestWithFindings({
        power: [{ movement: 'ankle-dorsiflexion', side: 'left', notTested: 'pain', note: 'splinted' }],
      }),
    );
    expect(exam.findings).toMatchObject([{ value: null, notTested: 'pain', abnormal: false, note: 'splinted' }]);
  });

  it.each([
    [3, false],
    [4, true],
  ])('takes clonus of %i beats as abnormal: %s', (beats, abnormal) => {
    const exam = read(requestWithFindings({ clonus: [{ site: 'ankle', side: 'left', beats }] }));
    expect(exam.findings[0]?.abnormal).toBe(abnormal);
  });

  it('adds up the coma scale, and has no total while a part is not tested', () => {
    const scales = (parts: object) =>
      read(requestWithFindings({ higherFunction: [{ scale: 'glasgow-coma-scale', ...parts }] })).scales;
    expect(scales({ eye: 3, verbal: 4, motor: 5, total: 12 })).toMatchObject([{ total: 12 }]);
    expect(scales({ eye: 3, verbal: { notTested: 'unable' }, motor: 5 })).toMatchObject([
      { total: null, parts: { eye: 3, verbal: null, motor: 5 }, notTested: { verbal: 'unable' } },
    ]);
    expect(scales({ notTested: 'not-done' })).toMatchObject([
      { total: null, notTested: { eye: 'not-done', verbal: 'not-done', motor: 'not-done' } },
    ]);
  });

  it('keeps one of two identical entries', () => {
    const entry = { movement: 'ankle-dorsiflexion', side: 'left', grade: '3' };
    expect(read(requestWithFindings({ power: [entry, entry] })).findings).toHaveLength(1);
  });

  it('gives the same exam whatever the order of the findings', () => {
    const sections = Object.entries(footDropRequest.findings);
    const withoutPointers = (exam: Exam) =>
      JSON.stringify(exam, (key, value) => (key === 'pointer' ? undefined : value));
    const expected = withoutPointers(read(footDropRequest));
    const shuffled = fc.tuple(
      fc.shuffledSubarray(sections, { minLength: sections.length }),
      fc.shuffledSubarray([...footDropRequest.findings.sensation], { minLength: 4 }),
      fc.shuffledSubarray([...footDropRequest.results], { minLength: 2 }),
    );
    fc.assert(
      fc.property(shuffled, ([order, sensation, results]) => {
        const findings = { ...Object.fromEntries(order), sensation };
        expect(withoutPointers(read({ ...footDropRequest, findings, results }))).toBe(expected);
      }),
      { numRuns: 50 },
    );
  });

  it('reads an exam of a hundred findings in under 5 ms once warm', () => {
    // A wide margin over the usual fraction of a millisecond, so that a busy machine does not fail the test.
    const power = read(requestWith({ otherwiseNormal: [{ section: 'power' }] })).findings;
    const body = requestWithFindings({
      power: power.slice(0, 100).map(({ item, side }) => ({
        movement: item.key,
        ...(side === 'midline' ? {} : { side }),
        grade: '5',
      })),
    });
    for (let round = 0; round < 100; round++) read(body);
    const start = performance.now();
    for (let round = 0; round < 100; round++) read(body);
    expect((performance.now() - start) / 100).toBeLessThan(5);
  });
});

describe('what the examiner declares normal', () => {
  it('covers every item of the section and region that is not stated', () => {
    const exam = read(footDropRequest);
    const declared = exam.findings.filter((finding) => finding.origin === 'otherwise-normal');
    expect(declared.every(({ item }) => item.section === 'power' && item.region === 'lower-limbs')).toBe(true);
    expect(declared.every(({ value, abnormal }) => value === '5' && !abnormal)).toBe(true);
    expect(byId(exam, 'power/ankle-dorsiflexion|right')).toMatchObject({
      origin: 'otherwise-normal',
      pointer: '/otherwiseNormal/0',
    });
    expect(exam.findings.filter((finding) => finding.id === 'power/ankle-dorsiflexion|left')).toHaveLength(1);
  });

  it('takes the normal value of each scale', () => {
    const sections = [
      'clonus',
      'reflexes',
      'plantars',
      'tone',
      'coordination',
      'specialTests',
      'cranialNerves',
    ] as const;
    const exam = read(requestWith({ otherwiseNormal: sections.map((section) => ({ section })) }));
    expect(exam.findings.some((finding) => finding.abnormal || finding.value === null)).toBe(false);
    expect(byId(exam, 'clonus/ankle|left')?.value).toBe(0);
    expect(byId(exam, 'reflexes/knee|right')?.value).toBe('2');
    expect(byId(exam, 'cranial-nerves/ptosis|left')?.value).toBe('absent');
  });

  it('covers one side only where one is named', () => {
    const exam = read(requestWith({ otherwiseNormal: [{ section: 'power', region: 'upper-limbs', side: 'right' }] }));
    expect(new Set(exam.findings.map((finding) => finding.side))).toEqual(new Set(['right']));
  });

  it('declares sensation region by region, once for each modality and side', () => {
    const exam = read(requestWith({ otherwiseNormal: [{ section: 'sensation', region: 'lower-limbs' }] }));
    expect(exam.findings).toHaveLength(10);
    expect(byId(exam, 'sensation/vibration@region:lower-limbs|left')).toMatchObject({
      value: 'normal',
      modality: 'vibration',
    });
  });

  it('says nothing of parts that are lost', () => {
    const exam = read(
      requestWith({
        findings: { inspection: [{ sign: 'amputation', site: 'knee', side: 'left', present: true }] },
        otherwiseNormal: [{ section: 'power' }],
      }),
    );
    expect(byId(exam, 'power/ankle-dorsiflexion|left')).toBeUndefined();
    expect(byId(exam, 'power/ankle-dorsiflexion|right')).toBeDefined();
    expect(byId(exam, 'power/hip-flexion|left')).toBeDefined();
  });

  it('covers the other side of a sign that is stated on one side', () => {
    const exam = read(
      requestWith({
        findings: { gait: [{ sign: 'high-stepping', side: 'left', present: true }] },
        otherwiseNormal: [{ section: 'gait' }],
      }),
    );
    const sides = exam.findings
      .filter((finding) => finding.item.key === 'high-stepping')
      .map(({ side, value }) => [side, value]);
    expect(sides).toEqual([
      ['left', 'present'],
      ['right', 'absent'],
    ]);
  });
});

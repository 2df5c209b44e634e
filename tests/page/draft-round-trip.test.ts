import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { indexCatalogue, type PlaceKind } from '../../src/page/catalogue.ts';
import { type Cell, cellKey, type Draft, emptyDraft, type NotTestedReason } from '../../src/page/draft/draft.ts';
import { draftOfExam } from '../../src/page/draft/draft-of-exam.ts';
import { examOfDraft } from '../../src/page/draft/exam-of-draft.ts';
import { catalogue, exampleExam } from './catalogue.ts';

const index = indexCatalogue(catalogue);
const reader = createExamReader();
const now = new Date('2026-06-01T00:00:00Z');

type Json = Readonly<Record<string, unknown>>;

function throughDraft(exam: Json): Json {
  return examOfDraft(draftOfExam(exam, index), index).exam;
}

/** All that the service takes an exam to say, without where and in which order it was said. */
function meaningOf(exam: Json): unknown {
  const read = reader.read(JSON.parse(JSON.stringify(exam)), { purpose: 'record', now });
  const inOrder = (values: readonly unknown[]) => values.map((value) => JSON.stringify(value)).sort();
  const plain = JSON.parse(JSON.stringify(read, (key, value) => (key === 'pointer' ? undefined : value)));
  return {
    ...plain,
    findings: inOrder(plain.findings),
    history: inOrder(plain.history),
    otherwiseNormal: inOrder(plain.otherwiseNormal),
  };
}

const uuidUrn = 'urn:uuid:0b6a2a3e-6f1c-4c55-9d0e-2f7a8c1d9e10';
const reasons: readonly NotTestedReason[] = ['pain', 'declined', 'unable', 'not-done', 'limb-absent', 'other'];

describe('an exam that becomes a draft and an exam again', () => {
  it.each(['foot-drop', 'cervical-cord', 'ascending-weakness'] as const)('says the same: %s', (name) => {
    const exam = exampleExam(name);
    expect(meaningOf(throughDraft(exam))).toEqual(meaningOf(exam));
  });

  it.each<readonly [string, Json]>([
    [
      'a coma scale with a note and a part not tested',
      {
        findings: {
          higherFunction: [
            { scale: 'glasgow-coma-scale', eye: 4, verbal: { notTested: 'unable' }, motor: 6, note: 'tube in place' },
          ],
        },
      },
    ],
    [
      'a coma scale that was not done at all',
      { findings: { higherFunction: [{ scale: 'glasgow-coma-scale', notTested: 'declined' }] } },
    ],
    [
      'a repeat of which only one has a note',
      {
        findings: {
          reflexes: [
            { reflex: 'ankle', side: 'both', grade: '2', note: 'brisk after a walk' },
            { reflex: 'ankle', side: 'left', grade: '2' },
          ],
        },
      },
    ],
    [
      'a reflex that was tried with reinforcement and not obtained',
      { findings: { reflexes: [{ reflex: 'knee', side: 'right', notTested: 'pain', reinforced: true }] } },
    ],
    [
      'places of every kind',
      {
        findings: {
          sensation: [
            { modality: 'pinprick', dermatome: 'L5', side: 'both', result: 'reduced' },
            { modality: 'pinprick', levelBelow: 'T10', side: 'left', result: 'absent' },
            { modality: 'light-touch', territory: 'lateral-sural-cutaneous-nerve', side: 'right', result: 'normal' },
            { modality: 'vibration', site: 'great-toe', side: 'left', result: 'absent' },
          ],
        },
      },
    ],
    [
      'a side that is stated once and once not',
      {
        findings: {
          gait: [
            { sign: 'high-stepping', present: true },
            { sign: 'high-stepping', side: 'left', present: true },
          ],
        },
      },
    ],
    [
      'richer references',
      {
        subject: { reference: 'Patient/1', display: 'bed 4', identifier: { system: 'urn:x:y', value: '1' } },
        encounter: { identifier: { value: 'urn:stay:7' } },
        performer: [{ reference: 'Practitioner/7' }, { identifier: { value: '12' } }],
      },
    ],
    [
      'a version of a person on another server',
      { subject: { reference: 'https://a.example/fhir/Patient/1/_history/2' } },
    ],
    ['a reference by UUID', { subject: { reference: uuidUrn }, performer: [{ reference: 'Organization/2' }] }],
    ['an identifier that looks like a reference', { subject: { identifier: { value: 'Patient/9' } } }],
    ['no tests asked for', { requests: [] }],
    ['some tests asked for', { requests: ['electromyography'] }],
    ['a withdrawn exam', { status: 'entered-in-error' }],
  ])('keeps %s', (_what, part) => {
    const { findings: _findings, otherwiseNormal: _normal, ...head } = exampleExam('foot-drop');
    const exam = { ...head, ...part };
    expect(meaningOf(throughDraft(exam))).toEqual(meaningOf(exam));
  });
});

const cells: fc.Arbitrary<readonly (readonly [string, Cell])[]> = fc.array(
  fc
    .constantFrom(...catalogue.sections.flatMap(({ section, items }) => items.map((item) => ({ section, item }))))
    .chain(({ section, item }) => {
      const { values } = item;
      const value = Array.isArray(values)
        ? fc.constantFrom(...values.map(({ key }) => key))
        : fc.integer({ min: values.minimum, max: values.maximum });
      const { dermatomes, landmarks, territories, levels } = catalogue.places;
      const keysOf = (rows: readonly { readonly key: string }[]) => rows.map(({ key }) => key);
      const placeOf = (kind: PlaceKind, keys: readonly string[]) =>
        fc.constantFrom(...keys).map((key) => ({ place: { kind, key } }));
      const place =
        section === 'sensation'
          ? fc.oneof(
              placeOf('site', keysOf(landmarks)),
              placeOf('dermatome', keysOf(dermatomes)),
              placeOf('territory', keysOf(territories)),
              placeOf('levelBelow', levels),
            )
          : fc.oneof(
              ...(item.siteRequired === true ? [] : [fc.constant({})]),
              ...(item.sites === undefined ? [] : [placeOf('site', item.sites)]),
            );
      const sides = {
        paired: ['left', 'right'],
        midline: ['midline'],
        optional: ['left', 'right', 'midline'],
      } as const;
      return fc
        .tuple(
          fc.record({ place, side: fc.constantFrom(...sides[item.sides as keyof typeof sides]) }),
          fc.oneof(
            value.map((one) => ({ value: one })),
            fc.constantFrom(...reasons).map((notTested) => ({ notTested })),
          ),
          fc.option(fc.stringMatching(/^[a-z]{1,12}$/), { nil: undefined }),
          fc.constantFrom(undefined, true, false),
        )
        .map(
          ([where, state, note, reinforced]) =>
            [
              cellKey({ section, item: item.key, side: where.side, ...where.place }),
              {
                ...state,
                ...(note !== undefined && { note }),
                ...(reinforced !== undefined && item.scale === 'reflex-grade' && { reinforced }),
              },
            ] as const,
        );
    }),
  { maxLength: 30 },
);

const typed = fc.oneof(
  fc.constantFrom(
    '',
    'Patient/4711',
    'Encounter/8',
    'Practitioner/a',
    uuidUrn,
    'https://a.example/Patient/3',
    'urn:x',
    '0815',
  ),
  fc.string({ maxLength: 30 }).map((text) => text.trim()),
);

const comaScores = fc.record(
  Object.fromEntries(
    catalogue.comaScale.parts.map(({ key, scores }) => [
      key,
      fc.oneof(
        fc.constantFrom(...scores).map(({ score }) => ({ score })),
        fc.constantFrom(...reasons).map((notTested) => ({ notTested })),
      ),
    ]),
  ),
);

const drafts: fc.Arbitrary<Draft> = fc
  .record({
    cells: cells.map((entries) => Object.fromEntries(entries)),
    comaScale: fc.oneof(fc.constant({}), comaScores),
    subject: typed,
    encounter: typed,
    performer: typed,
    requests: fc.option(fc.subarray(catalogue.investigations.map(({ key }) => key)), { nil: undefined }),
    status: fc.constantFrom('preliminary', 'final', 'amended', 'entered-in-error'),
    pace: fc.constantFrom(undefined, 'acute', 'chronic'),
    ageYears: fc.option(fc.integer({ min: 0, max: 120 }), { nil: undefined }),
  })
  .map(({ requests, pace, ageYears, ...rest }) => ({
    ...emptyDraft(now, () => '5d1cf3f6-1a0b-4f0b-8a57-51a2f2d8e1aa'),
    ...rest,
    ...(requests !== undefined && { requests }),
    onset: { ...(pace !== undefined && { pace }) },
    person: { ...(ageYears !== undefined && { ageYears }) },
  })) as fc.Arbitrary<Draft>;

describe('a draft that becomes an exam and a draft again', () => {
  it('is the same, whatever was recorded', () => {
    fc.assert(
      fc.property(drafts, (draft) => {
        expect(draftOfExam(JSON.parse(JSON.stringify(examOfDraft(draft, index).exam)), index)).toEqual(draft);
      }),
      { numRuns: 25 },
    );
  });

  it('gives the same exam to the byte at the second turn, so that a repeat is no correction', () => {
    fc.assert(
      fc.property(drafts, (draft) => {
        const once = examOfDraft(draft, index).exam;
        expect(JSON.stringify(throughDraft(once))).toBe(JSON.stringify(once));
      }),
      { numRuns: 25 },
    );
  });

  it('leads from every finding back to the cells that it was made of', () => {
    fc.assert(
      fc.property(drafts, (draft) => {
        const { cellsAt } = examOfDraft(draft, index);
        const named = [...cellsAt.values()].flat().map(cellKey);
        expect(named.sort()).toEqual(Object.keys(draft.cells).sort());
      }),
      { numRuns: 25 },
    );
  });
});

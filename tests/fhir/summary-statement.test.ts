import type { Bundle, Observation } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import type { NormalStatement } from '../../src/exam/finding.ts';
import { buildBundle } from '../../src/fhir/bundle.ts';
import { frameOf } from '../../src/fhir/frame.ts';
import { statementName, statementObservation, statementText } from '../../src/fhir/summary-statement.ts';
import { builtSteps } from '../support/built.ts';
import { exampleExam } from '../support/example-exam.ts';
import { ofType } from './support/bundle-building.ts';
import { assessment, exam } from './support/exam-fixture.ts';

const observationsOf = (bundle: Bundle) => ofType(bundle, 'Observation');
const codeOf = (one: Observation | undefined) => one?.code.coding?.[0]?.code;
const frame = frameOf(exam, 'test', 1);
const statements: readonly (readonly [Omit<NormalStatement, 'pointer'>, string, string, string | undefined])[] = [
  [{ section: 'cranialNerves' }, 'Cranial nerves otherwise normal', 'otherwise-normal/cranial-nerves', undefined],
  [
    { section: 'power', region: 'lower-limbs' },
    'Power of the lower limbs otherwise normal',
    'otherwise-normal/power@lower-limbs',
    'lower-limb',
  ],
  [
    { section: 'power', region: 'lower-limbs', side: 'both' },
    'Power of the lower limbs otherwise normal',
    'otherwise-normal/power@lower-limbs',
    'lower-limb',
  ],
  [
    { section: 'reflexes', region: 'upper-limbs', side: 'left' },
    'Reflexes of the left upper limb otherwise normal',
    'otherwise-normal/reflexes@upper-limbs|left',
    'upper-limb.left',
  ],
  [
    { section: 'sensation', side: 'right' },
    'Sensation on the right otherwise normal',
    'otherwise-normal/sensation|right',
    undefined,
  ],
];

describe('a statement that the rest was normal', () => {
  it.each(statements)('is one Observation in its own words: %#', (statement, text, name, site) => {
    expect(statementText({ ...statement, pointer: '' })).toBe(text);
    expect(statementName(statement)).toBe(name);
    const made = statementObservation({ ...statement, pointer: '' }, frame);
    expect(codeOf(made)).toBe('otherwise-normal');
    expect(made.code.text).toBe(text);
    expect(made.valueCodeableConcept?.coding?.[0]?.code).toBe('normal');
    expect(made.interpretation?.[0]?.coding?.[0]?.code).toBe('N');
    expect(made.method?.coding?.[0]?.code).toBe('examiner-summary-statement');
    expect(made.bodySite?.coding?.[0]?.code).toBe(site);
  });

  it('is not multiplied by being made twice', () => {
    const [first] = exam.otherwiseNormal;
    const twice = [...exam.otherwiseNormal, { section: 'cranialNerves' as const, pointer: '/otherwiseNormal/3' }];
    const build = (otherwiseNormal: typeof exam.otherwiseNormal) =>
      buildBundle({ ...exam, otherwiseNormal }, assessment, { version: 1 });
    expect(first?.section).toBe('cranialNerves');
    expect(build(twice)).toEqual(build(exam.otherwiseNormal));
  });

  it('stands as evidence for the signs that it only implies, once, and those have no Observation', () => {
    const observations = observationsOf(buildBundle(exam, assessment, { version: 1 }));
    const statement = frame.ref('otherwise-normal/cranial-nerves');
    const localisation = observations.find((one) => codeOf(one) === 'localisation');
    expect(localisation?.derivedFrom?.filter(({ reference }) => reference === statement.reference)).toHaveLength(1);
    expect(observations.map(({ id }) => id)).not.toContain(frame.id('cranial-nerves/ptosis|left'));
  });

  it('is where the graded findings that it implies come from, and a member of the panel of its section', () => {
    const observations = observationsOf(buildBundle(exam, assessment, { version: 1 }));
    const statement = frame.ref('otherwise-normal/power@lower-limbs|right');
    const implied = observations.find(({ id }) => id === frame.id('power/ankle-dorsiflexion|right'));
    expect(implied?.derivedFrom).toEqual([statement]);
    const panels = observations.filter((one) =>
      one.hasMember?.some(({ reference }) => reference === statement.reference),
    );
    expect(panels.map(codeOf)).toEqual(['section/power']);
    expect(panels[0]?.text?.div).toContain('Power of the right lower limb otherwise normal');
  });

  it('claims no sign by name that the examiner did not name', () => {
    const steps = builtSteps();
    const read = steps.readExam(exampleExam({}, 'foot-drop'), { purpose: 'record', now: new Date('2030-01-01') });
    const bundle = steps.toBundle(read, steps.assess(read), { version: 1 });
    const codes = observationsOf(bundle).map((one) => codeOf(one) ?? '');
    expect(codes.filter((code) => code.startsWith('cranial-nerves/'))).toEqual([]);
    expect(codes.filter((code) => code === 'otherwise-normal')).toHaveLength(read.otherwiseNormal.length);
  });
});

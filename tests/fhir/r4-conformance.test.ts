import type { BundleEntry, Observation } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { type Exam, examStatuses } from '../../src/exam/exam.ts';
import { bundleForms, bundleTypes } from '../../src/fhir/bundle-forms.ts';
import type { Assessment } from '../../src/workup/assessment.ts';
import { bundleAs, versionsOf } from './support/bundle-building.ts';
import { assessment, exam } from './support/exam-fixture.ts';
import { ruleProblems, structureProblems } from './support/r4-rules.ts';

const bare: Exam = {
  ...exam,
  subject: { identifier: { system: 'https://clinic.example/mrn', value: '1' }, display: 'Invented person' },
  performer: [],
  findings: [],
  scales: [],
};
const silent: Assessment = {
  ...assessment,
  localisations: [],
  conclusion: 'insufficient',
  causes: [],
  redFlags: [],
  workup: [],
  proposed: [],
};
const [suggested, ...others] = assessment.proposed;
const chosen: Assessment = {
  ...assessment,
  proposed: [suggested, others[0]].flatMap((item, index) => {
    if (item === undefined) return [];
    const { tier: _t, source: _s, ...asked } = item;
    return index === 0 ? { ...item, isChosen: true } : { ...asked, isChosen: true };
  }),
  notChosen: assessment.workup,
};
const cases: readonly [string, Exam, Assessment][] = [
  ...examStatuses.map((status): [string, Exam, Assessment] => [`status ${status}`, { ...exam, status }, assessment]),
  ['findings that do not localise', exam, { ...assessment, conclusion: 'not-anatomical' }],
  ['nothing found and nothing concluded', bare, silent],
  ['investigations that the examiner chose', exam, chosen],
];

describe.each(cases)('a Bundle: %s', (_name, one, computed) => {
  it.each(bundleTypes)('obeys the R4 definitions as a %s', (type) => {
    // The second version has everything that the first had; the third withdraws all that it lacks.
    for (const transaction of versionsOf([one, computed], [one, computed], [{ ...bare, status: one.status }, silent])) {
      const bundle = bundleForms[type](transaction);
      expect(structureProblems(bundle)).toEqual([]);
      expect(ruleProblems(bundle)).toEqual([]);
    }
  });
});

describe('the checks themselves', () => {
  const first = () => {
    const bundle = structuredClone(bundleAs('collection', exam, assessment));
    const entry = bundle.entry?.find(
      ({ resource }) => resource?.resourceType === 'Observation',
    ) as BundleEntry<Observation>;
    return { bundle, observation: entry.resource as Observation };
  };

  it('see an invariant broken inside a Bundle', () => {
    const { bundle, observation } = first();
    observation.dataAbsentReason = { text: 'a reason beside a value' };
    expect(ruleProblems(bundle)).toEqual(['obs-6 at Observation']);
  });

  it('see a status outside its required value set', () => {
    const { bundle, observation } = first();
    observation.status = 'done' as 'final';
    expect(ruleProblems(bundle)).toEqual(['done is not in the value set at Observation.status']);
  });

  it('see a reference to an entry of the wrong type', () => {
    const { bundle, observation } = first();
    observation.hasMember = [{ reference: bundle.entry?.[0]?.fullUrl as string }];
    expect(structureProblems(bundle).join()).toContain('Invalid reference');
  });

  it('see an element that R4 does not have', () => {
    const { observation } = first();
    expect(structureProblems({ ...observation, laterality: 'left' } as Observation)).not.toEqual([]);
  });
});

import type { Bundle, BundleEntry, FhirResource } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import type { Exam } from '../../src/exam/exam.ts';
import { buildBundle } from '../../src/fhir/bundle.ts';
import { collectionOf, documentOf } from '../../src/fhir/bundle-forms.ts';
import { ofType, versionsOf } from './support/bundle-building.ts';
import { assessment, exam, finding, rows } from './support/exam-fixture.ts';

const without = (one: Exam, item: string): Exam => ({
  ...one,
  status: 'amended',
  findings: one.findings.filter(({ id }) => id !== item),
});
const leftDrop = 'power/ankle-dorsiflexion|left';
const first: Exam = { ...exam, findings: [...exam.findings, finding(rows.retention, 'left', 'present')] };
const second = without(exam, leftDrop);
const newer = {
  ...assessment,
  redFlags: assessment.redFlags.slice(1),
  proposed: assessment.proposed.slice(1),
  modelVersion: '2.0.0-test',
};

const statusOf = (entry: BundleEntry | undefined) => (entry?.resource as { status?: string } | undefined)?.status;
const divOf = (entry: BundleEntry | undefined) =>
  (entry?.resource as { text?: { div: string } } | undefined)?.text?.div;
const told = (entry: BundleEntry | undefined) => entry?.resource as FhirResource & { text: { div: string } };
const notice = '<p>Withdrawn by a correction of the examination.</p>';
const isWithdrawn = (entry: BundleEntry) => divOf(entry)?.includes(notice) === true;
const withdrawnIn = (bundle: Bundle | undefined) => (bundle?.entry ?? []).filter(isWithdrawn);
const find = (bundle: Bundle | undefined, fullUrl: string | undefined) =>
  bundle?.entry?.find((entry) => entry.fullUrl === fullUrl);

describe('a correction', () => {
  const [v1, v2] = versionsOf([first, assessment], [second, newer]);
  const withdrawn = withdrawnIn(v2);

  it('withdraws every thing that only the corrected version had, and nothing else', () => {
    const kept = new Set(buildBundle(second, newer, { version: 2 }).entry?.map(({ fullUrl }) => fullUrl));
    const gone = v1?.entry?.filter(({ fullUrl }) => !kept.has(fullUrl)) ?? [];
    const ofExam = gone.filter(({ resource }) => !['Device', 'Provenance'].includes(resource?.resourceType ?? ''));
    expect(withdrawn.map(({ fullUrl }) => fullUrl)).toEqual(ofExam.map(({ fullUrl }) => fullUrl));
    expect(withdrawn.map(({ resource }) => resource?.resourceType)).toEqual([
      'Observation',
      'Observation',
      'Observation',
      'ServiceRequest',
    ]);
    expect(withdrawn.map(statusOf)).toEqual(['entered-in-error', 'entered-in-error', 'entered-in-error', 'revoked']);
  });

  it('keeps of what it withdraws all but status and id, and opens its narrative', () => {
    for (const entry of withdrawn) {
      const { text: oldText, id, ...old } = told(find(v1, entry.fullUrl));
      const { text, ...now } = told(entry);
      expect(now).toEqual({ ...old, status: statusOf(entry) });
      expect(text.div).toBe(oldText.div.replace('xhtml">', `xhtml">${notice}`));
      expect(entry.request?.method).toBe('PUT');
      expect(entry.request?.url).toMatch(new RegExp(`^${now.resourceType}\\?identifier=.*${id}$`));
    }
  });

  it('holds the software that what it withdraws was made by, so that every reference is to an entry', () => {
    expect(ofType(v2 as Bundle, 'Device')).toHaveLength(2);
    const known = new Set(v2?.entry?.map(({ fullUrl }) => fullUrl));
    const inner = [...JSON.stringify(v2).matchAll(/"reference":"(urn:uuid:[^"]+)"/g)].map(([, target]) => target);
    expect(inner.filter((target) => !known.has(target))).toEqual([]);
  });

  it('holds other software only where something withdrawn names it', () => {
    const [, same] = versionsOf([exam, assessment], [second, { ...assessment, modelVersion: newer.modelVersion }]);
    expect(withdrawnIn(same)).toHaveLength(1);
    expect(ofType(same as Bundle, 'Device')).toHaveLength(1);
  });

  it('is the same to the byte from a stored Bundle', () => {
    const stored = JSON.parse(JSON.stringify(v1)) as Bundle;
    expect(JSON.stringify(buildBundle(second, newer, { version: 2, previous: stored }))).toBe(JSON.stringify(v2));
  });

  it('withdraws nothing when everything is still there', () => {
    const [, again] = versionsOf([exam, assessment], [{ ...exam, status: 'amended' }, assessment]);
    expect(withdrawnIn(again)).toEqual([]);
  });

  it('takes proposals back as errors when the whole examination was one', () => {
    const [, , wrong] = versionsOf(
      [first, assessment],
      [second, newer],
      [{ ...second, status: 'entered-in-error' }, newer],
    );
    expect(withdrawnIn(wrong).map(statusOf)).toEqual(withdrawnIn(v2).map(() => 'entered-in-error'));
  });
});

describe('a third version', () => {
  it('withdraws what only the first or second had, once, and has back what it states again', () => {
    const [v1, v2, v3] = versionsOf([first, assessment], [second, newer], [{ ...exam, status: 'amended' }, newer]);
    const drop = v1?.entry?.find(({ resource }) => JSON.stringify(resource).includes('Gave way with'))?.fullUrl;
    expect([v1, v2, v3].map((bundle) => statusOf(find(bundle, drop)))).toEqual([
      'final',
      'entered-in-error',
      'amended',
    ]);
    expect(divOf(find(v3, drop))).not.toContain(notice);
    const still = withdrawnIn(v2).filter(({ fullUrl }) => fullUrl !== drop);
    expect(withdrawnIn(v3)).toEqual(still);
  });
});

describe('the other forms of a correction', () => {
  const [, v2] = versionsOf([first, assessment], [second, newer]) as readonly [Bundle, Bundle];

  it('have in the collection all that the transaction has, each with its id', () => {
    const collection = collectionOf(v2);
    expect(collection.entry?.map(({ fullUrl }) => fullUrl)).toEqual(v2.entry?.map(({ fullUrl }) => fullUrl));
    expect(collection.entry?.map(({ resource }) => `urn:uuid:${resource?.id}`)).toEqual(
      v2.entry?.map(({ fullUrl }) => fullUrl),
    );
    expect(withdrawnIn(collection)).toHaveLength(withdrawnIn(v2).length);
    expect(JSON.stringify(collection)).not.toContain('"request"');
  });

  it('have in the document what the version states and nothing that it withdraws', () => {
    const document = documentOf(v2);
    const stated = buildBundle(second, newer, { version: 2 }).entry?.map(({ fullUrl }) => fullUrl);
    expect(document.entry?.slice(1).map(({ fullUrl }) => fullUrl)).toEqual(stated);
  });

  it('cannot be made of a Bundle that holds no examination', () => {
    expect(() => documentOf({ resourceType: 'Bundle', type: 'transaction' })).toThrow('examination');
  });
});

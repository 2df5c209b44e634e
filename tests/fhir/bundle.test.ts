import type { Bundle, FhirResource } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { buildBundle } from '../../src/fhir/bundle.ts';
import { type BundleType, bundleTypes } from '../../src/fhir/bundle-forms.ts';
import { percent } from '../../src/fhir/derived-observation.ts';
import { profileUrl, systems } from '../../src/terminology/systems.ts';
import { bundleAs, ofType } from './support/bundle-building.ts';
import { assessment, exam } from './support/exam-fixture.ts';

const build = (type: BundleType, version = 1) => bundleAs(type, exam, assessment, version);
const resourcesOf = (bundle: Bundle) => (bundle.entry ?? []).map(({ resource }) => resource as FhirResource);

describe.each(bundleTypes)('a %s Bundle', (type) => {
  it('is the same to the byte for the same exam, whatever the time zone of the process', () => {
    const before = process.env.TZ;
    const texts = ['UTC', 'Pacific/Auckland', 'America/St_Johns'].map((zone) => {
      process.env.TZ = zone;
      return JSON.stringify(build(type));
    });
    process.env.TZ = before;
    expect(new Set(texts).size).toBe(1);
  });

  it('holds no undefined, null or empty value', () => {
    const empty: string[] = [];
    const look = (value: unknown, at: string): void => {
      if (value === undefined || value === null || value === '') empty.push(at);
      if (typeof value !== 'object' || value === null) return;
      const parts = Object.entries(value);
      if (parts.length === 0) empty.push(at);
      for (const [key, part] of parts) look(part, `${at}.${key}`);
    };
    look(build(type), type);
    expect(empty).toEqual([]);
  });

  it('has references only to its own entries and to what the sender named', () => {
    const bundle = build(type);
    const known = new Set(bundle.entry?.map(({ fullUrl }) => fullUrl));
    const named = ['Patient/4711', 'Encounter/88', 'Practitioner/7'];
    const references = [...JSON.stringify(bundle).matchAll(/"reference":"([^"]+)"/g)].map(([, target]) => target ?? '');
    expect(references.filter((target) => !known.has(target) && !named.includes(target))).toEqual([]);
  });

  it('gives every resource a narrative, a fullUrl of its own, and an identifier or tag', () => {
    const bundle = build(type);
    expect(new Set(bundle.entry?.map(({ fullUrl }) => fullUrl)).size).toBe(bundle.entry?.length);
    for (const { fullUrl, resource } of bundle.entry ?? []) {
      const id = fullUrl?.replace('urn:uuid:', '');
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
      expect(resource?.id).toBe(id);
      expect((resource as { text?: { status: string } }).text?.status).toBe('generated');
      const marks = JSON.stringify([resource?.meta?.tag, (resource as { identifier?: unknown }).identifier]);
      expect(marks).toContain(id);
    }
  });
});

describe('the Bundle', () => {
  const bundle = build('collection');

  it('holds what the contract promises', () => {
    const count = (type: FhirResource['resourceType']) => ofType(bundle, type).length;
    expect(count('ClinicalImpression')).toBe(1);
    expect(count('RiskAssessment')).toBe(1);
    expect(count('ServiceRequest')).toBe(assessment.proposed.length);
    expect(count('Device')).toBe(1);
    expect(count('Provenance')).toBe(1);
    const profiled = (name: string) =>
      ofType(bundle, 'Observation').filter((one) => one.meta?.profile?.includes(profileUrl(name))).length;
    expect(profiled('neuro-exam-finding')).toBe(
      exam.findings.length - 1 + exam.scales.length + exam.otherwiseNormal.length,
    );
    expect(profiled('neuro-exam-panel')).toBe(10 + 1);
    expect(profiled('neuro-exam-derived-observation')).toBe(1 + assessment.redFlags.length);
  });

  it('marks what was computed as unreviewed and never names a person for it', () => {
    const derived = ofType(bundle, 'Observation').filter((one) => one.device !== undefined);
    expect(derived.map(({ status, performer }) => [status, performer])).toEqual(
      derived.map(() => ['preliminary', undefined]),
    );
    const [impression] = ofType(bundle, 'ClinicalImpression');
    expect(impression?.status).toBe('in-progress');
    expect(impression?.assessor).toBeUndefined();
    expect(impression?.text?.div).toContain('not reviewed by a clinician');
    expect(ofType(bundle, 'ServiceRequest').map(({ status, intent }) => [status, intent])).toEqual([
      ['draft', 'proposal'],
      ['draft', 'proposal'],
    ]);
  });

  it('names the evidence of the localisation once each, and every target of the Provenance', () => {
    const localisation = ofType(bundle, 'Observation').find((one) => one.code.coding?.[0]?.code === 'localisation');
    expect(localisation?.valueCodeableConcept?.coding?.[0]?.code).toBe('nerve-root-L5.left');
    expect(localisation?.derivedFrom).toHaveLength(4);
    const [provenance] = ofType(bundle, 'Provenance');
    expect(provenance?.target).toHaveLength(1 + 3 + 1 + 1 + 2);
  });

  it('says a probability in percent', () => {
    const [risk] = ofType(bundle, 'RiskAssessment');
    expect(risk?.prediction?.map(({ probabilityDecimal }) => probabilityDecimal)).toEqual([70, 0.04]);
    expect(risk?.text?.div).toContain('Diabetic polyneuropathy: below 0.1 %');
    expect(risk?.prediction?.map(({ qualitativeRisk }) => qualitativeRisk?.coding?.[0]?.code)).toEqual([
      'high',
      'negligible',
    ]);
  });

  it('gives a red flag a value, or a reason when it could not be assessed', () => {
    const flags = ofType(bundle, 'Observation').filter((one) => one.code.coding?.[0]?.code?.startsWith('red-flag/'));
    expect(
      flags.map((one) => one.valueCodeableConcept?.coding?.[0]?.code ?? one.dataAbsentReason?.coding?.[0]?.code),
    ).toEqual(['unknown', 'present', 'absent']);
  });

  it('names no site when the findings do not allow a conclusion, and lists the candidates', () => {
    const undecided = bundleAs('collection', exam, { ...assessment, conclusion: 'insufficient' });
    const localisation = ofType(undecided, 'Observation').find((one) => one.code.coding?.[0]?.code === 'localisation');
    expect(localisation?.valueCodeableConcept).toBeUndefined();
    expect(localisation?.dataAbsentReason?.coding?.[0]?.code).toBe('unknown');
    const codes = localisation?.component?.map(({ code }) => code.coding?.[0]?.code);
    expect(codes?.filter((code) => code === 'localisation-candidate')).toHaveLength(2);
    const [impression] = ofType(undecided, 'ClinicalImpression');
    // The pattern comes first; the site that would come next has no code where none is concluded.
    expect(impression?.finding?.[1]?.itemCodeableConcept?.coding).toBeUndefined();
  });

  it("carries the sender's own identifier on the whole-exam panel and on the impression", () => {
    const holders = resourcesOf(bundle).filter((one) => JSON.stringify(one).includes('"value":"EX-1"'));
    expect(holders.map(({ resourceType }) => resourceType)).toEqual(['Observation', 'ClinicalImpression']);
  });

  it('turns the whole exam to entered-in-error when it was', () => {
    const wrong = bundleAs('collection', { ...exam, status: 'entered-in-error' }, assessment, 2);
    const statuses = resourcesOf(wrong).flatMap((one) => ('status' in one ? [one.status] : []));
    expect(new Set(statuses)).toEqual(new Set(['entered-in-error']));
    expect(ofType(wrong, 'Provenance')[0]?.activity?.coding?.[0]?.code).toBe('NULLIFY');
  });

  it('cannot be built for an exam without an identifier or a subject', () => {
    const { identifier: _identifier, ...anonymous } = exam;
    const { subject: _subject, ...nobody } = exam;
    for (const broken of [anonymous, nobody]) {
      expect(() => buildBundle(broken, assessment, { version: 1 })).toThrow('1 fault');
    }
  });
});

describe('a probability in percent', () => {
  it.each([
    [0.8123, 81.2],
    [0.99999, 99.9],
    [1, 100],
    [0.00041, 0.04],
    [1e-12, 0.001],
    [0, 0],
  ])('of %d is %d', (probability, expected) => {
    expect(percent(probability)).toBe(expected);
  });
});

describe('the requests of a transaction', () => {
  it('are conditional creates by identifier, and by tag where the type has no identifier', () => {
    for (const { fullUrl, request } of build('transaction').entry ?? []) {
      expect(request?.method).toBe('POST');
      const [[name, value] = []] = [...new URLSearchParams(request?.ifNoneExist)];
      const id = fullUrl?.replace('urn:uuid:', '');
      expect([name, value]).toEqual(
        request?.url === 'Provenance'
          ? ['_tag', `${systems.resourceTag}|${id}`]
          : ['identifier', `${systems.resourceIdentifier}|${id}`],
      );
    }
  });

  it('are conditional updates without an id for a correction', () => {
    const updates = (build('transaction', 2).entry ?? []).filter(({ request }) => request?.method === 'PUT');
    expect(updates.length).toBe((build('transaction').entry?.length ?? 0) - 2);
    for (const { resource, request } of updates) {
      expect(resource?.id).toBeUndefined();
      expect(request?.url).toMatch(/^[A-Z][A-Za-z]+\?identifier=[^|]+$/);
    }
  });

  it('never put an own id where a server that rewrites urn:uuid texts would change it', () => {
    const bundle = build('transaction');
    for (const { resource } of bundle.entry ?? []) {
      const identifiers = JSON.stringify([resource?.meta, (resource as { identifier?: unknown }).identifier]);
      expect(identifiers).not.toContain('urn:uuid:');
    }
  });
});

describe('the document', () => {
  const document = build('document');
  const composition = ofType(document, 'Composition')[0];

  it('begins with a Composition that leads to every other entry or is led to by it', () => {
    expect(document.entry?.[0]?.resource?.resourceType).toBe('Composition');
    const entries = new Set(
      composition?.section?.flatMap((section) => section.entry?.map(({ reference }) => reference)),
    );
    const left = document.entry?.slice(1).filter(({ fullUrl }) => !entries.has(fullUrl));
    expect(left?.map(({ resource }) => resource?.resourceType)).toEqual(['Device']);
  });

  it('names the people and the encounter, which it does not hold, and points only at its own entries', () => {
    expect(composition?.subject).toEqual({ type: 'Patient', display: 'Patient/4711' });
    expect(composition?.encounter).toEqual({ type: 'Encounter', display: 'Encounter/88' });
    expect(composition?.author).toEqual([
      { type: 'Practitioner', display: 'Practitioner/7' },
      { reference: document.entry?.[1]?.fullUrl },
    ]);
  });

  it('follows the order of the examination', () => {
    expect(composition?.section?.map(({ title }) => title)).toEqual([
      'Higher function',
      'Cranial nerves',
      'Tone',
      'Clonus',
      'Power',
      'Reflexes',
      'Plantar responses',
      'Sensation',
      'Gait',
      'Sphincters and pelvic floor',
      'Assessment',
      'Proposed investigations',
    ]);
  });
});

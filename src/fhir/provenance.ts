import type { CodeableConcept, Provenance, ProvenanceEntity } from 'fhir/r4.js';
import { systems } from '../terminology/systems.ts';
import { concept, shared } from './codings.ts';
import { modelUri, softwareName } from './device.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { narrative, paragraph } from './narrative.ts';
import { examinationName } from './panel-observation.ts';

/** Name of the record of one version of the exam, for its id: every version has its own. */
function provenanceName(version: number): string {
  return `provenance/${version}`;
}

/**
 * Who computed what, from what, by which rules. Its targets are what the version computed and nothing that it withdraws,
 * in the order in which a document tells them. R4's Provenance has no identifier, so a tag takes its place: a server
 * finds the resource again by `_tag`.
 *
 * `recorded` is the time of the examination: the Bundle is a function of the exam alone. When the exam was received is
 * known to the store, and when a server took the resource in is that server's `meta.lastUpdated`.
 */
export function provenance(targets: readonly string[], frame: Frame): Provenance {
  const id = frame.id(provenanceName(frame.version));
  const source = frame.ref(examinationName);
  const entity: ProvenanceEntity[] = [{ role: 'source', what: source }];
  if (frame.version > 1) {
    entity.push({
      role: 'revision',
      what: {
        type: 'Observation',
        identifier: ownIdentifier(frame.id(examinationName)),
        display: `Examination, version ${frame.version - 1}`,
      },
    });
  }
  return {
    resourceType: 'Provenance',
    id,
    meta: { tag: [{ system: systems.resourceTag, code: id }, frame.examTag] },
    text: narrative(
      paragraph(
        `Assembled by ${softwareName}, model version ${frame.modelVersion}, from version ${frame.version} of the examination.`,
      ),
    ),
    target: targets.map(frame.ref),
    recorded: frame.examinedAt,
    policy: [modelUri(frame.modelVersion)],
    activity: activityOf(frame),
    agent: [{ type: assembler, who: frame.device }],
    entity,
  };
}

const assembler = shared(concept(systems.provenanceParticipantType, 'assembler', 'Assembler'));
const create = shared(concept(systems.dataOperation, 'CREATE', 'create'));
const update = shared(concept(systems.dataOperation, 'UPDATE', 'revise'));
const nullify = shared(concept(systems.dataOperation, 'NULLIFY', 'nullify'));

function activityOf(frame: Frame): CodeableConcept {
  if (frame.version === 1) return create;
  return frame.inError ? nullify : update;
}

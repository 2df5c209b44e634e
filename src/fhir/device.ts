import type { Device } from 'fhir/r4.js';
import { uuidV5 } from '../kernel/uuid.ts';
import { canonicalBase } from '../terminology/systems.ts';
import { shared } from './codings.ts';
import type { Identified } from './entry.ts';
import { ownIdentifier } from './identity.ts';
import { narrative, paragraph } from './narrative.ts';
import { remembered } from './remembered.ts';

export const softwareName = 'neuroexam-fhir';

/** RFC 9562, appendix A: namespace of URLs. */
const urlNamespace = '6ba7b811-9dad-11d1-80b4-00c04fd430c8';

/** Address of one version of the model; stands for the rules in `protocol`, `policy` and the Device's identity. */
export function modelUri(modelVersion: string): string {
  return `${canonicalBase}/model/${encodeURIComponent(modelVersion)}`;
}

/**
 * The software as a Device, one for each model version and the same one for all exams: its id comes from its name and
 * version alone.
 */
export const device = remembered((modelVersion: string): Identified<Device> => {
  const id = uuidV5(modelUri(modelVersion), urlNamespace);
  return shared({
    resourceType: 'Device',
    id,
    text: narrative(paragraph(`Software ${softwareName}, model version ${modelVersion}.`)),
    identifier: [ownIdentifier(id)],
    deviceName: [{ name: softwareName, type: 'user-friendly-name' }],
    type: { text: 'Clinical decision support software' },
    version: [{ type: { text: 'model' }, value: modelVersion }],
  });
});

import type { Observation, ObservationComponent } from 'fhir/r4.js';
import { comaScale } from '../exam/catalogue/coma-scale.ts';
import type { CodeLink } from '../exam/catalogue/item.ts';
import { describeParts } from '../exam/describe.ts';
import type { ScoredScale } from '../exam/finding.ts';
import { systems } from '../terminology/systems.ts';
import { concept, shared } from './codings.ts';
import { absentReason, unknownReason } from './finding-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { fhirText, isBlank, narrative, paragraph } from './narrative.ts';

const link = ({ code, display }: CodeLink) => shared(concept(systems.loinc, code, display));
const total = link(comaScale.total);
const parts = comaScale.parts.map(({ key, loinc }) => ({ key, code: link(loinc) }));

const score = (value: number) => ({ value, unit: '{score}', system: systems.ucum, code: '{score}' });

/** Name of the scale within the exam, for its id. */
export function scaleName(scale: ScoredScale): string {
  return `scale/${scale.scale}`;
}

/** "Glasgow coma scale: 10 (eye opening 4, verbal response not tested, motor response 6)" */
export function scaleText(scale: ScoredScale): string {
  return `${comaScale.label}: ${scale.total ?? 'no total'} (${describeParts(scale)})`;
}

/** The coma scale: the total as value, the three parts as components, each of which may be untested on its own. */
export function scaleObservation(scale: ScoredScale, frame: Frame): Observation {
  const id = frame.id(scaleName(scale));
  const component = parts.map(({ key, code }): ObservationComponent => {
    const value = scale.parts[key];
    return value === null
      ? { code, dataAbsentReason: absentReason(scale.notTested[key] ?? 'other') }
      : { code, valueQuantity: score(value) };
  });
  return {
    resourceType: 'Observation',
    id,
    meta: frame.meta('neuro-exam-finding'),
    text: narrative(paragraph(scaleText(scale)) + paragraph(scale.note ?? '')),
    identifier: [ownIdentifier(id)],
    ...frame.stated,
    code: total,
    ...(scale.total === null
      ? { dataAbsentReason: unknownReason('Not every part was tested') }
      : { valueQuantity: score(scale.total) }),
    ...(isBlank(scale.note) ? {} : { note: [{ text: fhirText(scale.note ?? '') }] }),
    component,
  };
}

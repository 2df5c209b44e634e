/** Addresses of every code system and identifier system in use. The local ones hang below one canonical base. */
export const canonicalBase = 'https://neuroexam-fhir.example/fhir';

export const systems = {
  hpo: 'http://human-phenotype-ontology.org',
  loinc: 'http://loinc.org',
  mondo: 'http://purl.obolibrary.org/obo/mondo.owl',
  uberon: 'http://purl.obolibrary.org/obo/uberon.owl',
  ucum: 'http://unitsofmeasure.org',
  observationCategory: 'http://terminology.hl7.org/CodeSystem/observation-category',
  interpretation: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
  dataAbsentReason: 'http://terminology.hl7.org/CodeSystem/data-absent-reason',
  provenanceParticipantType: 'http://terminology.hl7.org/CodeSystem/provenance-participant-type',
  dataOperation: 'http://terminology.hl7.org/CodeSystem/v3-DataOperation',
  riskProbability: 'http://terminology.hl7.org/CodeSystem/risk-probability',

  /** What is examined or computed: `power/ankle-dorsiflexion`, sections, panels, `localisation`, `red-flag/...`. */
  examItem: `${canonicalBase}/CodeSystem/exam-item`,
  /** Lateralised body sites: `ankle-dorsiflexion-muscles.left`, `dermatome-L5.left`. */
  bodySite: `${canonicalBase}/CodeSystem/body-site`,
  /** Sites and processes of the localisation: `common-fibular-nerve.left`, `nerve-root-L5.left`. */
  localisation: `${canonicalBase}/CodeSystem/localisation`,
  cause: `${canonicalBase}/CodeSystem/cause`,
  investigation: `${canonicalBase}/CodeSystem/investigation`,
  /** Value of a summary statement: `normal`. */
  overall: `${canonicalBase}/CodeSystem/overall`,
  notTestedReason: `${canonicalBase}/CodeSystem/not-tested-reason`,
  method: `${canonicalBase}/CodeSystem/exam-method`,
  conclusion: `${canonicalBase}/CodeSystem/localisation-conclusion`,
  /** Syndromic patterns: `polyneuropathy`, `myelopathy`. */
  pattern: `${canonicalBase}/CodeSystem/localisation-pattern`,
  /** Answers of the Questionnaire that no scale has: `course/static`, `region/trunk`. */
  examAnswer: `${canonicalBase}/CodeSystem/exam-answer`,
  /** Kinds of error and fault in an OperationOutcome. */
  fault: `${canonicalBase}/CodeSystem/fault`,
  /** Tag of every resource that was made from an exam; the code is the id of the exam, as in `/exams/{id}`. */
  exam: `${canonicalBase}/CodeSystem/exam`,
  resourceTag: `${canonicalBase}/CodeSystem/resource-tag`,
  /** Identifier system of every resource that the service makes; the value is the resource's UUID. */
  resourceIdentifier: `${canonicalBase}/NamingSystem/resource-id`,
} as const;

/** Code system of the grades of one scale of the catalogue. */
export function scaleSystem(scale: string): string {
  return `${canonicalBase}/CodeSystem/${scale}`;
}

export function profileUrl(name: string): string {
  return `${canonicalBase}/StructureDefinition/${name}`;
}

/** An invented examination that uses every part of a request once: acute left foot drop. No real person. */
export const footDropRequest = {
  identifier: { system: 'https://clinic.example/exams', value: 'EX-2041' },
  status: 'final',
  subject: { reference: 'Patient/4711' },
  encounter: { reference: 'Encounter/88' },
  performer: [{ reference: 'Practitioner/7' }],
  examinedAt: '2026-03-14T10:20:00+01:00',
  person: { ageYears: 46, sex: 'female' },
  history: {
    onset: { pace: 'acute', durationDays: 3 },
    course: 'static',
    symptoms: [{ key: 'back-pain', present: false }],
    conditions: [{ key: 'diabetes-mellitus', present: true }],
    exposures: [{ key: 'alcohol-excess', present: false }],
    family: [{ key: 'similar-disorder', present: true, relation: 'parent' }],
    medications: [{ key: 'vincristine', present: true }],
  },
  findings: {
    inspection: [{ sign: 'wasting', site: 'leg-below-knee', side: 'left', present: true }],
    involuntaryMovements: [{ sign: 'resting-tremor', site: 'hand', side: 'right', present: true }],
    gait: [{ sign: 'high-stepping', side: 'left', present: true }],
    tone: [{ site: 'lower-limb', side: 'left', tone: 'normal' }],
    clonus: [{ site: 'ankle', side: 'left', beats: 0 }],
    power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '3' }],
    reflexes: [{ reflex: 'ankle', side: 'both', grade: '2', reinforced: false }],
    plantars: [{ side: 'left', response: 'flexor' }],
    sensation: [
      { modality: 'pinprick', site: 'dorsum-of-foot', side: 'left', result: 'reduced' },
      { modality: 'light-touch', dermatome: 'L5', side: 'left', result: 'altered' },
      { modality: 'temperature', territory: 'lateral-femoral-cutaneous-nerve', side: 'left', result: 'normal' },
      { modality: 'vibration', levelBelow: 'T10', side: 'both', result: 'normal' },
    ],
    coordination: [{ test: 'heel-shin', side: 'left', result: 'normal' }],
    cranialNerves: [{ sign: 'ptosis', side: 'right', present: true }],
    higherFunction: [
      { sign: 'expressive-aphasia', present: false },
      { scale: 'glasgow-coma-scale', eye: 4, verbal: 5, motor: 6 },
    ],
    sphincters: [{ sign: 'urinary-retention', present: false }],
    autonomic: [{ sign: 'orthostatic-hypotension', present: false }],
    specialTests: [{ test: 'straight-leg-raise', side: 'left', result: 'negative' }],
  },
  otherwiseNormal: [{ section: 'power', region: 'lower-limbs' }],
  results: [
    {
      code: { system: 'http://loinc.org', code: '4548-4' },
      valueQuantity: { value: 5.3, unit: '%', system: 'http://unitsofmeasure.org', code: '%' },
    },
    { key: 'nerve-conduction-pattern', value: 'axonal' },
  ],
  requests: ['electromyography', 'mri-lumbar-spine'],
} as const;

/** What every kept examination needs, and these parts besides. */
export function requestWith(parts: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { identifier, subject, examinedAt } = footDropRequest;
  return { identifier, subject, examinedAt, ...parts };
}

export function requestWithFindings(findings: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return requestWith({ findings });
}

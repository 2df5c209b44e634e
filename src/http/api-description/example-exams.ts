import { examId } from '../../exam/exam-id.ts';

const system = 'https://clinic.example/exams';

/** An invented exam of a foot that drops; nobody is meant. */
export const footDrop = {
  identifier: { system, value: 'EX-2041' },
  status: 'final',
  subject: { reference: 'Patient/invented-4711' },
  examinedAt: '2026-03-14T10:20:00+01:00',
  person: { ageYears: 46, sex: 'female' },
  history: { onset: { pace: 'acute', durationDays: 12 } },
  findings: {
    power: [
      { movement: 'ankle-dorsiflexion', side: 'left', grade: '2' },
      { movement: 'great-toe-extension', side: 'left', grade: '1' },
      { movement: 'ankle-eversion', side: 'left', grade: '3' },
      { movement: 'ankle-inversion', side: 'left', grade: '5' },
      { movement: 'hip-abduction', side: 'left', grade: '5' },
    ],
    reflexes: [{ reflex: 'ankle', side: 'both', grade: '2' }],
    sensation: [{ modality: 'pinprick', site: 'dorsum-of-foot', side: 'left', result: 'reduced' }],
  },
} as const;

/** Another invented exam, which the examples correct. */
export const toBeCorrected = {
  identifier: { system, value: 'EX-2042' },
  status: 'final',
  subject: { reference: 'Patient/invented-4712' },
  examinedAt: '2026-03-14T11:05:00+01:00',
  findings: { reflexes: [{ reflex: 'ankle', side: 'left', grade: '0' }] },
} as const;

export const correction = {
  ...toBeCorrected,
  status: 'amended',
  findings: { reflexes: [{ reflex: 'ankle', side: 'right', grade: '0' }] },
} as const;

const { identifier: _identifier, subject: _subject, ...withoutPerson } = footDrop;
/** What a localisation needs of the exam: neither an identifier nor a subject. */
export const footDropWithoutPerson = withoutPerson;

/** The same with a key that does not exist. */
export const misspelt = {
  examinedAt: '2026-03-14T10:20:00+01:00',
  findings: { power: [{ movement: 'ankle-dorsiflection', side: 'left', grade: '2' }] },
} as const;

export const footDropId = examId(footDrop.identifier);
export const toBeCorrectedId = examId(toBeCorrected.identifier);

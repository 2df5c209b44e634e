import type { Exam } from '../../exam/exam.ts';
import { cameFast } from '../../exam/pace.ts';
import { isBodySide } from '../../kernel/side.ts';
import { anyOf, cervicalCord, kinds, sites } from './history/history-weight.ts';
import type { Applies, Shift } from './shift.ts';
import { firstTold, shiftsOfTold, type Told, toldOfEach } from './told.ts';

/** Complaints that began within hours or days and say more together. All judged. */
interface ToldInDays {
  readonly groups: readonly (readonly string[])[];
  readonly butNot: readonly string[];
  readonly holds: (exam: Exam) => boolean;
  readonly rows: readonly { readonly applies: Applies; readonly factor: number }[];
  readonly because: string;
}

const ofTheHead = [
  ...['face-droop', 'headache', 'new-headache', 'slurred-speech', 'speech-difficulty', 'diplopia', 'vertigo'],
  ...['visual-loss', 'seizure', 'loss-of-consciousness', 'drooping-eyelids'],
];
const above = kinds('hemisphere', 'brainstem', 'cerebellum');
const oneNerve = kinds('nerve', 'plexus', 'root', 'multiple-nerves');
const cordOfTheNeck = anyOf(cervicalCord, sites('spinal-cord-central'));

/** From this age on a narrow canal of the neck is common enough that a fall bruises the cord within it; in years. Judged. */
const narrowNeckFrom = 45;
/** Up to this age, in years, legs that fail within days are of inflamed roots before anything else of the nerves. Judged. */
const childTo = 12;

const patterns: readonly ToldInDays[] = [
  {
    groups: [['ascending-weakness'], ['arm-weakness', 'leg-weakness', 'weakness']],
    butNot: [...ofTheHead, 'numbness', 'paraesthesiae', 'neck-pain', 'back-pain', 'bladder-disturbance'],
    holds: ({ onset }) => onset.pace === 'hyperacute',
    rows: [
      { applies: kinds('muscle'), factor: 10 },
      { applies: kinds('polyradiculoneuropathy'), factor: 4 },
      { applies: above, factor: 0.3 },
      { applies: oneNerve, factor: 0.3 },
    ],
    because:
      'legs and then arms that fail within hours, and feel everything, are of muscle without its potassium first',
  },
  {
    groups: [['ascending-weakness'], ['arm-weakness', 'leg-weakness', 'weakness']],
    butNot: [...ofTheHead, 'bladder-disturbance'],
    holds: ({ onset }) => onset.pace === 'acute',
    rows: [
      { applies: kinds('polyradiculoneuropathy'), factor: 3 },
      { applies: above, factor: 0.3 },
      { applies: oneNerve, factor: 0.3 },
    ],
    because: 'weakness that climbs within days is of all roots',
  },
  {
    groups: [['weakness'], ['numbness', 'paraesthesiae']],
    butNot: [
      ...ofTheHead,
      ...[
        'bladder-disturbance',
        'bowel-disturbance',
        'saddle-numbness',
        'tight-band',
        'neck-pain',
        'back-pain',
        'trauma',
      ],
      ...['arm-pain', 'leg-pain', 'radicular-arm-pain', 'radicular-leg-pain', 'hand-pain', 'fluctuating-symptoms'],
      ...['resolved-deficit', 'functional-disorder', 'ascending-weakness', 'cognitive-change', 'unsteadiness'],
    ],
    holds: ({ onset, course, history }) =>
      onset.pace === 'acute' && course === 'progressive' && !history.some(({ side }) => isBodySide(side)),
    rows: [
      { applies: kinds('polyradiculoneuropathy'), factor: 4 },
      { applies: kinds('cord'), factor: 1.5 },
      { applies: oneNerve, factor: 0.5 },
      { applies: kinds('none'), factor: 0.4 },
    ],
    because: 'weakness and tingling that grow for days, on no side that was named, are of all roots or of the cord',
  },
  {
    // After a fall on the face the cord of a narrow neck is bruised in its middle, where the fibres for the arms run.
    groups: [['trauma', 'neck-trauma'], ['arm-weakness']],
    butNot: [...ofTheHead, 'arm-pain', 'shoulder-pain', 'limb-fracture-or-dislocation'],
    holds: ({ person, history }) =>
      (person.ageYears ?? 0) >= narrowNeckFrom &&
      !history.some(({ key, side }) => key === 'arm-weakness' && isBodySide(side)),
    rows: [
      { applies: cordOfTheNeck, factor: 3 },
      { applies: kinds('nerve'), factor: 0.6 },
    ],
    because: 'both arms that fail after a blow in later life share the cord of a narrow neck',
  },
  {
    groups: [
      ['leg-weakness', 'ascending-weakness'],
      ['difficulty-walking', 'unsteadiness', 'falls'],
    ],
    butNot: [...ofTheHead, 'trauma', 'bladder-disturbance', 'dark-urine', 'muscle-pain', 'fever'],
    holds: ({ person, onset, course }) =>
      onset.pace === 'acute' && course === 'progressive' && (person.ageYears ?? childTo) < childTo,
    rows: [{ applies: kinds('polyradiculoneuropathy'), factor: 4 }],
    because: 'of children whose legs fail more each day most have inflamed roots, which hurt',
  },
];

/** What was told of limbs that failed within hours or days, before anybody has found anything. */
export function toldInDaysShifts(exam: Exam, told: Told): readonly Shift[] {
  if (!cameFast(exam.onset)) return [];
  return patterns.flatMap(({ groups, butNot, holds, rows, because }) => {
    const statement = toldOfEach(told, groups);
    if (statement === undefined || firstTold(told, butNot) !== undefined || !holds(exam)) return [];
    return rows.map(({ applies, factor }) => shift(statement, applies, factor, because));
  });
}

const shift = shiftsOfTold('told-in-days');

import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { recalled } from '../../kernel/cite.ts';
import { agedFrom, type BedsideFacts } from '../bedside-facts.ts';
import { headache } from './brain-flags.ts';
import { clouded } from './consciousness.ts';
import { isOnBothSides } from './cord.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { feverReasons, trueFever } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';
import { onOneSide } from './sudden-deficit.ts';

/** Weeks in which an infection of the orbit or the cavernous sinus comes to its height. */
const sixWeeks = 42;
const halfYear = 183;

/** Years of age from which the guidance for children no longer speaks. */
const adult = 16;

/** An orbit or a head under pressure, told in few words: without fever, without a date, or without a sign. */
export const orbitAndPressureStories: readonly RaisingStory[] = [
  {
    // In a child a headache on waking that goes on for two weeks is looked into, though nothing is found.
    flag: 'raised-intracranial-pressure',
    check: (facts) => {
      const { ageYears = adult } = facts.exam.person;
      const lasts = facts.beganWithin(13) === 'no' && facts.beganWithin(365) !== 'no';
      const isKnown = facts.told('migraine', 'similar-attacks-before').length > 0;
      return ageYears < adult && lasts && !isKnown ? facts.told('morning-headache') : none;
    },
    source: recalled('nice-ng127', 'headaches in children under 16'),
  },
  {
    // Fungus and septic thrombosis take two of sight, movement and room in the orbit at once; in people without defence fever is missing.
    flag: 'orbital-or-cavernous-sinus-infection',
    check: (facts) => {
      const bulging = facts.query.abnormal([
        'inspection/proptosis',
        'inspection/periorbital-oedema',
        'inspection/nasal-or-palatal-eschar',
      ]);
      const parts = [
        findingReasons(bulging, 1),
        sightLost(facts),
        [
          ...findingReasons(facts.query.abnormal([...eyeMovementSigns, 'cranial-nerves/ptosis']), 3),
          ...facts.told('drooping-eyelids'),
        ],
      ].filter(({ length }) => length > 0);
      const host = facts.told('immunosuppression', 'diabetes-mellitus', 'hiv-infection', ...entries);
      return isOfWeeks(facts) && !isThyroid(facts) && parts.length >= 2 ? each(host, parts.flat()) : none;
    },
    source: recalled('adams-victor', 'septic thrombosis of the cavernous sinus; mucormycosis'),
  },
  {
    // The whole eye of one side that has stopped moving under a fallen lid, with pain, in people whose defence or sugar is bad: the apex, and no single nerve.
    flag: 'orbital-or-cavernous-sinus-infection',
    check: (facts) => {
      if (!isOfWeeks(facts) || isThyroid(facts)) return none;
      const frozen = onOneSide(facts.query.abnormal(['cranial-nerves/ophthalmoplegia', 'cranial-nerves/ptosis']));
      const isWhole = frozen.some(({ item }) => item.key === 'ophthalmoplegia');
      return isWhole
        ? each(
            facts.told('immunosuppression', 'diabetes-mellitus', 'hiv-infection'),
            findingReasons(frozen, 2),
            facts.told('eye-pain', 'facial-pain', ...headache),
          )
        : none;
    },
    source: recalled('adams-victor', 'septic thrombosis of the cavernous sinus; mucormycosis'),
  },
  {
    // A fever with an eye that does not move, or is pushed out, after germs have come by sinus, ear, tooth, skin or blood.
    flag: 'orbital-or-cavernous-sinus-infection',
    check: (facts) => {
      if (!isOfWeeks(facts) || isThyroid(facts)) return none;
      const fever = trueFever(facts);
      const bulging = findingReasons(
        facts.query.abnormal(['inspection/proptosis', 'inspection/periorbital-oedema']),
        2,
      );
      const eyes = findingReasons(facts.query.abnormal([...eyeMovementSigns, 'cranial-nerves/ptosis']), 3);
      const from = facts.told(...entries, 'facial-pain', 'eye-pain', 'red-eye', 'face-or-neck-lump');
      return [
        ...each(fever, bulging),
        ...each(fever, eyes, from),
        ...each(facts.told('sinus-or-ear-infection'), [...bulging, ...eyes]),
      ];
    },
    source: recalled('adams-victor', 'septic thrombosis of the cavernous sinus'),
  },
  {
    // One eye that within days is pushed out, swollen or red, and no longer moves or sees: pus, a clot or a torn carotid behind it, fever or not.
    flag: 'orbital-or-cavernous-sinus-infection',
    check: (facts) => {
      if (!facts.cameWithin(14) || !facts.maybeProgressing || isThyroid(facts)) return none;
      const bulging = onOneSide(facts.query.abnormal(['inspection/proptosis']));
      return each(
        findingReasons(bulging, 1),
        [
          ...findingReasons(facts.query.abnormal(['inspection/chemosis', 'inspection/periorbital-oedema']), 1),
          ...facts.told('red-eye'),
        ],
        [
          ...findingReasons(facts.query.abnormal([...eyeMovementSigns]), 2),
          ...facts.told('diplopia'),
          ...sightLost(facts),
        ],
      );
    },
    source: recalled('adams-victor', 'septic thrombosis of the cavernous sinus'),
  },
  {
    // Nobody has said since when: an eye that bulges, hurts or is red while it loses its sight is not left for that.
    flag: 'acute-visual-loss',
    check: (facts) => {
      const isUndated = facts.beganWithin(14) === 'unknown';
      return isUndated && facts.maybeProgressing
        ? each(sightLost(facts), [
            ...findingReasons(
              facts.query.abnormal(['inspection/proptosis', 'inspection/chemosis', 'inspection/periorbital-oedema']),
            ),
            ...facts.told('eye-pain', 'red-eye'),
          ])
        : none;
    },
    source: recalled('adams-victor', 'neuro-ophthalmology: painful loss of vision'),
  },
  {
    // Guidance images a headache of this kind though nothing is found: swollen discs are missing in half of the old and of those with a subdural haematoma.
    flag: 'raised-intracranial-pressure',
    check: (facts) => {
      const { exam } = facts;
      if (!facts.maybeProgressing || facts.beganWithin(halfYear) === 'no') return none;
      const morning = facts.told('morning-headache');
      const fresh = [...morning, ...facts.told('new-headache')];
      const vomiting = facts.told('vomiting');
      const mind = findingReasons(facts.query.abnormal(clouded), 2);
      // Under a mind that clouds a ventricle is shut until shown otherwise: from the first day, and in those with migraine too.
      const isShut = facts.beganWithin(28) === 'yes' && trueFever(facts).length === 0;
      const shut = isShut ? each(fresh, vomiting, mind) : none;
      const isFirst = facts.told('migraine', 'similar-attacks-before', 'orthostatic-headache').length === 0;
      if (shut.length > 0 || !isFirst) return shut;
      const beyondDays = facts.beganWithin(3) !== 'yes' && exam.onset.pace !== 'hyperacute';
      const grows = exam.course === 'progressive' && beyondDays ? facts.told(...headache) : none;
      const risk = [
        ...agedFrom(50, facts),
        ...facts.told('cancer', 'lymphoma', 'immunosuppression', 'hiv-infection', 'anticoagulant', 'head-injury'),
      ];
      const failing = [
        ...facts.told('difficulty-walking', 'unsteadiness', 'falls', 'diplopia', 'transient-visual-loss'),
        ...facts.told('cognitive-change', 'behaviour-change', 'loss-of-consciousness'),
        ...mind,
      ];
      return [
        ...(beyondDays ? each(morning, vomiting) : none),
        ...(beyondDays ? each(fresh, vomiting, risk) : none),
        ...(beyondDays ? each([...fresh, ...grows], vomiting, failing) : none),
      ];
    },
    source: recalled('nice-ng127', 'headaches'),
  },
];

const entries = ['sinus-or-ear-infection', 'recent-bacteraemia', 'sepsis', 'dental-procedure'] as const;

/** Of days or weeks, or of a time that nobody has told. */
function isOfWeeks(facts: BedsideFacts): boolean {
  return facts.exam.onset.pace !== 'chronic' && facts.beganWithin(sixWeeks) !== 'no' && facts.maybeProgressing;
}

/** Eyes pushed out on both sides, or of somebody with an overactive thyroid, are mostly its disease. */
function isThyroid(facts: BedsideFacts): boolean {
  const isBoth = isOnBothSides(facts.query.abnormal(['inspection/proptosis'])) && feverReasons(facts).length === 0;
  return isBoth || facts.told('hyperthyroidism').length > 0;
}

function sightLost(facts: BedsideFacts): readonly Reason[] {
  return [
    ...facts.told('visual-loss'),
    ...findingReasons(
      facts.query.abnormal([
        'cranial-nerves/reduced-visual-acuity',
        'cranial-nerves/relative-afferent-pupillary-defect',
        'cranial-nerves/central-scotoma',
        'cranial-nerves/altitudinal-field-defect',
      ]),
      2,
    ),
  ];
}

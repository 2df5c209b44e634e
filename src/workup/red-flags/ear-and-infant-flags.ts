import { findingReasons } from '../../causes/reasons.ts';
import { cameFast } from '../../exam/pace.ts';
import { fromMemory, recalled } from '../../kernel/cite.ts';
import { present, type RedFlagRule } from './rule.ts';

/** Months in which necrotising otitis externa goes on to the nerves of the skull base. Judged. */
const halfYear = 183;

const nervesOfTheSkullBase = [
  'cranial-nerves/facial-weakness',
  'cranial-nerves/upper-facial-weakness',
  'cranial-nerves/palatal-weakness',
  'cranial-nerves/absent-gag-reflex',
  'cranial-nerves/vocal-cord-paralysis',
  'cranial-nerves/tongue-deviation',
  'cranial-nerves/tongue-weakness',
  'cranial-nerves/tongue-wasting',
  'cranial-nerves/sternocleidomastoid-weakness',
  'cranial-nerves/trapezius-weakness',
  'cranial-nerves/sixth-nerve-palsy',
  'cranial-nerves/eye-abduction-weakness',
];

const lastFourNerves = nervesOfTheSkullBase.filter((key) => !/facial|abduction|sixth/.test(key));

/** Emergencies of the ear, and the pupil of an infant. */
export const earAndInfantFlags: readonly RedFlagRule[] = [
  {
    key: 'sudden-hearing-loss',
    label: 'Sudden loss of hearing',
    urgency: 'same-day',
    action:
      'Ear specialist within a day; tuning forks and audiogram; corticosteroids within two weeks, the sooner the better.',
    source: recalled('sudden-hearing-loss-2019'),
    check: (facts) => {
      const { query } = facts;
      const deaf = [
        ...facts.told('hearing-loss'),
        ...findingReasons(query.abnormal(['cranial-nerves/hearing-loss']), 2),
      ];
      const isSudden = cameFast(facts.exam.onset) && facts.beganWithin(30) === 'yes';
      // Ears that come and go, run, hurt from a cold or conduct badly are another matter.
      const other = [
        ...facts.told(
          'similar-attacks-before',
          'sinus-or-ear-infection',
          'fluctuating-symptoms',
          'head-injury',
          'fever',
        ),
        ...findingReasons(query.abnormal(['cranial-nerves/conductive-hearing-loss', 'inspection/ear-or-nose-leak'])),
      ];
      // The ear has to be the trouble: beside other signs of the head the flags of those speak. Who reels does not walk.
      const reels = facts.told('vertigo', 'continuous-vertigo').length > 0;
      const beyond = facts.abnormalFindings.filter(
        ({ item }) => !ofTheEar.has(item.key) && !(reels && item.section === 'gait'),
      );
      return isSudden && deaf.length > 0 && other.length === 0 && beyond.length === 0 ? present(deaf) : null;
    },
  },
  {
    key: 'necrotising-otitis',
    label: 'Suspected necrotising otitis externa or osteomyelitis of the skull base',
    urgency: 'same-day',
    action:
      'Ear specialist the same day; swab, biopsy against cancer, CT and MRI of the skull base; long antibiotics against Pseudomonas.',
    source: fromMemory,
    check: (facts) => {
      if (facts.beganWithin(halfYear) === 'no' || !facts.maybeProgressing) return null;
      const host = facts.told(
        'diabetes-mellitus',
        'immunosuppression',
        'hiv-infection',
        'chronic-kidney-disease',
        'radiotherapy',
      );
      const ear = [...facts.told('ear-pain'), ...findingReasons(facts.query.abnormal(['inspection/ear-or-nose-leak']))];
      const infection = [
        ...facts.told('sinus-or-ear-infection'),
        ...(ear.length > 1 || facts.beganWithin(13) === 'no' ? ear : []),
      ];
      const nerves = findingReasons(facts.query.abnormal(nervesOfTheSkullBase), 3);
      const told = facts.told('dysphagia', 'voice-change');
      const rash = facts.query.abnormal(['inspection/vesicular-rash']);
      // Tongue, palate, vocal cord or shoulder beside an ear or mastoid that is known to be infected: the bone is, in the healthy and in children too.
      const last = findingReasons(facts.query.abnormal(lastFourNerves), 3);
      const known = facts.told('sinus-or-ear-infection');
      if (known.length > 0 && ear.length > 0 && last.length > 0 && rash.length === 0)
        return present([...known, ...ear, ...last]);
      const isMet = host.length > 0 && ear.length > 0 && infection.length > 0 && nerves.length + told.length > 0;
      return isMet && rash.length === 0 ? present([...host, ...ear, ...nerves, ...told]) : null;
    },
  },
  {
    key: 'infant-horner-syndrome',
    label: 'Horner syndrome of an infant',
    urgency: 'urgent',
    action:
      'Feel neck and belly; catecholamines in urine and MRI of head, neck and chest for a neuroblastoma, unless a birth injury explains it.',
    source: recalled('adams-victor', 'neuroblastoma'),
    check: (facts) => {
      const { ageYears } = facts.exam.person;
      if (ageYears === undefined || ageYears >= 5) return null;
      const horner = findingReasons(facts.query.abnormal(['cranial-nerves/horner-syndrome']));
      const known = facts.told(
        'shoulder-dystocia',
        'perinatal-injury',
        'neck-or-chest-surgery',
        'recent-surgery',
        'trauma',
        'neck-trauma',
      );
      // A plexus that was torn at birth has taken the first thoracic root with it.
      return horner.length > 0 && known.length === 0 && facts.weakLimbs.length === 0
        ? present([...horner, { pointer: '/person/ageYears', text: `age ${ageYears}` }])
        : null;
    },
  },
];

const ofTheEar: ReadonlySet<string> = new Set([
  'hearing-loss',
  'nystagmus',
  'abnormal-head-impulse',
  'veering',
  'fukuda',
  'romberg',
  'tandem',
  'hyperacusis',
]);

import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const brain = site('thalamus', 'hemisphere');
const undatedOrbit = {
  cranialNerves: on('left', 'reduced-visual-acuity', 'ophthalmoplegia'),
  inspection: on('left', 'proptosis'),
};

/** Emergencies of which only a few words were told, each beside the harmless picture nearest to it. */
export const toldInFewWordsStories: readonly Story[] = [
  {
    flag: 'suspected-poisoning',
    by: 'a sting, and eyes that beat within hours (Adams and Victor, venoms); years after the bite it is none',
    raised: {
      history: { onset: hours, exposures: has('venomous-bite') },
      findings: { cranialNerves: [{ sign: 'nystagmus', present: true }] },
    },
    not: {
      history: { onset: years, exposures: has('venomous-bite') },
      findings: { cranialNerves: [{ sign: 'nystagmus', present: true }] },
    },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'two weeks of headache on waking in a small child (NICE NG127, headaches in children); two days of it are not yet that',
    raised: {
      person: { ageYears: 5 },
      history: { onset: { durationDays: 16 }, symptoms: has('morning-headache') },
    },
    not: { person: { ageYears: 5 }, history: { onset: { durationDays: 2 }, symptoms: has('morning-headache') } },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'legs that go on failing under a painful back with numbness (NICE NG127, limb weakness); when they mend it can wait',
    raised: {
      history: {
        onset: weeks,
        course: 'progressive',
        symptoms: has('back-pain', 'numbness', 'leg-weakness'),
        conditions: has('spinal-surgery'),
      },
      findings: { power: weakLegsBothSides },
    },
    not: {
      history: {
        onset: weeks,
        course: 'improving',
        symptoms: has('back-pain', 'numbness', 'leg-weakness'),
        conditions: has('spinal-surgery'),
      },
      findings: { power: weakLegsBothSides },
    },
    at: site('spinal-cord-transverse', 'cord'),
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'fungus of the orbit without fever or date (Adams and Victor, mucormycosis); with an overactive thyroid it is that disease',
    raised: { history: { conditions: has('immunosuppression') }, findings: undatedOrbit },
    not: { history: { conditions: has('immunosuppression', 'hyperthyroidism') }, findings: undatedOrbit },
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'a fever with eyes that do not turn after germs in the blood (Adams and Victor, septic thrombosis); without fever a palsy of the nerve',
    raised: {
      history: { onset: days, symptoms: has('fever'), conditions: has('recent-bacteraemia') },
      findings: { cranialNerves: on('both', 'eye-abduction-weakness') },
    },
    not: {
      history: { onset: days, conditions: has('recent-bacteraemia') },
      findings: { cranialNerves: on('both', 'eye-abduction-weakness') },
    },
  },
  {
    flag: 'acute-visual-loss',
    by: 'sight lost in a bulging eye, with no date given; called chronic it can wait',
    raised: { findings: undatedOrbit },
    not: { history: { onset: months }, findings: undatedOrbit },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'a morning headache with vomiting and no sign (NICE NG127, headaches); of the known attacks of migraine it is not',
    raised: {
      person: { ageYears: 66 },
      history: { onset: { durationDays: 40 }, symptoms: has('new-headache', 'morning-headache', 'vomiting') },
    },
    not: {
      person: { ageYears: 66 },
      history: {
        onset: { durationDays: 40 },
        symptoms: has('new-headache', 'morning-headache', 'vomiting', 'similar-attacks-before'),
        conditions: has('migraine'),
      },
    },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'a headache that grows, vomiting and an unsteady walk; a first day of headache and vomiting alone is not yet that',
    raised: {
      history: {
        onset: { pace: 'subacute', durationDays: 20 },
        course: 'progressive',
        symptoms: has('headache', 'vomiting', 'unsteadiness'),
      },
    },
    not: { history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: has('headache', 'vomiting') } },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'a limb that fails in the days after an operation on the spine; one operated years ago is not counted',
    raised: {
      history: { onset: hours, conditions: has('spinal-surgery'), exposures: has('recent-surgery') },
      findings: { power: power('left', '2', 'hip-flexion', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: hours, conditions: has('spinal-surgery') },
      findings: { power: power('left', '2', 'hip-flexion', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'both legs after an epidural; one foot that drops after a birth is a pressed nerve',
    raised: {
      history: { onset: days, exposures: has('lumbar-puncture-or-epidural') },
      findings: { power: weakLegsBothSides },
    },
    not: {
      history: { onset: days, exposures: has('lumbar-puncture-or-epidural') },
      findings: { power: power('left', '2', 'ankle-dorsiflexion', 'ankle-eversion') },
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'a groin so painful that nobody walks, with a numb front of the thigh; one who walks has a nerve that is pressed',
    raised: {
      history: { symptoms: has('flank-pain', 'thigh-pain') },
      findings: {
        sensation: [{ modality: 'light-touch', site: 'front-of-thigh', side: 'left', result: 'reduced' }],
        gait: signs('unable-to-walk'),
      },
    },
    not: {
      history: { symptoms: has('flank-pain', 'thigh-pain') },
      findings: {
        sensation: [{ modality: 'light-touch', site: 'front-of-thigh', side: 'left', result: 'reduced' }],
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'both shoulders that fall after a fusion of the neck; one shoulder is a root',
    at: site('nerve-root', 'root'),
    raised: {
      history: { onset: hours, conditions: has('spinal-surgery'), exposures: has('recent-surgery') },
      findings: { power: power('both', '2', 'shoulder-abduction') },
    },
    not: {
      history: { onset: hours, conditions: has('spinal-surgery'), exposures: has('recent-surgery') },
      findings: { power: power('left', '2', 'shoulder-abduction') },
    },
  },
  {
    flag: 'threatened-cauda-equina',
    by: 'the calf of one leg and the heel of the other from one painful back (GIRFT 2023); both of one leg are one root',
    raised: {
      history: { onset: { pace: 'acute', durationDays: 16 }, symptoms: has('back-pain', 'radicular-leg-pain') },
      findings: {
        power: power('right', '4', 'ankle-plantarflexion'),
        sensation: [{ modality: 'light-touch', dermatome: 'S1', side: 'left', result: 'reduced' }],
      },
    },
    not: {
      history: { onset: { pace: 'acute', durationDays: 16 }, symptoms: has('back-pain', 'radicular-leg-pain') },
      findings: {
        power: power('right', '4', 'ankle-plantarflexion'),
        sensation: [{ modality: 'light-touch', dermatome: 'S1', side: 'right', result: 'reduced' }],
      },
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'lithium poisons at a usual level: shaking and a changed mind of a week; the tremor alone is its common effect',
    raised: {
      history: {
        onset: { pace: 'subacute', durationDays: 8 },
        symptoms: has('tremor', 'cognitive-change'),
        medications: has('lithium'),
      },
    },
    not: {
      history: {
        onset: { pace: 'subacute', durationDays: 8 },
        symptoms: has('tremor'),
        medications: has('lithium'),
      },
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'a mind clouded under cefepime or valproate; with one weak half it is a lesion',
    raised: {
      history: { onset: days, medications: has('beta-lactam') },
      findings: { higherFunction: signs('confusion') },
    },
    not: {
      history: { onset: days, medications: has('beta-lactam') },
      findings: { higherFunction: signs('confusion'), power: power('left', '3', 'hip-flexion', 'elbow-flexion') },
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'pinpoint pupils in somebody on an opioid who cannot be woken fully; awake they are its usual effect',
    raised: {
      history: { onset: hours, medications: has('opioid') },
      findings: { higherFunction: signs('drowsiness'), cranialNerves: on('both', 'small-pupil') },
    },
    not: {
      history: { onset: hours, medications: has('opioid') },
      findings: { cranialNerves: on('both', 'small-pupil') },
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'magnesium from the drip: jerks are lost before the breath',
    raised: {
      history: { onset: hours, medications: has('magnesium') },
      findings: { reflexes: reflexes('0', 'knee', 'ankle') },
    },
    not: { history: { onset: hours, medications: has('magnesium') } },
  },
  {
    flag: 'suspected-poisoning',
    by: 'methanol takes both eyes within days, with vomiting; over months it is want of vitamins',
    raised: {
      history: { onset: days, symptoms: has('vomiting'), exposures: has('alcohol-excess') },
      findings: { cranialNerves: on('both', 'reduced-visual-acuity') },
    },
    not: {
      history: { onset: months, symptoms: has('vomiting'), exposures: has('alcohol-excess') },
      findings: { cranialNerves: on('both', 'reduced-visual-acuity') },
    },
  },
  {
    flag: 'bilateral-facial-palsy',
    by: 'a whole half on one side and the upper part on the other are two facial nerves',
    raised: {
      history: { onset: weeks },
      findings: { cranialNerves: [...on('left', 'facial-weakness'), ...on('right', 'upper-facial-weakness')] },
    },
    not: {
      history: { onset: weeks },
      findings: { cranialNerves: [...on('left', 'facial-weakness'), ...on('right', 'lower-facial-weakness')] },
    },
  },
  {
    flag: 'bilateral-facial-palsy',
    by: 'of a year with strong limbs it is sarcoid or the meninges; with weak shoulders a disease of muscle',
    at: site('facial-nerve', 'cranial-nerve'),
    raised: {
      history: { onset: { pace: 'chronic', durationDays: 300 } },
      findings: { cranialNerves: on('both', 'facial-weakness') },
    },
    not: {
      history: { onset: { pace: 'chronic', durationDays: 300 } },
      findings: { cranialNerves: on('both', 'facial-weakness'), power: power('both', '4', 'shoulder-abduction') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'speech that thickened yesterday after an earlier attack (NICE NG128); with a whole half of the face it may be the nerve',
    raised: {
      history: {
        onset: { pace: 'acute', durationDays: 1 },
        symptoms: has('slurred-speech', 'falls'),
        conditions: has('transient-ischaemic-attack'),
      },
    },
    not: {
      history: {
        onset: { pace: 'acute', durationDays: 1 },
        symptoms: has('slurred-speech'),
        conditions: has('transient-ischaemic-attack'),
      },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a tongue that turns aside with slurred speech at once; a withered one has a slow disease',
    at: site('hypoglossal-nerve', 'cranial-nerve'),
    raised: {
      history: { onset: hours, symptoms: has('dysphagia') },
      findings: { cranialNerves: [...on('right', 'tongue-deviation'), ...signs('dysarthria')] },
    },
    not: {
      history: { onset: months, symptoms: has('dysphagia') },
      findings: {
        cranialNerves: [...on('right', 'tongue-deviation'), ...signs('dysarthria'), ...signs('tongue-wasting')],
      },
    },
  },
  {
    flag: 'suspected-botulism',
    by: 'an infant of four months whose lids droop, who sucks badly and lies limp, after weeks too (MMWR 2021); limp alone is not',
    raised: {
      person: { ageYears: 0.33 },
      history: { onset: { pace: 'subacute', durationDays: 35 }, symptoms: has('dysphagia', 'drooping-eyelids') },
      findings: { tone: [{ site: 'upper-limb', side: 'both', tone: 'reduced' }] },
    },
    not: {
      person: { ageYears: 0.33 },
      history: { onset: { pace: 'subacute', durationDays: 35 }, symptoms: has('dysphagia') },
      findings: { tone: [{ site: 'upper-limb', side: 'both', tone: 'reduced' }] },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'a fit and odd behaviour are new in the healthy, and not under an antipsychotic given for an old disorder',
    at: brain,
    raised: { history: { onset: weeks, symptoms: has('seizure', 'behaviour-change') } },
    not: {
      history: {
        onset: weeks,
        symptoms: has('seizure', 'behaviour-change'),
        conditions: has('psychiatric-disorder'),
        medications: has('antipsychotic'),
      },
    },
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    by: 'jerks brisk in arms and legs over flexor plantars are met in health; extensor plantars are not',
    raised: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { reflexes: reflexes('3', 'biceps', 'knee'), plantars: [{ side: 'both', response: 'extensor' }] },
    },
    not: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { reflexes: reflexes('3', 'biceps', 'knee'), plantars: [{ side: 'both', response: 'flexor' }] },
    },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'fingers of both hands that fail after pressure in one whose nerves give way are nerves (NICE NG127 asks for what progresses)',
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: { power: power('both', '3', 'finger-abduction', 'finger-adduction') },
    },
    not: {
      history: { onset: days, conditions: has('previous-pressure-palsy'), exposures: has('external-pressure') },
      findings: { power: power('both', '3', 'finger-abduction', 'finger-adduction') },
    },
  },
  {
    flag: 'bilateral-facial-palsy',
    by: 'faces weak on both sides for years are born or inherited',
    raised: { history: { onset: days }, findings: { cranialNerves: on('both', 'facial-weakness') } },
    not: { history: { onset: years }, findings: { cranialNerves: on('both', 'facial-weakness') } },
  },
];

import { nothingFound, site } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, reflexes, type Story, signs } from './story.ts';

const sided = (side: string, ...keys: readonly string[]) => keys.map((key) => ({ key, side, present: true }));
const fortnight = { pace: 'acute', durationDays: 9 };
const growing = { pace: 'subacute', durationDays: 35 };
const nowhere = nothingFound.localisations[0] ?? site('no-lesion', 'none');

/** Complaints before anybody has examined, and signs that nobody has dated, each beside the nearest harmless ones. */
export const complaintsAloneStories: readonly Story[] = [
  {
    flag: 'suspected-stroke',
    by: 'double vision at once in atrial fibrillation (NICE NG128); in the young and healthy the eye is looked at first',
    at: nowhere,
    raised: { history: { onset: hours, symptoms: has('diplopia'), conditions: has('atrial-fibrillation') } },
    not: { history: { onset: hours, symptoms: has('diplopia') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'an arm that failed a day ago in atrial fibrillation; after a sleep upon it it is the nerve',
    at: nowhere,
    raised: {
      history: {
        onset: { pace: 'acute', durationDays: 1 },
        symptoms: has('arm-weakness'),
        conditions: has('atrial-fibrillation'),
      },
    },
    not: {
      history: {
        onset: { pace: 'acute', durationDays: 1 },
        symptoms: has('arm-weakness'),
        conditions: has('atrial-fibrillation'),
        exposures: has('deep-sleep-on-arm'),
      },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'words and a half of the body lost in the old, undated; in multiple sclerosis it has another reason',
    at: site('internal-capsule', 'hemisphere'),
    raised: { person: { ageYears: 70 }, findings: { power: power('right', '2', 'elbow-flexion', 'hip-flexion') } },
    not: {
      person: { ageYears: 70 },
      history: { conditions: has('multiple-sclerosis') },
      findings: { power: power('right', '2', 'elbow-flexion', 'hip-flexion') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'arm and leg of one side said to fail more over weeks (NICE NG127); of two sides it is not one hemisphere',
    at: nowhere,
    raised: {
      history: { onset: growing, course: 'progressive', symptoms: sided('left', 'arm-weakness', 'leg-weakness') },
    },
    not: {
      history: {
        onset: growing,
        course: 'progressive',
        symptoms: [...sided('left', 'arm-weakness'), ...sided('right', 'leg-weakness')],
      },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a fit in known cancer; one like those before is not new',
    at: nowhere,
    raised: { history: { onset: days, symptoms: has('seizure'), conditions: has('cancer') } },
    not: {
      history: {
        onset: days,
        symptoms: has('seizure', 'similar-attacks-before'),
        conditions: has('cancer', 'epilepsy'),
      },
    },
  },
  {
    flag: 'thunderclap-headache',
    by: 'from forty a first headache at once with vomiting (NICE NG228); of known migraine it is an attack',
    at: nowhere,
    raised: { person: { ageYears: 48 }, history: { onset: hours, symptoms: has('new-headache', 'vomiting') } },
    not: {
      person: { ageYears: 48 },
      history: { onset: hours, symptoms: has('new-headache', 'vomiting'), conditions: has('migraine') },
    },
  },
  {
    flag: 'suspected-giant-cell-arteritis',
    by: 'double vision and headache in somebody old and ill (BSR 2020); at forty it is not that',
    at: nowhere,
    raised: { person: { ageYears: 75 }, history: { onset: days, symptoms: has('diplopia', 'headache', 'fatigue') } },
    not: { person: { ageYears: 40 }, history: { onset: days, symptoms: has('diplopia', 'headache', 'fatigue') } },
  },
  {
    flag: 'suspected-cerebral-venous-thrombosis',
    by: 'headache and vomiting of days about childbirth; of known migraine it is an attack',
    at: nowhere,
    raised: { history: { onset: days, symptoms: has('headache', 'vomiting'), conditions: has('pregnancy') } },
    not: { history: { onset: days, symptoms: has('headache', 'vomiting'), conditions: has('pregnancy', 'migraine') } },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'legs and bladder within days (NICE NG234); legs alone may be much else',
    at: nowhere,
    raised: { history: { onset: days, symptoms: has('leg-weakness', 'bladder-disturbance') } },
    not: { history: { onset: days, symptoms: has('leg-weakness') } },
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    by: 'known cancer with weak numb legs; under vincristine it is the nerves',
    at: nowhere,
    raised: {
      history: { onset: growing, symptoms: has('leg-weakness', 'numbness'), conditions: has('cancer') },
    },
    not: {
      history: {
        onset: growing,
        symptoms: has('leg-weakness', 'numbness'),
        conditions: has('cancer'),
        medications: has('vincristine'),
      },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'clumsy hands and an unsteady walk in a narrow neck (NICE NG127); at rest they wait',
    at: nowhere,
    raised: {
      history: {
        onset: months,
        course: 'progressive',
        symptoms: has('clumsiness', 'unsteadiness'),
        conditions: has('spinal-stenosis'),
      },
    },
    not: {
      history: {
        onset: months,
        course: 'static',
        symptoms: has('clumsiness', 'unsteadiness'),
        conditions: has('spinal-stenosis'),
      },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'a numb saddle and back pain, undated (GIRFT 2023); mended it is past',
    at: nowhere,
    raised: { history: { symptoms: has('saddle-numbness', 'back-pain') } },
    not: { history: { course: 'improving', symptoms: has('saddle-numbness', 'back-pain') } },
  },
  {
    flag: 'acute-ascending-weakness',
    by: 'tingling and a failing walk after an infection of the gut (EAN/PNS 2023); kept jerks speak against it',
    at: nowhere,
    raised: {
      history: {
        onset: fortnight,
        course: 'progressive',
        symptoms: has('paraesthesiae', 'difficulty-walking', 'preceding-gastroenteritis'),
      },
    },
    not: {
      history: {
        onset: fortnight,
        course: 'progressive',
        symptoms: has('paraesthesiae', 'difficulty-walking', 'preceding-gastroenteritis'),
      },
      findings: { reflexes: reflexes('2', 'knee', 'ankle') },
    },
  },
  {
    flag: 'threatened-myasthenic-crisis',
    by: 'lids and swallowing that fail more over weeks; lids alone do not choke',
    at: nowhere,
    raised: { history: { onset: growing, course: 'progressive', symptoms: has('drooping-eyelids', 'dysphagia') } },
    not: { history: { onset: growing, course: 'progressive', symptoms: has('drooping-eyelids') } },
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'germs in the blood, a painful back and weak legs without fever; without the germs it may be a disc',
    at: nowhere,
    raised: {
      history: { onset: days, symptoms: has('back-pain', 'leg-weakness'), conditions: has('recent-bacteraemia') },
    },
    not: { history: { onset: days, symptoms: has('back-pain', 'leg-weakness') } },
  },
  {
    flag: 'suspected-poisoning',
    by: 'lead that clouds the mind over half a year; wrists alone for so long are the nerve',
    raised: {
      history: {
        onset: { pace: 'chronic', durationDays: 180 },
        course: 'progressive',
        symptoms: has('cognitive-change'),
        exposures: has('lead'),
      },
    },
    not: {
      history: { onset: { pace: 'chronic', durationDays: 180 }, course: 'progressive', exposures: has('lead') },
      findings: { power: power('both', '2', 'wrist-extension') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a painful neck with signs of the brainstem is a torn artery, at any age; after weeks it is not sudden',
    at: site('medulla-lateral', 'brainstem', 0.4),
    raised: {
      history: { onset: { pace: 'acute', durationDays: 5 }, symptoms: has('neck-pain') },
      findings: { cranialNerves: [...on('left', 'horner-syndrome', 'facial-numbness'), ...signs('dysphagia')] },
    },
    not: {
      history: { onset: months, symptoms: has('neck-pain') },
      findings: { cranialNerves: [...on('left', 'horner-syndrome', 'facial-numbness'), ...signs('dysphagia')] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'Brazis, monoparesis: a foot that drops in a moment where arteries are bad; one that was pressed upon is the nerve',
    raised: {
      person: { ageYears: 68 },
      history: { onset: hours, conditions: has('hypertension') },
      findings: { power: power('left', '2', 'ankle-dorsiflexion', 'great-toe-extension') },
    },
    not: {
      person: { ageYears: 68 },
      history: { onset: hours, conditions: has('hypertension'), exposures: has('prolonged-squatting') },
      findings: { power: power('left', '2', 'ankle-dorsiflexion', 'great-toe-extension') },
    },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'NICE NG127: an arm and a leg that fail within days; one arm that hurts and then fails is its plexus or a root',
    at: nowhere,
    raised: {
      history: { onset: days, course: 'progressive', symptoms: has('shoulder-pain', 'arm-weakness', 'leg-weakness') },
    },
    not: { history: { onset: days, course: 'progressive', symptoms: has('shoulder-pain', 'arm-weakness') } },
  },
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'thinking that changed two days ago, told before anybody has examined; a mind found clear is none',
    at: nowhere,
    raised: { history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('cognitive-change') } },
    not: {
      history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('cognitive-change') },
      findings: { higherFunction: [{ sign: 'confusion', present: false }] },
    },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'Kattah 2009: a first vertigo beside an arm that sinks; positional vertigo with sound limbs is the ear',
    at: site('vestibular-nerve', 'cranial-nerve'),
    raised: {
      history: { onset: { pace: 'acute' }, symptoms: has('vertigo', 'positional-vertigo') },
      findings: { specialTests: [{ test: 'pronator-drift', side: 'left', result: 'positive' }] },
    },
    not: {
      history: { onset: { pace: 'acute' }, symptoms: has('vertigo', 'positional-vertigo') },
      findings: { specialTests: [{ test: 'pronator-drift', side: 'left', result: 'negative' }] },
    },
  },
];

import { site } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const weakLegs = power('both', '3', 'hip-flexion', 'knee-extension');
const cord = site('spinal-cord-transverse', 'cord', 1, 'T8');
const growing = { course: 'progressive' };
const inShock = {
  power: power('both', '0', 'hip-flexion', 'knee-extension', 'ankle-dorsiflexion'),
  reflexes: reflexes('0', 'knee', 'ankle'),
  sensation: [{ modality: 'light-touch', site: 'whole-leg', side: 'both', result: 'absent' }],
  sphincters: signs('urinary-retention'),
};

/** What is told sparsely, has come slowly, or was not examined. */
export const sparseAndSlowStories: readonly Story[] = [
  {
    flag: 'suspected-cord-compression',
    by: 'a neuropathy takes days: legs lost at once are the cord in spinal shock; an attack of the known kind is potassium',
    raised: { history: { onset: hours }, findings: { power: weakLegs, reflexes: reflexes('0', 'knee', 'ankle') } },
    not: {
      history: { onset: hours, symptoms: has('episodic-weakness') },
      findings: { power: weakLegs, reflexes: reflexes('0', 'knee', 'ankle') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: both legs that grow weak within weeks below a level; what stands still for months is not new',
    at: cord,
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 45 }, ...growing },
      findings: {
        power: weakLegs,
        sensation: [{ modality: 'pinprick', levelBelow: 'T9', side: 'both', result: 'reduced' }],
      },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 45 }, course: 'static' },
      findings: {
        power: weakLegs,
        sensation: [{ modality: 'pinprick', levelBelow: 'T9', side: 'both', result: 'reduced' }],
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'a pain of the neck that struck and takes both arms is the cord; pain of the shoulders is the plexus',
    raised: {
      history: { onset: hours, symptoms: has('neck-pain') },
      findings: { power: power('both', '3', 'finger-flexion', 'finger-abduction') },
    },
    not: {
      history: { onset: hours, symptoms: has('shoulder-pain') },
      findings: { power: power('both', '3', 'finger-flexion', 'finger-abduction') },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'GIRFT 2023: bladder and legs that go on failing are fresh, however long the back has hurt',
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 60 }, ...growing, symptoms: has('bladder-disturbance') },
      findings: { power: weakLegs },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 60 }, ...growing, symptoms: has('bladder-disturbance') },
      findings: {
        power: weakLegs,
        plantars: [{ side: 'both', response: 'extensor' }],
      },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: clumsy hands and a failing walk with brisk jerks; with slow movements it is parkinsonism',
    at: cord,
    raised: {
      history: { onset: months, ...growing, symptoms: has('clumsiness', 'unsteadiness') },
      findings: { reflexes: reflexes('3', 'biceps', 'knee') },
    },
    not: {
      history: { onset: months, ...growing, symptoms: has('clumsiness', 'unsteadiness') },
      findings: {
        reflexes: reflexes('3', 'biceps', 'knee'),
        involuntaryMovements: [{ sign: 'bradykinesia', side: 'both', present: true }],
        cranialNerves: signs('hypokinetic-dysarthria'),
      },
    },
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'IDSA 2015: new pain of the back with fever; without fever it is a back',
    raised: { history: { onset: weeks, symptoms: has('back-pain', 'fever') } },
    not: { history: { onset: weeks, symptoms: has('back-pain') } },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'a thigh that fails newly on an anticoagulant needs no pain',
    at: site('lumbar-plexus', 'plexus'),
    raised: {
      history: { onset: days, medications: has('anticoagulant') },
      findings: { power: power('left', '2', 'hip-flexion', 'knee-extension') },
    },
    not: {
      history: { onset: days, medications: has('antiplatelet') },
      findings: { power: power('left', '2', 'hip-flexion', 'knee-extension') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'RCP 2023: half the body lost within a week; known multiple sclerosis speaks for itself',
    at: site('internal-capsule', 'hemisphere'),
    raised: {
      person: { ageYears: 30 },
      history: { onset: { pace: 'acute', durationDays: 5 } },
      findings: { power: power('left', '3', 'elbow-flexion', 'hip-flexion') },
    },
    not: {
      person: { ageYears: 30 },
      history: { onset: { pace: 'acute', durationDays: 5 }, conditions: has('multiple-sclerosis') },
      findings: { power: power('left', '3', 'elbow-flexion', 'hip-flexion') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'NICE NG128: eyes that part at once where the midbrain is likely; in diabetes it is the small vessel of the nerve',
    at: site('midbrain-tegmentum', 'brainstem', 0.4),
    raised: { history: { onset: hours }, findings: { cranialNerves: on('right', 'third-nerve-palsy') } },
    not: {
      history: { onset: { pace: 'acute', durationDays: 4 }, conditions: has('diabetes-mellitus') },
      findings: { cranialNerves: on('right', 'third-nerve-palsy') },
    },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'a hemiparesis that is a stroke is said once',
    raised: {
      history: { onset: days, ...growing },
      findings: { power: power('both', '3', 'elbow-flexion') },
    },
    not: {
      history: { onset: hours },
      findings: { power: power('left', '3', 'elbow-flexion', 'hip-flexion') },
    },
    at: site('internal-capsule', 'hemisphere'),
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'NICE NG127: arm and leg of one side that weaken for months are no degeneration; what stands still is old',
    at: site('pons-ventral', 'brainstem'),
    raised: {
      history: { onset: months, ...growing },
      findings: { power: power('right', '4', 'elbow-flexion', 'hip-flexion') },
    },
    not: {
      history: { onset: months, course: 'static' },
      findings: { power: power('right', '4', 'elbow-flexion', 'hip-flexion') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: a child who walks worse and is wet again; wetting alone is not',
    raised: {
      person: { ageYears: 5 },
      history: { onset: weeks, ...growing, symptoms: has('difficulty-walking', 'bladder-disturbance') },
    },
    not: { person: { ageYears: 5 }, history: { onset: weeks, ...growing, symptoms: has('bladder-disturbance') } },
  },
  {
    flag: 'suspected-poisoning',
    by: 'pinpoint pupils with wet signs are an anticholinesterase; pinpoint pupils alone are drops',
    raised: {
      history: { onset: hours, symptoms: has('vomiting', 'cramps') },
      findings: { cranialNerves: [...on('both', 'small-pupil'), ...signs('drooling')] },
    },
    not: { history: { onset: hours }, findings: { cranialNerves: on('both', 'small-pupil') } },
  },
  {
    flag: 'suspected-poisoning',
    by: 'thallium: hair falls out with painful feet; hair alone is the skin of the head',
    raised: {
      history: { onset: weeks, symptoms: has('hair-loss', 'burning-feet') },
      findings: { sensation: [{ modality: 'pinprick', site: 'sole', side: 'both', result: 'reduced' }] },
    },
    not: { history: { onset: weeks, symptoms: has('hair-loss') } },
  },
  {
    flag: 'compartment-syndrome',
    by: 'a limb lain upon is dead at several joints; one nerve lain upon takes one',
    raised: {
      history: { onset: hours, symptoms: has('numbness'), exposures: has('injecting-drug-use') },
      findings: { power: power('right', '0', 'knee-flexion', 'ankle-dorsiflexion', 'ankle-plantarflexion') },
    },
    not: {
      history: { onset: hours, symptoms: has('numbness'), exposures: has('injecting-drug-use') },
      findings: { power: power('right', '0', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'acute-bulbar-weakness',
    by: 'saliva runs from a weak half of a face; without it, from a weak throat',
    raised: { history: { onset: days }, findings: { cranialNerves: signs('drooling') } },
    not: {
      history: { onset: days },
      findings: { cranialNerves: [...on('right', 'facial-weakness'), ...signs('drooling')] },
    },
  },
  {
    flag: 'acute-ascending-weakness',
    by: 'jerks that are low all over say nothing where one foot was found weak',
    raised: {
      history: { onset: days, symptoms: has('weakness') },
      findings: { reflexes: reflexes('1', 'knee', 'ankle') },
    },
    not: {
      history: { onset: days, symptoms: has('weakness') },
      findings: { reflexes: reflexes('1', 'knee', 'ankle'), power: power('right', '2', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'drug-induced-hyperthermia-with-rigidity',
    by: 'stiffness that is told stands for tone that nobody tried; stiffness of years is another matter',
    raised: { history: { onset: days, symptoms: has('fever', 'stiffness'), medications: has('antipsychotic') } },
    not: { history: { onset: years, symptoms: has('fever', 'stiffness'), medications: has('antipsychotic') } },
  },
  {
    flag: 'suspected-meningitis',
    by: 'HIV with weeks of headache and vomiting is cryptococcus; migraine of the known kind is not',
    raised: { history: { onset: weeks, symptoms: has('headache', 'vomiting'), conditions: has('hiv-infection') } },
    not: {
      history: { onset: weeks, symptoms: has('headache', 'vomiting'), conditions: has('hiv-infection', 'migraine') },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Graus 2016: odd behaviour of weeks with a grimacing mouth; under an antipsychotic the mouth may be the medicine',
    raised: {
      history: { onset: weeks, symptoms: has('behaviour-change') },
      findings: { involuntaryMovements: signs('orofacial-dyskinesia') },
    },
    not: {
      history: { onset: weeks, symptoms: has('behaviour-change'), medications: has('antipsychotic') },
      findings: { involuntaryMovements: signs('orofacial-dyskinesia') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: legs that in two weeks can hardly be lifted, brisk, under strong arms; over years it is no compression of now',
    at: cord,
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 14 } },
      findings: {
        power: [...power('both', '2', 'hip-flexion', 'knee-extension'), ...power('both', '5', 'elbow-flexion')],
        reflexes: reflexes('3', 'knee', 'ankle'),
      },
    },
    not: {
      history: { onset: years },
      findings: {
        power: [...power('both', '2', 'hip-flexion', 'knee-extension'), ...power('both', '5', 'elbow-flexion')],
        reflexes: reflexes('3', 'knee', 'ankle'),
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'dead, numb legs with a full bladder in a day are a cord in shock; legs that are merely weak and jerkless are nerves',
    at: site('cauda-equina', 'cauda-equina'),
    raised: { history: { onset: { pace: 'acute', durationDays: 1 } }, findings: inShock },
    not: {
      history: { onset: { pace: 'acute', durationDays: 1 } },
      findings: { power: weakLegs, reflexes: inShock.reflexes },
    },
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'NICE CG100: a drinker whose eyes do not turn out and who sways, within weeks; over years it is another disease',
    raised: {
      history: { onset: days, exposures: has('alcohol-excess') },
      findings: { cranialNerves: on('both', 'eye-abduction-weakness'), gait: signs('ataxic') },
    },
    not: {
      history: { onset: years, exposures: has('alcohol-excess') },
      findings: { cranialNerves: on('both', 'eye-abduction-weakness'), gait: signs('ataxic') },
    },
  },
  {
    flag: 'acute-limb-ischaemia',
    by: 'a leg that is dead at once and has changed its colour; one of its own colour may be a stroke',
    raised: {
      history: { onset: hours },
      findings: {
        power: power('left', '0', 'hip-flexion', 'ankle-dorsiflexion'),
        inspection: [{ sign: 'colour-or-temperature-change', site: 'leg-below-knee', side: 'left', present: true }],
      },
    },
    not: {
      history: { onset: hours },
      findings: { power: power('left', '0', 'hip-flexion', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'acute-bulbar-weakness',
    by: 'lids of both eyes, thick speech and limbs within hours: the throat is next; thick speech of a stroke has lids that open',
    at: site('presynaptic-junction', 'junction'),
    raised: {
      history: { onset: hours },
      findings: {
        power: power('both', '3', 'shoulder-abduction'),
        cranialNerves: [...on('both', 'ptosis'), ...signs('dysarthria')],
      },
    },
    not: {
      history: { onset: hours },
      findings: { power: power('both', '3', 'shoulder-abduction'), cranialNerves: signs('dysarthria') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: an eye that no longer turns out; a wide pupil alone has a flag of its own and is mostly a drop',
    raised: {
      person: { ageYears: 6 },
      history: { onset: days },
      findings: { cranialNerves: on('left', 'eye-abduction-weakness') },
    },
    not: {
      person: { ageYears: 6 },
      history: { onset: days },
      findings: { cranialNerves: on('left', 'dilated-pupil') },
    },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'NICE NG127: a limb that fails within days; two movements among strong ones are a nerve',
    raised: {
      history: { onset: days, ...growing },
      findings: { power: power('left', '2', 'thumb-flexion', 'index-distal-flexion') },
    },
    not: {
      history: { onset: days, ...growing },
      findings: {
        power: [
          ...power('left', '2', 'thumb-flexion', 'index-distal-flexion'),
          ...power(
            'left',
            '5',
            'elbow-flexion',
            'elbow-extension',
            'wrist-extension',
            'finger-extension',
            'finger-abduction',
          ),
        ],
      },
    },
  },
];

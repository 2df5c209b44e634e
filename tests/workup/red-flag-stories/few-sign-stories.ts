import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, hours, measured, months, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const cord = site('spinal-cord-transverse', 'cord');
const deadLegs = power('both', '0', 'hip-flexion', 'knee-extension', 'ankle-dorsiflexion');
const halfACord = {
  power: power('left', '4', 'hip-flexion', 'ankle-dorsiflexion'),
  sensation: [{ modality: 'pinprick', site: 'whole-leg', side: 'right', result: 'reduced' }],
};
const pressedArm = { power: power('right', '2', 'wrist-extension', 'finger-extension') };
const motorNeurons = {
  power: power('right', '4', 'ankle-dorsiflexion'),
  reflexes: [{ reflex: 'jaw', grade: '3' }, ...reflexes('3', 'biceps', 'knee')],
  plantars: [{ side: 'both', response: 'extensor' }],
};
const twitching = ['upper-limb', 'lower-limb'].map((limb) => ({
  sign: 'fasciculation',
  present: true,
  site: limb,
  side: 'both',
}));
const skin = (territory: string, side: string) => ({ modality: 'light-touch', territory, side, result: 'reduced' });

/** Emergencies with one or two signs of the many they are known by, each beside the harmless picture nearest to it. */
export const fewSignStories: readonly Story[] = [
  {
    flag: 'suspected-cord-compression',
    by: 'both legs dead in a day under sound arms (NICE NG234; Adams and Victor, spinal shock); with the jerks of the arms lost it is the nerves',
    raised: {
      history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: has('back-pain') },
      findings: { power: deadLegs, reflexes: reflexes('0', 'knee', 'ankle') },
    },
    not: {
      history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: has('back-pain') },
      findings: { power: deadLegs, reflexes: reflexes('0', 'knee', 'ankle', 'biceps', 'triceps') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'half a cord that fails over weeks (NICE NG234); of years and at rest it is old',
    at: cord,
    raised: { history: { onset: { pace: 'subacute', durationDays: 20 } }, findings: halfACord },
    not: { history: { onset: years, course: 'static' }, findings: halfACord },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'half a cord that grows worse at a time nobody has told (NICE NG127); at rest it can wait',
    at: cord,
    raised: { history: { course: 'progressive', symptoms: has('leg-weakness') }, findings: halfACord },
    not: { history: { course: 'static', symptoms: has('leg-weakness') }, findings: halfACord },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'brisk legs that fail are imaged; twitching of arms and legs under a brisk jaw is motor neuron disease (Brooks 2000)',
    raised: { history: { onset: months, course: 'progressive' }, findings: motorNeurons },
    not: { history: { onset: months, course: 'progressive' }, findings: { ...motorNeurons, inspection: twitching } },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'a fever and a memory that fails within days (Adams and Victor, herpes simplex encephalitis); of a known dementia it is not new',
    raised: {
      history: { onset: days, symptoms: has('fever') },
      findings: { higherFunction: signs('memory-impairment') },
    },
    not: {
      history: { onset: days, symptoms: has('fever'), conditions: has('dementia') },
      findings: { higherFunction: signs('memory-impairment') },
    },
  },
  {
    flag: 'painful-horner-syndrome',
    by: 'one narrow pupil with a new pain of the neck (Adams and Victor, dissection); a red eye is inflamed within',
    raised: {
      history: { onset: days, symptoms: has('neck-pain') },
      findings: { cranialNerves: on('left', 'small-pupil') },
    },
    not: {
      history: { onset: days, symptoms: has('red-eye', 'eye-pain') },
      findings: { cranialNerves: on('left', 'small-pupil') },
    },
  },
  {
    flag: 'painful-horner-syndrome',
    by: 'one low lid with a painful neck; with double vision it is another nerve',
    raised: { history: { onset: days, symptoms: has('neck-pain') }, findings: { cranialNerves: on('left', 'ptosis') } },
    not: {
      history: { onset: days, symptoms: has('neck-pain', 'diplopia') },
      findings: { cranialNerves: on('left', 'ptosis') },
    },
  },
  {
    flag: 'compressive-third-nerve-palsy',
    by: 'a wide pupil in an eye that does not move; an eye pushed out has a disease of the orbit',
    raised: {
      person: { ageYears: 55 },
      history: { onset: days, symptoms: has('new-headache') },
      findings: { cranialNerves: on('right', 'dilated-pupil', 'ophthalmoplegia') },
    },
    not: {
      person: { ageYears: 55 },
      history: { onset: days, symptoms: has('new-headache') },
      findings: {
        cranialNerves: on('right', 'dilated-pupil', 'ophthalmoplegia'),
        inspection: on('right', 'proptosis'),
      },
    },
  },
  {
    flag: 'suspected-transient-ischaemic-attack',
    by: 'attacks of weeks that still come and go (NICE NG128); a single one of ten months ago is past',
    raised: {
      history: {
        onset: { pace: 'hyperacute', durationDays: 40 },
        course: 'fluctuating',
        symptoms: has('resolved-deficit', 'similar-attacks-before'),
      },
    },
    not: { history: { onset: { pace: 'hyperacute', durationDays: 300 }, symptoms: has('resolved-deficit') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'a hand that hangs at once may be the cortex; after a deep sleep on the arm it is the radial nerve (NICE NG127)',
    raised: { history: { onset: { durationDays: 1 } }, findings: { ...pressedArm, specialTests: drift() } },
    not: { history: { onset: { durationDays: 1 }, exposures: has('deep-sleep-on-arm') }, findings: pressedArm },
  },
  {
    flag: 'suspected-stroke',
    by: 'words lost at sixty and more at a time nobody has told are treated as new (NICE NG128); at rest they are old',
    raised: { person: { ageYears: 77 }, findings: { higherFunction: signs('global-aphasia') } },
    not: {
      person: { ageYears: 77 },
      history: { course: 'static' },
      findings: { higherFunction: signs('global-aphasia') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'half of the sight in one whose arteries are bad; where the discs are pale it was lost weeks ago',
    raised: {
      history: { conditions: has('stroke', 'hypertension') },
      findings: { cranialNerves: on('left', 'homonymous-hemianopia') },
    },
    not: {
      history: { conditions: has('stroke', 'hypertension') },
      findings: { cranialNerves: [...on('left', 'homonymous-hemianopia'), ...on('both', 'optic-disc-pallor')] },
    },
  },
  {
    flag: 'neuromuscular-respiratory-failure',
    by: 'an insecticide, weak limbs and a short breath (Adams and Victor, organophosphates); without the breath it is watched',
    raised: {
      history: { onset: days, symptoms: has('breathlessness'), exposures: has('organophosphate') },
      findings: { power: weakLegsBothSides },
    },
    not: {
      history: { onset: days, exposures: has('organophosphate') },
      findings: { power: weakLegsBothSides },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'a full bladder and a slack anus under a painful back, undated (GIRFT 2023); at rest it is old',
    raised: {
      history: { symptoms: has('back-pain') },
      findings: { sphincters: signs('urinary-retention', 'reduced-anal-tone') },
    },
    not: {
      history: { onset: years, course: 'static', symptoms: has('back-pain') },
      findings: { sphincters: signs('urinary-retention', 'reduced-anal-tone') },
    },
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    by: 'another nerve in each leg and one of an arm, with pain (PNS 2010); the same on both sides is a polyneuropathy',
    raised: {
      history: { onset: weeks, symptoms: has('neuropathic-pain') },
      findings: {
        sensation: [skin('common-fibular-nerve', 'left'), skin('tibial-nerve', 'right'), skin('median-nerve', 'both')],
      },
    },
    not: {
      history: { onset: weeks, symptoms: has('neuropathic-pain') },
      findings: { sensation: [skin('common-fibular-nerve', 'both'), skin('median-nerve', 'both')] },
    },
  },
  {
    flag: 'suspected-botulism',
    by: 'both lids, double vision and the throat within days (MMWR 2021); in one known to be myasthenic it is a crisis',
    raised: {
      history: { onset: days, symptoms: has('diplopia', 'dysphagia') },
      findings: { cranialNerves: on('both', 'ptosis') },
    },
    not: {
      history: { onset: days, symptoms: has('diplopia', 'dysphagia'), conditions: has('myasthenia-gravis') },
      findings: { cranialNerves: on('both', 'ptosis') },
    },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'a headache, sight that goes for seconds and a beat in the ear (IIH consensus 2018); of the known attacks of migraine it is not',
    raised: { history: { onset: weeks, symptoms: has('headache', 'transient-visual-loss', 'pulsatile-tinnitus') } },
    not: {
      history: {
        onset: weeks,
        symptoms: has('headache', 'transient-visual-loss', 'pulsatile-tinnitus'),
        conditions: has('migraine'),
      },
    },
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'double vision and a swaying walk after weeks of vomiting in pregnancy (Caine 1997); without the vomiting it is something else',
    raised: {
      history: { onset: weeks, symptoms: has('vomiting', 'diplopia', 'unsteadiness'), conditions: has('pregnancy') },
    },
    not: { history: { onset: weeks, symptoms: has('diplopia', 'unsteadiness'), conditions: has('pregnancy') } },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a numb half of the face with a deaf ear of the same side (Brazis, cerebellopontine angle); at rest for years it can wait',
    raised: { findings: { cranialNerves: on('left', 'facial-numbness', 'hearing-loss') } },
    not: {
      history: { onset: years, course: 'static' },
      findings: { cranialNerves: on('left', 'facial-numbness', 'hearing-loss') },
    },
  },
  {
    flag: 'thunderclap-headache',
    by: 'a first headache at once with vomiting and a painful neck from forty on (Ottawa rule 2013); what came over days is another',
    raised: {
      person: { ageYears: 50 },
      history: { onset: hours, symptoms: has('headache', 'vomiting', 'neck-pain') },
    },
    not: { person: { ageYears: 50 }, history: { onset: days, symptoms: has('headache', 'vomiting', 'neck-pain') } },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'several limbs within days (NICE NG127); two nerves in one whose nerves give way to pressure are pressed',
    raised: {
      history: { onset: days },
      findings: { power: [...power('right', '3', 'ankle-dorsiflexion'), ...power('left', '3', 'finger-abduction')] },
    },
    not: {
      history: { onset: days, conditions: has('previous-pressure-palsy') },
      findings: { power: [...power('right', '3', 'ankle-dorsiflexion'), ...power('left', '3', 'finger-abduction')] },
    },
  },
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'confusion that is new (NEWS 2, 2017); one of months is not',
    raised: { history: { onset: days }, findings: { higherFunction: signs('confusion') } },
    not: { history: { onset: months }, findings: { higherFunction: signs('confusion') } },
  },
  {
    flag: 'suspected-acute-porphyria',
    by: 'pain of the abdomen with a low sodium (Anderson 2005); with a usual one it is another',
    raised: {
      history: { onset: weeks, symptoms: has('abdominal-pain') },
      results: [measured('sodium', 122, 'mmol/L')],
    },
    not: { history: { onset: weeks, symptoms: has('abdominal-pain') }, results: [measured('sodium', 138, 'mmol/L')] },
  },
  {
    flag: 'rhabdomyolysis',
    by: 'what muscle has lost in the month endangers the kidneys (Amato and Russell); a muscle ill for years runs high',
    raised: { history: { onset: weeks }, results: [measured('creatine-kinase', 18000, 'U/L')] },
    not: { history: { onset: years }, results: [measured('creatine-kinase', 18000, 'U/L')] },
  },
  {
    flag: 'status-epilepticus',
    by: 'a known epilepsy and a mind that clouds within hours (Adams and Victor, non-convulsive status); in a fever it is looked for elsewhere',
    raised: {
      history: { onset: hours, conditions: has('epilepsy') },
      findings: { higherFunction: signs('disorientation') },
    },
    not: {
      history: { onset: hours, conditions: has('epilepsy'), symptoms: has('fever') },
      findings: { higherFunction: signs('disorientation') },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'a fever and an arm that fails in days (Adams and Victor, brain abscess); after a blow to that arm it is the blow',
    raised: { history: { onset: days, symptoms: has('fever') }, findings: pressedArm },
    not: { history: { onset: days, symptoms: has('fever'), exposures: has('trauma') }, findings: pressedArm },
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'a red, painful eye that sees double (Adams and Victor, cavernous sinus thrombosis); in Graves disease it is known why',
    raised: { history: { onset: weeks, symptoms: has('red-eye', 'eye-pain', 'diplopia') } },
    not: {
      history: { onset: weeks, symptoms: has('red-eye', 'eye-pain', 'diplopia'), conditions: has('hyperthyroidism') },
    },
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'legs that fail in a fever without defence (Adams and Victor, epidural abscess), though nothing hurts',
    raised: {
      history: { onset: days, symptoms: has('fever'), conditions: has('immunosuppression') },
      findings: { power: weakLegsBothSides },
    },
    not: { history: { onset: days, symptoms: has('fever') }, findings: { power: weakLegsBothSides } },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'a new headache with vomiting and a mind that clouds within days (Adams and Victor, obstructive hydrocephalus); a clear mind can wait a day',
    raised: {
      history: { onset: days, symptoms: has('new-headache', 'vomiting') },
      findings: { higherFunction: signs('confusion') },
    },
    not: { history: { onset: days, symptoms: has('new-headache', 'vomiting') } },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'an arm and a leg that fail after a fall (NICE NG41); with a crooked face it is the head',
    raised: {
      history: { onset: hours, exposures: has('trauma') },
      findings: { power: power('right', '4', 'elbow-extension', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: hours, exposures: has('trauma') },
      findings: {
        power: power('right', '4', 'elbow-extension', 'ankle-dorsiflexion'),
        cranialNerves: on('right', 'lower-facial-weakness'),
      },
    },
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'weeks of vomiting before a swaying walk (Caine 1997); with swollen discs it is the pressure that brings the vomiting',
    raised: { history: { onset: weeks, symptoms: has('vomiting') }, findings: { gait: signs('ataxic') } },
    not: {
      history: { onset: weeks, symptoms: has('vomiting') },
      findings: { gait: signs('ataxic'), cranialNerves: on('both', 'optic-disc-swelling') },
    },
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'a stomach taken out and a mind that clouds over weeks (Caine 1997); with food and stomach it is looked for elsewhere',
    raised: {
      history: { onset: weeks, conditions: has('gastrectomy') },
      findings: { higherFunction: signs('confusion') },
    },
    not: { history: { onset: weeks }, findings: { higherFunction: signs('confusion') } },
  },
];

function drift() {
  return [{ test: 'pronator-drift', side: 'right', result: 'positive' }];
}

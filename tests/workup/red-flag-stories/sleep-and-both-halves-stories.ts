import { site } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, type Story, signs, weeks } from './story.ts';

const swaying = { coordination: ['left', 'right'].map((side) => ({ test: 'finger-nose', side, result: 'impaired' })) };
const brain = site('diffuse-encephalopathy', 'encephalopathy');
const growing = { onset: weeks, course: 'progressive' };

/** Sleep under medicines, trouble of both halves that is no mass, nerves of one cavernous sinus, limbs struck at once; beside the picture nearest to each. */
export const sleepAndBothHalvesStories: readonly Story[] = [
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'sleep over months in a failing liver (Adams and Victor, metabolic disorders); a clear mind is none',
    raised: {
      history: { onset: months, conditions: has('chronic-liver-disease') },
      findings: { higherFunction: signs('drowsiness') },
    },
    not: {
      history: { onset: months, conditions: has('chronic-liver-disease') },
      findings: { higherFunction: signs('apathy') },
    },
    at: brain,
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a cerebellum of one half under phenytoin (NICE NG127); both halves alike are poisoned',
    raised: {
      history: { ...growing, symptoms: has('unsteadiness'), medications: has('phenytoin') },
      findings: { coordination: [{ test: 'finger-nose', side: 'left', result: 'impaired' }] },
    },
    not: { history: { ...growing, symptoms: has('unsteadiness'), medications: has('phenytoin') }, findings: swaying },
    at: site('cerebellar-hemisphere', 'cerebellum'),
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a mind that fails over weeks beside a cancer (NICE NG127); with jerks and nothing of a mass the whole brain fails',
    raised: {
      history: { ...growing, symptoms: has('cognitive-change'), conditions: has('cancer') },
      findings: { higherFunction: signs('memory-impairment'), involuntaryMovements: signs('myoclonus') },
    },
    not: {
      history: { ...growing, symptoms: has('cognitive-change') },
      findings: { higherFunction: signs('memory-impairment'), involuntaryMovements: signs('myoclonus') },
    },
    at: brain,
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a slow clumsiness of one half with failing thought (NICE NG127); a cerebellum that has swayed on both sides for uncounted years degenerates',
    raised: {
      history: { onset: { pace: 'chronic' }, course: 'progressive', symptoms: has('cognitive-change') },
      findings: { coordination: [{ test: 'finger-nose', side: 'left', result: 'impaired' }] },
    },
    not: {
      history: { onset: { pace: 'chronic' }, course: 'progressive', symptoms: has('cognitive-change') },
      findings: swaying,
    },
    at: site('cerebellar-hemisphere', 'cerebellum'),
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'a sixth nerve with a headache (consensus on idiopathic intracranial hypertension); with the third and a numb brow it is the cavernous sinus',
    raised: {
      history: { onset: days, symptoms: has('headache') },
      findings: { cranialNerves: on('right', 'sixth-nerve-palsy') },
    },
    not: {
      history: { onset: days, symptoms: has('headache') },
      findings: { cranialNerves: on('right', 'sixth-nerve-palsy', 'third-nerve-palsy', 'facial-numbness') },
    },
    at: site('cavernous-sinus', 'cranial-nerve'),
  },
  {
    flag: 'suspected-meningitis',
    by: 'a headache with fever in one without defence (NICE NG240); with a sound defence the neck is tried first',
    raised: { history: { onset: weeks, symptoms: has('headache', 'fever'), conditions: has('immunosuppression') } },
    not: { history: { onset: weeks, symptoms: has('headache', 'fever') } },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'nothing is kept in mind days after a transplant (Adams and Victor, encephalitis); what stroke or habit took is not it',
    raised: {
      history: { onset: days, conditions: has('immunosuppression') },
      findings: { higherFunction: signs('amnesia') },
    },
    not: { history: { onset: days }, findings: { higherFunction: signs('amnesia') } },
    at: brain,
  },
  {
    flag: 'first-seizure',
    by: 'a fit after months of cramped hands (NICE NG217); one of an old, known epilepsy is none',
    raised: {
      history: { onset: { pace: 'chronic', durationDays: 120 }, symptoms: has('cramps', 'seizure') },
      findings: { specialTests: [{ test: 'chvostek-or-trousseau', result: 'positive' }] },
    },
    not: { history: { onset: { pace: 'chronic', durationDays: 120 }, symptoms: has('cramps', 'seizure') } },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'all four limbs gone within hours (NICE NG127); legs and arms that still move have a flag of their own',
    raised: { history: { onset: hours }, findings: { power: power('both', '0', 'shoulder-abduction', 'hip-flexion') } },
    not: { history: { onset: hours }, findings: { power: power('both', '3', 'shoulder-abduction', 'hip-flexion') } },
    at: site('proximal-myopathy', 'muscle'),
  },
  {
    flag: 'drug-induced-hyperthermia-with-rigidity',
    by: 'Parkinson disease with fever, rigidity and a clouded mind (Adams and Victor); fever with a clear mind is an infection',
    raised: {
      history: { onset: days, symptoms: has('fever'), conditions: has('parkinson-disease') },
      findings: { higherFunction: signs('confusion'), tone: [{ site: 'upper-limb', side: 'both', tone: 'rigid' }] },
    },
    not: {
      history: { onset: days, symptoms: has('fever'), conditions: has('parkinson-disease') },
      findings: { tone: [{ site: 'upper-limb', side: 'both', tone: 'rigid' }] },
    },
    at: brain,
  },
  {
    flag: 'suspected-stroke',
    by: 'a gait that fits no lesion with vertigo told beside it (NICE NG128); by itself it says nothing of the brain',
    raised: {
      history: { onset: hours, symptoms: has('vomiting') },
      findings: { gait: signs('functional', 'unable-to-stand') },
    },
    not: { history: { onset: hours }, findings: { gait: signs('functional', 'unable-to-stand') } },
    at: site('cerebellar-vermis', 'cerebellum'),
  },
  {
    flag: 'suspected-stroke',
    by: 'words that went two days ago (NICE NG128); slurred words are of many places',
    raised: { history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('speech-difficulty') } },
    not: { history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('slurred-speech') } },
  },
];

import { site } from '../../support/bedside.ts';
import { days, has, hours, measured, months, on, power, type Story, signs, weeks, years } from './story.ts';

export const brainAndEyeStories: readonly Story[] = [
  {
    flag: 'suspected-stroke',
    by: 'NICE NG128: a sudden focal deficit',
    raised: {
      history: { onset: hours },
      findings: { cranialNerves: on('right', 'lower-facial-weakness'), higherFunction: signs('expressive-aphasia') },
    },
    not: {
      history: { onset: weeks },
      findings: { cranialNerves: on('right', 'lower-facial-weakness'), higherFunction: signs('expressive-aphasia') },
    },
  },
  {
    flag: 'suspected-transient-ischaemic-attack',
    by: 'NICE NG128: within 24 hours to a specialist; ICHD-3 1.2: an aura spreads over minutes and comes again',
    raised: { history: { onset: days, symptoms: has('resolved-deficit') } },
    not: {
      history: { onset: days, symptoms: has('resolved-deficit', 'spreading-over-minutes', 'similar-attacks-before') },
    },
  },
  {
    flag: 'hypoglycaemia-with-deficit',
    by: 'NICE NG128: exclude hypoglycaemia; joint British societies treat under 4 mmol/L (recalled)',
    raised: { history: { onset: hours }, results: [measured('glucose-random', 2.1, 'mmol/L')] },
    not: { history: { onset: hours }, results: [measured('glucose-random', 5.4, 'mmol/L')] },
  },
  {
    flag: 'thunderclap-headache',
    by: 'NICE NG228: sudden, at its worst within minutes',
    raised: { history: { onset: hours, symptoms: has('thunderclap-headache') } },
    not: {
      history: { onset: hours, symptoms: [...has('new-headache'), { key: 'thunderclap-headache', present: false }] },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Adams and Victor: fever with an altered mind; Graus 2016: under three months',
    raised: { history: { onset: days, symptoms: has('fever') }, findings: { higherFunction: signs('confusion') } },
    not: { history: { onset: years, symptoms: has('fever') }, findings: { higherFunction: signs('confusion') } },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'Mollan 2018: swollen discs on both sides; one disc of an eye that sees badly is its own disease',
    raised: {
      history: { onset: weeks, symptoms: has('headache') },
      findings: { cranialNerves: on('both', 'optic-disc-swelling') },
    },
    not: {
      history: { onset: weeks, symptoms: has('headache') },
      findings: { cranialNerves: on('left', 'optic-disc-swelling', 'relative-afferent-pupillary-defect') },
    },
  },
  {
    flag: 'status-epilepticus',
    by: 'NICE NG217: a seizure that goes on',
    raised: { history: { onset: hours, symptoms: has('ongoing-seizure') } },
    not: { history: { onset: hours, symptoms: has('seizure') } },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'NICE NG127: a focal deficit that grows over weeks',
    at: site('cortex-frontal', 'hemisphere'),
    raised: {
      history: { onset: weeks, course: 'progressive' },
      findings: { power: power('right', '4', 'elbow-extension', 'hip-flexion') },
    },
    not: {
      history: { onset: weeks, course: 'improving' },
      findings: { power: power('right', '4', 'elbow-extension', 'hip-flexion') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'NICE NG127 asks for an MRI: one that shows no mass has answered',
    at: site('cortex-frontal', 'hemisphere'),
    raised: {
      history: { onset: weeks, course: 'progressive', symptoms: has('new-headache') },
      findings: { power: power('right', '4', 'elbow-extension', 'hip-flexion') },
      results: [{ key: 'ct-head', value: 'normal' }],
    },
    not: {
      history: { onset: weeks, course: 'progressive', symptoms: has('new-headache') },
      findings: { power: power('right', '4', 'elbow-extension', 'hip-flexion') },
      results: [{ key: 'mri-brain', value: 'normal' }],
    },
  },
  {
    flag: 'acute-visual-loss',
    by: 'BSR 2020 and common practice: sight lost within two weeks',
    raised: { history: { onset: days }, findings: { cranialNerves: on('left', 'reduced-visual-acuity') } },
    not: { history: { onset: months }, findings: { cranialNerves: on('left', 'reduced-visual-acuity') } },
  },
  {
    flag: 'acute-visual-loss',
    by: 'NICE NG127: what creeps over the sight within minutes, passes and has come before is an aura of migraine',
    raised: { history: { onset: hours, symptoms: has('visual-loss', 'spreading-over-minutes') } },
    not: {
      history: {
        onset: hours,
        symptoms: has('visual-loss', 'spreading-over-minutes', 'resolved-deficit', 'similar-attacks-before'),
      },
    },
  },
  {
    flag: 'suspected-giant-cell-arteritis',
    by: 'ACR/EULAR 2022: from the age of 50 on',
    raised: {
      person: { ageYears: 72 },
      history: { onset: weeks, symptoms: has('new-headache', 'jaw-claudication') },
    },
    not: { person: { ageYears: 42 }, history: { onset: weeks, symptoms: has('new-headache', 'jaw-claudication') } },
  },
  {
    flag: 'painful-horner-syndrome',
    by: 'Adams and Victor: a painful Horner syndrome is a torn carotid artery until shown otherwise',
    raised: {
      history: { onset: days, symptoms: has('neck-pain') },
      findings: { cranialNerves: on('left', 'ptosis', 'small-pupil') },
    },
    not: {
      history: { onset: days, symptoms: has('neck-pain') },
      findings: { cranialNerves: [...on('left', 'ptosis'), ...on('right', 'small-pupil')] },
    },
  },
];

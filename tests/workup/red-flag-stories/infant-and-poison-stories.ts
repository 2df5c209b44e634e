import { days, has, hours, months, type Story, signs, years } from './story.ts';

const onBoth = (sign: string) => (['left', 'right'] as const).map((side) => ({ sign, side, present: true }));
const flooded = (present: boolean) => ({ sign: 'hypersecretion', present });

export const infantAndPoisonStories: readonly Story[] = [
  {
    flag: 'suspected-meningitis',
    by: 'common practice: the neck of an infant stays supple, the fontanelle does not',
    raised: {
      person: { ageYears: 0.6 },
      history: { onset: days, symptoms: has('fever') },
      findings: { inspection: signs('bulging-fontanelle') },
    },
    not: { person: { ageYears: 0.6 }, history: { onset: days, symptoms: has('fever') } },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'common practice: a head that grows too fast, with vomiting, and not one that was always large',
    raised: {
      person: { ageYears: 0.5 },
      history: { onset: months, symptoms: has('vomiting') },
      findings: { inspection: signs('large-head') },
    },
    not: {
      person: { ageYears: 0.5 },
      history: { onset: years, course: 'static', symptoms: has('vomiting') },
      findings: { inspection: signs('large-head') },
    },
  },
  {
    flag: 'suspected-tetanus',
    by: 'Adams and Victor: the grin of tetanus over a trunk that is stiff',
    raised: {
      history: { onset: days, symptoms: has('stiffness') },
      findings: { involuntaryMovements: signs('risus-sardonicus') },
    },
    not: {
      history: { onset: years, symptoms: has('stiffness') },
      findings: { involuntaryMovements: signs('risus-sardonicus') },
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: small pupils and glands that run over, whatever was taken',
    raised: {
      history: { onset: hours, symptoms: has('vomiting') },
      findings: { cranialNerves: onBoth('small-pupil'), autonomic: [flooded(true)] },
    },
    not: {
      history: { onset: hours, symptoms: has('vomiting') },
      findings: { cranialNerves: onBoth('small-pupil'), autonomic: [flooded(false)] },
    },
  },
];

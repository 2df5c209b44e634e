import { site } from '../../support/bedside.ts';
import { days, has, hours, measured, months, on, type Story, signs, weeks, years } from './story.ts';

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
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: a level proves what nobody told; smokers have up to a tenth',
    raised: {
      history: { onset: hours, symptoms: has('headache') },
      results: [measured('carboxyhaemoglobin', 27, '%')],
    },
    not: { history: { onset: hours, symptoms: has('headache') }, results: [measured('carboxyhaemoglobin', 6, '%')] },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: lithium over 2 mmol/L',
    raised: { history: { onset: days }, results: [measured('lithium-level', 2.9, 'mmol/L')] },
    not: { history: { onset: days }, results: [measured('lithium-level', 0.8, 'mmol/L')] },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: eyes or a mind that fail with an osmolal gap',
    raised: {
      history: { onset: hours, symptoms: has('visual-loss') },
      results: [measured('osmolal-gap', 38, 'mosm/kg')],
    },
    not: { history: { onset: hours, symptoms: has('visual-loss') }, results: [measured('osmolal-gap', 4, 'mosm/kg')] },
  },
  {
    flag: 'suspected-meningitis',
    by: 'Adams and Victor: a tenth of the cells are eosinophils in eosinophilic meningitis',
    raised: { history: { onset: days }, results: [measured('csf-eosinophils', 35, '%')] },
    not: { history: { onset: days }, results: [measured('csf-eosinophils', 1, '%')] },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: gabapentin clouds the mind of those whose kidneys fail',
    raised: {
      history: { onset: days, conditions: has('chronic-kidney-disease'), medications: has('gabapentinoid') },
      findings: { higherFunction: signs('drowsiness') },
    },
    not: {
      history: { onset: days, medications: has('gabapentinoid') },
      findings: { higherFunction: signs('drowsiness') },
    },
  },
  {
    flag: 'drug-induced-hyperthermia-with-rigidity',
    by: 'Adams and Victor: baclofen that stops brings spasms, fever and fits within days',
    raised: {
      history: { onset: days, symptoms: has('stiffness'), exposures: has('baclofen-withdrawal') },
      findings: { higherFunction: signs('agitation') },
    },
    not: {
      history: { onset: days, symptoms: has('stiffness'), medications: has('baclofen') },
      findings: { higherFunction: signs('agitation') },
    },
  },
  {
    flag: 'suspected-eclampsia',
    by: 'NICE NG133: a headache with protein in the urine of a pregnant woman',
    raised: {
      person: { ageYears: 28, sex: 'female' },
      history: { onset: days, symptoms: has('headache'), conditions: has('pregnancy') },
      results: [{ key: 'urine-protein', value: 'raised' }],
    },
    not: {
      person: { ageYears: 28, sex: 'female' },
      history: { onset: days, symptoms: has('headache'), conditions: has('pregnancy') },
      results: [{ key: 'urine-protein', value: 'negative' }],
    },
  },
  {
    flag: 'sudden-hearing-loss',
    by: 'guidance of 2019: a deaf ear since less than a month is seen at once, one of years is not',
    raised: { history: { onset: days, symptoms: has('hearing-loss', 'tinnitus') } },
    not: { history: { onset: years, symptoms: has('hearing-loss', 'tinnitus') } },
  },
  {
    flag: 'necrotising-otitis',
    by: 'from memory: diabetes, an ear that hurts for weeks and a nerve of the skull base',
    raised: {
      history: { onset: weeks, symptoms: has('ear-pain'), conditions: has('diabetes-mellitus') },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
    not: {
      history: { onset: weeks, symptoms: has('ear-pain') },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
  },
  {
    flag: 'necrotising-otitis',
    by: 'common practice: an infection of the ear that reaches the tongue has left the ear; one that weakens the face may not have',
    raised: {
      history: { onset: weeks, symptoms: has('ear-pain'), conditions: has('sinus-or-ear-infection') },
      findings: { cranialNerves: on('left', 'tongue-weakness') },
    },
    not: {
      history: { onset: weeks, symptoms: has('ear-pain'), conditions: has('sinus-or-ear-infection') },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
  },
  {
    flag: 'infant-horner-syndrome',
    by: 'Adams and Victor: a Horner syndrome of an infant may be a neuroblastoma, if not a birth injury',
    raised: {
      person: { ageYears: 0.8 },
      history: {},
      findings: { cranialNerves: on('left', 'horner-syndrome') },
    },
    not: {
      person: { ageYears: 0.8 },
      history: { exposures: has('shoulder-dystocia') },
      findings: { cranialNerves: on('left', 'horner-syndrome') },
    },
  },
  {
    flag: 'neuromuscular-respiratory-failure',
    by: 'Adams and Victor, organophosphates: breath that is seen to fail, before anybody has tried a muscle; lungs fail alike without a poison',
    raised: {
      history: { onset: hours, symptoms: has('breathlessness'), exposures: has('organophosphate') },
      findings: { autonomic: signs('breathlessness-at-rest', 'hypersecretion') },
    },
    not: {
      history: { onset: hours, symptoms: has('breathlessness') },
      findings: { autonomic: signs('breathlessness-at-rest', 'hypersecretion') },
    },
    at: site('presynaptic-junction', 'junction', 0.2),
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'Caine 1997: vomiting and both arms clumsy; those of one side alone are of one half of the cerebellum',
    raised: {
      history: { onset: weeks, symptoms: has('vomiting', 'unsteadiness') },
      findings: { coordination: [{ test: 'finger-nose', side: 'both', result: 'impaired' }] },
    },
    not: {
      history: { onset: weeks, symptoms: has('vomiting', 'unsteadiness') },
      findings: { coordination: [{ test: 'finger-nose', side: 'left', result: 'impaired' }] },
    },
  },
  {
    flag: 'bilateral-facial-palsy',
    by: 'Amato and Russell: shoulder blades that wing beside a weak face, of which nobody says since when, are a dystrophy',
    raised: { findings: { cranialNerves: onBoth('facial-weakness') } },
    not: { findings: { cranialNerves: onBoth('facial-weakness'), inspection: onBoth('scapular-winging') } },
    at: site('facioscapulohumeral-myopathy', 'muscle', 0.8),
  },
];

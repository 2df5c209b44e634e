import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, on, power, reflexes, type Story, signs, weeks } from './story.ts';

const everyJoint = power('both', '4', 'hip-flexion', 'knee-extension', 'ankle-dorsiflexion');
const threeWeeks = { pace: 'subacute', durationDays: 21 };
const afterABlow = has('trauma');
const allFourAtThree = power('both', '3', 'hip-flexion', 'shoulder-abduction');
const child = { ageYears: 9 };

export const legsChildAndEyeStories: readonly Story[] = [
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: legs that fail at every joint under a painful back, though much power is left; of the feet alone it may be two roots',
    raised: {
      history: { onset: threeWeeks, course: 'progressive', symptoms: has('back-pain', 'difficulty-walking') },
      findings: { power: everyJoint },
    },
    not: {
      history: { onset: threeWeeks, course: 'progressive', symptoms: has('back-pain', 'difficulty-walking') },
      findings: { power: power('both', '4', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: a walk that goes on failing within a month under a pain between the shoulder blades, and not for half a year',
    raised: {
      history: { onset: threeWeeks, course: 'progressive', symptoms: has('thoracic-back-pain', 'difficulty-walking') },
    },
    not: {
      history: {
        onset: { pace: 'subacute', durationDays: 180 },
        course: 'progressive',
        symptoms: has('thoracic-back-pain', 'difficulty-walking'),
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG41: both arms that fail after a blow stay failed; a shoulder that hurts with them is its own',
    raised: {
      history: {
        onset: { pace: 'hyperacute', durationDays: 10 },
        course: 'static',
        symptoms: [{ key: 'arm-weakness', present: true, side: 'both' }],
        exposures: afterABlow,
      },
    },
    not: {
      history: {
        onset: { pace: 'hyperacute', durationDays: 10 },
        course: 'static',
        symptoms: [{ key: 'arm-weakness', present: true, side: 'both' }, ...has('shoulder-pain')],
        exposures: afterABlow,
      },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: legs and walk that fail more and more under a back that hurts, undated; the pain of one root is another matter',
    raised: { history: { course: 'progressive', symptoms: has('back-pain', 'leg-weakness', 'difficulty-walking') } },
    not: {
      history: {
        course: 'progressive',
        symptoms: has('back-pain', 'radicular-leg-pain', 'leg-weakness', 'difficulty-walking'),
      },
    },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'NICE NG127: arms that hang over strong legs, whose jerks may be brisk; brisk jerks of weak legs are the cord, which has its own flag',
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: {
        power: [...power('both', '0', 'shoulder-abduction'), ...power('both', '5', 'hip-flexion')],
        reflexes: reflexes('3', 'knee'),
      },
    },
    not: {
      // Not said to grow: the story of what is said to is told by a rule of its own.
      history: { onset: days },
      findings: {
        power: [...power('both', '4', 'shoulder-abduction'), ...weakLegsBothSides],
        plantars: [{ side: 'both', response: 'extensor' }],
      },
    },
    at: site('spinal-cord-transverse', 'cord'),
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'Allenbach 2020: girdles that hardly lift within weeks under a statin, before the enzyme is known; without the statin it is asked first',
    raised: {
      history: { onset: weeks, symptoms: has('difficulty-with-stairs'), medications: has('statin') },
      findings: { power: allFourAtThree },
    },
    not: {
      history: { onset: weeks, symptoms: has('difficulty-with-stairs') },
      findings: { power: allFourAtThree },
    },
    at: site('proximal-myopathy', 'muscle'),
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'a limb that twists within weeks and takes the walk along; twisting that has stood still for years does not',
    raised: {
      person: child,
      history: { onset: weeks, course: 'progressive', symptoms: has('difficulty-walking', 'involuntary-movements') },
      findings: { involuntaryMovements: signs('dystonia') },
    },
    not: {
      person: child,
      history: {
        onset: { pace: 'chronic', durationDays: 2000 },
        course: 'static',
        symptoms: has('difficulty-walking'),
      },
      findings: { involuntaryMovements: signs('dystonia') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'speech that fails within a month, though its pace was called acute; speech that has always been so is no emergency',
    raised: {
      person: { ageYears: 12 },
      history: { onset: { pace: 'acute', durationDays: 30 }, symptoms: has('slurred-speech') },
      findings: { cranialNerves: signs('dysarthria') },
    },
    not: {
      person: { ageYears: 12 },
      history: { onset: { pace: 'chronic', durationDays: 3000 }, symptoms: has('slurred-speech') },
      findings: { cranialNerves: signs('dysarthria') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'a child whose manner changes and whose words slur over months; a tremor alone is none of it',
    raised: {
      person: { ageYears: 15 },
      history: { onset: { pace: 'subacute', durationDays: 120 }, symptoms: has('behaviour-change', 'slurred-speech') },
    },
    not: {
      person: { ageYears: 15 },
      history: { onset: { pace: 'subacute', durationDays: 120 }, symptoms: has('tremor') },
    },
  },
  {
    flag: 'acute-visual-loss',
    by: 'BSR 2020: an eye that fails at the end of weeks of a tender scalp; eight weeks of a failing eye alone are no emergency',
    raised: {
      person: { ageYears: 78 },
      history: {
        onset: { pace: 'subacute', durationDays: 56 },
        course: 'progressive',
        symptoms: has('scalp-tenderness', 'visual-loss'),
      },
    },
    not: {
      person: { ageYears: 78 },
      history: { onset: { pace: 'subacute', durationDays: 56 }, course: 'progressive', symptoms: has('visual-loss') },
    },
  },
  {
    flag: 'suspected-transient-ischaemic-attack',
    by: 'NICE NG128: one eye that goes dark for moments; both that blur in weeks of headache of the young are under pressure',
    raised: {
      person: { ageYears: 37 },
      history: {
        onset: { pace: 'subacute', durationDays: 14 },
        symptoms: [{ key: 'transient-visual-loss', present: true, side: 'left' }, ...has('headache')],
      },
    },
    not: {
      person: { ageYears: 37 },
      history: {
        onset: { pace: 'subacute', durationDays: 14 },
        symptoms: [{ key: 'transient-visual-loss', present: true, side: 'both' }, ...has('headache')],
      },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'movements of one side over weeks may be a mass; those of no side are of blood, glands and drugs',
    raised: {
      history: { onset: weeks },
      findings: { involuntaryMovements: on('right', 'chorea') },
    },
    not: {
      history: { onset: weeks },
      findings: { involuntaryMovements: signs('chorea') },
    },
    at: site('striatum', 'hemisphere'),
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'one eye pushed out, red and double within days; the same of months is not left for hours',
    raised: {
      history: { onset: days, symptoms: has('red-eye', 'diplopia') },
      findings: { inspection: on('right', 'proptosis', 'chemosis') },
    },
    not: {
      history: { onset: { pace: 'chronic', durationDays: 300 }, symptoms: has('red-eye', 'diplopia') },
      findings: { inspection: on('right', 'proptosis', 'chemosis') },
    },
  },
];

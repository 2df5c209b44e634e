import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, reflexes, type Story, signs, weeks } from './story.ts';

const weakAndAreflexic = { power: weakLegsBothSides, reflexes: reflexes('0', 'knee', 'ankle') };

export const nerveStories: readonly Story[] = [
  {
    flag: 'acute-ascending-weakness',
    by: 'van Doorn 2023: symmetrical weakness with lost reflexes, growing for at most four weeks',
    raised: { history: { onset: days, course: 'progressive' }, findings: weakAndAreflexic },
    not: { history: { onset: days, course: 'improving' }, findings: weakAndAreflexic },
  },
  {
    flag: 'neuromuscular-respiratory-failure',
    by: 'Lawn 2001: the weak muscles of breathing show at the bedside too',
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: { ...weakAndAreflexic, autonomic: signs('weak-cough') },
    },
    not: {
      history: { onset: days, course: 'progressive' },
      findings: { ...weakAndAreflexic, autonomic: [{ sign: 'weak-cough', present: false }] },
    },
  },
  {
    flag: 'acute-bulbar-weakness',
    by: 'Wendell 2011: swallowing lost within days endangers the airway',
    raised: { history: { onset: days }, findings: { cranialNerves: signs('dysphagia') } },
    not: { history: { onset: months }, findings: { cranialNerves: signs('dysphagia') } },
  },
  {
    flag: 'threatened-myasthenic-crisis',
    by: 'Narayanaswami 2021: swallowing or breathing that grows worse in myasthenia',
    raised: {
      history: { onset: days, course: 'progressive', symptoms: has('dysphagia') },
      findings: { cranialNerves: on('left', 'fatigable-ptosis') },
    },
    not: {
      history: { onset: days, course: 'progressive' },
      findings: { cranialNerves: on('left', 'fatigable-ptosis') },
    },
  },
  {
    flag: 'suspected-botulism',
    by: 'Rao 2021: descending palsies of cranial nerves without fever',
    raised: {
      history: { onset: days, symptoms: has('descending-weakness') },
      findings: { cranialNerves: [...on('both', 'ptosis', 'dilated-pupil'), ...signs('dysphagia')] },
    },
    not: {
      history: { onset: days, symptoms: has('descending-weakness', 'fever') },
      findings: { cranialNerves: [...on('both', 'ptosis', 'dilated-pupil'), ...signs('dysphagia')] },
    },
  },
  {
    flag: 'autonomic-instability-in-neuropathy',
    by: 'Leonhard 2019: labile pressure and rhythm in Guillain-Barré syndrome',
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: { ...weakAndAreflexic, autonomic: signs('bradycardia') },
    },
    not: { history: { onset: days }, findings: { autonomic: signs('bradycardia') } },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'NICE NG127: limb weakness that grows within hours to days',
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: { power: power('left', '3', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: days, course: 'static' },
      findings: { power: power('left', '3', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'bilateral-facial-palsy',
    by: 'Leonhard 2019: weak faces on both sides are a variant of Guillain-Barré syndrome',
    raised: { history: { onset: days }, findings: { cranialNerves: on('both', 'facial-weakness') } },
    not: { history: { onset: days }, findings: { cranialNerves: on('left', 'facial-weakness') } },
  },
  {
    flag: 'slow-weakness-with-breathlessness',
    by: 'NICE NG127: limb or neck weakness with breathlessness is referred at once',
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('orthopnoea') },
      findings: { power: power('left', '4', 'finger-abduction') },
    },
    not: {
      history: { onset: months, course: 'progressive', symptoms: has('orthopnoea') },
    },
  },
  {
    flag: 'slow-weakness-with-swallowing-trouble',
    by: 'NICE NG127: limb or neck weakness with impaired swallowing',
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('dysphagia') },
      findings: { power: power('left', '4', 'finger-abduction') },
    },
    not: {
      history: { onset: months, course: 'static', symptoms: has('dysphagia') },
      findings: { power: power('left', '4', 'finger-abduction') },
    },
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    by: 'Collins 2010: painful nerves that fail one by one with signs of vasculitis',
    raised: {
      history: { onset: weeks, course: 'progressive', symptoms: has('neuropathic-pain', 'weight-loss') },
      findings: {
        power: [...power('left', '2', 'ankle-dorsiflexion'), ...power('right', '2', 'wrist-extension')],
      },
    },
    not: {
      history: { onset: weeks, course: 'progressive', symptoms: has('neuropathic-pain', 'weight-loss') },
      findings: { power: power('left', '2', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'complete-nerve-injury',
    by: 'common practice: a nerve that may be cut is looked at by a surgeon, not watched',
    raised: {
      history: { onset: days, exposures: has('trauma') },
      findings: { power: power('right', '0', 'wrist-extension') },
    },
    not: {
      history: { onset: days, exposures: has('trauma') },
      findings: { power: power('right', '3', 'wrist-extension') },
    },
  },
  {
    flag: 'nitrous-oxide-myeloneuropathy',
    by: 'NICE NG239: nitrous oxide inactivates vitamin B12',
    raised: {
      history: { onset: weeks, exposures: has('nitrous-oxide') },
      findings: { gait: signs('sensory-ataxic') },
    },
    not: { history: { onset: weeks }, findings: { gait: signs('sensory-ataxic') } },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'NICE NG127: an arm that weakens within days; after a shoulder that hurt so it is the plexus, and does not spread',
    raised: { history: { onset: days, course: 'progressive', symptoms: has('arm-weakness', 'neck-pain') } },
    not: { history: { onset: days, course: 'progressive', symptoms: has('arm-weakness', 'shoulder-pain') } },
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'attacks of weakness like others before are of potassium; those of nerves that give way to pressure are not',
    raised: { history: { onset: hours, symptoms: has('weakness', 'similar-attacks-before') } },
    not: {
      history: {
        onset: hours,
        symptoms: has('weakness', 'similar-attacks-before'),
        conditions: has('previous-pressure-palsy'),
      },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: limb weakness of a child, whose neck hurts; a hand that fails after leaning on the elbow is one nerve',
    raised: {
      person: { ageYears: 13 },
      history: { onset: weeks, course: 'progressive', symptoms: has('neck-pain') },
      findings: { power: power('left', '4', 'finger-abduction') },
    },
    not: {
      person: { ageYears: 13 },
      history: { onset: weeks, course: 'progressive', exposures: has('elbow-leaning') },
      findings: { power: power('left', '4', 'finger-abduction') },
    },
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    by: 'late asthma and sinuses with a leg that tingles and fails within weeks (Comarmond 2013); asthma by itself is none',
    raised: {
      history: {
        onset: weeks,
        course: 'progressive',
        symptoms: has('leg-weakness', 'paraesthesiae'),
        conditions: has('asthma', 'sinus-or-ear-infection'),
      },
    },
    not: {
      history: {
        onset: weeks,
        course: 'progressive',
        symptoms: has('leg-weakness', 'paraesthesiae'),
        conditions: has('sinus-or-ear-infection'),
      },
    },
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    by: 'a toe that fails in one with late asthma may be an infarcted nerve; a stretched root that hurts is a disc',
    raised: {
      history: { onset: days, conditions: has('asthma') },
      findings: { power: power('left', '4', 'great-toe-extension') },
    },
    not: {
      history: { onset: days, symptoms: has('pain-on-straining'), conditions: has('asthma') },
      findings: { power: power('left', '4', 'great-toe-extension') },
    },
    at: site('nerve-root', 'root'),
  },
];

import { site } from '../../support/bedside.ts';
import { days, has, hours, on, power, type Story, signs, weeks } from './story.ts';

const sciatica = (grade: string) => ({
  history: { onset: days, course: 'progressive', symptoms: has('radicular-leg-pain', 'leg-weakness') },
  findings: { power: power('left', grade, 'ankle-plantarflexion') },
});
const afterAKnock = { onset: { pace: 'acute', durationDays: 20 }, conditions: has('head-injury') };
const deaf = { onset: hours, symptoms: has('hearing-loss', 'vertigo') };
const eyesOutOfStep = on('both', 'internuclear-ophthalmoplegia');

export const earRootAndKnockStories: readonly Story[] = [
  {
    flag: 'rapidly-progressive-weakness',
    by: 'NICE NG127: limbs that fail within days; one movement that still holds, under the pain of its root, is sciatica (NICE NG59)',
    at: site('nerve-root', 'root', 0.8, 'S1'),
    raised: sciatica('2'),
    not: sciatica('4'),
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'NICE NG232: a focal deficit after a knock on the head; a shoulder that was struck with it has its own nerve',
    at: site('axillary-nerve', 'nerve', 0.9),
    raised: {
      history: afterAKnock,
      findings: { power: [...power('left', '2', 'shoulder-abduction'), ...power('left', '3', 'hip-flexion')] },
    },
    not: { history: afterAKnock, findings: { power: power('left', '0', 'shoulder-abduction') } },
  },
  {
    flag: 'sudden-hearing-loss',
    by: 'Sudden hearing loss guideline 2019: with vertigo it is still the ear; a face that droops with it has flags of its own',
    at: site('cochlear-nerve', 'cranial-nerve', 0.6),
    raised: {
      history: deaf,
      findings: { cranialNerves: on('right', 'hearing-loss'), gait: signs('unable-to-walk') },
    },
    not: {
      history: deaf,
      findings: { cranialNerves: on('right', 'hearing-loss', 'facial-weakness'), gait: signs('unable-to-walk') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'NICE NG127: a deficit of the brain that grows over weeks; eyes that no longer keep step are a plaque or an infarct (Keane 2005, recalled)',
    at: site('pons-tegmentum', 'brainstem', 0.9),
    raised: {
      history: { onset: weeks },
      findings: { cranialNerves: [...eyesOutOfStep, ...on('left', 'facial-weakness')] },
    },
    not: { history: { onset: weeks }, findings: { cranialNerves: eyesOutOfStep } },
  },
  {
    flag: 'acute-visual-loss',
    by: 'Consensus on idiopathic intracranial hypertension (Mollan 2018, recalled): sight that goes on failing under discs swollen on both sides',
    at: site('raised-intracranial-pressure', 'intracranial-pressure', 0.6),
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 40 }, course: 'progressive', symptoms: has('visual-loss') },
      findings: { cranialNerves: on('both', 'optic-disc-swelling') },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 40 }, course: 'progressive', symptoms: has('visual-loss') },
      findings: { cranialNerves: on('left', 'optic-disc-swelling') },
    },
  },
];

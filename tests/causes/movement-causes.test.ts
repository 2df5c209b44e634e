import { describe, expect, it } from 'vitest';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import type { Localisation } from '../../src/localisation/localisation.ts';
import { bedsideExam, hba1c, localised, nothingFound, site } from '../support/bedside.ts';

type Parts = Record<string, unknown>;
interface Story {
  readonly cause: string;
  /** Work that draws the picture. */
  readonly by: string;
  readonly at: Localisation;
  readonly exam: Parts;
}

const rigid = localised(site('akinetic-rigid-syndrome', 'basal-ganglia'));
const hyperkinetic = localised(site('hyperkinetic-syndrome', 'basal-ganglia'));
const tremor = localised(site('action-tremor', 'basal-ganglia'));
const frontalGait = localised(site('frontal-gait-disorder', 'basal-ganglia'));
const ataxia = localised(site('cerebellar-degeneration', 'cerebellum'));
const notAnatomical: Localisation = { ...nothingFound, conclusion: 'not-anatomical' };

const years = { pace: 'chronic', durationDays: 900 };
const decades = { pace: 'chronic', durationDays: 5000 };
const weeks = { pace: 'subacute', durationDays: 40 };
const days = { pace: 'acute', durationDays: 3 };
const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const denies = (...keys: readonly string[]) => keys.map((key) => ({ key, present: false }));
const signs = (...keys: readonly string[]) => keys.map((sign) => ({ sign, present: true }));
const kin = (key: string, relation: string) => [{ key, present: true, relation }];
const person = (ageYears: number, sex: string) => ({ ageYears, sex });

const stories: readonly Story[] = [
  {
    cause: 'paroxysmal-dyskinesia',
    by: 'Adams and Victor: a boy whose arm and leg twist in short attacks, and who moves as others between them',
    at: hyperkinetic,
    exam: {
      person: person(13, 'male'),
      history: { onset: years, symptoms: has('similar-attacks-before') },
      findings: {
        involuntaryMovements: [
          { sign: 'dystonia', site: 'upper-limb', side: 'left', present: true },
          { sign: 'dystonia', site: 'lower-limb', side: 'left', present: true },
        ],
      },
    },
  },
  {
    cause: 'cervical-dystonia',
    by: 'Adams and Victor: a neck that twists for years, whoever in the family has something like it; no chorea, no Huntington disease',
    at: hyperkinetic,
    exam: {
      person: person(58, 'female'),
      history: { onset: years, family: has('similar-disorder') },
      findings: { involuntaryMovements: [{ sign: 'dystonia', site: 'neck', present: true }] },
    },
  },
  {
    cause: 'cranial-dystonia',
    by: 'Adams and Victor: spasm of both eyelids in later life, worse in bright light, with grimaces of the lower face',
    at: hyperkinetic,
    exam: {
      person: person(63, 'female'),
      history: { onset: years, symptoms: has('photophobia', 'dry-eyes') },
      findings: {
        involuntaryMovements: [
          { sign: 'blepharospasm', present: true },
          { sign: 'dystonia', site: 'face', present: true },
        ],
      },
    },
  },
  {
    cause: 'parkinson-disease',
    by: 'Postuma 2015: loss of smell, rest tremor, no exclusion',
    at: rigid,
    exam: {
      person: person(64, 'male'),
      history: { onset: years, course: 'progressive', symptoms: [...has('loss-of-smell'), ...denies('falls')] },
      findings: {
        involuntaryMovements: [{ sign: 'resting-tremor', site: 'hand', side: 'right', present: true }],
        cranialNerves: [{ sign: 'vertical-gaze-palsy', present: false }],
      },
    },
  },
  {
    cause: 'progressive-supranuclear-palsy',
    by: 'Adams and Victor: early falls backwards and a vertical gaze palsy',
    at: rigid,
    exam: {
      person: person(69, 'female'),
      history: { onset: years, course: 'progressive', symptoms: has('falls') },
      findings: { cranialNerves: signs('vertical-gaze-palsy'), gait: signs('postural-instability') },
    },
  },
  {
    cause: 'multiple-system-atrophy',
    by: 'Adams and Victor: parkinsonism with failing blood pressure and bladder',
    at: rigid,
    exam: {
      person: person(58, 'male'),
      history: {
        onset: years,
        course: 'progressive',
        symptoms: has('light-headed-on-standing', 'bladder-disturbance'),
      },
      findings: {
        autonomic: signs('orthostatic-hypotension'),
        coordination: [{ test: 'heel-shin', side: 'both', result: 'impaired' }],
      },
    },
  },
  {
    cause: 'drug-induced-parkinsonism',
    by: 'Adams and Victor: weeks after a dopamine blocker',
    at: rigid,
    exam: {
      person: person(72, 'female'),
      history: { onset: weeks, course: 'progressive', medications: has('metoclopramide') },
    },
  },
  {
    cause: 'dementia-with-lewy-bodies',
    by: 'Adams and Victor: visual hallucinations, fluctuation, dreams acted out',
    at: rigid,
    exam: {
      person: person(76, 'male'),
      history: { onset: years, symptoms: has('cognitive-change', 'dream-enactment', 'fluctuating-symptoms') },
      findings: { higherFunction: signs('hallucinations') },
    },
  },
  {
    cause: 'normal-pressure-hydrocephalus',
    by: 'Adams and Victor: gait, bladder, thinking, wide ventricles',
    at: frontalGait,
    exam: {
      person: person(77, 'male'),
      history: { onset: years, course: 'progressive', symptoms: has('bladder-disturbance', 'cognitive-change') },
      findings: { gait: signs('magnetic') },
      results: [{ key: 'mri-brain', value: 'hydrocephalus' }],
    },
  },
  {
    cause: 'essential-tremor',
    by: 'NICE NG127: a tremor on action for years, a parent alike',
    at: tremor,
    exam: {
      person: person(55, 'female'),
      history: { onset: decades, symptoms: has('better-with-alcohol'), family: kin('tremor', 'parent') },
    },
  },
  {
    cause: 'drug-induced-tremor',
    by: 'Adams and Victor: lithium',
    at: tremor,
    exam: { person: person(44, 'male'), history: { onset: weeks, medications: has('lithium') } },
  },
  {
    cause: 'functional-tremor',
    by: 'Daum 2014: a tremor that takes the rhythm of another movement',
    at: tremor,
    exam: {
      person: person(36, 'female'),
      history: { onset: { pace: 'hyperacute', durationDays: 60 } },
      findings: { involuntaryMovements: [{ sign: 'distractible-tremor', site: 'hand', side: 'right', present: true }] },
    },
  },
  {
    cause: 'huntington-disease',
    by: 'Adams and Victor: chorea, change of mind, a parent with both',
    at: hyperkinetic,
    exam: {
      person: person(43, 'female'),
      history: {
        onset: years,
        course: 'progressive',
        symptoms: has('behaviour-change'),
        family: kin('chorea', 'parent'),
      },
      findings: {
        involuntaryMovements: [{ sign: 'chorea', site: 'hand', side: 'both', present: true }],
        cranialNerves: signs('slow-saccades'),
      },
    },
  },
  {
    cause: 'wilson-disease',
    by: 'Adams and Victor: a ring in the cornea and little caeruloplasmin in a young person',
    at: hyperkinetic,
    exam: {
      person: person(21, 'male'),
      history: { onset: { pace: 'subacute', durationDays: 80 }, conditions: has('chronic-liver-disease') },
      findings: { inspection: [{ sign: 'kayser-fleischer-ring', present: true }] },
    },
  },
  {
    cause: 'hyperglycaemic-hemichorea',
    by: 'Adams and Victor: hemichorea with very high glucose',
    at: localised(site('subthalamic-nucleus', 'hemisphere', 0.6), site('striatum', 'hemisphere', 0.4)),
    exam: {
      person: person(72, 'female'),
      history: { onset: days, conditions: has('diabetes-mellitus') },
      findings: { involuntaryMovements: [{ sign: 'chorea', site: 'hand', side: 'left', present: true }] },
      results: [hba1c(14)],
    },
  },
  {
    cause: 'tardive-dyskinesia',
    by: 'Adams and Victor: mouth and tongue after years of a neuroleptic',
    at: hyperkinetic,
    exam: {
      person: person(61, 'female'),
      history: { onset: years, medications: has('antipsychotic') },
      findings: { involuntaryMovements: signs('orofacial-dyskinesia') },
    },
  },
  {
    cause: 'tetanus',
    by: 'Adams and Victor: lockjaw and rigidity after a wound, mind clear',
    at: rigid,
    exam: {
      person: person(50, 'male'),
      history: {
        onset: days,
        course: 'progressive',
        symptoms: has('lockjaw', 'stiffness', 'dysphagia'),
        exposures: has('trauma'),
      },
      findings: { tone: [{ site: 'trunk', tone: 'rigid' }] },
    },
  },
  {
    cause: 'antipsychotic-malignant-syndrome',
    by: 'Adams and Victor: fever, rigidity, clouding on a neuroleptic',
    at: rigid,
    exam: {
      person: person(39, 'male'),
      history: { onset: days, course: 'progressive', symptoms: has('fever'), medications: has('antipsychotic') },
      findings: { higherFunction: signs('confusion'), tone: [{ site: 'upper-limb', side: 'both', tone: 'rigid' }] },
    },
  },
  {
    cause: 'alcoholic-cerebellar-degeneration',
    by: 'Adams and Victor: gait and legs more than arms in drinkers',
    at: localised(site('cerebellar-vermis', 'cerebellum')),
    exam: {
      person: person(54, 'male'),
      history: { onset: years, exposures: has('alcohol-excess') },
      findings: { gait: signs('ataxic'), coordination: [{ test: 'finger-nose', side: 'both', result: 'normal' }] },
    },
  },
  {
    cause: 'dominant-cerebellar-ataxia',
    by: 'Adams and Victor: slow ataxia with a parent affected',
    at: ataxia,
    exam: {
      person: person(41, 'male'),
      history: { onset: decades, course: 'progressive', family: kin('ataxia', 'parent') },
    },
  },
  {
    cause: 'friedreich-ataxia',
    by: 'Adams and Victor: onset before 25, deformed feet and spine, a heart that suffers, a sibling alike',
    at: ataxia,
    exam: {
      person: person(16, 'female'),
      history: {
        onset: years,
        course: 'progressive',
        conditions: has('cardiomyopathy'),
        family: kin('similar-disorder', 'sibling'),
      },
      findings: {
        inspection: [
          { sign: 'pes-cavus', side: 'both', present: true },
          { sign: 'scoliosis', present: true },
        ],
      },
    },
  },
  {
    cause: 'paraneoplastic-cerebellar-degeneration',
    by: 'Adams and Victor: ataxia of weeks in a woman with weight loss',
    at: ataxia,
    exam: {
      person: person(63, 'female'),
      history: { onset: weeks, course: 'progressive', symptoms: has('weight-loss') },
    },
  },
  {
    cause: 'drug-induced-ataxia',
    by: 'Adams and Victor: phenytoin',
    at: ataxia,
    exam: { person: person(35, 'male'), history: { onset: days, medications: has('phenytoin') } },
  },
  {
    cause: 'corticobasal-degeneration',
    by: 'Armstrong 2013: one twisted arm, neglect, a plantar that turns up',
    at: rigid,
    exam: {
      person: person(70, 'female'),
      history: { onset: years, course: 'progressive', symptoms: has('falls') },
      findings: {
        involuntaryMovements: [{ sign: 'dystonia', site: 'upper-limb', side: 'left', present: true }],
        plantars: [{ side: 'left', response: 'extensor' }],
        higherFunction: [{ sign: 'neglect', side: 'left', present: true }],
      },
    },
  },
  {
    cause: 'functional-motor-disorder',
    by: 'McWhirter 2011: Hoover sign',
    at: notAnatomical,
    exam: {
      person: person(31, 'female'),
      history: { onset: { pace: 'hyperacute', durationDays: 2 }, symptoms: has('leg-weakness') },
      findings: { specialTests: [{ test: 'hoover', side: 'left', result: 'positive' }] },
    },
  },
];

describe('causes of disorders of movement, ataxia and function', () => {
  it.each(stories)('names $cause among the first three ($by)', ({ cause, at, exam }) => {
    const keys = rankCauses(bedsideExam(exam), at).map(({ key }) => key);
    expect(keys.slice(0, 3)).toContain(cause);
  });

  it('puts Parkinson disease first for a plain akinetic-rigid syndrome of an older person', () => {
    const plain = { person: person(68, 'male'), history: { onset: years, course: 'progressive' } };
    expect(rankCauses(bedsideExam(plain), rigid)[0]?.key).toBe('parkinson-disease');
  });

  // A functional disorder is known by its own signs: nothing wrong at the bedside is no such sign.
  it('does not call a normal examination functional', () => {
    const keys = rankCauses(bedsideExam({ history: { onset: years, symptoms: has('weakness') } }), nothingFound);
    expect(keys.map(({ key }) => key)).not.toContain('functional-motor-disorder');
  });
});

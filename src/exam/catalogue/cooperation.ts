import type { Exam } from '../exam.ts';
import type { Item, SectionKey } from './item.ts';

/** What a patient has to give for an item to be examined; who gives one of them gives those before it too. */
const demands = ['presence', 'movement', 'order', 'answer', 'school'] as const;
type Demand = (typeof demands)[number];

/** Age in years from which most children move when enticed, follow an order, say what they feel and see, read and reckon. Common practice. */
const givenFromYears: Readonly<Record<Demand, number>> = { presence: 0, movement: 1, order: 3, answer: 5, school: 8 };

const bySection: Readonly<Record<SectionKey, Demand>> = {
  higherFunction: 'answer',
  cranialNerves: 'presence',
  inspection: 'presence',
  involuntaryMovements: 'presence',
  tone: 'presence',
  clonus: 'presence',
  power: 'movement',
  reflexes: 'presence',
  plantars: 'presence',
  sensation: 'answer',
  coordination: 'order',
  gait: 'movement',
  sphincters: 'presence',
  autonomic: 'presence',
  specialTests: 'order',
};

/** Items that demand otherwise than most of their section. */
export const keysByDemand: Readonly<Record<Demand, readonly string[]>> = {
  presence: [
    ...['drowsiness', 'stupor', 'coma', 'fluctuating-consciousness', 'agitation', 'catatonia'],
    ...['neck-stiffness', 'kernig', 'brudzinski', 'asymmetric-moro', 'chvostek-or-trousseau', 'ice-pack'],
    ...['hoffmann', 'tromner', 'inverted-brachioradialis', 'crossed-adductor', 'delayed-reflex-relaxation'],
    ...['chaddock', 'oppenheim', 'gordon'],
  ],
  movement: [
    ...['dysphagia', 'broken-pursuit', 'slow-saccades', 'saccadic-dysmetria', 'gaze-evoked-nystagmus'],
    ...['vertical-gaze-palsy', 'upgaze-palsy', 'downgaze-palsy', 'internuclear-ophthalmoplegia'],
  ],
  order: [
    // In the first years everybody grasps and sucks.
    ...['frontal-release-signs', 'grasp-reflex', 'palmomental-reflex', 'glabellar-reflex', 'snout-reflex'],
    ...['expressive-aphasia', 'receptive-aphasia', 'global-aphasia', 'mutism'],
    ...['dysarthria', 'flaccid-dysarthria', 'spastic-dysarthria', 'cerebellar-dysarthria', 'hypokinetic-dysarthria'],
    ...['nasal-speech', 'hearing-loss', 'fatigable-ptosis', 'impaired-convergence', 'jaw-weakness'],
    ...['sternocleidomastoid-weakness', 'trapezius-weakness', 'tongue-deviation', 'tongue-weakness'],
    ...['tandem', 'romberg', 'absent-voluntary-anal-contraction'],
  ],
  answer: [
    ...['anosmia', 'reduced-visual-acuity', 'reduced-colour-vision', 'central-scotoma', 'enlarged-blind-spot'],
    ...['altitudinal-field-defect', 'monocular-field-defect', 'constricted-visual-field', 'bitemporal-hemianopia'],
    ...['homonymous-hemianopia', 'upper-quadrantanopia', 'lower-quadrantanopia', 'diplopia', 'fatigable-diplopia'],
    ...['facial-numbness', 'loss-of-taste', 'hyperacusis', 'conductive-hearing-loss', 'pharyngeal-sensory-loss'],
    ...['alien-limb', 'saddle-anaesthesia', 'absent-deep-anal-pressure'],
  ],
  school: ['alexia', 'agraphia', 'acalculia', 'left-right-disorientation', 'finger-agnosia', 'agraphaesthesia'],
};

const demandByKey: ReadonlyMap<string, Demand> = new Map(
  demands.flatMap((demand) => keysByDemand[demand].map((key) => [key, demand] as const)),
);

function demandOf({ key, section, probe }: Item): Demand {
  // A stretched nerve hurts only who says so.
  return demandByKey.get(key) ?? (probe.kind === 'provocation' ? 'answer' : bySection[section]);
}

/** Whether an item is one of the grades of wakefulness, of which a patient has one. */
export function isGradeOfConsciousness({ section, probe }: Item): boolean {
  return section === 'higherFunction' && probe.kind === 'faculty' && probe.faculty === 'consciousness';
}

/** Signs of a mind that is gone, so that nothing is told and nothing moved at will. */
export const unconscious: ReadonlySet<string> = new Set(['coma', 'stupor', 'posturing']);

export function isUnconscious({ findings }: Pick<Exam, 'findings'>): boolean {
  return findings.some(({ abnormal, item }) => abnormal && unconscious.has(item.key));
}

/** Whether this patient, as old and as awake as found, can give what an item demands. An age that was not given is taken for an adult's. */
export function canBeAskedFor(exam: Pick<Exam, 'findings' | 'person'>): (item: Item) => boolean {
  const { ageYears } = exam.person;
  const given = isUnconscious(exam)
    ? (['presence'] as const)
    : demands.filter((demand) => ageYears === undefined || ageYears >= givenFromYears[demand]);
  const asked: ReadonlySet<Demand> = new Set(given);
  return (item) => asked.has(demandOf(item));
}

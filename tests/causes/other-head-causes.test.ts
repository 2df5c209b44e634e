import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

interface Story {
  readonly cause: string;
  readonly at: readonly [site: string, kind: SiteKind];
  readonly person: readonly [ageYears: number, sex: 'male' | 'female'];
  readonly onset: readonly [pace: string, durationDays: number];
  readonly told: Readonly<Record<string, readonly string[]>>;
  readonly findings?: Readonly<Record<string, readonly unknown[]>>;
  readonly results?: readonly unknown[];
}

const seen = (sign: string, side?: 'left' | 'right' | 'both') => ({ sign, present: true, ...(side && { side }) });
const measured = (key: string, value: number, unit: string) => ({
  key,
  valueQuantity: { value, unit, system: 'http://unitsofmeasure.org', code: unit },
});
const movements = (...signs: readonly unknown[]) => ({ involuntaryMovements: signs });

const stories: readonly Story[] = [
  {
    cause: 'neuroretinitis',
    at: ['optic-nerve', 'visual-pathway'],
    person: [19, 'female'],
    onset: ['acute', 10],
    told: { exposures: ['animal-bite'], symptoms: ['fever', 'visual-loss'] },
    findings: { cranialNerves: [seen('macular-star', 'right'), seen('optic-disc-swelling', 'right')] },
  },
  {
    cause: 'uveitis-or-vogt-koyanagi-harada',
    at: ['retina', 'visual-pathway'],
    person: [34, 'female'],
    onset: ['acute', 10],
    told: { symptoms: ['red-eye', 'photophobia', 'tinnitus', 'headache', 'visual-loss'] },
  },
  {
    cause: 'paraneoplastic-retinopathy',
    at: ['retina', 'visual-pathway'],
    person: [67, 'male'],
    onset: ['subacute', 60],
    told: { conditions: ['cancer'], symptoms: ['flashes-and-floaters', 'weight-loss', 'visual-loss'] },
  },
  {
    cause: 'functional-visual-loss',
    at: ['retina', 'visual-pathway'],
    person: [17, 'female'],
    onset: ['acute', 3],
    told: { conditions: ['functional-disorder'], symptoms: ['visual-loss'] },
    findings: { cranialNerves: [seen('constricted-visual-field', 'right')] },
  },
  {
    cause: 'hypophysitis',
    at: ['optic-chiasm', 'visual-pathway'],
    person: [61, 'male'],
    onset: ['subacute', 30],
    told: { medications: ['immune-checkpoint-inhibitor'], symptoms: ['headache', 'fatigue'] },
  },
  {
    cause: 'wolfram-syndrome',
    at: ['optic-nerve', 'visual-pathway'],
    person: [16, 'male'],
    onset: ['chronic', 2500],
    told: { conditions: ['diabetes-mellitus'], symptoms: ['hearing-loss', 'polyuria', 'visual-loss'] },
    findings: { cranialNerves: [seen('optic-disc-pallor', 'both')] },
  },
  {
    cause: 'optic-nerve-hypoplasia',
    at: ['optic-nerve', 'visual-pathway'],
    person: [2, 'female'],
    onset: ['chronic', 600],
    told: { conditions: ['developmental-delay'] },
    findings: { cranialNerves: [seen('nystagmus')] },
  },
  {
    cause: 'congenital-misinnervation-of-eye-muscles',
    at: ['abducens-nerve', 'cranial-nerve'],
    person: [4, 'female'],
    onset: ['chronic', 1200],
    told: {},
    findings: { inspection: [seen('head-tilt', 'left')] },
  },
  {
    cause: 'sagging-eye-syndrome',
    at: ['abducens-nerve', 'cranial-nerve'],
    person: [81, 'female'],
    onset: ['chronic', 500],
    told: { symptoms: ['diplopia'] },
    findings: { cranialNerves: [seen('esotropia', 'left')] },
  },
  {
    cause: 'physiological-anisocoria',
    at: ['ciliary-ganglion', 'cranial-nerve'],
    person: [30, 'male'],
    onset: ['chronic', 4000],
    told: {},
    findings: {
      cranialNerves: [seen('anisocoria', 'right'), { sign: 'unreactive-pupil', side: 'both', present: false }],
    },
  },
  {
    cause: 'infantile-nystagmus',
    at: ['flocculonodular-lobe', 'cerebellum'],
    person: [3, 'male'],
    onset: ['chronic', 1000],
    told: { family: ['similar-disorder'] },
    findings: { cranialNerves: [seen('pendular-nystagmus')] },
  },
  {
    cause: 'melkersson-rosenthal-syndrome',
    at: ['facial-nerve', 'cranial-nerve'],
    person: [22, 'female'],
    onset: ['acute', 4],
    told: { symptoms: ['similar-attacks-before'] },
    findings: { inspection: [seen('periorbital-oedema', 'right')] },
  },
  {
    cause: 'congenital-facial-palsy',
    at: ['facial-nerve', 'cranial-nerve'],
    person: [1, 'female'],
    onset: ['chronic', 360],
    told: {},
    findings: { cranialNerves: [seen('facial-weakness', 'both'), seen('sixth-nerve-palsy', 'both')] },
  },
  {
    cause: 'glossopharyngeal-neuralgia',
    at: ['trigeminal-nerve', 'cranial-nerve'],
    person: [63, 'male'],
    onset: ['chronic', 300],
    told: { symptoms: ['triggered-facial-pain', 'sore-throat', 'ear-pain', 'syncope'] },
  },
  {
    cause: 'middle-ear-disease',
    at: ['cochlear-nerve', 'cranial-nerve'],
    person: [33, 'female'],
    onset: ['chronic', 1500],
    told: { symptoms: ['hearing-loss'] },
    findings: { cranialNerves: [seen('conductive-hearing-loss', 'both')] },
  },
  {
    cause: 'third-window-of-the-inner-ear',
    at: ['vestibular-nerve', 'cranial-nerve'],
    person: [45, 'female'],
    onset: ['chronic', 900],
    told: { symptoms: ['oscillopsia', 'vertigo', 'pulsatile-tinnitus'] },
    findings: { cranialNerves: [seen('hyperacusis', 'right')] },
  },
  {
    cause: 'persistent-postural-perceptual-dizziness',
    at: ['no-lesion', 'none'],
    person: [41, 'female'],
    onset: ['chronic', 400],
    told: { conditions: ['psychiatric-disorder'], symptoms: ['dizziness', 'unsteadiness'] },
  },
  {
    cause: 'vestibular-paroxysmia',
    at: ['vestibular-nerve', 'cranial-nerve'],
    person: [52, 'male'],
    onset: ['chronic', 600],
    told: { symptoms: ['vertigo', 'similar-attacks-before', 'twitching'] },
  },
  {
    cause: 'congenital-anosmia',
    at: ['olfactory-nerve', 'cranial-nerve'],
    person: [19, 'male'],
    onset: ['chronic', 5000],
    told: { symptoms: ['loss-of-smell', 'sexual-dysfunction'] },
  },
  {
    cause: 'paroxysmal-dyskinesia',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [13, 'male'],
    onset: ['chronic', 900],
    told: {
      symptoms: ['similar-attacks-before'],
      family: ['similar-disorder', 'epilepsy'],
      exposures: ['heavy-exertion'],
    },
    findings: movements({ ...seen('chorea', 'left') }),
  },
  {
    cause: 'benign-hereditary-chorea',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [7, 'female'],
    onset: ['chronic', 2200],
    told: { conditions: ['hypothyroidism'], family: ['similar-disorder'] },
    findings: movements(seen('chorea')),
  },
  {
    cause: 'drug-induced-chorea-or-myoclonus',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [27, 'male'],
    onset: ['acute', 1],
    told: { exposures: ['cocaine-or-stimulants'] },
    findings: movements(seen('chorea')),
  },
  {
    cause: 'metabolic-chorea',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [31, 'female'],
    onset: ['subacute', 40],
    told: { conditions: ['hyperthyroidism'], symptoms: ['weight-loss'] },
    findings: movements(seen('chorea')),
  },
  {
    cause: 'brain-calcification',
    at: ['akinetic-rigid-syndrome', 'basal-ganglia'],
    person: [47, 'male'],
    onset: ['chronic', 900],
    told: { symptoms: ['cognitive-change', 'seizure', 'cramps'] },
    results: [measured('calcium', 1.7, 'mmol/L')],
  },
  {
    cause: 'leigh-syndrome',
    at: ['striatum', 'basal-ganglia'],
    person: [2, 'male'],
    onset: ['acute', 6],
    told: { symptoms: ['fever', 'loss-of-skills', 'vomiting'], family: ['consanguinity'] },
    findings: movements(seen('dystonia', 'both')),
  },
  {
    cause: 'hereditary-dystonia-parkinsonism',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [24, 'male'],
    onset: ['acute', 3],
    told: { symptoms: ['dysphagia', 'slurred-speech'], family: ['similar-disorder'] },
    findings: movements(seen('dystonia', 'both'), seen('bradykinesia', 'both')),
  },
  {
    cause: 'hyperekplexia',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [1, 'male'],
    onset: ['chronic', 360],
    told: { symptoms: ['stiffness'], family: ['similar-disorder'] },
    findings: movements(seen('exaggerated-startle')),
  },
  {
    cause: 'progressive-myoclonic-epilepsy',
    at: ['cerebellar-degeneration', 'cerebellum'],
    person: [15, 'female'],
    onset: ['chronic', 500],
    told: { symptoms: ['seizure', 'twitching', 'cognitive-change'], family: ['consanguinity'] },
    findings: movements(seen('myoclonus')),
  },
  {
    cause: 'laryngeal-dystonia',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [44, 'female'],
    onset: ['chronic', 1500],
    told: { symptoms: ['voice-change', 'only-in-one-task'] },
  },
  {
    cause: 'autoimmune-chorea',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [69, 'male'],
    onset: ['subacute', 50],
    told: { exposures: ['tobacco'], symptoms: ['weight-loss', 'cognitive-change'] },
    findings: movements(seen('chorea')),
  },
];

function keysOf({ at, person, onset, told, findings = {}, results = [] }: Story): readonly string[] {
  const history = Object.fromEntries(
    Object.entries(told).map(([list, keys]) => [list, keys.map((one) => ({ key: one, present: true }))]),
  );
  const exam = bedsideExam({
    person: { ageYears: person[0], sex: person[1] },
    history: { onset: { pace: onset[0], durationDays: onset[1] }, ...history },
    findings,
    results,
  });
  return rankCauses(exam, localised(site(...at, 1))).map((cause) => cause.key);
}

describe('rarer causes of eye, ear, face and movement', () => {
  it.each(stories)('$cause is among the first three', (story) => {
    expect(keysOf(story).slice(0, 3)).toContain(story.cause);
  });
});

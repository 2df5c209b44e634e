import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

interface Story {
  readonly cause: string;
  /** Work, and what it says. */
  readonly by: string;
  readonly at: readonly [site: string, kind: SiteKind, level?: string];
  readonly person: readonly [ageYears: number, sex: 'male' | 'female'];
  readonly onset: readonly [pace: string, durationDays: number];
  readonly told: Readonly<Record<string, readonly string[]>>;
  readonly findings?: Readonly<Record<string, readonly unknown[]>>;
  /** What of the story speaks for the cause: without it the cause is less probable. */
  readonly without: string;
}

const stories: readonly Story[] = [
  {
    cause: 'transient-neonatal-myasthenia',
    by: 'Textbooks: one child in six of mothers with myasthenia, within three days of birth',
    at: ['postsynaptic-junction', 'junction'],
    person: [0, 'female'],
    onset: ['acute', 2],
    told: { family: ['similar-disorder'], symptoms: ['dysphagia'] },
    findings: { cranialNerves: [{ sign: 'weak-suck-or-cry', present: true }] },
    without: 'similar-disorder',
  },
  {
    cause: 'toxic-myelopathy',
    by: 'Textbooks: legs that fail after methotrexate into the fluid, with fever and a sore back',
    at: ['spinal-cord-transverse', 'cord', 'T8'],
    person: [21, 'male'],
    onset: ['acute', 6],
    told: {
      conditions: ['lymphoma'],
      medications: ['methotrexate'],
      exposures: ['lumbar-puncture-or-epidural'],
      symptoms: ['leg-weakness', 'numbness'],
    },
    without: 'lumbar-puncture-or-epidural',
  },
  {
    cause: 'middle-ear-disease',
    by: 'Textbooks: otosclerosis runs in half of the families and is noticed in pregnancy',
    at: ['cochlear-nerve', 'cranial-nerve'],
    person: [33, 'female'],
    onset: ['chronic', 700],
    told: { family: ['similar-disorder'], symptoms: ['hearing-loss', 'tinnitus'] },
    without: 'similar-disorder',
  },
  {
    cause: 'cavernous-sinus-thrombosis',
    by: 'Textbooks: a tooth was drawn, and the eye moves no more',
    at: ['cavernous-sinus', 'cranial-nerve'],
    person: [64, 'female'],
    onset: ['acute', 6],
    told: { exposures: ['dental-procedure'], symptoms: ['eye-pain'] },
    findings: { cranialNerves: [{ sign: 'third-nerve-palsy', side: 'left', present: true }] },
    without: 'dental-procedure',
  },
  {
    cause: 'beta-lactam-encephalopathy',
    by: 'Payne 2017: failing kidneys in 80 %, myoclonus in 42 %',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [69, 'female'],
    onset: ['acute', 2],
    told: { medications: ['beta-lactam'], conditions: ['chronic-kidney-disease'], symptoms: ['cognitive-change'] },
    findings: {
      higherFunction: [{ sign: 'confusion', present: true }],
      involuntaryMovements: [{ sign: 'myoclonus', site: 'upper-limb', side: 'both', present: true }],
    },
    without: 'beta-lactam',
  },
  {
    cause: 'facial-onset-sensory-and-motor-neuronopathy',
    by: 'Zheng 2016: numbness of the face, a lost corneal reflex, then lower motor neurons',
    at: ['bulbar-motor-nuclei', 'brainstem'],
    person: [57, 'male'],
    onset: ['chronic', 1500],
    told: { symptoms: ['dysphagia', 'numbness'] },
    findings: {
      cranialNerves: [
        { sign: 'absent-corneal-reflex', side: 'both', present: true },
        { sign: 'facial-numbness', side: 'both', present: true },
        { sign: 'tongue-wasting', side: 'both', present: true },
      ],
    },
    without: 'absent-corneal-reflex',
  },
  {
    cause: 'skull-base-radiation-necrosis',
    by: 'Huang 2006: headache years after radiotherapy of the nasopharynx',
    at: ['foramen-magnum', 'brainstem'],
    person: [58, 'male'],
    onset: ['subacute', 60],
    told: { exposures: ['radiotherapy'], conditions: ['cancer'], symptoms: ['neck-pain', 'headache'] },
    without: 'radiotherapy',
  },
  {
    cause: 'cervical-disc-herniation-with-cord-compression',
    by: 'Harel 2016: a pain of the neck, then half a cord within days, at 39 years on average',
    at: ['spinal-cord-hemisection', 'cord', 'C6'],
    person: [39, 'male'],
    onset: ['acute', 3],
    told: { symptoms: ['neck-pain', 'pain-on-straining'] },
    without: 'neck-pain',
  },
  {
    cause: 'copper-deficiency',
    by: 'Jaiser and Winston 2010: like a lack of vitamin B12, after zinc or an operation of the stomach',
    at: ['spinal-cord-posterolateral', 'cord'],
    person: [60, 'female'],
    onset: ['subacute', 120],
    told: { exposures: ['zinc-excess'], symptoms: ['difficulty-walking'] },
    without: 'zinc-excess',
  },
  {
    cause: 'autoimmune-cerebellar-ataxia',
    by: 'Ariño 2015: women of about 58, over months to years in most, diabetes or thyroid disease in 85 %',
    at: ['cerebellar-degeneration', 'cerebellum'],
    person: [58, 'female'],
    onset: ['chronic', 900],
    told: { conditions: ['diabetes-mellitus'], symptoms: ['unsteadiness', 'vertigo'] },
    without: 'diabetes-mellitus',
  },
  {
    cause: 'thoracic-disc-herniation',
    by: 'Morgan and Abood 1998: of the thoracic discs that press on the first root most lie to the side and hurt as those of the neck do',
    at: ['nerve-root', 'root', 'T1'],
    person: [45, 'male'],
    onset: ['subacute', 30],
    told: { symptoms: ['thoracic-back-pain', 'radicular-arm-pain'] },
    without: 'thoracic-back-pain',
  },
  {
    cause: 'skull-base-or-ear-infection',
    by: 'Gradenigo: a running ear, pain behind the eye, then the sixth nerve (Brazis)',
    at: ['cavernous-sinus', 'cranial-nerve'],
    person: [60, 'male'],
    onset: ['subacute', 30],
    told: { conditions: ['sinus-or-ear-infection'], symptoms: ['eye-pain', 'ear-pain'] },
    without: 'sinus-or-ear-infection',
  },
  {
    cause: 'leber-hereditary-optic-neuropathy',
    by: 'Yu-Wai-Man 2009: young men, both eyes within weeks, no pain',
    at: ['optic-chiasm', 'visual-pathway'],
    person: [19, 'male'],
    onset: ['subacute', 60],
    told: { symptoms: ['visual-loss'], family: ['similar-disorder'] },
    findings: { cranialNerves: [{ sign: 'central-scotoma', side: 'both', present: true }] },
    without: 'central-scotoma',
  },
];

/** Place among the causes from 0, and probability; infinite and 0 where it is not named. */
function named({ at, person, onset, told, findings, cause }: Story, without?: string) {
  const [key, kind, level = null] = at;
  const kept = (keys: readonly string[]) =>
    keys.filter((one) => one !== without).map((one) => ({ key: one, present: true }));
  const history = Object.fromEntries(Object.entries(told).map(([list, keys]) => [list, kept(keys)]));
  const exam = bedsideExam({
    person: { ageYears: person[0], sex: person[1] },
    history: { onset: { pace: onset[0], durationDays: onset[1] }, course: 'progressive', ...history },
    findings: Object.fromEntries(
      Object.entries(findings ?? {}).map(([section, rows]) => [
        section,
        rows.map((row) => {
          const one = row as { readonly sign: string };
          return one.sign === without ? { ...one, present: false } : one;
        }),
      ]),
    ),
  });
  const causes = rankCauses(exam, localised(site(key, kind, 1, level)));
  const place = causes.findIndex((one) => one.key === cause);
  return { place: place < 0 ? Number.POSITIVE_INFINITY : place, probability: causes[place]?.probability ?? 0 };
}

describe('causes that treatment, a disc or a rare disease brings', () => {
  it.each(stories)('$cause is among the first three ($by)', (story) => {
    expect(named(story).place).toBeLessThan(3);
  });

  it.each(stories)('$cause is less probable without $without', (story) => {
    expect(named(story, story.without).probability).toBeLessThan(named(story).probability);
  });
});

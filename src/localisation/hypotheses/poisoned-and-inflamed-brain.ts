import { type Hypothesis, hypothesis, widespreadSite } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { processOf } from '../process.ts';
import { facultiesOf } from './process-signs.ts';

const site = widespreadSite('diffuse-encephalopathy', 'Diffuse disorder of both hemispheres', 'encephalopathy');

/** Percent of all focal and diffuse findings. Judged. */
const percent = {
  poisoned: 0.07,
  narcotised: 0.15,
  flooded: 0.04,
  inflamedChild: 0.09,
  inflamedBrainstem: 0.05,
} as const;

/** It shows within hours, by days where a metabolism fails. Judged. */
const hours = { hyperacute: 1.6, acute: 1.5, subacute: 0.15, chronic: 0.03 } as const;

/**
 * Awake and beside oneself with both pupils wide: what blocks acetylcholine, a stimulant, withdrawal, or ammonia in a child. Both
 * pupils are wide and the eyes move, where a lesion of the midbrain stops the eyes as well. Adams and Victor, delirium (recalled);
 * chances judged.
 */
export function poisonedBrain(): Hypothesis[] {
  return [
    hypothesis(site, 'wide-eyed', percent.poisoned, intact, {
      process: processOf({ because: 'a poison or a failing metabolism excites the whole brain and opens the pupils' }),
      paces: hours,
      faculties: facultiesOf([
        ['attention', 0.85],
        ['orientation', 0.75],
        ['mood-behaviour', 0.7],
        ['consciousness', 0.3],
        ['pupil-parasympathetic', 0.92],
        ['heart-rate', 0.6],
        ['blood-pressure', 0.3],
        ['sweating', 0.4],
        ['gut', 0.4],
        ['bladder-retention', 0.25],
        ['speech-articulation', 0.3],
        ['myoclonus', 0.2],
        ['trunk-coordination', 0.3],
      ]),
    }),
    // Opioids, and whatever else puts the whole brain to sleep and lets the pupils shrink: breath fails first, and the eyes still answer.
    hypothesis(site, 'pin-eyed', percent.narcotised, intact, {
      process: processOf({ because: 'what puts the whole brain to sleep narrows both pupils and slows the breath' }),
      paces: { ...hours, acute: 0.7 },
      ages: { from: 14, outside: 0.25 },
      faculties: facultiesOf([
        ['consciousness', 0.95],
        ['attention', 0.9],
        ['orientation', 0.8],
        ['sympathetic-eye', 0.85],
        ['breathing', 0.5],
        ['speech-articulation', 0.3],
        ['myoclonus', 0.1],
      ]),
    }),
    // Acetylcholine that is not broken down floods brain, glands, gut, bladder and muscle at once: pupils are small, all that can
    // flow flows, the heart is slow or races, and muscles twitch before they tire. Adams and Victor, organophosphate poisoning (recalled).
    hypothesis(site, 'flooded', percent.flooded, intact, {
      process: processOf({
        motor: () => 0.15,
        twitching: 1,
        wasting: 'block',
        because: 'acetylcholine that is not broken down floods brain, glands, gut, bladder and muscles',
      }),
      paces: hours,
      faculties: facultiesOf([
        ['sympathetic-eye', 0.9],
        ['swallowing', 0.6],
        ['sweating', 0.65],
        ['heart-rate', 0.6],
        ['bladder-urgency', 0.45],
        ['bowel', 0.4],
        ['consciousness', 0.45],
        ['attention', 0.45],
        ['mood-behaviour', 0.3],
        ['breathing', 0.4],
        ['speech-articulation', 0.3],
        ['gut', 0.3],
      ]),
    }),
  ];
}

/** Inflamed in childhood, over days to weeks. Judged. */
const days = { hyperacute: 0.2, acute: 1.5, subacute: 1.2, chronic: 0.1 } as const;

/**
 * In children an inflamed brain is as often an unsteady one: of those with acute disseminated encephalomyelitis all are clouded or
 * changed, half unsteady and as many brisk, and a third have had a fit (Tenembaum 2002, recalled). Other chances judged.
 */
export function inflamedChild(): Hypothesis[] {
  return [
    hypothesis(site, 'inflamed-in-childhood', percent.inflamedChild, intact, {
      process: processOf({
        release: () => 0.4,
        because: 'in a child an inflamed brain loses balance with its wakefulness',
      }),
      paces: days,
      ages: { to: 16, outside: 0.02 },
      faculties: facultiesOf([
        ['consciousness', 0.7],
        ['mood-behaviour', 0.55],
        ['attention', 0.6],
        ['orientation', 0.4],
        ['trunk-coordination', 0.55],
        ['limb-coordination', 0.35],
        ['speech-articulation', 0.3],
        ['speech-initiation', 0.25],
        ['chorea', 0.15],
        ['dystonia', 0.15],
        ['myoclonus', 0.15],
      ]),
    }),
  ];
}

/** It follows an infection and is complete within four weeks (Odaka 2003, recalled). Judged. */
const afterAnInfection = { hyperacute: 0.1, acute: 1.6, subacute: 0.6, chronic: 0.02 } as const;

/**
 * The antibody of eyes, balance and jerks that goes up into the brainstem: of 62 with Bickerstaff's encephalitis all lost the
 * movements of the eyes and balance, 74 of 100 were clouded, 58 had weak or no jerks, 45 weak faces, 42 odd pupils, 40 extensor
 * plantars and 34 a failing throat (Odaka 2003, recalled). Other chances judged.
 */
export function inflamedBrainstem(): Hypothesis[] {
  const forms = [
    {
      key: 'inflamed-with-roots',
      share: 0.6,
      process: processOf({
        reflex: () => 0.85,
        because: 'one antibody reaches the brainstem and the roots of the spindles',
      }),
    },
    {
      key: 'inflamed-with-tracts',
      share: 0.4,
      process: processOf({
        release: ({ segment }) => (segment === null ? 0 : 0.5),
        because: 'an inflamed brainstem lets go of the jerks and stops the eyes',
      }),
    },
  ] as const;
  return forms.map(({ key, share, process }) =>
    hypothesis(
      { key: 'brainstem-diffuse', label: 'Brainstem on both sides', side: null, level: null, kind: 'brainstem' },
      key,
      percent.inflamedBrainstem * share,
      intact,
      {
        process,
        paces: afterAnInfection,
        faculties: facultiesOf([
          ['consciousness', 0.74],
          ['attention', 0.4],
          ['abducens', 0.85],
          ['oculomotor', 0.8],
          ['gaze-horizontal', 0.4],
          ['eyelid-elevation', 0.3],
          ['pupil-parasympathetic', 0.35],
          ['trunk-coordination', 0.95],
          ['limb-coordination', 0.7],
          ['lower-face', 0.45],
          ['upper-face', 0.4],
          ['swallowing', 0.34],
          ['speech-articulation', 0.4],
          ['nystagmus-gaze-evoked', 0.3],
        ]),
      },
    ),
  );
}

import { type Hypothesis, hypothesis, widespreadSite } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { processOf } from '../process.ts';
import { facultiesOf } from './process-signs.ts';

const site = widespreadSite('diffuse-encephalopathy', 'Diffuse disorder of both hemispheres', 'encephalopathy');

/** Percent of all focal and diffuse findings. Judged. */
const percent = { poisoned: 0.07, inflamedChild: 0.09 } as const;

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

import { type Hypothesis, hypothesis, widespreadSite } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { processOf } from '../process.ts';
import { facultiesOf } from './process-signs.ts';

const site = widespreadSite('raised-intracranial-pressure', 'Raised intracranial pressure', 'intracranial-pressure');

/**
 * Blood that lies over both hemispheres, as in a fifth of chronic subdural haematomas (from memory), or several masses that
 * press on both. Percent of all focal and diffuse findings. Judged.
 */
const percent = 0.05;

/** How far the motor strips of both sides are pressed: alike, or one more than the other. Shares judged. */
const pressed = [
  { key: 'both-hemispheres-alike', left: 0.4, right: 0.4, share: 0.12 },
  { key: 'both-hemispheres-left-more', left: 0.6, right: 0.35, share: 0.44 },
  { key: 'both-hemispheres-right-more', left: 0.35, right: 0.6, share: 0.44 },
] as const;

/** It gathers over days to weeks, in the second half of life in most. Judged. */
const paces = { hyperacute: 0.05, acute: 0.25, subacute: 1.8, chronic: 0.5 } as const;
const ages = { from: 50, outside: 0.15 } as const;

const strip = {
  'motor-cortex-face': 0.4,
  'motor-cortex-arm': 1,
  'motor-cortex-hand': 0.9,
  'motor-cortex-leg': 0.9,
  'motor-cortex-foot': 0.9,
} as const;

/**
 * Both hemispheres pressed from without: sleepy, muddled, slow on the feet and weak on both sides, one more than the other.
 * The discs are swollen in few of the old, whose brains leave room. Chances judged.
 */
export function pressedHemispheres(): Hypothesis[] {
  return pressed.map(({ key, left, right, share }) => {
    const lesion = new LesionBuilder().brain('left', 'intracranial-pressure', 0.3);
    for (const [side, depth] of [
      ['left', left],
      ['right', right],
    ] as const) {
      for (const structure of Object.keys(strip) as (keyof typeof strip)[])
        lesion.brain(side, structure, depth * strip[structure]);
      lesion.brain(side, 'dorsolateral-frontal-cortex', depth);
    }
    return hypothesis(site, key, percent * share, lesion.build(), {
      process: processOf({ because: 'what gathers over both hemispheres presses on them' }),
      paces,
      ages,
      faculties: facultiesOf([
        ['consciousness', 0.6],
        ['attention', 0.6],
        ['orientation', 0.55],
        ['memory', 0.3],
        ['mood-behaviour', 0.3],
        ['gait-initiation', 0.3],
        ['bladder-urgency', 0.2],
      ]),
    });
  });
}

import type { StructureKey } from '../../anatomy/brain/structures.ts';
import { brainstemTerritories } from '../../anatomy/brain/territories/brainstem-territories.ts';
import { opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, widespreadSite } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { partOf, processOf, reached } from '../process.ts';
import { facultiesOf } from './process-signs.ts';

const site = widespreadSite('diffuse-encephalopathy', 'Diffuse disorder of both hemispheres', 'encephalopathy');

/** Percent of all focal and diffuse findings. Judged. */
const percent = 0.07;

/** Want of thiamine shows over days to weeks, and nothing of it strikes at once. Judged. */
const paces = { hyperacute: 0.05, acute: 0.9, subacute: 1.4, chronic: 0.6 } as const;

/** How much of the grey matter around the ventricles has failed, the side that is worse first. Judged. */
const forms = [
  { key: 'alike', share: 0.4, depth: 0.75, other: 0.75, jerks: 0.65 },
  { key: 'left-worse', share: 0.15, side: 'left', depth: 0.9, other: 0.4, jerks: 0.65 },
  { key: 'right-worse', share: 0.15, side: 'right', depth: 0.9, other: 0.4, jerks: 0.65 },
  { key: 'no-jerks', share: 0.3, depth: 0.75, other: 0.75, jerks: 0.95 },
] as const;

/**
 * Want of thiamine takes the mind, the eyes and the balance, and in four of five the nerves of the legs, whose jerks are gone
 * (Victor, Adams and Collins 1971, 245 patients, recalled). One lack explains them all. Chances judged.
 */
export function starvedBrain(): Hypothesis[] {
  const { holds, across } = brainstemTerritories['grey-matter-around-ventricles'];
  return forms.map((form) => {
    const worse = 'side' in form ? form.side : 'left';
    const lesion = new LesionBuilder();
    for (const [structure, depth] of Object.entries(holds) as [StructureKey, number][])
      lesion.brain(worse, structure, depth * form.depth);
    for (const [structure, depth] of Object.entries(across) as [StructureKey, number][])
      lesion.brain(opposite(worse), structure, depth * form.other);
    return hypothesis(site, `starved-${form.key}`, percent * form.share, lesion.build(), {
      process: processOf({
        largeFibre: ({ lengthCm }) => 0.45 * reached(lengthCm, 95),
        smallFibre: ({ lengthCm }) => 0.4 * reached(lengthCm, 95),
        reflex: ({ segment, lengthCm }) => form.jerks * (partOf(segment) === 'leg' ? 1 : reached(lengthCm, 50)),
        because: 'want of thiamine takes the nerves as well as the grey matter around the ventricles',
      }),
      paces,
      faculties: facultiesOf([
        ['orientation', 0.7],
        ['attention', 0.7],
        ['memory', 0.5],
        ['consciousness', 0.2],
        ['mood-behaviour', 0.4],
        ['trunk-coordination', 0.6],
      ]),
    });
  });
}

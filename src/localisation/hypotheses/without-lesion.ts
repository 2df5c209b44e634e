import { segmentIndex } from '../../anatomy/segments.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type FibreSite, processOf } from '../process.ts';
import { facultiesOf } from './process-signs.ts';

/** Percent of examinations in which what is found does not come from damage of the nervous system. Judged. */
const percent = 0.3;

const armBottom = segmentIndex('T1');
const legTop = segmentIndex('L1');

/** Shares of strength and of either kind of feeling that are lost. Judged. */
interface Loss {
  readonly motor: number;
  readonly largeFibre: number;
  readonly smallFibre: number;
}
const chieflyWeak: Loss = { motor: 0.45, largeFibre: 0.3, smallFibre: 0.35 };
const chieflyNumb: Loss = { motor: 0.2, largeFibre: 0.85, smallFibre: 0.85 };
const onlyNumb: Loss = { ...chieflyNumb, motor: 0 };

/** Which limbs fail, as far as the person moves and feels them. */
const extents: readonly {
  readonly key: string;
  readonly share: number;
  /** What is lost where it fails; when absent strength more than feeling. */
  readonly loss?: Loss;
  readonly fails: (fibre: FibreSite) => boolean;
}[] = [
  ...bodySides.flatMap((side) => [
    { key: `${side}-half`, share: 0.18, fails: (fibre: FibreSite) => fibre.side === side },
    {
      key: `${side}-arm`,
      share: 0.1,
      fails: (fibre: FibreSite) => fibre.side === side && fibre.segment !== null && fibre.segment <= armBottom,
    },
    {
      key: `${side}-leg`,
      share: 0.12,
      fails: (fibre: FibreSite) => fibre.side === side && fibre.segment !== null && fibre.segment >= legTop,
    },
  ]),
  ...(
    [
      ['half-numb', chieflyNumb],
      ['half-numb-and-strong', onlyNumb],
    ] as const
  ).flatMap(([key, loss]) =>
    bodySides.map((side) => ({
      key: `${side}-${key}`,
      share: 0.06,
      loss,
      fails: (fibre: FibreSite) => fibre.side === side,
    })),
  ),
  { key: 'both-legs', share: 0.1, fails: ({ segment }) => segment !== null && segment >= legTop },
  { key: 'movement-only', share: 0.1, fails: () => false },
];

/** What is met where no structure is damaged. */
export function withoutLesion(site: Site): Hypothesis[] {
  return [...varyingWithEffort(site), excitableNerves(site)];
}

/** Percent of examinations in which nerves are whole and fire for want of calcium, magnesium or carbon dioxide. Judged. */
const excitablePercent = 0.03;

/** Nothing is damaged, and axons fire by themselves: jerks are brisk in some. Source: Adams and Victor, tetany (recalled); chance judged. */
function excitableNerves(site: Site): Hypothesis {
  return hypothesis(site, 'excitable', excitablePercent, intact, {
    process: processOf({
      release: () => 0.35,
      because: 'nerves that fire too readily answer a tap more briskly, and none is damaged',
    }),
  });
}

/**
 * Weakness and numbness of a whole limb or half of the body with every reflex in place, that come and go with effort and
 * attention: pain, guarding, functional disorder. Source of the signs: Daum 2014 and McWhirter 2011 (recalled).
 */
function varyingWithEffort(site: Site): Hypothesis[] {
  return extents.map(({ key, share, fails, loss = chieflyWeak }) =>
    hypothesis(site, key, percent * share, intact, {
      process: processOf({
        motor: (unit) => (fails(unit) && unit.group !== undefined ? loss.motor : 0),
        largeFibre: (fibre) => (fails(fibre) && fibre.lengthCm > 0 ? loss.largeFibre : 0),
        smallFibre: (fibre) => (fails(fibre) ? loss.smallFibre : 0),
        wasting: 'block',
        sparesArcs: true,
        because: 'strength and feeling that vary with effort and attention come from no damaged structure',
      }),
      faculties: facultiesOf([
        ['effort', 0.7],
        ['postural-tremor', 0.15],
        ['dystonia', 0.05],
        ['trunk-coordination', 0.1],
      ]),
    }),
  );
}

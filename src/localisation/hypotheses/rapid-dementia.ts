import { bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, widespreadSite } from '../hypothesis.ts';
import { intact, LesionBuilder } from '../lesion.ts';
import { partOf, processOf } from '../process.ts';
import { facultiesOf, type ProcessSign } from './process-signs.ts';

const site = widespreadSite('diffuse-encephalopathy', 'Diffuse disorder of both hemispheres', 'encephalopathy');

/** Percent of all focal and diffuse findings. Judged. */
const percent = { even: 0.07, oneHalf: 0.02 } as const;

/** Weeks to months, in the second half of life, and over within two years in nearly all. Judged. */
const when = {
  paces: { hyperacute: 0.05, acute: 0.3, subacute: 3, chronic: 0.7 },
  ages: [
    { from: 40, outside: 0.2 },
    { from: 20, outside: 0.1 },
  ],
  lasting: { years: 2, beyond: 0.15 },
} as const;

const mind: readonly ProcessSign[] = [
  ['memory', 0.7],
  ['attention', 0.6],
  ['orientation', 0.6],
  ['executive', 0.6],
  ['mood-behaviour', 0.5],
  ['myoclonus', 0.5],
  ['speech-articulation', 0.3],
  ['visual-recognition', 0.2],
  ['language-expression', 0.2],
  ['frontal-release', 0.3],
];

/**
 * Cortex, cerebellum and basal ganglia at once, within weeks to months, as in prion disease: cerebellar signs in 19 to 47 % at
 * onset and 42 to 86 % in the course (Cooper 2006, read), jerks in half. Other chances judged.
 */
function even(): Hypothesis {
  return hypothesis(site, 'rapid', percent.even, intact, {
    ...when,
    process: processOf({
      release: ({ segment }) => (partOf(segment) === 'leg' ? 0.3 : 0.2),
      because: 'cortex, cerebellum and basal ganglia fail together',
    }),
    faculties: facultiesOf([
      ...mind,
      ['trunk-coordination', 0.6],
      ['limb-coordination', 0.45],
      ['speech-cerebellar', 0.3],
      ['nystagmus-gaze-evoked', 0.2],
      ['pursuit', 0.2],
      ['rigidity', 0.25],
      ['bradykinesia', 0.25],
      ['axial-bradykinesia', 0.2],
      ['praxis', 0.25],
    ]),
  });
}

/**
 * The same begun in the cortex and the basal ganglia of one half: an arm that jerks, twists, stiffens or no longer obeys, in a mind
 * that fails within weeks. Judged.
 */
function ofOneHalf(): Hypothesis[] {
  return bodySides.map((side) =>
    hypothesis(
      site,
      `rapid-${side}-half`,
      percent.oneHalf / 2,
      new LesionBuilder()
        .brain(side, 'substantia-nigra', 0.65)
        .brain(side, 'striatum', 0.3)
        .brain(side, 'inferior-parietal-lobule', 0.45)
        .brain(side, 'superior-parietal-lobule', 0.4)
        .brain(side, 'sensory-cortex-hand', 0.3)
        .brain(side, 'motor-cortex-hand', 0.15)
        .brain(opposite(side), 'cerebellar-hemisphere', 0.35)
        .build(),
      {
        ...when,
        // Of what wastes one half over years corticobasal degeneration is much the commonest.
        paces: { ...when.paces, chronic: 0.12 },
        process: processOf({
          because: 'the cortex fails as a whole and the half of the brain that began it fails most',
        }),
        faculties: facultiesOf([
          ...mind,
          ['dystonia', 0.4],
          ['praxis', 0.4],
          ['limb-ownership', 0.2],
          ['trunk-coordination', 0.35],
        ]),
      },
    ),
  );
}

/** Dementias of weeks to months that take more than the mind. */
export function rapidDementia(): Hypothesis[] {
  return [even(), ...ofOneHalf()];
}

import type { StructureKey } from '../../anatomy/brain/structures.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Ages, type Hypothesis, hypothesis, type PaceFactors, type Site, widespreadSite } from '../hypothesis.ts';
import { intact, LesionBuilder } from '../lesion.ts';
import { processOf } from '../process.ts';
import { facultiesOf, type ProcessSign } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged from what reaches a neurologist. */
const percent = {
  akineticRigid: 3.2,
  chorea: 0.35,
  dystonia: 0.5,
  myoclonus: 0.15,
  tics: 0.15,
  ballism: 0.12,
  tremor: 1.4,
  adrenergicTremor: 0.2,
  frontalGait: 0.5,
} as const;

type Losses = Readonly<Partial<Record<StructureKey, number>>>;

function damageOf(left: Losses, right: Losses): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const [side, losses] of [
    ['left', left],
    ['right', right],
  ] as const) {
    for (const [structure, loss] of Object.entries(losses) as [StructureKey, number][])
      lesion.brain(side, structure, loss);
  }
  return lesion;
}

const akineticRigid = widespreadSite(
  'akinetic-rigid-syndrome',
  'Akinetic-rigid disorder of the basal ganglia',
  'basal-ganglia',
);

/** Cells of the basal ganglia die over years; what stiffens and slows within weeks is a medicine, or lies elsewhere. Judged. */
const losingCells = { hyperacute: 0.6, acute: 0.6, subacute: 0.6, chronic: 1 } as const;

/** Nigral cells die in the second half of life: under forty in one of twenty, under twenty in hardly anybody. Judged. */
const nigralAges: Ages = [
  { from: 40, outside: 0.2 },
  { from: 20, outside: 0.1 },
];

/**
 * The degenerations that reach beyond the nigra begin after forty and take years; eyes or hands that fail within a day fail
 * by a stroke. Ages of onset of progressive supranuclear palsy, corticobasal degeneration and multiple system atrophy:
 * Adams and Victor (recalled). Figures judged.
 */
const wideDegeneration = { hyperacute: 0.05, acute: 0.1, subacute: 0.5, chronic: 1.2 } as const;
const lateInLife = { from: 45, outside: 0.1 } as const;

/** Water in the ventricles and blood on both hemispheres tell within weeks. Judged. */
const pressingOnBoth = { hyperacute: 0.7, acute: 1, subacute: 1.4, chronic: 1 } as const;

/**
 * In corticobasal degeneration one in two has troubled speech, lively reflexes or a mind that plans badly, one in three a
 * fixed or jerking limb, and most fall: Armstrong, Neurology 2013;80:496 (recalled).
 */
const corticobasal: readonly ProcessSign[] = [
  ['dystonia', 0.4],
  ['myoclonus', 0.4],
  ['praxis', 0.6],
  ['executive', 0.45],
  ['speech-articulation', 0.4],
  ['axial-bradykinesia', 0.6],
  ['frontal-release', 0.2],
];

interface AkineticForm {
  readonly key: string;
  readonly share: number;
  /** Loss of the substantia nigra opposite to the worse half of the body, and of the other. */
  readonly nigra: readonly [worse: number, better: number];
  readonly alsoBoth?: Losses;
  readonly alsoWorse?: Losses;
  readonly ages?: Ages;
  /** Where it is not that of cells of the nigra alone. */
  readonly paces?: PaceFactors;
  /** How far the tracts are freed, so that reflexes are brisk and toes go up. */
  readonly release?: number;
  readonly signs: readonly ProcessSign[];
}

/** Nigra, cerebellum and the autonomic columns fail together, over years. */
const multipleSystemAtrophy = {
  paces: wideDegeneration,
  ages: { from: 35, outside: 0.1 },
  nigra: [0.7, 0.65],
  alsoBoth: { 'cerebellar-hemisphere': 0.35, 'cerebellar-vermis': 0.4 },
  signs: [
    ['blood-pressure', 0.8],
    ['bladder-urgency', 0.6],
    ['bladder-retention', 0.5],
    ['sexual', 0.6],
    ['sweating', 0.4],
    ['voice', 0.3],
    ['axial-bradykinesia', 0.5],
  ],
} as const satisfies Partial<AkineticForm>;

/** Loss of nigral cells begins on one side and stays worse there; the other degenerations are even and reach further. */
const akineticForms: readonly AkineticForm[] = [
  { key: 'one-sided', share: 0.25, nigra: [0.75, 0.1], ages: nigralAges, signs: [['smell', 0.3]] },
  {
    key: 'uneven',
    share: 0.35,
    nigra: [0.9, 0.55],
    ages: nigralAges,
    signs: [
      ['smell', 0.35],
      ['axial-bradykinesia', 0.35],
      ['gut', 0.3],
      ['blood-pressure', 0.15],
    ],
  },
  {
    key: 'even',
    share: 0.15,
    nigra: [0.85, 0.8],
    ages: nigralAges,
    signs: [
      ['axial-bradykinesia', 0.5],
      ['blood-pressure', 0.2],
      ['gut', 0.3],
      ['memory', 0.15],
      ['bladder-urgency', 0.2],
    ],
  },
  {
    key: 'with-gaze-palsy',
    share: 0.1,
    paces: wideDegeneration,
    ages: lateInLife,
    nigra: [0.65, 0.6],
    alsoBoth: { 'vertical-gaze-centre': 0.9, 'medial-frontal-cortex': 0.3, 'dorsolateral-frontal-cortex': 0.4 },
    signs: [
      ['axial-bradykinesia', 0.8],
      ['pseudobulbar', 0.25],
      ['swallowing', 0.4],
      ['speech-articulation', 0.4],
      ['executive', 0.6],
      ['mood-behaviour', 0.5],
      ['frontal-release', 0.3],
      // Convergence and pursuit fail with the vertical saccades.
      ['pretectal', 0.35],
      ['pursuit', 0.4],
    ],
  },
  {
    // Stored copper and the inherited diseases of the young stiffen and twist at once, face and speech before all.
    key: 'with-dystonia-of-the-young',
    share: 0.04,
    nigra: [0.6, 0.5],
    release: 0.35,
    ages: { to: 40, outside: 0.1 },
    signs: [
      ['dystonia', 0.6],
      ['axial-bradykinesia', 0.4],
      ['speech-articulation', 0.7],
      ['swallowing', 0.35],
      ['postural-tremor', 0.3],
      ['mood-behaviour', 0.35],
      ['executive', 0.25],
    ],
  },
  { key: 'with-autonomic-failure', share: 0.08, ...multipleSystemAtrophy },
  // A third or more have brisk reflexes and upgoing toes: Wenning 1994 (recalled).
  { key: 'with-autonomic-failure-and-tracts', share: 0.03, release: 0.35, ...multipleSystemAtrophy },
  {
    key: 'with-cortical-signs',
    share: 0.03,
    paces: wideDegeneration,
    ages: lateInLife,
    nigra: [0.8, 0.2],
    alsoWorse: { 'inferior-parietal-lobule': 0.6, 'sensory-cortex-hand': 0.6, 'superior-parietal-lobule': 0.5 },
    signs: corticobasal,
  },
  {
    key: 'with-cortical-and-pyramidal-signs',
    share: 0.02,
    paces: wideDegeneration,
    ages: lateInLife,
    nigra: [0.8, 0.2],
    alsoWorse: {
      'inferior-parietal-lobule': 0.6,
      'sensory-cortex-hand': 0.4,
      'superior-parietal-lobule': 0.5,
      'motor-cortex-hand': 0.25,
      'motor-cortex-arm': 0.25,
      'motor-cortex-leg': 0.25,
      'motor-cortex-foot': 0.25,
    },
    signs: corticobasal,
  },
];

function akineticHypotheses(): Hypothesis[] {
  return akineticForms.flatMap(
    ({
      key,
      share,
      nigra: [worse, better],
      alsoBoth = {},
      alsoWorse = {},
      ages,
      paces = losingCells,
      release,
      signs,
    }) =>
      bodySides.map((worseBrain) => {
        const losses = (side: BodySide): Losses => ({
          ...alsoBoth,
          ...(side === worseBrain ? alsoWorse : {}),
          'substantia-nigra': side === worseBrain ? worse : better,
        });
        return hypothesis(
          akineticRigid,
          `${key}-${opposite(worseBrain)}`,
          (percent.akineticRigid * share) / 2,
          damageOf(losses('left'), losses('right')).build(),
          {
            process: processOf({
              ...(release !== undefined && { release: () => release }),
              because: 'the basal ganglia fail to set speed, size and tone of movement',
            }),
            paces,
            ...(ages && { ages }),
            faculties: facultiesOf(signs),
          },
        );
      }),
  );
}

/** By a medicine, high sugar or infection, within hours to days; undoes the tempo of the site, that of a degeneration. Judged. */
const broughtOn = { hyperacute: 8, acute: 6, subacute: 1.2, chronic: 0.05 } as const;

/** Movements in excess that belong to no one place. */
function hyperkineticHypotheses(): Hypothesis[] {
  const site = widespreadSite('hyperkinetic-syndrome', 'Hyperkinetic disorder of the basal ganglia', 'basal-ganglia');
  const forms: readonly (readonly [string, number, readonly ProcessSign[], PaceFactors?, Ages?])[] = [
    [
      'chorea',
      percent.chorea,
      [
        ['chorea', 0.92],
        ['dystonia', 0.25],
        ['pursuit', 0.3],
        ['saccade-accuracy', 0.3],
        // Saccades slow down in Huntington disease, up and down as well as sideways.
        ['gaze-vertical', 0.2],
        ['executive', 0.35],
        ['mood-behaviour', 0.4],
        ['speech-articulation', 0.25],
        ['trunk-coordination', 0.2],
      ],
    ],
    [
      'dystonia',
      percent.dystonia,
      [
        ['dystonia', 0.93],
        ['postural-tremor', 0.3],
      ],
    ],
    [
      'myoclonus',
      percent.myoclonus,
      [
        ['myoclonus', 0.93],
        ['limb-coordination', 0.2],
      ],
    ],
    [
      // Where trunk, face or several limbs twist, speech and swallowing twist with them, and the limbs feel stiff.
      'dystonia-of-many-parts',
      percent.dystonia * 0.4,
      [
        ['dystonia', 0.95],
        ['speech-articulation', 0.4],
        ['swallowing', 0.2],
        ['rigidity', 0.3],
        ['bradykinesia', 0.2],
        ['postural-tremor', 0.2],
        ['myoclonus', 0.15],
      ],
    ],
    ['tics', percent.tics, [['tics', 0.95]]],
    // Neck, jaw, tongue and eyes are wrung within hours or days of a medicine that blocks dopamine.
    [
      'acute-dystonia',
      percent.dystonia * 0.06,
      [
        ['dystonia', 0.95],
        ['speech-articulation', 0.4],
        ['swallowing', 0.2],
        ['rigidity', 0.3],
      ],
      broughtOn,
    ],
    [
      'acute-chorea',
      percent.chorea * 0.08,
      [
        ['chorea', 0.95],
        ['mood-behaviour', 0.3],
        ['speech-articulation', 0.2],
      ],
      broughtOn,
    ],
    // After streptococci children fidget, fumble and change in manner within days to weeks.
    [
      'chorea-of-childhood',
      percent.chorea * 0.5,
      [
        ['chorea', 0.95],
        ['mood-behaviour', 0.5],
        ['speech-articulation', 0.3],
        ['attention', 0.2],
        // One in ten falls silent, and the limbs go limp between the jerks.
        ['speech-initiation', 0.12],
        ['limb-coordination', 0.2],
      ],
      { hyperacute: 1, acute: 4, subacute: 3, chronic: 0.15 },
      { to: 18, outside: 0.02 },
    ],
    // What blocks dopamine for years makes mouth and limbs move, and shakes and stiffens them beside.
    [
      'by-medicine',
      percent.chorea * 0.15,
      [
        ['chorea', 0.7],
        ['dystonia', 0.5],
        ['rest-tremor', 0.25],
        ['postural-tremor', 0.4],
        ['rigidity', 0.3],
        ['bradykinesia', 0.3],
        ['axial-bradykinesia', 0.25],
        ['swallowing', 0.2],
        ['speech-articulation', 0.25],
      ],
    ],
  ];
  return forms.map(([key, frequency, signs, paces, ages]) =>
    hypothesis(site, key, frequency, intact, {
      ...(paces && { paces }),
      ...(ages && { ages }),
      process: processOf({ because: 'the basal ganglia let unwilled movements through' }),
      faculties: facultiesOf(signs),
    }),
  );
}

/** A small vessel that closes or bleeds is what strikes so small a nucleus. Judged. */
const strokePaces = { hyperacute: 1.5, acute: 1.3, subacute: 0.6, chronic: 0.5 } as const;

function ballismHypotheses(): Hypothesis[] {
  return bodySides.flatMap((side) => {
    const site = {
      key: 'subthalamic-nucleus',
      label: 'Subthalamic nucleus',
      side,
      level: null,
      kind: 'hemisphere',
    } as const;
    const nucleus = () => new LesionBuilder().brain(side, 'subthalamic-nucleus', 0.95);
    // A clot or an abscess reaches the capsule, which lies against it: the limb that is thrown about is weak as well.
    const withCapsule = nucleus()
      .brain(side, 'internal-capsule-posterior-limb', 0.6)
      .brain(side, 'internal-capsule-genu', 0.3)
      .build();
    return [
      hypothesis(site, 'whole', percent.ballism / 2, nucleus().build(), { paces: strokePaces }),
      hypothesis(site, 'with-capsule', (0.3 * percent.ballism) / 2, withCapsule),
    ];
  });
}

function tremorHypotheses(): Hypothesis[] {
  const site = widespreadSite('action-tremor', 'Action tremor of both arms', 'basal-ganglia');
  const alone = [0.95, 0.85].map((chance, place) =>
    hypothesis(site, String(place), percent.tremor / 2, intact, {
      process: processOf({ because: 'the tremor is one of holding and moving, on both sides' }),
      faculties: facultiesOf([
        ['postural-tremor', chance],
        ['trunk-coordination', place === 0 ? 0.05 : 0.2],
        ['limb-coordination', 0.12],
      ]),
    }),
  );
  return [...alone, adrenergicTremor(site)];
}

/**
 * The tremor of health made coarse by thyroid hormone, adrenaline or what acts like it: the heart races, the skin sweats and
 * jerks are brisk, and the mind is clear. Source: Adams and Victor, enhanced physiologic tremor; hyperthyroidism (recalled);
 * chances judged.
 */
function adrenergicTremor(site: Site): Hypothesis {
  return hypothesis(site, 'adrenergic', percent.adrenergicTremor, intact, {
    process: processOf({
      release: () => 0.4,
      because: 'what drives heart and skin drives the tremor of both hands',
    }),
    faculties: facultiesOf([
      ['postural-tremor', 0.92],
      ['heart-rate', 0.75],
      ['sweating', 0.5],
      ['lid-retraction', 0.2],
    ]),
  });
}

/** Steps that do not start, with bladder and thinking, as in hydrocephalus and disease of small vessels. */
function frontalGaitHypotheses(): Hypothesis[] {
  const site = widespreadSite('frontal-gait-disorder', 'Frontal disorder of gait', 'basal-ganglia');
  return [0.9, 0.6].map((depth) =>
    hypothesis(
      site,
      String(depth),
      percent.frontalGait / 2,
      damageOf({ 'medial-frontal-cortex': depth }, { 'medial-frontal-cortex': depth }).build(),
      {
        paces: pressingOnBoth,
        process: processOf({ because: 'the medial frontal lobes no longer start and scale the steps' }),
        faculties: facultiesOf([
          ['executive', 0.45],
          ['attention', 0.25],
          ['memory', 0.25],
          ['frontal-release', 0.3],
          ['axial-bradykinesia', 0.3],
        ]),
      },
    ),
  );
}

/** Disorders of movement that are processes of the brain. */
export function movementDisorderHypotheses(): Hypothesis[] {
  return [
    ...akineticHypotheses(),
    ...hyperkineticHypotheses(),
    ...ballismHypotheses(),
    ...tremorHypotheses(),
    ...frontalGaitHypotheses(),
  ];
}

import type { StructureKey } from '../../anatomy/brain/structures.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Ages, type Hypothesis, hypothesis, type PaceFactors, widespreadSite } from '../hypothesis.ts';
import { intact, LesionBuilder } from '../lesion.ts';
import { type Process, processOf, reached } from '../process.ts';
import { comesOnSlowly, facultiesOf, type ProcessSign } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged from what reaches a neurologist. */
const percent = {
  akineticRigid: 3.2,
  chorea: 0.35,
  dystonia: 0.5,
  myoclonus: 0.15,
  tics: 0.15,
  ballism: 0.12,
  tremor: 1.4,
  frontalGait: 0.5,
  cerebellar: 0.9,
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
  return [0.95, 0.85].map((chance, place) =>
    hypothesis(site, String(place), percent.tremor / 2, intact, {
      process: processOf({ because: 'the tremor is one of holding and moving, on both sides' }),
      faculties: facultiesOf([
        ['postural-tremor', chance],
        ['trunk-coordination', place === 0 ? 0.05 : 0.2],
        ['limb-coordination', 0.12],
      ]),
    }),
  );
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

/** Spinocerebellar forms lose the longest sensory fibres and the tracts as well. */
const longAxons = processOf({
  largeFibre: ({ lengthCm }) => 0.8 * reached(lengthCm, 70),
  reflex: () => 0.85,
  because: 'cerebellum and the longest sensory fibres waste away together',
});
const cerebellumInflamed = processOf({ because: 'the whole cerebellum is inflamed or poisoned' });
/** Limbs that the cerebellum has left are slack and tire, and in a child they are called weak (Holmes 1939, recalled). Judged. */
const slackWithIt = processOf({
  motor: () => 0.2,
  because: 'the whole cerebellum is inflamed or poisoned, and limbs without it are slack and seem weak',
});
const wholeCerebellum = widespreadSite('cerebellar-degeneration', 'Degeneration of the whole cerebellum', 'cerebellum');
const cerebellumOnly = processOf({ because: 'the whole cerebellum wastes away' });

/** Most of the dominant ataxias let go of the jerks of arms and legs long before anything is weak (from-memory). Judged. */
const briskAndUnsteady = processOf({
  release: ({ segment }) => (segment === null ? 0 : 0.5),
  because: 'the whole cerebellum wastes away, and descending tracts with it',
});

const autonomicFailure: readonly ProcessSign[] = [
  ['blood-pressure', 0.75],
  ['bladder-urgency', 0.6],
  ['bladder-retention', 0.45],
  ['sexual', 0.6],
  ['voice', 0.25],
];

/** Dystonia in a third, slow or narrow gaze in as many; chorea and a failing mind in fewer. Judged. */
const twistedLimbs: readonly ProcessSign[] = [
  ['dystonia', 0.5],
  ['rigidity', 0.25],
  ['chorea', 0.06],
  ['gaze-vertical', 0.35],
  ['abducens', 0.15],
  ['executive', 0.35],
  ['speech-articulation', 0.4],
];

function cerebellarDegeneration(): Hypothesis[] {
  const forms = [
    { key: 'pure', share: 0.4, hemisphere: 0.75, vermis: 0.85, pyramidal: 0, process: cerebellumOnly },
    // Gait fails before speech and eyes do.
    { key: 'mild', share: 0.2, hemisphere: 0.45, vermis: 0.7, pyramidal: 0, speech: 0.3, process: cerebellumOnly },
    { key: 'with-tracts', share: 0.2, hemisphere: 0.7, vermis: 0.8, pyramidal: 0.4, process: cerebellumOnly },
    {
      key: 'with-autonomic-failure',
      share: 0.2,
      hemisphere: 0.65,
      vermis: 0.8,
      pyramidal: 0.2,
      process: cerebellumOnly,
    },
    // Machado-Joseph disease and its kin stiffen and twist the limbs and hold the eyes as well (from-memory).
    {
      key: 'with-twisted-limbs',
      share: 0.06,
      hemisphere: 0.7,
      vermis: 0.8,
      pyramidal: 0.35,
      twisted: true,
      process: cerebellumOnly,
    },
    { key: 'with-brisk-jerks', share: 0.015, hemisphere: 0.7, vermis: 0.8, pyramidal: 0.05, process: briskAndUnsteady },
    { key: 'with-long-axons', share: 0.3, hemisphere: 0.65, vermis: 0.8, pyramidal: 0.3, process: longAxons },
  ] as const;
  return forms.map(({ key, share, hemisphere, vermis, pyramidal, process, ...form }) => {
    const lesion = new LesionBuilder().brain('left', 'cerebellar-vermis', vermis);
    lesion.brain('left', 'flocculonodular-lobe', 0.5);
    for (const side of bodySides) {
      lesion.brain(side, 'cerebellar-hemisphere', hemisphere);
      lesion.cord('corticospinal', side, segmentIndex('T1'), pyramidal);
      if (key === 'with-autonomic-failure') lesion.brain(side, 'substantia-nigra', 0.4);
      if (process === longAxons) lesion.cord('dorsalColumn', side, segmentIndex('C4'), 0.6);
    }
    return hypothesis(wholeCerebellum, key, percent.cerebellar * share, lesion.build(), {
      process,
      faculties: facultiesOf([
        ['speech-cerebellar', 'speech' in form ? form.speech : 0.5],
        ['nystagmus-gaze-evoked', 0.35],
        ['pursuit', 0.4],
        ['saccade-accuracy', 0.4],
        ['swallowing', 0.15],
        ...(key === 'with-autonomic-failure' ? autonomicFailure : []),
        ...('twisted' in form ? twistedLimbs : []),
      ]),
      lasting: { years: 3, beyond: 1.5 },
    });
  });
}

/** Share of a wasting vermis that goes with a neuropathy of the legs, as in drink; percent of all findings. Judged. */
const vermisAndNerves = 0.05;

/** Vermis and the longest axons wasting together: more than half of those whom drink has made unsteady have both. */
function vermisWithLongAxons(): Hypothesis[] {
  return [0.85, 0.55].map((depth) =>
    hypothesis(
      { key: 'cerebellar-vermis', label: 'Cerebellar vermis', side: null, level: null, kind: 'cerebellum' },
      `with-long-axons-${depth}`,
      vermisAndNerves / 2,
      new LesionBuilder().brain('left', 'cerebellar-vermis', depth).build(),
      {
        process: processOf({
          largeFibre: ({ lengthCm }) => 0.6 * reached(lengthCm, 92),
          smallFibre: ({ lengthCm }) => 0.4 * reached(lengthCm, 96),
          reflex: ({ lengthCm }) => 0.7 * reached(lengthCm, 84),
          because: 'drink and lack of vitamins harm the vermis and the longest axons together',
        }),
        paces: comesOnSlowly,
      },
    ),
  );
}

/** Inflamed after an infection of childhood, or poisoned, within hours to days; undoes the tempo of the site. Judged. */
const inflamedOrPoisoned = { hyperacute: 6, acute: 7, subacute: 1.5, chronic: 0.1 } as const;

const childhood = { to: 16, outside: 0.03 } as const;
/** Immunity against a tumour or against large cells takes the whole cerebellum within weeks to a few months. Judged. */
const againstTumour = { hyperacute: 0.2, acute: 1.5, subacute: 3, chronic: 0.4 } as const;

interface InflamedForm {
  readonly key: string;
  readonly share: number;
  readonly isDrowsy: boolean;
  readonly process: Process;
  readonly ages?: Ages;
  readonly paces?: PaceFactors;
}

function inflamedCerebellum(): Hypothesis[] {
  const lesion = new LesionBuilder()
    .brain('left', 'cerebellar-vermis', 0.85)
    .brain('left', 'flocculonodular-lobe', 0.4);
  for (const side of bodySides) lesion.brain(side, 'cerebellar-hemisphere', 0.7);
  const forms: readonly InflamedForm[] = [
    { key: 'inflamed', share: 0.06, isDrowsy: false, process: cerebellumInflamed },
    { key: 'inflamed-and-drowsy', share: 0.03, isDrowsy: true, process: cerebellumInflamed },
    { key: 'inflamed-and-slack', share: 0.03, isDrowsy: false, process: slackWithIt, ages: childhood },
    // After an infection of childhood this is the commonest ataxia there is.
    { key: 'inflamed-in-childhood', share: 0.35, isDrowsy: false, process: cerebellumInflamed, ages: childhood },
    {
      key: 'immune',
      share: 0.22,
      isDrowsy: false,
      process: cerebellumInflamed,
      ages: { from: 25, outside: 0.3 },
      paces: againstTumour,
    },
  ];
  return forms.map(({ key, share, isDrowsy, process, ages, paces = inflamedOrPoisoned }) =>
    hypothesis(wholeCerebellum, key, percent.cerebellar * share, lesion.build(), {
      process,
      paces,
      ...(ages && { ages }),
      faculties: facultiesOf([
        ['speech-cerebellar', 0.5],
        ['speech-articulation', 0.3],
        ['nystagmus-gaze-evoked', 0.5],
        ['pursuit', 0.4],
        ['saccade-accuracy', 0.4],
        ...(isDrowsy ? drowsyWithIt : []),
      ]),
    }),
  );
}

const drowsyWithIt: readonly ProcessSign[] = [
  ['consciousness', 0.4],
  ['attention', 0.5],
  ['orientation', 0.25],
  ['mood-behaviour', 0.3],
  ['chorea', 0.08],
];

/** Disorders of movement that are processes of the brain. */
export function movementDisorderHypotheses(): Hypothesis[] {
  return [
    ...akineticHypotheses(),
    ...hyperkineticHypotheses(),
    ...ballismHypotheses(),
    ...tremorHypotheses(),
    ...frontalGaitHypotheses(),
    ...cerebellarDegeneration(),
    ...inflamedCerebellum(),
    ...vermisWithLongAxons(),
  ];
}

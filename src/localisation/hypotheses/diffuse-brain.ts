import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site, widespreadSite } from '../hypothesis.ts';
import { intact, LesionBuilder } from '../lesion.ts';
import { partOf, processOf } from '../process.ts';
import { inflamedBrainstem, inflamedChild, poisonedBrain } from './poisoned-and-inflamed-brain.ts';
import { pressedHemispheres } from './pressed-hemispheres.ts';
import { facultiesOf, type ProcessSign } from './process-signs.ts';
import { rapidDementia } from './rapid-dementia.ts';
import { starvedBrain } from './starved-brain.ts';

/** Percent of all focal and diffuse findings. Judged from what reaches a neurologist. */
const percent = {
  pressure: 0.7,
  meninges: 0.7,
  basalMeninges: 0.1,
  siderosis: 0.05,
  encephalopathy: 1.2,
  dementia: 1.2,
  whiteMatter: 0.12,
  inflamed: 0.25,
  excited: 0.12,
  leaking: 0.06,
} as const;

const pressureSite = widespreadSite(
  'raised-intracranial-pressure',
  'Raised intracranial pressure',
  'intracranial-pressure',
);

/** Discs swell for days to weeks before they take the sight. Judged. */
const drowningPaces = { hyperacute: 0.05, acute: 0.3, subacute: 1.5, chronic: 1.2 } as const;

function pressureHypotheses(): Hypothesis[] {
  const process = processOf({
    because: 'pressure in the skull is passed on to optic nerves, sixth nerves and brainstem',
  });
  return (
    [
      ['awake', 0.95, 0.45, [['visual-acuity', 0.17]]],
      [
        // Swollen for long, or swollen fast, the discs fail, one before the other.
        'sight-failing',
        0.97,
        0.08,
        [
          ['visual-acuity', 0.6],
          ['colour-vision', 0.3],
          ['central-field', 0.35],
          ['altitudinal-field', 0.15],
          ['pupil-afferent', 0.15],
          ['optic-atrophy', 0.3],
        ],
      ],
      [
        // Discs that swell fast lose sight within days to weeks, in both eyes. Thambisetty 2007 (from memory); share judged.
        'sight-lost',
        0.98,
        0.03,
        [
          ['visual-acuity', 0.92],
          ['colour-vision', 0.8],
          ['central-field', 0.5],
          ['pupil-afferent', 0.8],
        ],
        drowningPaces,
      ],
      [
        'drowsy',
        0.9,
        0.36,
        [
          ['consciousness', 0.7],
          ['attention', 0.5],
          ['orientation', 0.35],
          ['memory', 0.2],
          ['mood-behaviour', 0.2],
          ['speech-articulation', 0.12],
          ['abducens', 0.15],
          ['gaze-vertical', 0.2],
          ['gaze-down', 0.15],
          ['gait-initiation', 0.2],
        ],
      ],
    ] as const
  ).map(([key, depth, share, signs, paces]) =>
    hypothesis(
      pressureSite,
      key,
      percent.pressure * share,
      new LesionBuilder().brain('left', 'intracranial-pressure', depth).build(),
      { process, faculties: facultiesOf(signs), ...(paces && { paces }) },
    ),
  );
}

/** What swells or bleeds in one half of the skull pushes the temporal lobe down within hours to days. Judged. */
const herniatingPaces = { hyperacute: 2, acute: 1.3, subacute: 0.6, chronic: 0.1 } as const;

/**
 * A temporal lobe pressed down on the third nerve: a wide pupil on the side of the mass, and sleepiness. Adams and Victor, herniations (recalled); chances judged.
 */
function herniation(): Hypothesis[] {
  const forms = [
    { key: 'herniating', share: 0.03, muscles: 0.6, drowsy: 0.85 },
    // The pupil goes before the muscles of the eye.
    { key: 'herniating-pupil', share: 0.05, muscles: 0.05, drowsy: 0.9 },
  ] as const;
  return forms.flatMap(({ key, share, muscles, drowsy }) =>
    bodySides.map((side) =>
      hypothesis(
        pressureSite,
        `${key}-${side}`,
        percent.pressure * share,
        new LesionBuilder()
          .brain('left', 'intracranial-pressure', 0.7)
          .brain(side, 'pupil-fibres-of-oculomotor-nerve', 0.9)
          .brain(side, 'oculomotor-nerve', muscles)
          .build(),
        {
          process: processOf({ because: 'a temporal lobe is pressed down on the third nerve' }),
          paces: herniatingPaces,
          faculties: facultiesOf([
            ['consciousness', drowsy],
            ['attention', 0.2],
          ]),
        },
      ),
    ),
  );
}

/** It takes hours to days of swelling; who loses wakefulness and pupils at one blow has a brainstem without blood. Judged. */
const pressedDownPaces = { hyperacute: 0.15, acute: 1.5, subacute: 0.5, chronic: 0.05 } as const;

/**
 * Pressed down through the tentorium on both sides: the pupils no longer answer, then the cornea, while the plantars go
 * up. Plum and Posner, central herniation (recalled); chances judged.
 */
function centralHerniation(): Hypothesis {
  const lesion = new LesionBuilder().brain('left', 'intracranial-pressure', 0.7);
  for (const side of bodySides)
    lesion.brain(side, 'pupil-fibres-of-oculomotor-nerve', 0.85).brain(side, 'oculomotor-nerve', 0.1);
  return hypothesis(pressureSite, 'herniating-both', percent.pressure * 0.03, lesion.build(), {
    process: processOf({
      release: ({ segment }) => (segment === null ? 0 : 0.5),
      because: 'a swollen brain is pressed down through the tentorium upon the brainstem',
    }),
    paces: pressedDownPaces,
    faculties: facultiesOf([
      ['consciousness', 0.97],
      ['attention', 0.9],
      ['corneal', 0.55],
      ['gag', 0.3],
    ]),
  });
}

/** Blood and pus in the meninges raise the pressure, and one sixth nerve or both give way in a few of a hundred. Judged. */
const sixthNerve = 0.03;

function meningealHypotheses(): Hypothesis[] {
  const site = widespreadSite('meningeal-irritation', 'Meningeal irritation', 'meninges');
  const process = processOf({ because: 'inflamed or bloodstained meninges resist being stretched' });
  return (
    [
      ['alert', 0.95, 0.5, [['abducens', sixthNerve]]],
      [
        'confused',
        0.9,
        0.5,
        [
          ['consciousness', 0.55],
          ['attention', 0.6],
          ['orientation', 0.4],
          ['abducens', sixthNerve * 2],
        ],
      ],
    ] as const
  ).map(([key, depth, share, signs]) =>
    hypothesis(site, key, percent.meninges * share, new LesionBuilder().brain('left', 'meninges', depth).build(), {
      process,
      faculties: facultiesOf(signs),
    }),
  );
}

/**
 * Cranial nerves that a process of the basal meninges picks out, here and there and on both sides, each with how readily:
 * the sixth and the seventh above all, the lowest seldom. Order from-memory, shares judged.
 */
const basalNerves = [
  ['optic-nerve', 0.7],
  ['oculomotor-nerve', 0.8],
  ['pupil-fibres-of-oculomotor-nerve', 0.7],
  ['trochlear-nerve', 0.5],
  ['abducens-nerve', 1],
  ['trigeminal-root', 0.5],
  ['facial-nerve-before-canal', 1],
  ['cochlear-nerve', 0.7],
  ['vagus-nerve', 0.5],
  ['hypoglossal-nerve', 0.35],
] as const;

/** Infection and growth spread along the base over days to months; hardly anything strikes several nerves there at once. Judged. */
const alongTheBasePaces = { hyperacute: 0.03, acute: 0.3, subacute: 1, chronic: 1.3 } as const;

function basalMeningealHypotheses(): Hypothesis[] {
  const site = widespreadSite(
    'basal-meningeal-process',
    'Process of the basal meninges with several cranial nerves',
    'meninges',
  );
  const spreads = [
    { key: 'even', left: 0.4, right: 0.4, share: 0.3 },
    { key: 'left-worse', left: 0.55, right: 0.25, share: 0.3 },
    { key: 'right-worse', left: 0.25, right: 0.55, share: 0.3 },
    // Growth and infection along the base of the skull may keep to one half of it.
    { key: 'left-alone', left: 0.6, right: 0.03, share: 0.06, carotid: 'left' },
    { key: 'right-alone', left: 0.03, right: 0.6, share: 0.06, carotid: 'right' },
  ] as const;
  const ofNerves = spreads.map((spread) => {
    const lesion = new LesionBuilder().brain('left', 'meninges', 0.5).brain('left', 'intracranial-pressure', 0.2);
    for (const side of bodySides)
      for (const [nerve, share] of basalNerves) lesion.brain(side, nerve, spread[side] * share);
    // Along one half of the base it reaches the carotid canal, where the sympathetic fibres of the eye run.
    if ('carotid' in spread) lesion.brain(spread.carotid, 'carotid-sympathetic-plexus', 0.25);
    return hypothesis(site, spread.key, percent.basalMeninges * spread.share, lesion.build(), alongTheBase);
  });
  return [...ofNerves, ...withRoots(site)];
}

const alongTheBase = {
  process: processOf({ because: 'the meninges at the base catch one cranial nerve after another' }),
  paces: alongTheBasePaces,
  faculties: facultiesOf([
    ['consciousness', 0.1],
    ['attention', 0.2],
  ]),
};

/** Roots that hang in the sac and are bathed by what spreads in it: those of the legs and bladder first, those of the arms in fewer. */
const bathedRoots = {
  legs: ['L2', 'L3', 'L4', 'L5', 'S1', 'S2', 'S3', 'S4'],
  'legs-and-arms': ['C5', 'C6', 'C7', 'C8', 'L2', 'L3', 'L4', 'L5', 'S1', 'S2', 'S3', 'S4'],
} as const;

/**
 * What spreads in the fluid takes cranial nerves above and roots below at once: of 90 with carcinoma of the meninges half had signs of
 * cranial nerves and four in five of roots (Wasserstrom 1982, recalled); tuberculosis, borrelia and sarcoid do the same. Judged.
 */
function withRoots(site: Site): Hypothesis[] {
  return (['legs', 'legs-and-arms'] as const).flatMap((key) =>
    (
      [
        ['even', 0.35, 0.35],
        ['left-worse', 0.5, 0.2],
        ['right-worse', 0.2, 0.5],
      ] as const
    ).map(([which, left, right]) => {
      const lesion = new LesionBuilder().brain('left', 'meninges', 0.4).brain('left', 'intracranial-pressure', 0.15);
      for (const [side, depth] of [
        ['left', left],
        ['right', right],
      ] as const) {
        for (const [nerve, share] of basalNerves) lesion.brain(side, nerve, depth * share);
        for (const root of bathedRoots[key]) lesion.root(side, root, depth, depth);
      }
      return hypothesis(
        site,
        `with-roots-of-${key}-${which}`,
        percent.basalMeninges * 0.06,
        lesion.build(),
        alongTheBase,
      );
    }),
  );
}

/**
 * Iron from blood that has leaked for years coats the cochlear nerves, the cerebellum and the cord: deafness in 95 of 100,
 * ataxia in 88, pyramidal signs in 76, and the nose in some (Fearnley 1995, from memory). Other chances judged.
 */
function siderosis(): Hypothesis {
  const site = widespreadSite(
    'basal-meningeal-process',
    'Process of the basal meninges with several cranial nerves',
    'meninges',
  );
  return hypothesis(site, 'siderosis', percent.siderosis, intact, {
    process: processOf({
      release: ({ segment }) => (segment === null ? 0.1 : 0.55),
      because: 'blood pigment coats the cochlear nerves, the cerebellum and the cord',
    }),
    paces: { hyperacute: 0.02, acute: 0.05, subacute: 0.4, chronic: 3 },
    ages: { from: 25, outside: 0.05 },
    faculties: facultiesOf([
      ['hearing', 0.95],
      ['trunk-coordination', 0.8],
      ['limb-coordination', 0.45],
      ['speech-cerebellar', 0.3],
      ['vestibular', 0.4],
      ['smell', 0.35],
      ['bladder-urgency', 0.25],
      ['memory', 0.2],
    ]),
  });
}

const encephalopathySite = widespreadSite(
  'diffuse-encephalopathy',
  'Diffuse disorder of both hemispheres',
  'encephalopathy',
);

/** Both hemispheres at once: clouded, as in metabolic upset, or awake but failing, as in degeneration. */
function encephalopathyHypotheses(): Hypothesis[] {
  const forms: readonly (readonly [string, number, readonly ProcessSign[]])[] = [
    [
      'clouded',
      percent.encephalopathy * 0.6,
      [
        ['consciousness', 0.55],
        ['attention', 0.9],
        ['orientation', 0.75],
        ['memory', 0.4],
        ['asterixis', 0.45],
        ['construction', 0.4],
        ['frontal-release', 0.25],
        ['myoclonus', 0.2],
        ['mood-behaviour', 0.3],
        ['speech-articulation', 0.2],
      ],
    ],
    [
      'deep',
      percent.encephalopathy * 0.4,
      [
        ['consciousness', 0.95],
        ['attention', 0.9],
        ['orientation', 0.9],
        ['asterixis', 0.2],
        ['myoclonus', 0.2],
        ['frontal-release', 0.3],
      ],
    ],
    [
      // Who is clouded lies in bed, does not push as asked and is found slightly weak throughout, with brisk jerks in some.
      'clouded-and-weak',
      percent.encephalopathy * 0.12,
      [
        ['consciousness', 0.8],
        ['attention', 0.85],
        ['orientation', 0.75],
        ['asterixis', 0.3],
        ['myoclonus', 0.2],
        ['frontal-release', 0.25],
        ['speech-articulation', 0.2],
      ],
    ],
    [
      // Inflamed on both sides: conduct, memory and wakefulness together, and movements that nobody wills.
      'inflamed',
      percent.inflamed * 0.7,
      [
        ['mood-behaviour', 0.7],
        ['attention', 0.65],
        ['orientation', 0.55],
        ['memory', 0.5],
        ['consciousness', 0.4],
        ['chorea', 0.1],
        ['dystonia', 0.1],
        ['rigidity', 0.15],
        ['myoclonus', 0.15],
        ['speech-initiation', 0.25],
        ['language-expression', 0.2],
        ['executive', 0.3],
        ['speech-articulation', 0.2],
        ['blood-pressure', 0.15],
        ['trunk-coordination', 0.15],
      ],
    ],
    [
      // The same with movements that nobody wills, which are not met without a change of mind.
      'inflamed-with-movements',
      percent.inflamed * 0.3,
      [
        ['mood-behaviour', 0.85],
        ['attention', 0.8],
        ['orientation', 0.75],
        ['memory', 0.6],
        ['consciousness', 0.6],
        ['chorea', 0.6],
        ['dystonia', 0.5],
        ['rigidity', 0.3],
        ['speech-initiation', 0.4],
        ['blood-pressure', 0.3],
      ],
    ],
    [
      // Silent and still, or wax in the hands of others, between bouts of unrest: as often as with movements, and in the young.
      'inflamed-and-mute',
      percent.inflamed * 0.25,
      [
        ['mood-behaviour', 0.85],
        ['speech-initiation', 0.8],
        ['attention', 0.6],
        ['orientation', 0.4],
        ['memory', 0.4],
        ['consciousness', 0.3],
        ['rigidity', 0.3],
        ['dystonia', 0.2],
        ['chorea', 0.15],
        ['heart-rate', 0.3],
        ['blood-pressure', 0.3],
      ],
    ],
    [
      'failing-memory',
      percent.dementia * 0.8,
      [
        ['memory', 0.92],
        ['orientation', 0.6],
        ['executive', 0.5],
        ['construction', 0.5],
        ['language-repetition', 0.35],
        ['frontal-release', 0.25],
        ['attention', 0.25],
        ['praxis', 0.2],
      ],
    ],
    [
      'failing-conduct',
      percent.dementia * 0.2,
      [
        ['executive', 0.8],
        ['mood-behaviour', 0.8],
        ['frontal-release', 0.35],
        ['memory', 0.25],
        ['language-expression', 0.25],
        ['attention', 0.3],
      ],
    ],
  ];
  return forms.map(([key, frequency, signs]) =>
    hypothesis(encephalopathySite, key, frequency, intact, {
      process: processOf({
        ...(isInflamed(key) && { release: () => 0.3 }),
        ...(key === 'clouded-and-weak' && slightlyWeak),
        because: 'both hemispheres are affected throughout',
      }),
      faculties: facultiesOf(signs),
      ...(isInflamed(key) && { paces: inflamedPaces }),
      ...(key === 'clouded-and-weak' && { paces: cloudedPaces, ages: { from: 16, outside: 0.15 } }),
      ...(isDementia(key) && { paces: dementiaPaces, ages: { from: 40, outside: 0.2 } }),
    }),
  );
}

const slightlyWeak = { motor: () => 0.25, release: () => 0.35, sparesArcs: true, wasting: 'block' } as const;

const isInflamed = (form: string): boolean => form.startsWith('inflamed');

const isDementia = (form: string): boolean => form.startsWith('failing');

/** A dementia takes months to years; a word or a memory that is gone of a sudden is a stroke or a seizure. Judged. */
const dementiaPaces = { hyperacute: 0.1, acute: 0.2, subacute: 0.8, chronic: 1.3 } as const;
/** Inflammation of the brain is noticed within days to weeks. Judged. */
const inflamedPaces = { hyperacute: 0.05, acute: 1.3, subacute: 1.6, chronic: 0.3 } as const;
/** Who is clouded and weak for months has something else as well. Judged. */
const cloudedPaces = { hyperacute: 0.5, acute: 1.6, subacute: 0.6, chronic: 0.08 } as const;
/** A poison, or a drug that is taken or withdrawn, shows within hours to days. Judged. */
const poisonedPaces = { hyperacute: 1, acute: 1.5, subacute: 0.2, chronic: 0.05 } as const;

/**
 * An excited brain, as by serotonin, by loss of dopamine or by withdrawal: stiff, brisk, jerking and sweating, with unsteady
 * pulse and pressure. Signs of serotonin toxicity: Dunkley 2003 (recalled); chances judged.
 */
function excitedBrain(): Hypothesis[] {
  return [
    { key: 'excited', release: 0.6, rigidity: 0.35 },
    { key: 'excited-and-rigid', release: 0.25, rigidity: 0.85 },
  ].map(({ key, release, rigidity }) =>
    hypothesis(encephalopathySite, key, percent.excited / 2, intact, {
      process: processOf({
        release: ({ segment }) => (partOf(segment) === 'leg' ? release : release * 0.7),
        because: 'the whole brain and its autonomic centres are overexcited',
      }),
      paces: poisonedPaces,
      faculties: facultiesOf([
        ['attention', 0.6],
        ['consciousness', 0.45],
        ['orientation', 0.5],
        ['mood-behaviour', 0.4],
        ['rigidity', rigidity],
        ['postural-tremor', 0.5],
        ['myoclonus', 0.4],
        ['sweating', 0.6],
        ['blood-pressure', 0.45],
        ['heart-rate', 0.5],
        // Wide pupils belong to serotonin and to withdrawal.
        ['pupil-parasympathetic', 0.2],
      ]),
    }),
  );
}

/**
 * Vessels that leak under high pressure, behind before elsewhere, as in eclampsia: sight fails on both sides, or the mind, and
 * reflexes are brisk. Disturbed sight in 20 to 39 %, clouding in 28 to 94 %: Fugate 2015 (recalled); other chances judged.
 */
function leakingVessels(): Hypothesis[] {
  const occipital = widespreadSite('cortex-occipital', 'Occipital cortex', 'hemisphere');
  return [
    { key: 'leaking-behind', site: occipital, sight: 0.85, mind: 0.3, share: 0.6 },
    { key: 'leaking', site: encephalopathySite, sight: 0.3, mind: 0.8, share: 0.4 },
  ].map(({ key, site, sight, mind, share }) => {
    const lesion = new LesionBuilder();
    for (const side of bodySides)
      lesion
        .brain(side, 'occipital-cortex-above-calcarine', sight * 0.8)
        .brain(side, 'occipital-cortex-below-calcarine', sight * 0.8)
        .brain(side, 'occipital-pole', sight)
        .brain(side, 'superior-parietal-lobule', sight * 0.5);
    return hypothesis(site, key, percent.leaking * share, lesion.build(), {
      process: processOf({
        release: ({ segment }) => (partOf(segment) === 'leg' ? 0.5 : 0.4),
        because: 'vessels leak under high pressure on both sides',
      }),
      paces: poisonedPaces,
      faculties: facultiesOf([
        ['consciousness', mind * 0.6],
        ['attention', mind],
        ['orientation', mind * 0.7],
      ]),
    });
  });
}

/** The white matter of both hemispheres, as in leukodystrophy: conduct and thinking fail, legs stiffen, sight and hearing dull. Chances judged. */
function whiteMatter(): Hypothesis {
  const lesion = new LesionBuilder();
  for (const side of bodySides) lesion.brain(side, 'corona-radiata', 0.4);
  return hypothesis(encephalopathySite, 'white-matter', percent.whiteMatter, lesion.build(), {
    process: processOf({
      release: ({ segment }) => (partOf(segment) === 'leg' ? 0.4 : 0.2),
      because: 'the white matter of both hemispheres fails',
    }),
    faculties: facultiesOf([
      ['executive', 0.5],
      ['attention', 0.55],
      ['memory', 0.5],
      ['mood-behaviour', 0.6],
      ['orientation', 0.3],
      ['visual-acuity', 0.3],
      ['hearing', 0.25],
      ['gait-initiation', 0.2],
      ['trunk-coordination', 0.3],
    ]),
  });
}

/** Processes of the whole brain, its pressure and its coverings. */
export function diffuseBrainHypotheses(): Hypothesis[] {
  return [
    ...pressureHypotheses(),
    ...herniation(),
    centralHerniation(),
    ...pressedHemispheres(),
    ...meningealHypotheses(),
    ...basalMeningealHypotheses(),
    siderosis(),
    ...encephalopathyHypotheses(),
    ...excitedBrain(),
    ...leakingVessels(),
    whiteMatter(),
    ...rapidDementia(),
    ...poisonedBrain(),
    ...inflamedChild(),
    ...inflamedBrainstem(),
    ...starvedBrain(),
  ];
}

import { recalled } from '../../kernel/cite.ts';
import { at, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';
import { cordLooksSpared } from './cord-images.ts';

const cordChapter = recalled('adams-victor', 'diseases of the spinal cord');
const anyCord = ['cord'] as const;

/** The long tracts of movement and vibration fail, those of pain hardly ever. */
const painSenseLost = shows(['sensation/pinprick', 'sensation/temperature'], 0.35, 1.15);

/** Diseases that take single tracts of the cord and press on none. */
export const cordTractCauses: readonly Cause[] = [
  {
    key: 'hereditary-spastic-paraplegia',
    group: 'hereditary',
    label: 'Hereditary spastic paraplegia',
    inheritance: ['autosomal-dominant', 'autosomal-recessive', 'x-linked'],
    mondo: mondo('MONDO:0019064', 'hereditary spastic paraplegia'),
    produces: [
      at(['spinal-cord-transverse'], 'uncommon'),
      at(['spinal-cord-lateral', 'upper-motor-neuron-system'], 'common'),
      inKind(anyCord, 'uncommon', 'thoracic'),
      at(['spinal-cord-posterolateral'], 'uncommon'),
      inKind(['motor-neuron-system'], 'uncommon'),
      at(['cerebellar-degeneration', 'corticobulbar-both-sides', 'motor-polyneuropathy'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    paralysis: 0.3,
    courses: { progressive: 1.2, static: 1.1, improving: 0.05, 'relapsing-remitting': 0.1 },
    // It is noticed once a child should walk.
    age: { from: 1, to: 75, outside: 0.3 },
    history: [
      told(['cataract', 'restless-legs'], 1.3, 1),
      told('developmental-delay', 2, 1),
      told('loss-of-skills', 1.3, 1),
      told('family/consanguinity', 3, 1),
      told(['back-pain', 'thoracic-back-pain', 'perinatal-injury'], 0.5, 1.05),
      told(['stiffness', 'falls'], 1.3, 1),
      told(['family/similar-disorder', 'family/spastic-paraplegia'], 15, 0.3),
      told(['cramps', 'bladder-disturbance', 'difficulty-walking'], 1.2, 1),
      told(['fever', 'weight-loss', 'night-spinal-pain', 'cancer'], 0.4, 1),
    ],
    signs: [painSenseLost, shows(['inspection/pes-cavus'], 4, 0.8)],
    values: [...cordLooksSpared],
    source: cordChapter,
  },
  {
    key: 'htlv-1-myelopathy',
    group: 'infective',
    label: 'Myelopathy of human T-lymphotropic virus 1',
    mondo: mondo('MONDO:0008039', 'tropical spastic paraparesis'),
    produces: [
      inKind(anyCord, 'rare'),
      at(['spinal-cord-transverse'], 'uncommon'),
      at(['cerebellar-degeneration', 'upper-motor-neuron-system', 'spinal-cord-posterior'], 'rare'),
      inKind(anyCord, 'rare', 'thoracic'),
      at(['spinal-cord-lateral'], 'uncommon'),
      at(['spinal-cord-posterolateral'], 'rare'),
      at(['length-dependent-polyneuropathy'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    paralysis: 0.4,
    courses: { progressive: 1.4 },
    age: { from: 25, to: 80, outside: 0.2 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['hiv-infection', 'family/similar-disorder'], 1.3, 1),
      told(['unprotected-sex', 'injecting-drug-use', 'family/spastic-paraplegia'], 1.5, 1),
      told(['dry-eyes', 'dry-mouth', 'visual-loss'], 1.3, 1),
      told('travel', 8, 0.3),
      told('bladder-disturbance', 1.6, 0.6),
      told('back-pain', 1.6, 0.9),
      told('bowel-disturbance', 1.5, 0.9),
      told(['lymphoma', 'rash'], 1.6, 1),
    ],
    signs: [
      shows(['sensation/pinprick', 'sensation/temperature'], 0.7, 1),
      shows(['inspection/kyphosis', 'inspection/spinal-tenderness'], 0.5, 1),
    ],
    values: [
      ...cordLooksSpared,
      reads('htlv-test', [
        ['positive', 60],
        ['negative', 0.02],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'adrenomyeloneuropathy',
    group: 'hereditary',
    label: 'Adrenomyeloneuropathy',
    inheritance: ['x-linked'],
    mondo: mondo('MONDO:0015339', 'adrenomyeloneuropathy'),
    produces: [
      at(['upper-motor-neuron-system', 'spinal-cord-posterior', 'length-dependent-polyneuropathy'], 'rare'),
      at(['spinal-cord-posterolateral'], 'rare'),
      at(['spinal-cord-lateral'], 'uncommon'),
      inKind(anyCord, 'exceptional'),
      at(['sensory-polyneuropathy', 'motor-polyneuropathy', 'cerebellar-degeneration'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    paralysis: 0.3,
    courses: { progressive: 1.4, improving: 0.05, 'relapsing-remitting': 0.1 },
    // Of women who carry it more than half have a stiff gait by sixty. Engelen 2014 (recalled).
    sex: { male: 1.4, female: 0.6 },
    history: [
      // What every slow disease of the cord makes is told of all of them.
      told(['stiffness', 'falls', 'difficulty-walking'], 1.2, 1),
      told(['trauma', 'fever', 'cancer', 'night-spinal-pain'], 0.4, 1),
      told(['hair-loss', 'vomiting', 'fatigue'], 1.5, 0.95),
      told(['sexual-dysfunction', 'bladder-disturbance'], 1.5, 0.9),
      told(['family/similar-disorder', 'family/spastic-paraplegia', 'family/multiple-sclerosis'], 5, 0.7),
      told(['cognitive-change', 'behaviour-change'], 1.2, 1),
    ],
    signs: [
      shows(['inspection/skin-hyperpigmentation'], 8, 0.8),
      shows(['sensation/pinprick', 'sensation/temperature'], 0.7, 1.05),
    ],
    quantities: [under('cortisol', 140, 'nmol/L', 6, 0.7)],
    values: [
      ...cordLooksSpared,
      reads('mri-brain', [['white-matter-disease', 3]]),
      reads('nerve-conduction-pattern', [
        ['axonal', 1.5],
        ['mixed', 1.5],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'tabes-dorsalis',
    group: 'infective',
    label: 'Tabes dorsalis',
    mondo: mondo('MONDO:0005977', 'tabes dorsalis'),
    produces: [
      at(['spinal-cord-posterolateral', 'polyradiculopathy', 'sensory-polyneuropathy'], 'rare'),
      at(['spinal-cord-posterior'], 'uncommon'),
      inKind(['ganglion'], 'uncommon'),
      at(['optic-nerve', 'length-dependent-polyneuropathy', 'ciliary-ganglion'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    paralysis: 0.25,
    age: { from: 25, to: 100, outside: 0.05 },
    history: [
      told(['paraesthesiae', 'vomiting', 'painless-injury'], 1.3, 1),
      told(['bladder-disturbance', 'worse-in-the-dark', 'unsteadiness', 'visual-loss'], 1.5, 0.9),
      told('alcohol-excess', 1.2, 1),
      told('syphilis', 30, 0.5),
      // Lightning pains of the legs and crises of the belly.
      told(['neuropathic-pain', 'bilateral-leg-pain', 'abdominal-pain'], 2.5, 0.6),
      told(['burning-feet', 'leg-weakness'], 0.4, 1),
      // A leg or a foot that aches all day has a hundred other causes.
      told(['foot-pain', 'thigh-pain', 'arm-pain', 'radicular-leg-pain'], 0.5, 1),
      told(['unprotected-sex', 'hiv-infection'], 2, 1),
      told(['sexual-dysfunction', 'hearing-loss', 'falls'], 1.3, 1),
    ],
    signs: [
      shows(['cranial-nerves/small-pupil', 'cranial-nerves/anisocoria'], 2, 1),
      shows(['cranial-nerves/light-near-dissociation'], 15, 0.6),
      shows(['inspection/neuropathic-joint'], 5, 0.95),
    ],
    values: [
      reads('syphilis-serology', [
        ['positive', 30],
        ['negative', 0.05],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'adult-polyglucosan-body-disease',
    group: 'hereditary',
    label: 'Adult polyglucosan body disease',
    inheritance: ['autosomal-recessive'],
    produces: [
      at(['spinal-cord-lateral'], 'rare'),
      at(['spinal-cord-posterolateral', 'length-dependent-polyneuropathy'], 'exceptional'),
      at(['upper-motor-neuron-system', 'motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    paralysis: 0.3,
    courses: { progressive: 1.4, 'relapsing-remitting': 0.1 },
    age: { from: 38, to: 75, outside: 0.1 },
    history: [
      // A bladder that fails is the first trouble in most, years before the gait. Mochel 2012 (recalled).
      told('bladder-disturbance', 1.9, 0.15),
      told(['family/similar-disorder', 'family/consanguinity'], 3, 0.8),
      told(['cognitive-change', 'stiffness'], 1.4, 1),
      told(['trauma', 'fever', 'cancer', 'back-pain'], 0.5, 1),
    ],
    values: [
      ...cordLooksSpared,
      reads('mri-brain', [
        ['white-matter-disease', 5],
        ['normal', 0.3],
      ]),
      reads('nerve-conduction-pattern', [
        ['axonal', 2],
        ['normal', 0.5],
      ]),
    ],
    source: recalled('adams-victor', 'inherited metabolic diseases of adults'),
  },
];

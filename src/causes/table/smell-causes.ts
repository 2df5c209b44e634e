import { recalled } from '../../kernel/cite.ts';
import { at, type Cause, reads, shows, tempos, told } from './cause.ts';

/** Causes of a loss of smell. */
export const smellCauses: readonly Cause[] = [
  {
    key: 'post-infectious-smell-loss',
    group: 'infective',
    label: 'Loss of smell after a viral infection of the nose',
    produces: [at(['olfactory-nerve'], 'very-common')],
    tempo: tempos.acute,
    courses: { progressive: 0.2, improving: 1.6 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection', 'fever', 'sore-throat'], 6, 0.2),
      told('loss-of-smell', 1.3, 0.6),
      told(['head-injury', 'trauma'], 0.15, 1.1),
      told(['behaviour-change', 'seizure', 'visual-loss'], 0.3, 1.05),
      told('fever', 1.2, 1),
      told('dream-enactment', 0.4, 1),
    ],
    signs: [shows(['cranial-nerves/anosmia'], 2, 0.4)],
    source: recalled('smell-loss-1991', 'about a quarter of 750'),
  },
  {
    key: 'sinonasal-smell-loss',
    group: 'infective',
    label: 'Loss of smell from disease of the nose and sinuses',
    produces: [at(['olfactory-nerve'], 'very-common')],
    tempo: tempos.chronic,
    courses: { fluctuating: 2, 'relapsing-remitting': 2, progressive: 0.8 },
    history: [
      told(['sinus-or-ear-infection', 'asthma'], 6, 0.5),
      told(['head-injury', 'trauma'], 0.2, 1.1),
      told(['behaviour-change', 'seizure', 'visual-loss'], 0.3, 1.05),
    ],
    signs: [shows(['cranial-nerves/anosmia'], 2, 0.4)],
    source: recalled('smell-loss-1991'),
  },
  {
    key: 'head-injury-smell-loss',
    group: 'traumatic',
    label: 'Loss of smell after a head injury',
    produces: [at(['olfactory-nerve'], 'common')],
    tempo: tempos.sudden,
    courses: { progressive: 0.1 },
    history: [told(['head-injury', 'trauma'], 20, 0.04), told('loss-of-consciousness', 2, 0.7)],
    signs: [shows(['cranial-nerves/anosmia'], 2, 0.4)],
    source: recalled('smell-loss-1991', 'nearly a fifth of 750'),
  },
  {
    key: 'olfactory-groove-meningioma',
    group: 'neoplastic',
    label: 'Meningioma of the olfactory groove',
    produces: [
      at(['olfactory-nerve'], 'uncommon'),
      at(['cortex-frontal', 'optic-nerve', 'diffuse-encephalopathy'], 'rare'),
      at(['optic-chiasm', 'frontal-gait-disorder', 'raised-intracranial-pressure'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 2, improving: 0.05 },
    age: { from: 35, to: 85, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('behaviour-change', 6, 0.6),
      told(['headache', 'new-headache', 'morning-headache'], 2, 0.7),
      told('seizure', 4, 0.9),
      told(['visual-loss', 'transient-visual-loss'], 4, 0.8),
      told(['preceding-infection', 'preceding-respiratory-infection', 'head-injury'], 0.3, 1.2),
      told('loss-of-smell', 2, 1),
      told(['cognitive-change', 'bladder-disturbance'], 1.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/anosmia'], 4, 0.3),
      shows(['cranial-nerves/optic-disc-swelling', 'cranial-nerves/optic-disc-pallor'], 8, 0.7),
      shows(['higher-function/apathy', 'higher-function/disinhibition', 'higher-function/grasp-reflex'], 5, 0.7),
    ],
    values: [
      reads('mri-brain', [
        ['space-occupying', 15],
        ['normal', 0.02],
      ]),
      reads('ct-head', [
        ['space-occupying', 10],
        ['normal', 0.15],
      ]),
    ],
    source: recalled('brazis'),
  },
];

import { read, recalled } from '../../../kernel/cite.ts';
import type { FunctionRow } from '../function-row.ts';
import { onBothSides, onEitherSide, other, partly, same, series } from '../path.ts';

const basalGanglia = recalled('brazis', 'basal ganglia');
const cerebellum = recalled('brazis', 'cerebellum');
const medulla = recalled('brazis', 'medulla oblongata');

export const movementFunctions = {
  bradykinesia: {
    carries: 'the speed and size of movement',
    path: series(partly(0.95, other('substantia-nigra')), partly(0.3, other('globus-pallidus', 'striatum'))),
    source: basalGanglia,
  },
  'axial-bradykinesia': {
    carries: 'speed of face, voice, posture and gait',
    path: series(
      onBothSides('substantia-nigra'),
      partly(0.35, onEitherSide('substantia-nigra')),
      partly(0.3, onBothSides('globus-pallidus')),
    ),
    source: basalGanglia,
  },
  rigidity: {
    carries: 'the slackness of muscles at rest',
    path: series(partly(0.85, other('substantia-nigra')), partly(0.25, other('globus-pallidus'))),
    source: basalGanglia,
  },
  'rest-tremor': {
    carries: 'stillness at rest',
    // A tremor at rest and in action comes from where the paths of nigra and cerebellum meet, weeks after the lesion.
    path: series(
      partly(0.65, other('substantia-nigra')),
      partly(0.4, other('red-nucleus')),
      partly(0.2, other('ventrolateral-nucleus')),
      partly(0.12, same('superior-cerebellar-peduncle')),
    ),
    source: basalGanglia,
  },
  'postural-tremor': {
    carries: 'steadiness on holding still',
    path: series(
      partly(0.55, other('red-nucleus')),
      partly(0.4, same('superior-cerebellar-peduncle')),
      partly(0.2, same('cerebellar-hemisphere')),
      partly(0.25, other('substantia-nigra')),
      partly(0.35, other('ventrolateral-nucleus')),
      partly(0.1, other('striatum')),
    ),
    source: cerebellum,
  },
  chorea: {
    carries: 'the restraint of unwilled movement',
    path: series(
      partly(0.75, other('striatum')),
      partly(0.6, other('subthalamic-nucleus')),
      partly(0.12, other('ventrolateral-nucleus')),
    ),
    source: basalGanglia,
  },
  ballism: {
    carries: 'the restraint of the large muscles of the limbs',
    path: series(
      partly(0.85, other('subthalamic-nucleus')),
      partly(0.4, other('striatum')),
      partly(0.05, other('ventrolateral-nucleus')),
      partly(0.02, other('internal-capsule-posterior-limb', 'superior-parietal-lobule')),
    ),
    source: read(
      'hemiballism-1994',
      'the subthalamic nucleus in only 6 of 25, else other deep structures; shares judged',
    ),
  },
  dystonia: {
    carries: 'the balance of agonist and antagonist',
    path: series(
      partly(0.4, other('striatum', 'globus-pallidus')),
      partly(0.25, other('ventrolateral-nucleus')),
      partly(0.12, other('substantia-nigra')),
    ),
    source: basalGanglia,
  },
  asterixis: {
    carries: 'the upholding of a posture',
    // Of one side it comes from many places above the medulla, the ventrolateral thalamus before all.
    path: series(
      partly(0.35, other('ventrolateral-nucleus')),
      partly(0.15, other('ventral-posterolateral-nucleus')),
      partly(0.2, other('internal-capsule-posterior-limb', 'internal-capsule-genu')),
      partly(0.12, other('medial-frontal-cortex', 'superior-parietal-lobule')),
      partly(0.1, other('red-nucleus')),
      partly(0.05, other('basis-pontis')),
    ),
    source: read('one-sided-asterixis-1981', 'midbrain, thalamus, parietal lobe, genu of the capsule; shares judged'),
  },
  'gait-initiation': {
    carries: 'the start and scale of steps',
    path: series(
      partly(0.85, onBothSides('medial-frontal-cortex')),
      partly(0.1, onEitherSide('medial-frontal-cortex')),
      partly(0.35, onBothSides('substantia-nigra')),
    ),
    source: recalled('adams-victor', 'disorders of gait'),
  },
  'limb-coordination': {
    carries: 'coordination of the limbs',
    path: series(
      same('cerebellar-hemisphere'),
      partly(0.75, same('inferior-cerebellar-peduncle')),
      partly(0.85, same('middle-cerebellar-peduncle')),
      partly(0.9, same('superior-cerebellar-peduncle')),
      partly(0.8, other('red-nucleus')),
      partly(0.5, other('ventrolateral-nucleus')),
      partly(0.45, other('pontine-nuclei')),
      partly(0.12, other('internal-capsule-posterior-limb', 'basis-pontis')),
      partly(0.75, other('frontopontine-fibres')),
      partly(0.2, same('cerebellar-vermis')),
    ),
    source: cerebellum,
  },
  'trunk-coordination': {
    carries: 'balance of trunk and gait',
    path: series(
      same('cerebellar-vermis'),
      partly(0.7, same('flocculonodular-lobe')),
      partly(0.6, onEitherSide('cerebellar-hemisphere')),
      partly(
        0.55,
        onEitherSide('inferior-cerebellar-peduncle', 'middle-cerebellar-peduncle', 'superior-cerebellar-peduncle'),
      ),
      partly(0.4, onEitherSide('vestibular-nerve', 'vestibular-nuclei', 'lower-vestibular-nuclei', 'red-nucleus')),
      partly(0.25, onBothSides('medial-frontal-cortex')),
      partly(0.3, same('intracranial-pressure')),
    ),
    source: cerebellum,
  },
  meningeal: {
    carries: 'free movement of the meninges',
    path: partly(0.85, same('meninges')),
    source: recalled('adams-victor', 'meningitis'),
  },
  'bladder-urgency': {
    carries: 'the restraint of the bladder',
    path: series(
      partly(0.75, onBothSides('medial-frontal-cortex')),
      partly(0.35, onEitherSide('medial-frontal-cortex')),
    ),
    source: recalled('blumenfeld', 'bladder function'),
  },
  breathing: {
    carries: 'the drive to breathe',
    path: partly(0.4, onBothSides('nucleus-ambiguus')),
    source: medulla,
  },
} as const satisfies Record<string, FunctionRow>;

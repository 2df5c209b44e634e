import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, reads, shows, tempos, told, under } from './cause.ts';

const anyHeadache = ['headache', 'new-headache', 'morning-headache'] as const;
const dull = ['higher-function/confusion', 'higher-function/drowsiness', 'higher-function/coma'] as const;

/** Poisons that a level in the blood proves, and the fit of pregnancy. */
export const poisoningCauses: readonly Cause[] = [
  {
    key: 'carbon-monoxide-poisoning',
    group: 'toxic',
    label: 'Carbon monoxide poisoning',
    produces: [
      at(['diffuse-encephalopathy'], 'uncommon'),
      // What comes weeks later is stiff and slow, or blind.
      at(['akinetic-rigid-syndrome', 'raised-intracranial-pressure', 'no-lesion'], 'rare'),
      at(['striatum', 'cortex-occipital', 'frontal-gait-disorder', 'hyperkinetic-syndrome'], 'exceptional'),
      inKind(['hemisphere'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.55, acute: 0.25, subacute: 0.15, chronic: 0.05 },
    history: [
      told('carbon-monoxide', 60, 0.12),
      told([...anyHeadache, 'dizziness', 'vomiting'], 1.6, 0.9),
      told(['loss-of-consciousness', 'syncope'], 1.5, 1),
      told('fever', 0.3, 1),
    ],
    signs: [shows(dull, 1.3, 0.9), shows(['special-tests/neck-stiffness'], 0.3, 1)],
    quantities: [
      atLeast('carboxyhaemoglobin', 10, '%', 80, 0.2, recalled('adams-victor', 'carbon monoxide')),
      atLeast('lactate', 4, 'mmol/L', 1.5, 0.95),
    ],
    source: recalled('adams-victor', 'carbon monoxide'),
  },
  {
    key: 'methanol-poisoning',
    group: 'toxic',
    label: 'Methanol or ethylene glycol poisoning',
    produces: [
      at(['optic-nerve', 'diffuse-encephalopathy'], 'rare'),
      at(['striatum', 'akinetic-rigid-syndrome', 'optic-chiasm', 'retina'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.3, acute: 0.6, subacute: 0.08, chronic: 0.02 },
    durationDays: { to: 28, outside: 0.2, source: fromMemory },
    history: [
      told('toxic-alcohol', 60, 0.2),
      told('alcohol-excess', 2, 0.9),
      told(['vomiting', 'abdominal-pain', 'breathlessness'], 2, 0.8),
      told('visual-loss', 2, 0.9),
      told(['fever', 'eye-pain'], 0.3, 1),
    ],
    signs: [
      shows(dull, 2, 0.8),
      shows(
        ['cranial-nerves/unreactive-pupil', 'cranial-nerves/sluggish-pupil', 'cranial-nerves/dilated-pupil'],
        2.5,
        0.8,
      ),
      shows(['cranial-nerves/optic-disc-swelling', 'cranial-nerves/central-scotoma'], 1.5, 1),
    ],
    quantities: [
      atLeast('osmolal-gap', 20, 'mosm/kg', 25, 0.6),
      under('blood-ph', 7.3, '[pH]', 6, 0.2, recalled('adams-victor', 'methanol')),
      under('bicarbonate', 15, 'mmol/L', 4, 0.3),
    ],
    source: recalled('adams-victor', 'methanol'),
  },
  {
    key: 'lithium-poisoning',
    group: 'toxic',
    label: 'Lithium poisoning',
    produces: [
      at(['diffuse-encephalopathy', 'cerebellar-degeneration', 'action-tremor'], 'uncommon'),
      at(['cerebellar-vermis', 'brainstem-diffuse', 'hyperkinetic-syndrome', 'akinetic-rigid-syndrome'], 'rare'),
      inKind(['cerebellum'], 'rare'),
    ],
    tempo: { hyperacute: 0.08, acute: 0.42, subacute: 0.4, chronic: 0.1 },
    history: [
      told('lithium', 40, 0.05),
      told(['diuretic', 'ace-inhibitor', 'chronic-kidney-disease', 'vomiting', 'preceding-gastroenteritis'], 2, 0.9),
      told('psychiatric-disorder', 3, 0.7),
      told('fever', 0.6, 1),
    ],
    signs: [
      shows(['involuntary-movements/action-tremor', 'involuntary-movements/postural-tremor'], 2, 0.8),
      shows(['gait/ataxic', 'cranial-nerves/dysarthria', 'cranial-nerves/cerebellar-dysarthria'], 1.5, 0.9),
      shows(['involuntary-movements/myoclonus', ...dull], 1.4, 0.95),
    ],
    // After long use it poisons at a usual level too.
    quantities: [atLeast('lithium-level', 1.5, 'mmol/L', 40, 0.3, recalled('adams-victor', 'lithium'))],
    source: recalled('adams-victor', 'lithium'),
  },
  {
    key: 'eclampsia',
    group: 'vascular',
    label: 'Eclampsia',
    produces: [
      at(['diffuse-encephalopathy', 'cortex-occipital', 'no-lesion'], 'rare'),
      at(['raised-intracranial-pressure', 'retina'], 'exceptional'),
      inKind(['hemisphere'], 'rare'),
    ],
    tempo: tempos.sudden,
    age: { from: 14, to: 50, outside: 0.05 },
    sex: { male: 0.001, female: 1.9 },
    history: [
      told('pregnancy', 60, 0.02),
      told('pre-eclampsia', 10, 1),
      told(['seizure', 'ongoing-seizure'], 6, 0.1),
      told([...anyHeadache, 'visual-loss', 'flashes-and-floaters'], 1.6, 0.8),
      told('hypertension', 2, 1),
      told(['fever', 'leg-weakness', 'arm-weakness', 'bladder-disturbance'], 0.4, 1),
      told('epilepsy', 0.3, 1),
    ],
    signs: [shows(['reflexes/knee', 'reflexes/ankle', 'clonus/ankle'], 1.4, 0.9)],
    quantities: [atLeast('systolic-pressure-supine', 140, 'mm[Hg]', 4, 0.2, recalled('nice-ng133', 'eclampsia'))],
    values: [
      reads('urine-protein', [
        ['raised', 5],
        ['nephrotic', 5],
        ['negative', 0.4],
      ]),
      reads('mri-brain', [
        ['venous-thrombosis', 0.05],
        ['infarct', 0.3],
      ]),
    ],
    source: recalled('nice-ng133', 'eclampsia'),
  },
];

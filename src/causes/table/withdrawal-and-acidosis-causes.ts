import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, shows, tempos, told, under } from './cause.ts';

const discSwelling = ['cranial-nerves/optic-disc-swelling'] as const;

/** What follows a medicine that is missed, a kidney that keeps acid and loses potassium, and a nerve of sight that starves unseen. */
export const withdrawalAndAcidosisCauses: readonly Cause[] = [
  {
    key: 'baclofen-withdrawal',
    group: 'toxic',
    label: 'Withdrawal of baclofen',
    produces: [
      at(['diffuse-encephalopathy', 'hyperkinetic-syndrome', 'akinetic-rigid-syndrome'], 'rare'),
      at(['spinal-cord-transverse', 'spinal-cord-lateral', 'upper-motor-neuron-system', 'no-lesion'], 'exceptional'),
    ],
    // Hours to a few days after the last dose.
    tempo: { hyperacute: 0.15, acute: 0.75, subacute: 0.09, chronic: 0.01 },
    durationDays: { to: 28, outside: 0.3, source: fromMemory },
    history: [
      told('baclofen-withdrawal', 150, 0.05),
      told('baclofen', 6, 0.4),
      told(['stiffness', 'cramps'], 2, 0.9),
      told(['seizure', 'ongoing-seizure', 'behaviour-change', 'insomnia', 'altered-sweating'], 1.6, 0.9),
      told(['multiple-sclerosis', 'perinatal-injury', 'spinal-fracture'], 2, 1),
      told('fever', 1.4, 0.9),
    ],
    signs: [
      shows(['tone/upper-limb', 'tone/lower-limb'], 2.5, 0.4),
      shows(['involuntary-movements/flexor-spasms', 'involuntary-movements/generalised-spasms'], 2, 0.9),
      shows(['higher-function/hallucinations', 'higher-function/agitation', 'higher-function/confusion'], 2, 0.8),
      shows(['autonomic/fever', 'autonomic/resting-tachycardia', 'autonomic/hyperhidrosis'], 1.6, 0.9),
      shows(['autonomic/blood-pressure-lability'], 1.4, 1),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 2, 0.9)],
    source: recalled('adams-victor', 'baclofen'),
  },
  {
    key: 'renal-tubular-acidosis-paralysis',
    group: 'metabolic',
    label: 'Weakness of low potassium in renal tubular acidosis',
    produces: [
      at(['proximal-myopathy'], 'rare'),
      at(['motor-polyneuropathy', 'lower-motor-neuron-system', 'no-lesion'], 'exceptional'),
      at(['demyelinating-polyradiculoneuropathy', 'spinal-cord-transverse'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.3, acute: 0.5, subacute: 0.15, chronic: 0.05 },
    courses: { 'relapsing-remitting': 2 },
    sex: { male: 0.5, female: 1.5 },
    history: [
      told('renal-tubular-acidosis', 80, 0.6),
      told(['sjogren-syndrome', 'lupus', 'autoimmune-disease'], 4, 0.9),
      told(['dry-mouth', 'dry-eyes', 'joint-pain'], 2.5, 0.9),
      told(['flank-pain', 'polyuria'], 2, 1),
      told(['episodic-weakness', 'similar-attacks-before'], 2, 0.9),
      told('hyperthyroidism', 0.2, 1.02),
      told(['numbness', 'bladder-disturbance'], 0.4, 1.1),
    ],
    quantities: [
      under('potassium', 3, 'mmol/L', 12, 0.05),
      under('bicarbonate', 20, 'mmol/L', 15, 0.1),
      atLeast('chloride', 108, 'mmol/L', 6, 0.3),
      under('blood-ph', 7.35, '[pH]', 10, 0.2),
      atLeast('creatine-kinase', 400, 'U/L', 1.4, 0.9),
    ],
    source: recalled('amato-russell', 'hypokalaemic weakness'),
  },
  {
    key: 'posterior-ischaemic-optic-neuropathy',
    group: 'vascular',
    label: 'Posterior ischaemic optic neuropathy',
    produces: [at(['optic-nerve'], 'uncommon'), at(['optic-chiasm'], 'exceptional')],
    tempo: tempos.sudden,
    courses: { progressive: 0.4, static: 1.5, 'relapsing-remitting': 0.1 },
    age: { from: 40, to: 95, outside: 0.4 },
    history: [
      // Blood lost in a long operation face down, or drawn off by dialysis.
      told(['recent-surgery', 'spinal-surgery', 'dialysis', 'surgical-positioning', 'critical-illness'], 10, 0.5),
      told(['hypertension', 'diabetes-mellitus', 'hyperlipidaemia', 'tobacco'], 1.3, 0.8),
      told(['eye-pain', 'trauma', 'head-injury'], 0.2, 1.1),
      told(['jaw-claudication', 'scalp-tenderness'], 0.3, 1.05),
    ],
    signs: [
      shows(discSwelling, 0.03, 1.5),
      shows(['cranial-nerves/reduced-visual-acuity'], 1.5, 0.7),
      shows(['cranial-nerves/relative-afferent-pupillary-defect', 'cranial-nerves/sluggish-pupil'], 1.4, 0.9),
      shows(['inspection/proptosis', 'inspection/temporal-artery-tenderness'], 0.2, 1.02),
    ],
    quantities: [under('haemoglobin', 80, 'g/L', 4, 0.9), atLeast('esr', 50, 'mm/h', 0.4, 1.1)],
    source: recalled('adams-victor', 'ischaemic optic neuropathy'),
  },
];

import { commonPractice, fromMemory, read, recalled } from '../kernel/cite.ts';
import { type BedsideFacts, isSlowlyCervical } from './bedside-facts.ts';
import { trueFever } from './red-flags/fever.ts';
import { isOfTheLungApex } from './red-flags/lung-apex.ts';
import { isOutsideTheCanal } from './red-flags/outside-canal.ts';
import { dangerousSalt } from './red-flags/systemic-flags.ts';
import type { WorkupRule } from './workup-rule.ts';

const gbs = read('ean-pns-gbs-2023');

/** Age in years under which giant cell arteritis is hardly ever met. Source: BSR guideline on giant cell arteritis, 2020. */
const giantCellsFrom = 50;

/** Tests that a red flag asks for, whether it is present or cannot be decided. */
export const redFlagTests: readonly WorkupRule[] = [
  {
    tests: ['mri-lumbar-spine'],
    flags: ['suspected-cauda-equina-syndrome', 'threatened-cauda-equina'],
    tier: 1,
    priority: 'stat',
    because: 'cauda equina compression is suspected or not excluded',
    source: read('girft-ces-2023'),
  },
  {
    tests: ['bladder-scan'],
    flags: ['suspected-cauda-equina-syndrome', 'threatened-cauda-equina'],
    tier: 1,
    priority: 'stat',
    because:
      'a residual of 200 mL or more makes cauda equina compression likelier; less does not exclude it; never delay the MRI for it',
    source: read('girft-ces-2023'),
  },
  {
    tests: ['mri-whole-spine'],
    flags: ['suspected-cord-compression', 'suspected-metastatic-cord-compression', 'suspected-spinal-infection'],
    tier: 1,
    priority: 'stat',
    because: 'compression of the cord must be seen or excluded first',
    source: read('nice-ng234'),
  },
  {
    tests: ['mri-whole-spine'],
    flags: ['suspected-spinal-haematoma'],
    when: (facts) => !isOutsideTheCanal(facts),
    tier: 1,
    priority: 'stat',
    because: 'blood in the canal must be seen or excluded first',
    source: recalled('nice-ng234', 'imaging'),
  },
  {
    tests: ['mri-whole-spine'],
    flags: ['suspected-spinal-metastases', 'nitrous-oxide-myeloneuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'cord signs or spinal pain in cancer need imaging of the spine',
    source: read('nice-ng234'),
  },
  {
    tests: ['blood-cultures', 'c-reactive-protein'],
    flags: ['suspected-spinal-infection', 'suspected-meningitis'],
    tier: 1,
    priority: 'stat',
    because: 'infection is suspected',
    source: commonPractice,
  },
  {
    tests: ['ct-abdomen'],
    flags: ['suspected-spinal-haematoma'],
    // Blood there takes the plexus or the femoral nerve; what lies in the cord for certain it did not do.
    when: ({ kindProbability }) => kindProbability('cord', 'cauda-equina') < 0.9,
    tier: 1,
    priority: 'stat',
    because: 'bleeding behind the peritoneum must be excluded',
    source: commonPractice,
  },
  {
    tests: ['vital-capacity', 'respiratory-pressures'],
    flags: [
      'acute-ascending-weakness',
      'neuromuscular-respiratory-failure',
      'threatened-myasthenic-crisis',
      'suspected-botulism',
      'acute-bulbar-weakness',
      'slow-weakness-with-breathlessness',
    ],
    tier: 1,
    priority: 'stat',
    whenUndecided: 'stat',
    because: 'breathing may fail without breathlessness; measure now and repeat',
    source: gbs,
  },
  {
    tests: ['nerve-conduction-study', 'lumbar-puncture', 'electrocardiogram', 'potassium'],
    flags: ['acute-ascending-weakness'],
    tier: 1,
    priority: 'urgent',
    because: 'rapidly progressive symmetrical weakness',
    source: gbs,
  },
  {
    tests: ['hiv-test', 'borrelia-serology', 'lumbar-puncture'],
    flags: ['bilateral-facial-palsy'],
    tier: 2,
    priority: 'urgent',
    because: 'facial palsy on both sides',
    source: recalled('gbs-ten-steps-2019'),
  },
  {
    tests: ['blood-glucose', 'ct-head', 'ct-angiography'],
    flags: ['suspected-stroke'],
    tier: 1,
    priority: 'stat',
    because: 'sudden focal deficit',
    source: read('nice-ng128'),
  },
  {
    tests: ['mri-brain'],
    flags: ['suspected-transient-ischaemic-attack', 'suspected-space-occupying-lesion', 'suspected-encephalitis'],
    tier: 1,
    priority: 'urgent',
    because: 'a lesion of the brain must be seen or excluded',
    source: read('nice-ng127'),
  },
  {
    tests: ['mri-brain', 'csf-viral-pcr'],
    flags: ['suspected-encephalitis'],
    when: ({ beganWithin }) => beganWithin(14) === 'yes',
    tier: 1,
    priority: 'stat',
    because:
      'the temporal lobes on MRI and the PCR of the fluid tell herpes simplex; aciclovir does not wait for either',
    source: recalled('adams-victor', 'herpes simplex encephalitis'),
  },
  {
    tests: ['ct-head'],
    flags: ['thunderclap-headache', 'raised-intracranial-pressure'],
    tier: 1,
    priority: 'stat',
    because: 'bleeding, mass or hydrocephalus must be excluded',
    source: read('nice-ng228'),
  },
  {
    tests: ['ct-angiography'],
    flags: ['compressive-third-nerve-palsy'],
    tier: 1,
    priority: 'stat',
    because: 'an aneurysm or dissection must be excluded',
    source: read('third-nerve-cohort-2017'),
  },
  {
    tests: ['ct-angiography'],
    flags: ['painful-horner-syndrome'],
    when: (facts) => !isOfTheLungApex(facts),
    tier: 1,
    priority: 'stat',
    because: 'a torn artery of the neck must be seen or excluded',
    source: recalled('adams-victor', 'dissection of the carotid artery'),
  },
  {
    tests: ['lumbar-puncture'],
    flags: ['suspected-meningitis', 'suspected-encephalitis'],
    tier: 1,
    priority: 'stat',
    because: 'infection of the meninges or brain is suspected',
    source: read('nice-ng240'),
  },
  {
    tests: ['erythrocyte-sedimentation-rate', 'c-reactive-protein'],
    flags: ['suspected-giant-cell-arteritis'],
    tier: 1,
    priority: 'stat',
    because: 'giant cell arteritis threatens vision',
    source: read('bsr-gca-2020'),
  },
  {
    tests: ['erythrocyte-sedimentation-rate', 'c-reactive-protein'],
    flags: ['acute-visual-loss'],
    when: ({ exam }) => (exam.person.ageYears ?? giantCellsFrom) >= giantCellsFrom,
    tier: 1,
    priority: 'stat',
    because: 'vision that is lost from 50 on may be giant cell arteritis, which threatens the other eye',
    source: read('bsr-gca-2020'),
  },
  {
    tests: ['thiamine'],
    flags: ['suspected-wernicke-encephalopathy'],
    tier: 1,
    priority: 'stat',
    because: 'thiamine deficiency is suspected; treat before the result',
    source: read('caine-1997'),
  },
  {
    tests: ['potassium', 'electrocardiogram', 'creatine-kinase'],
    flags: ['potassium-paralysis', 'rapidly-progressive-weakness'],
    tier: 1,
    priority: 'stat',
    because: 'rapid weakness may come from potassium',
    source: read('nice-ng127'),
  },
  {
    tests: ['renal-function', 'magnesium', 'blood-gas'],
    flags: ['potassium-paralysis'],
    tier: 1,
    priority: 'stat',
    because:
      'kidneys that fail, acid or lack of magnesium may have moved the potassium, and decide how it is put right',
    source: fromMemory,
  },
  {
    tests: ['homocysteine', 'methylmalonic-acid', 'vitamin-b12'],
    flags: ['nitrous-oxide-myeloneuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'nitrous oxide inactivates vitamin B12; the total level may be normal',
    source: read('nice-ng239'),
  },
  {
    tests: ['electroencephalogram', 'blood-glucose'],
    flags: ['status-epilepticus'],
    tier: 1,
    priority: 'stat',
    because: 'ongoing seizure',
    source: read('nice-ng217'),
  },
  {
    tests: ['vital-capacity'],
    flags: ['slow-weakness-with-swallowing-trouble'],
    tier: 1,
    priority: 'urgent',
    because: 'weak breathing often goes with weak swallowing',
    source: read('nice-ng127', 'limb or neck weakness with swallowing impairment'),
  },
  {
    tests: ['creatine-kinase', 'nerve-conduction-study', 'electromyography'],
    flags: ['slow-weakness-with-swallowing-trouble', 'slow-weakness-with-breathlessness'],
    tier: 1,
    priority: 'urgent',
    because:
      'muscle enzyme, conduction and needle part muscle, junction, nerve and motor neuron where limbs and throat fail',
    source: commonPractice,
  },
  {
    tests: ['creatine-kinase', 'electrocardiogram', 'acetylcholine-receptor-antibody'],
    flags: [
      'threatened-myasthenic-crisis',
      'neuromuscular-respiratory-failure',
      'acute-bulbar-weakness',
      'rapidly-progressive-weakness',
      'slow-weakness-with-swallowing-trouble',
      'slow-weakness-with-breathlessness',
    ],
    causes: ['checkpoint-inhibitor-myositis-or-myasthenia'],
    when: ({ told }) => told('immune-checkpoint-inhibitor').length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'under a checkpoint inhibitor muscle, heart and junction are inflamed together',
    source: commonPractice,
  },
  {
    tests: ['mri-brain'],
    flags: ['child-with-progressive-deficit'],
    when: ({ cranialNerveSigns, told, brainProbability }) =>
      brainProbability >= 0.3 ||
      cranialNerveSigns.length > 0 ||
      told('headache', 'morning-headache', 'new-headache', 'vomiting', 'unsteadiness', 'seizure', 'speech-difficulty')
        .length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'a tumour or hydrocephalus of a child must be seen or excluded',
    source: read('nice-ng127', 'children: limb weakness, unsteadiness, head'),
  },
  {
    tests: ['mri-whole-spine'],
    flags: ['child-with-progressive-deficit'],
    when: ({ bothLegsWeak, sphincterFailure, upperMotorSignsInLegs, told, cranialNerveSigns }) =>
      cranialNerveSigns.length === 0 &&
      (sphincterFailure.length > 0 ||
        ((bothLegsWeak || upperMotorSignsInLegs.length > 0) && told('back-pain', 'night-spinal-pain').length > 0)),
    tier: 1,
    priority: 'urgent',
    because: 'a cord that is pressed or tethered must be seen or excluded',
    source: read('nice-ng127', 'children: limb weakness, unsteadiness, head'),
  },
  {
    tests: ['blood-glucose', 'calcium', 'blood-cultures', 'c-reactive-protein'],
    flags: ['newborn-with-neurological-signs'],
    tier: 1,
    priority: 'stat',
    because: 'low glucose, low calcium and infection are what harms a newborn most and is treated first',
    source: commonPractice,
  },
  {
    tests: ['limb-radiograph'],
    flags: ['newborn-with-neurological-signs'],
    when: ({ weakLimbs }) => new Set(weakLimbs.map(({ side, item }) => `${item.region} ${side}`)).size === 1,
    tier: 1,
    priority: 'urgent',
    because: 'a newborn does not move a limb whose bone is broken or infected',
    source: commonPractice,
  },
  {
    tests: ['mri-whole-spine'],
    flags: ['high-cord-lesion-with-breathing-at-risk'],
    tier: 1,
    priority: 'stat',
    because: 'compression of the upper cord must be seen or excluded first',
    source: commonPractice,
  },
  {
    tests: ['electrocardiogram'],
    flags: ['autonomic-instability-in-neuropathy'],
    tier: 1,
    priority: 'stat',
    because: 'the heart rhythm may fail',
    source: gbs,
  },
  {
    tests: ['bladder-scan'],
    flags: ['autonomic-dysreflexia'],
    tier: 1,
    priority: 'stat',
    because: 'a full bladder is the commonest trigger',
    source: read('autonomic-dysreflexia-2005'),
  },
  {
    tests: ['blood-glucose', 'electrocardiogram', 'carotid-ultrasound'],
    flags: ['suspected-transient-ischaemic-attack'],
    tier: 1,
    priority: 'urgent',
    because: 'a low glucose imitates it, and an artery or a heart rhythm that can be treated causes it',
    source: recalled('nice-ng128', 'transient ischaemic attack: carotid imaging'),
  },
  {
    tests: ['autoimmune-encephalitis-antibodies'],
    flags: ['suspected-encephalitis'],
    when: ({ told, query }) =>
      told('behaviour-change').length > 0 ||
      query.abnormal(['higher-function/hallucinations', 'higher-function/mutism', 'higher-function/amnesia']).length >
        0,
    tier: 1,
    priority: 'urgent',
    because: 'behaviour, silence or memory that lead speak for antibodies',
    source: recalled('autoimmune-encephalitis-2016'),
  },
  {
    tests: ['csf-tuberculosis-and-fungi'],
    flags: ['suspected-meningitis', 'suspected-encephalitis'],
    when: mayBeSlowGerms,
    tier: 1,
    priority: 'stat',
    because: 'more than a week of it, or no defence: tubercle and cryptococcus are looked for in the same fluid',
    source: recalled('adams-victor', 'chronic meningitis'),
  },
  {
    tests: ['thyroid-stimulating-hormone'],
    flags: [
      'unexplained-fall-in-consciousness',
      'suspected-encephalitis',
      'suspected-meningitis',
      'drug-induced-hyperthermia-with-rigidity',
    ],
    when: mayBeAThyroidStorm,
    tier: 1,
    priority: 'stat',
    because: 'fever, a racing heart and a clouded mind after weeks of wasting, sweats or tremor: a thyroid storm',
    source: recalled('adams-victor', 'thyrotoxic encephalopathy'),
  },
  {
    tests: ['blood-cultures', 'echocardiogram'],
    flags: ['suspected-stroke', 'suspected-transient-ischaemic-attack'],
    // A fever that came over days with the deficit is of an inflamed brain; that of a valve goes before a blow.
    when: (facts) =>
      (trueFever(facts).length > 0 && (facts.exam.onset.pace === 'hyperacute' || ofAValve(facts) > 0)) ||
      ofAValve(facts) > 1,
    tier: 1,
    priority: 'stat',
    because: 'a stroke with fever comes from an infected valve until the cultures are clear',
    source: recalled('adams-victor', 'septic embolism'),
  },
  {
    tests: ['hiv-test'],
    flags: ['suspected-encephalitis', 'suspected-meningitis'],
    when: ({ told }) => told('hiv-infection').length === 0,
    tier: 1,
    priority: 'urgent',
    because: 'who has an inflamed brain or meninges is tested for HIV, whatever the risk',
    source: commonPractice,
  },
  {
    tests: ['toxoplasma-serology'],
    flags: ['suspected-encephalitis', 'suspected-space-occupying-lesion'],
    when: ({ told }) => told('hiv-infection').length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'toxoplasmosis is the commonest mass of the brain without defence and is treated first',
    source: recalled('adams-victor', 'toxoplasmosis in human immunodeficiency virus infection'),
  },
  {
    tests: ['mri-cervical-spine'],
    flags: ['progressive-cord-signs'],
    when: isSlowlyCervical,
    tier: 1,
    priority: 'urgent',
    because: 'the arms are affected too: the neck part of the cord must be seen',
    source: read('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    tests: ['mri-whole-spine'],
    flags: ['progressive-cord-signs'],
    when: (facts) => !isSlowlyCervical(facts),
    tier: 1,
    priority: 'urgent',
    because: 'cord signs that grow need imaging of the spine',
    source: read('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    tests: ['electrocardiogram'],
    flags: ['first-seizure'],
    tier: 1,
    priority: 'urgent',
    because: 'a disturbance of the heart rhythm may look like a seizure',
    source: recalled('nice-ng217', 'diagnosis: electrocardiogram'),
  },
  {
    tests: ['blood-glucose', 'sodium'],
    flags: ['first-seizure'],
    tier: 1,
    priority: 'urgent',
    because: 'a seizure may come from a low glucose or sodium',
    source: read('first-seizure-aan-2007', 'abstract: by the circumstances, sodium above all'),
  },
  {
    tests: ['electroencephalogram', 'mri-brain'],
    flags: ['first-seizure'],
    tier: 1,
    priority: 'urgent',
    because: 'after a first seizure the trace is abnormal in about a quarter and the image in a tenth',
    source: read('first-seizure-aan-2007', 'abstract: level B for both'),
  },
  {
    tests: ['renal-function', 'liver-function', 'cortisol'],
    flags: ['hypoglycaemia-with-deficit'],
    tier: 1,
    priority: 'urgent',
    because: 'beside medicines the glucose falls in failure of kidney or liver and for want of cortisol',
    source: recalled('hypoglycaemia-endocrine-2009', 'the ill or medicated individual'),
  },
  {
    tests: ['osmolality', 'renal-function', 'cortisol'],
    flags: ['dangerous-sodium-or-calcium'],
    when: (facts) => dangerousSalt(facts, 'sodium').length > 0,
    tier: 1,
    priority: 'stat',
    because: 'osmolality and sodium of the urine tell why the sodium is off and how fast it may be mended',
    source: recalled('hyponatraemia-2014', 'differential diagnosis'),
  },
  {
    // The flag was raised by cramped hands and nerves that answer a tap, before anybody has measured.
    tests: ['calcium', 'magnesium', 'electrocardiogram', 'blood-gas'],
    flags: ['dangerous-sodium-or-calcium'],
    when: (facts) =>
      (['sodium', 'calcium', 'ionised-calcium'] as const).every((salt) => dangerousSalt(facts, salt).length === 0),
    tier: 1,
    priority: 'stat',
    because: 'tetany is low calcium, low magnesium or a blood made alkaline by breathing, and each is mended otherwise',
    source: recalled('hypocalcaemia-2016', 'investigations'),
  },
  {
    tests: ['electrocardiogram'],
    flags: ['dangerous-sodium-or-calcium'],
    when: (facts) => dangerousSalt(facts, 'calcium').length > 0,
    tier: 1,
    priority: 'stat',
    because: 'calcium changes the QT interval and endangers the heart rhythm',
    source: read('hypercalcaemia-2016', 'clinical features'),
  },
  {
    tests: ['parathyroid-hormone', 'magnesium', 'renal-function'],
    flags: ['dangerous-sodium-or-calcium'],
    when: (facts) => dangerousSalt(facts, 'calcium').length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'parathyroid hormone, magnesium and the kidney tell why the calcium is off',
    source: recalled('hypocalcaemia-2016', 'investigations'),
  },
  {
    tests: ['blood-gas', 'electrocardiogram', 'blood-glucose'],
    flags: ['suspected-poisoning'],
    tier: 1,
    priority: 'stat',
    because: 'gases with carboxyhaemoglobin, heart rhythm and glucose show what kills first in a poisoning',
    source: commonPractice,
  },
  {
    tests: ['osmolality'],
    flags: ['suspected-poisoning'],
    when: ({ told, query }) =>
      query.result('osmolal-gap') === undefined &&
      told('toxic-alcohol', 'alcohol-excess', 'organic-solvents', 'visual-loss').length > 0,
    tier: 1,
    priority: 'stat',
    because: 'the gap between measured and reckoned osmolality tells of methanol or glycol before any level is back',
    source: fromMemory,
  },
  {
    tests: ['cholinesterase'],
    flags: ['suspected-poisoning'],
    when: ({ told, query }) => told('organophosphate').length > 0 || query.hasAbnormal('cranial-nerves/small-pupil'),
    tier: 1,
    priority: 'urgent',
    because: 'low cholinesterase confirms an organophosphate; atropine does not wait for it',
    source: recalled('adams-victor', 'organophosphates'),
  },
  {
    tests: ['heavy-metals'],
    flags: ['suspected-poisoning'],
    when: ({ told }) => told('lead', 'arsenic', 'thallium', 'other-heavy-metal', 'hair-loss').length > 0,
    tier: 1,
    priority: 'urgent',
    because: 'a metal is found in blood or urine before it is treated by chelation',
    source: recalled('adams-victor', 'neuropathies of metals'),
  },
  {
    tests: ['limb-angiography'],
    flags: ['acute-limb-ischaemia'],
    tier: 1,
    priority: 'stat',
    because: 'CT angiography shows where the artery is shut, where it does not delay the surgeon',
    source: recalled('limb-ischaemia-esvs-2020', 'diagnostic imaging'),
  },
  {
    tests: ['electrocardiogram', 'creatine-kinase', 'potassium'],
    flags: ['acute-limb-ischaemia'],
    tier: 1,
    priority: 'stat',
    because: 'the clot may come from the heart, and dying muscle gives off creatine kinase and potassium',
    source: commonPractice,
  },
  {
    tests: ['audiogram', 'mri-inner-ear'],
    flags: ['sudden-hearing-loss'],
    tier: 1,
    priority: 'urgent',
    because: 'an audiogram shows that the inner ear is deaf, and MRI that no schwannoma made it so',
    source: recalled('sudden-hearing-loss-2019'),
  },
  {
    tests: ['ct-temporal-bone', 'mri-brain', 'erythrocyte-sedimentation-rate', 'c-reactive-protein', 'blood-glucose'],
    flags: ['necrotising-otitis'],
    tier: 1,
    priority: 'urgent',
    because:
      'CT shows eaten bone, MRI the spread along the base of the skull, and the sedimentation rate follows the cure',
    source: fromMemory,
  },
  {
    tests: ['mri-cervical-spine', 'ct-chest', 'urine-catecholamines'],
    flags: ['infant-horner-syndrome'],
    tier: 1,
    priority: 'urgent',
    because: 'a neuroblastoma of neck or chest gives off catecholamines and shows on an image of both',
    source: recalled('adams-victor', 'neuroblastoma'),
  },
];

/** How much is told of a heart or blood that throws infected clots. */
function ofAValve({ told }: BedsideFacts): number {
  return told('valve-disease-or-endocarditis', 'recent-bacteraemia', 'injecting-drug-use').length;
}

/** What hides in the meninges for weeks: fever, headache or a stiff neck that has lasted more than a week, or in somebody without defence. */
function mayBeSlowGerms(facts: BedsideFacts): boolean {
  const ofTheMeninges =
    trueFever(facts).length > 0 ||
    facts.told('headache', 'new-headache', 'morning-headache', 'night-sweats').length > 0 ||
    facts.query.hasAbnormal('special-tests/neck-stiffness');
  const { pace } = facts.exam.onset;
  const isSlow = facts.beganWithin(7) === 'no' || pace === 'subacute' || pace === 'chronic';
  const defenceless = facts.told(...['hiv-infection', 'immunosuppression', 'stem-cell-transplant', 'tuberculosis']);
  return ofTheMeninges && (isSlow || defenceless.length > 0);
}

/** Heat and a racing heart with what an overactive thyroid does in the weeks before, or in one who is known to have it. */
function mayBeAThyroidStorm(facts: BedsideFacts): boolean {
  const heart =
    facts.query.hasAbnormal('autonomic/resting-tachycardia') || facts.query.hasAbnormal('autonomic/arrhythmia');
  const signs = [
    ...facts.told('weight-loss', 'altered-sweating', 'tremor', 'hair-loss'),
    ...facts.query.abnormal(['inspection/proptosis', 'cranial-nerves/lid-retraction', 'cranial-nerves/lid-lag']),
  ];
  const isKnown = facts.told('hyperthyroidism', 'antithyroid-drug').length > 0;
  // What came within days of a drug that blocks dopamine is the drug's.
  const isOfDays = facts.beganWithin(7) === 'yes' && facts.told('antipsychotic', 'metoclopramide').length > 0;
  return isKnown || (heart && trueFever(facts).length > 0 && signs.length >= 2 && !isOfDays);
}

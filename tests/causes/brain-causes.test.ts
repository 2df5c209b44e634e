import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

interface Told {
  readonly symptoms?: readonly string[];
  readonly conditions?: readonly string[];
  readonly exposures?: readonly string[];
  readonly medications?: readonly string[];
  readonly family?: readonly string[];
  /** Symptoms that are denied. */
  readonly denied?: readonly string[];
}

interface Story extends Told {
  readonly age: number;
  readonly sex: 'male' | 'female';
  readonly pace: 'hyperacute' | 'acute' | 'subacute' | 'chronic';
  readonly days: number;
  readonly course?: string;
  readonly at: readonly [site: string, kind: SiteKind];
  /** Signs, each `section/sign` as the request spells the section. */
  readonly signs?: readonly string[];
  readonly results?: readonly unknown[];
  readonly first: readonly string[];
}

const quantity = (key: string, value: number, unit: string) => ({
  key,
  valueQuantity: { value, unit, system: 'http://unitsofmeasure.org', code: unit },
});
const result = (key: string, value: string) => ({ key, value });
const present = (keys: readonly string[] = []) => keys.map((key) => ({ key, present: true }));

function causesOf(story: Story): readonly string[] {
  const findings: Record<string, unknown[]> = {};
  for (const id of story.signs ?? []) {
    const [section = '', sign, side] = id.split('/');
    // A sign that has sides is written `section/sign/side`.
    findings[section] = [
      ...(findings[section] ?? []),
      { sign, present: true, ...(side === undefined ? {} : { side }) },
    ];
  }
  const exam = bedsideExam({
    person: { ageYears: story.age, sex: story.sex },
    history: {
      onset: { pace: story.pace, durationDays: story.days },
      ...(story.course === undefined ? {} : { course: story.course }),
      symptoms: [...present(story.symptoms), ...(story.denied ?? []).map((key) => ({ key, present: false }))],
      conditions: present(story.conditions),
      exposures: present(story.exposures),
      medications: present(story.medications),
      family: (story.family ?? []).map((key) => ({ key, present: true, relation: 'parent' })),
    },
    findings,
    results: story.results ?? [],
  });
  return rankCauses(exam, localised(site(...story.at))).map((cause) => cause.key);
}

// Each story is the picture that the work beside it describes, told as a whole.
const stories: Readonly<Record<string, Story>> = {
  // NICE NG128: sudden deficit with atrial fibrillation, nothing that mimics.
  'ischaemic stroke': {
    age: 74,
    sex: 'male',
    pace: 'hyperacute',
    days: 1,
    conditions: ['atrial-fibrillation', 'hypertension'],
    denied: ['headache', 'seizure'],
    at: ['cortex-middle-cerebral', 'hemisphere'],
    first: ['ischaemic-stroke'],
  },
  // NICE NG128: headache, vomiting and anticoagulation do not tell haemorrhage from infarct; the scan does.
  'intracerebral haemorrhage': {
    age: 68,
    sex: 'male',
    pace: 'hyperacute',
    days: 1,
    symptoms: ['headache', 'vomiting'],
    conditions: ['hypertension'],
    medications: ['anticoagulant'],
    results: [result('ct-head', 'haemorrhage')],
    at: ['thalamus-and-capsule', 'hemisphere'],
    first: ['intracerebral-haemorrhage'],
  },
  // Keser 2022: pain of head or neck in 65 to 95 %, under 50 years.
  'dissection of a vertebral artery': {
    age: 38,
    sex: 'male',
    pace: 'acute',
    days: 3,
    symptoms: ['neck-pain', 'headache', 'vertigo'],
    exposures: ['neck-trauma'],
    at: ['medulla-lateral', 'brainstem'],
    first: ['cervical-artery-dissection-stroke'],
  },
  // NICE NG128: a sudden deficit that has gone.
  'transient ischaemic attack': {
    age: 71,
    sex: 'female',
    pace: 'hyperacute',
    days: 1,
    course: 'improving',
    symptoms: ['resolved-deficit', 'arm-weakness', 'slurred-speech'],
    conditions: ['hypertension'],
    denied: ['loss-of-consciousness', 'headache'],
    at: ['no-lesion', 'none'],
    first: ['transient-ischaemic-attack'],
  },
  // Bousser and Crassard 2012: women, contraceptives; Adams and Victor: headache, seizures, swollen discs.
  'cerebral venous thrombosis': {
    age: 27,
    sex: 'female',
    pace: 'acute',
    days: 6,
    symptoms: ['new-headache', 'seizure'],
    medications: ['hormonal-contraceptive'],
    signs: ['cranialNerves/optic-disc-swelling/both'],
    at: ['cortex-parasagittal', 'hemisphere'],
    first: ['cerebral-venous-thrombosis'],
  },
  // Adhiyaman 2002: old age, falls, antithrombotic treatment, altered mind.
  'subdural haematoma': {
    age: 82,
    sex: 'male',
    pace: 'subacute',
    days: 21,
    course: 'progressive',
    symptoms: ['falls', 'headache', 'fluctuating-symptoms'],
    conditions: ['head-injury'],
    medications: ['anticoagulant'],
    signs: ['higherFunction/confusion', 'higherFunction/drowsiness'],
    at: ['cortex-middle-cerebral', 'hemisphere'],
    first: ['subdural-haematoma'],
  },
  // Adams and Victor, intracranial neoplasms: slow, seizures, worse in the morning.
  'brain tumour': {
    age: 58,
    sex: 'male',
    pace: 'subacute',
    days: 60,
    course: 'progressive',
    symptoms: ['morning-headache', 'seizure'],
    at: ['cortex-frontal', 'hemisphere'],
    first: ['brain-tumour'],
  },
  // Adams and Victor: fever, source of infection, raised C-reactive protein, ring.
  'brain abscess': {
    age: 45,
    sex: 'male',
    pace: 'acute',
    days: 8,
    course: 'progressive',
    symptoms: ['fever', 'headache', 'ear-pain'],
    results: [quantity('crp', 90, 'mg/L'), result('mri-brain', 'ring-enhancing')],
    at: ['cortex-temporal', 'hemisphere'],
    first: ['brain-abscess'],
  },
  // Brazis, parasagittal syndromes: spastic legs without a spinal cause, in a middle-aged woman.
  'parasagittal meningioma': {
    age: 62,
    sex: 'female',
    pace: 'chronic',
    days: 500,
    course: 'progressive',
    symptoms: ['leg-weakness', 'seizure'],
    at: ['cortex-parasagittal', 'hemisphere'],
    first: ['parasagittal-lesion'],
  },
  // Solomon 2012: fever, behaviour, seizures, cells in the fluid.
  'herpes simplex encephalitis': {
    age: 54,
    sex: 'male',
    pace: 'acute',
    days: 4,
    course: 'progressive',
    symptoms: ['fever', 'headache', 'behaviour-change', 'seizure'],
    signs: ['higherFunction/confusion', 'higherFunction/memory-impairment'],
    results: [quantity('csf-white-cells', 80, '10*6/L')],
    at: ['cortex-temporal', 'hemisphere'],
    first: ['herpes-simplex-encephalitis'],
  },
  // Graus 2016: under three months, memory or psychiatric symptoms with seizures or movements; low sodium with LGI1.
  'autoimmune encephalitis': {
    age: 63,
    sex: 'male',
    pace: 'subacute',
    days: 40,
    course: 'progressive',
    symptoms: ['cognitive-change', 'behaviour-change', 'seizure'],
    denied: ['fever'],
    signs: ['higherFunction/memory-impairment'],
    results: [quantity('sodium', 128, 'mmol/L')],
    at: ['cortex-temporal', 'hemisphere'],
    first: ['autoimmune-encephalitis'],
  },
  // Berger 2013: weeks, natalizumab, no fever, disease of the white matter.
  'progressive multifocal leukoencephalopathy': {
    age: 44,
    sex: 'female',
    pace: 'subacute',
    days: 30,
    course: 'progressive',
    conditions: ['multiple-sclerosis'],
    medications: ['natalizumab'],
    denied: ['fever', 'headache'],
    results: [result('mri-brain', 'white-matter-disease')],
    at: ['optic-radiation-parietal', 'visual-pathway'],
    first: ['progressive-multifocal-leukoencephalopathy'],
  },
  // Adams and Victor: HIV infection, fever, ring-enhancing lesion of the basal ganglia.
  'cerebral toxoplasmosis': {
    age: 36,
    sex: 'male',
    pace: 'subacute',
    days: 14,
    course: 'progressive',
    symptoms: ['headache', 'fever'],
    conditions: ['hiv-infection'],
    results: [result('mri-brain', 'ring-enhancing')],
    at: ['striatum', 'hemisphere'],
    first: ['cerebral-toxoplasmosis'],
  },
  // BMC Neurol 2021, s12883-021-02143-6: seizures in half, a hypertensive crisis in 46 %; here in eclampsia.
  'posterior reversible encephalopathy': {
    age: 29,
    sex: 'female',
    pace: 'hyperacute',
    days: 1,
    symptoms: ['seizure', 'headache', 'visual-loss'],
    conditions: ['pregnancy', 'hypertension'],
    signs: ['higherFunction/confusion'],
    results: [quantity('systolic-pressure-supine', 190, 'mm[Hg]')],
    at: ['cortex-occipital', 'hemisphere'],
    first: ['posterior-reversible-encephalopathy'],
  },
  // Singh 2014: low sodium corrected fast in a drinker.
  'osmotic demyelination': {
    age: 47,
    sex: 'female',
    pace: 'acute',
    days: 4,
    conditions: ['rapid-sodium-correction'],
    exposures: ['alcohol-excess'],
    at: ['pons-ventral', 'brainstem'],
    first: ['osmotic-demyelination'],
  },
  // Caine 1997: alcohol, poor diet, eyes, gait, mind.
  'Wernicke encephalopathy': {
    age: 50,
    sex: 'male',
    pace: 'acute',
    days: 5,
    symptoms: ['unsteadiness', 'weight-loss'],
    exposures: ['alcohol-excess'],
    signs: ['cranialNerves/ophthalmoplegia', 'higherFunction/confusion', 'gait/ataxic'],
    at: ['brainstem-diffuse', 'brainstem'],
    first: ['wernicke-encephalopathy'],
  },
  // AASLD/EASL 2014: liver disease, flapping tremor, raised ammonia.
  'hepatic encephalopathy': {
    age: 59,
    sex: 'male',
    pace: 'acute',
    days: 3,
    conditions: ['chronic-liver-disease'],
    signs: ['higherFunction/confusion', 'involuntaryMovements/asterixis'],
    results: [quantity('ammonia', 110, 'umol/L')],
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    first: ['hepatic-encephalopathy'],
  },
  // NICE NG128: exclude hypoglycaemia in every sudden deficit.
  'hypoglycaemia that looks like a stroke': {
    age: 70,
    sex: 'male',
    pace: 'hyperacute',
    days: 1,
    conditions: ['diabetes-mellitus'],
    medications: ['insulin-or-sulfonylurea'],
    results: [quantity('glucose-random', 1.9, 'mmol/L')],
    at: ['internal-capsule', 'hemisphere'],
    first: ['hypoglycaemia', 'ischaemic-stroke'],
  },
  // Rolak 1992: paresis after a seizure that clears within hours.
  'paresis after a seizure': {
    age: 33,
    sex: 'male',
    pace: 'hyperacute',
    days: 1,
    course: 'improving',
    symptoms: ['seizure', 'loss-of-consciousness'],
    conditions: ['epilepsy'],
    at: ['cortex-hand-area', 'hemisphere'],
    first: ['post-ictal-paresis'],
  },
  // NICE NG127: spreads over minutes, before, in a young person with migraine.
  'migraine aura': {
    age: 26,
    sex: 'female',
    pace: 'hyperacute',
    days: 1,
    course: 'improving',
    symptoms: ['spreading-over-minutes', 'similar-attacks-before', 'headache', 'photophobia', 'resolved-deficit'],
    conditions: ['migraine'],
    at: ['no-lesion', 'none'],
    first: ['migraine-aura'],
  },
  // Hodges and Warlow 1990: amnesia alone, under a day, no seizure, no injury.
  'transient global amnesia': {
    age: 64,
    sex: 'female',
    pace: 'hyperacute',
    days: 1,
    course: 'improving',
    symptoms: ['cognitive-change'],
    denied: ['seizure', 'loss-of-consciousness'],
    signs: ['higherFunction/amnesia'],
    at: ['cortex-temporal', 'hemisphere'],
    first: ['transient-global-amnesia'],
  },
  // ESC 2018: faint on standing, orthostatic fall of pressure.
  syncope: {
    age: 66,
    sex: 'male',
    pace: 'hyperacute',
    days: 1,
    symptoms: ['syncope', 'loss-of-consciousness', 'light-headed-on-standing'],
    denied: ['seizure'],
    signs: ['autonomic/orthostatic-hypotension'],
    at: ['no-lesion', 'none'],
    first: ['syncope'],
  },
  // Tests table: rapidly progressive dementia with myoclonus and ataxia, cortical ribboning.
  'Creutzfeldt-Jakob disease': {
    age: 66,
    sex: 'female',
    pace: 'subacute',
    days: 60,
    course: 'progressive',
    symptoms: ['cognitive-change', 'unsteadiness'],
    signs: ['involuntaryMovements/myoclonus', 'gait/ataxic'],
    results: [result('mri-brain', 'cortical-ribboning')],
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    first: ['creutzfeldt-jakob-disease'],
  },
  // McKhann 2011: insidious loss of memory over years.
  'Alzheimer disease': {
    age: 77,
    sex: 'female',
    pace: 'chronic',
    days: 900,
    course: 'progressive',
    symptoms: ['cognitive-change'],
    signs: [
      'higherFunction/memory-impairment',
      'higherFunction/disorientation',
      'higherFunction/constructional-apraxia',
    ],
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    first: ['alzheimer-disease'],
  },
  // Rascovsky 2011: early disinhibition and apathy, memory spared.
  'frontotemporal dementia': {
    age: 58,
    sex: 'male',
    pace: 'chronic',
    days: 800,
    course: 'progressive',
    symptoms: ['behaviour-change'],
    denied: ['headache', 'seizure'],
    signs: ['higherFunction/disinhibition', 'higherFunction/apathy'],
    at: ['cortex-frontal', 'hemisphere'],
    first: ['frontotemporal-dementia'],
  },
  // Milhorat 1999: cough headache, downbeat nystagmus, syrinx.
  'Chiari malformation': {
    age: 32,
    sex: 'female',
    pace: 'chronic',
    days: 700,
    symptoms: ['headache', 'neck-pain', 'oscillopsia'],
    signs: ['cranialNerves/downbeat-nystagmus'],
    at: ['foramen-magnum', 'brainstem'],
    first: ['chiari-malformation'],
  },
  // Adams and Victor: rheumatoid arthritis with pain at the back of the head.
  'atlantoaxial instability': {
    age: 64,
    sex: 'female',
    pace: 'subacute',
    days: 60,
    course: 'progressive',
    symptoms: ['neck-pain', 'electric-shock-on-neck-flexion'],
    conditions: ['rheumatoid-arthritis'],
    at: ['foramen-magnum', 'brainstem'],
    first: ['atlantoaxial-instability'],
  },
  // J Clin Neurol 2019, PMC6785476: the upper brainstem, headache in 46 %; with ulcers of mouth and genitals in a young man with a lesion of the upper brainstem.
  'Behçet disease': {
    age: 31,
    sex: 'male',
    pace: 'acute',
    days: 10,
    symptoms: ['headache', 'oral-or-genital-ulcers', 'joint-pain'],
    at: ['midbrain-tegmentum', 'brainstem'],
    first: ['neuro-behcet'],
  },
  // Inouye 2014: an infection brings an old person with dementia into delirium.
  'delirium of infection': {
    age: 86,
    sex: 'female',
    pace: 'acute',
    days: 2,
    symptoms: ['fever'],
    conditions: ['dementia'],
    signs: ['higherFunction/inattention', 'higherFunction/fluctuating-consciousness'],
    results: [quantity('crp', 140, 'mg/L')],
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    first: ['septic-encephalopathy'],
  },
  // Hirano and Pavlakis 1994: stroke-like episode before 40, seizures, deafness, raised lactate.
  MELAS: {
    age: 22,
    sex: 'female',
    pace: 'acute',
    days: 4,
    symptoms: ['seizure', 'headache', 'hearing-loss', 'vomiting'],
    conditions: ['diabetes-mellitus'],
    results: [quantity('lactate', 4.5, 'mmol/L')],
    at: ['cortex-occipital', 'hemisphere'],
    first: ['melas'],
  },
};

describe('causes of disease of the brain', () => {
  it.each(Object.entries(stories))('%s', (_, story) => {
    const causes = causesOf(story);
    for (const key of story.first) expect(causes.slice(0, story.first.length)).toContain(key);
  });
});

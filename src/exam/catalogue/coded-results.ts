import { commonPractice, recalled } from '../../kernel/cite.ts';
import type { Grade } from '../scales.ts';
import { type CodedResult, loinc } from './result-row.ts';

type CodedEntry = Omit<CodedResult, 'key' | 'kind' | 'source' | 'loinc'> &
  Partial<Pick<CodedResult, 'source' | 'loinc'>>;

const grades = (labels: Readonly<Record<string, string>>): readonly Grade[] =>
  Object.entries(labels).map(([key, label]) => ({ key, label }));

const serology = {
  values: grades({ negative: 'Negative', positive: 'Positive', equivocal: 'Equivocal' }),
  normal: ['negative'],
};

const imaging = (labels: Readonly<Record<string, string>>) => ({
  values: grades({
    normal: 'Normal',
    incidental: 'Changes that do not explain the deficit',
    ...labels,
    other: 'Other abnormality',
  }),
  normal: ['normal', 'incidental'],
});

const spine = imaging({
  'cord-compression': 'Compression of the cord',
  'cord-lesion-short': 'Lesion within the cord, under three segments',
  'cord-lesion-long': 'Lesion within the cord, three segments or more',
  'dorsal-column-signal': 'Signal change of the dorsal columns',
  'root-compression': 'Compression of a root',
  'canal-stenosis': 'Narrow canal without compression of the cord',
  metastasis: 'Metastasis',
  'infection-or-abscess': 'Infection or abscess',
  haematoma: 'Haematoma',
  syrinx: 'Syrinx',
  'root-enhancement': 'Enhancing roots or meninges',
});

const entries: Readonly<Record<string, CodedEntry>> = {
  // Neurophysiology
  'nerve-conduction-pattern': {
    label: 'Nerve conduction, pattern',
    loinc: [loinc('29755-6', 'Nerve conduction study')],
    values: grades({
      normal: 'Normal',
      axonal: 'Axonal',
      'demyelinating-uniform': 'Demyelinating, uniform slowing',
      'demyelinating-non-uniform': 'Demyelinating, non-uniform, with or without conduction block',
      mixed: 'Mixed axonal and demyelinating',
      'motor-conduction-block': 'Motor conduction block away from sites of entrapment',
      'focal-entrapment': 'Focal slowing or block at a site of entrapment',
      'multifocal-axonal': 'Multifocal axonal loss',
      'sensory-only': 'Loss of sensory responses alone',
      'motor-only-axonal': 'Loss of motor responses alone',
      'preserved-sensory': 'Normal sensory responses in the numb area',
    }),
    normal: ['normal'],
    source: recalled('preston-shapiro', 'patterns of nerve conduction'),
  },
  'nerve-conduction-site': {
    label: 'Nerve conduction, site of focal slowing or block',
    values: grades({
      none: 'No focal abnormality',
      'median-wrist': 'Median nerve at the wrist',
      'ulnar-elbow': 'Ulnar nerve at the elbow',
      'ulnar-wrist': 'Ulnar nerve at the wrist',
      'radial-spiral-groove': 'Radial nerve at the spiral groove',
      'fibular-neck': 'Fibular nerve at the fibular neck',
      'tarsal-tunnel': 'Tibial nerve at the tarsal tunnel',
      'several-entrapments': 'Several sites of entrapment',
    }),
    normal: ['none'],
    source: recalled('preston-shapiro', 'entrapment neuropathies'),
  },
  'needle-emg': {
    label: 'Needle electromyography',
    loinc: [loinc('18749-2', 'Electromyogram study')],
    values: grades({
      normal: 'Normal',
      'denervation-length-dependent': 'Denervation, distal and symmetrical',
      'denervation-single-root': 'Denervation in one root, with paraspinal muscles',
      'denervation-plexus': 'Denervation in a plexus, paraspinal muscles spared',
      'denervation-single-nerve': 'Denervation in one nerve',
      'denervation-widespread': 'Active and chronic denervation in several regions',
      myopathic: 'Myopathic units',
      'myopathic-irritable': 'Myopathic units with fibrillation',
      'myotonic-discharges': 'Myotonic discharges',
      'myokymic-discharges': 'Myokymic discharges',
    }),
    normal: ['normal'],
    source: recalled('preston-shapiro', 'needle examination'),
  },
  'repetitive-stimulation': {
    label: 'Repetitive nerve stimulation',
    values: grades({
      normal: 'Normal',
      decrement: 'Decrement at low rate',
      increment: 'Increment after exercise or at high rate',
    }),
    normal: ['normal'],
    source: recalled('lems-titulaer-2011', 'electrophysiology'),
  },
  'single-fibre-emg': {
    label: 'Single-fibre electromyography',
    values: grades({ normal: 'Normal', 'increased-jitter': 'Increased jitter' }),
    normal: ['normal'],
    source: recalled('preston-shapiro', 'single-fibre electromyography'),
  },
  'somatosensory-evoked-potentials': {
    label: 'Somatosensory evoked potentials',
    values: grades({ normal: 'Normal', 'peripheral-delay': 'Peripheral delay', 'central-delay': 'Central delay' }),
    normal: ['normal'],
  },
  'visual-evoked-potentials': {
    label: 'Visual evoked potentials',
    values: grades({ normal: 'Normal', delayed: 'Delayed', absent: 'Absent' }),
    normal: ['normal'],
  },
  eeg: {
    label: 'Electroencephalogram',
    loinc: [loinc('11523-8', 'EEG study')],
    values: grades({
      normal: 'Normal',
      epileptiform: 'Epileptiform',
      slowing: 'Slowing',
      'status-epilepticus': 'Status epilepticus',
    }),
    normal: ['normal'],
  },
  ecg: {
    label: 'Electrocardiogram',
    loinc: [loinc('11524-6', 'EKG study')],
    values: grades({
      normal: 'Normal',
      'atrial-fibrillation': 'Atrial fibrillation',
      'conduction-disease': 'Conduction disease',
      other: 'Other abnormality',
    }),
    normal: ['normal'],
  },

  // Imaging
  'mri-cervical-spine': {
    label: 'MRI of the cervical spine',
    loinc: [
      loinc('24935-9', 'MR Cervical spine'),
      loinc('30667-0', 'MR Cervical spine WO contrast'),
      loinc('24937-5', 'MR Cervical spine WO and W contrast IV'),
      loinc('24938-3', 'MR Cervical spine W contrast IV'),
    ],
    ...spine,
  },
  'mri-thoracic-spine': {
    label: 'MRI of the thoracic spine',
    loinc: [
      loinc('24980-5', 'MR Thoracic spine'),
      loinc('36532-0', 'MR Thoracic spine WO contrast'),
      loinc('24981-3', 'MR Thoracic spine WO and W contrast IV'),
    ],
    ...spine,
  },
  'mri-lumbar-spine': {
    label: 'MRI of the lumbar spine',
    loinc: [
      loinc('24968-0', 'MR Lumbar spine'),
      loinc('30679-5', 'MR Lumbar spine WO contrast'),
      loinc('24967-2', 'MR Lumbar spine WO and W contrast IV'),
    ],
    ...imaging({
      'cauda-equina-compression': 'Compression of the cauda equina',
      'conus-lesion': 'Lesion of the conus',
      'root-compression': 'Compression of a root',
      'canal-stenosis': 'Narrow canal',
      metastasis: 'Metastasis',
      'infection-or-abscess': 'Infection or abscess',
      haematoma: 'Haematoma',
      'root-enhancement': 'Enhancing roots',
    }),
  },
  'mri-whole-spine': {
    label: 'MRI of the whole spine',
    loinc: [
      loinc('42698-1', 'MR Cervical and thoracic and lumbar spine'),
      loinc('30854-4', 'MR Cervical and thoracic and lumbar spine WO contrast'),
      loinc('30855-1', 'MR Cervical and thoracic and lumbar spine WO and W contrast IV'),
      loinc('36067-7', 'MR Spine'),
    ],
    ...spine,
  },
  'mri-brain': {
    label: 'MRI of the brain',
    loinc: [
      loinc('24590-2', 'MR Brain'),
      loinc('30657-1', 'MR Brain WO contrast'),
      loinc('24587-8', 'MR Brain WO and W contrast IV'),
    ],
    ...imaging({
      infarct: 'Infarct',
      haemorrhage: 'Haemorrhage',
      'demyelinating-lesions': 'Lesions typical of demyelination',
      'space-occupying': 'Space-occupying lesion',
      'small-vessel-disease': 'Small-vessel disease',
      'cerebellar-atrophy': 'Cerebellar atrophy',
      'cortical-atrophy': 'Cortical atrophy',
      'wernicke-signal': 'Signal change around third ventricle and aqueduct',
      encephalitis: 'Changes of encephalitis',
      hydrocephalus: 'Hydrocephalus',
      'meningeal-enhancement': 'Enhancing meninges',
      'venous-thrombosis': 'Venous thrombosis',
      'ring-enhancing': 'Ring-enhancing lesion',
      'cavernous-malformation': 'Cavernous malformation',
      microbleeds: 'Lobar microbleeds or superficial siderosis',
      'posterior-oedema': 'Oedema of the white matter, mostly posterior',
      'pontine-signal': 'Signal change of the central pons',
      'cortical-ribboning': 'Restricted diffusion of cortex or striatum',
      'white-matter-disease': 'Confluent disease of the white matter',
      'low-tonsils': 'Cerebellar tonsils below the foramen magnum',
    }),
  },
  'ct-head': {
    label: 'CT of the head',
    loinc: [
      loinc('24725-4', 'CT Head'),
      loinc('30799-1', 'CT Head WO contrast'),
      loinc('24726-2', 'CT Head WO and W contrast IV'),
    ],
    ...imaging({
      infarct: 'Infarct',
      haemorrhage: 'Intracerebral haemorrhage',
      'subarachnoid-haemorrhage': 'Subarachnoid haemorrhage',
      'subdural-haematoma': 'Subdural haematoma',
      'space-occupying': 'Space-occupying lesion',
      hydrocephalus: 'Hydrocephalus',
    }),
  },
  'angiography-head-neck': {
    label: 'Angiography of head and neck vessels',
    loinc: [
      loinc('37498-3', 'Head vessels and Neck vessels CT angiogram W contrast IV'),
      loinc('42304-6', 'MRA Head vessels and Neck vessels'),
    ],
    ...imaging({
      occlusion: 'Occlusion of a large vessel',
      stenosis: 'Stenosis',
      dissection: 'Dissection',
      aneurysm: 'Aneurysm',
      'multifocal-narrowing': 'Narrowing of many arteries',
      moyamoya: 'Occlusion of the ends of the carotids with collateral vessels',
    }),
  },
  'mri-brachial-plexus': {
    label: 'MRI of the brachial plexus',
    loinc: [loinc('24582-9', 'MR Brachial plexus'), loinc('24583-7', 'MR Brachial plexus WO and W contrast IV')],
    ...imaging({ mass: 'Mass', inflammation: 'Swollen or enhancing plexus' }),
  },
  'mri-lumbosacral-plexus': {
    label: 'MRI of the lumbosacral plexus',
    loinc: [loinc('30866-8', 'MR Lumbosacral plexus')],
    ...imaging({ mass: 'Mass', haematoma: 'Haematoma', inflammation: 'Swollen or enhancing plexus' }),
  },
  'mri-muscle': {
    label: 'MRI of the thigh muscles',
    loinc: [loinc('24702-3', 'MR Thigh')],
    ...imaging({ oedema: 'Oedema of muscle', 'fatty-replacement': 'Fatty replacement' }),
  },
  'nerve-ultrasound': {
    label: 'Ultrasound of a nerve',
    values: grades({
      normal: 'Normal',
      'focal-swelling': 'Focal swelling',
      'diffuse-enlargement': 'Diffuse enlargement',
      'mass-or-cyst': 'Mass or cyst',
    }),
    normal: ['normal'],
  },
  'ct-chest': {
    label: 'CT of the chest',
    loinc: [loinc('24627-2', 'CT Chest'), loinc('24628-0', 'CT Chest W contrast IV')],
    ...imaging({ thymoma: 'Thymoma or enlarged thymus', tumour: 'Tumour', 'hilar-nodes': 'Enlarged hilar nodes' }),
  },

  // Blood tests that are read as positive or negative
  'urine-protein': {
    label: 'Protein in urine',
    values: grades({ negative: 'Negative', trace: 'Trace', raised: 'Raised', nephrotic: 'Nephrotic range' }),
    normal: ['negative', 'trace'],
  },
  'urine-ketones': {
    label: 'Ketones in urine',
    values: grades({ negative: 'Negative', trace: 'Trace', positive: 'Positive' }),
    normal: ['negative', 'trace'],
  },
  'serum-immunofixation': {
    label: 'Serum immunofixation',
    loinc: [loinc('25700-6', 'Immunofixation for Serum or Plasma')],
    values: grades({
      normal: 'No monoclonal protein',
      'igm-kappa': 'Monoclonal IgM kappa',
      'igm-lambda': 'Monoclonal IgM lambda',
      'igg-kappa': 'Monoclonal IgG kappa',
      'igg-lambda': 'Monoclonal IgG lambda',
      'iga-kappa': 'Monoclonal IgA kappa',
      'iga-lambda': 'Monoclonal IgA lambda',
      'light-chain': 'Monoclonal light chain alone',
    }),
    normal: ['normal'],
  },
  antistreptolysin: { label: 'Antistreptolysin O antibody', ...serology },
  ana: {
    label: 'Antinuclear antibody',
    loinc: [loinc('8061-4', 'Nuclear Ab [Presence] in Serum')],
    ...serology,
  },
  'anti-ro': {
    label: 'Anti-Ro antibody',
    loinc: [loinc('8093-7', 'Sjogrens syndrome-A extractable nuclear Ab [Presence] in Serum')],
    ...serology,
  },
  'anti-la': {
    label: 'Anti-La antibody',
    loinc: [loinc('8094-5', 'Sjogrens syndrome-B extractable nuclear Ab [Presence] in Serum')],
    ...serology,
  },
  anca: {
    label: 'Antineutrophil cytoplasmic antibody',
    loinc: [loinc('17351-8', 'Neutrophil cytoplasmic Ab [Presence] in Serum')],
    ...serology,
  },
  cryoglobulin: {
    label: 'Cryoglobulin',
    loinc: [loinc('5117-7', 'Cryoglobulin [Presence] in Serum')],
    ...serology,
  },
  'rheumatoid-factor': { label: 'Rheumatoid factor', ...serology },
  'tissue-transglutaminase-antibody': { label: 'Tissue transglutaminase antibody', ...serology },
  'antiphospholipid-antibody': { label: 'Antiphospholipid antibodies', ...serology },
  'hiv-test': {
    label: 'HIV test',
    loinc: [
      loinc('56888-1', 'HIV 1+2 Ab+HIV1 p24 Ag [Presence] in Serum or Plasma by Immunoassay'),
      loinc('31201-7', 'HIV 1+2 Ab [Presence] in Serum or Plasma by Immunoassay'),
      loinc('7918-6', 'HIV 1+2 Ab [Presence] in Serum'),
      loinc('29893-5', 'HIV 1 Ab [Presence] in Serum or Plasma by Immunoassay'),
    ],
    ...serology,
  },
  'htlv-test': { label: 'HTLV-1 test', loinc: [loinc('22362-8', 'HTLV I+II Ab [Presence] in Serum')], ...serology },
  'syphilis-serology': {
    label: 'Syphilis serology',
    loinc: [
      loinc('24110-9', 'Treponema pallidum Ab [Presence] in Serum by Immunoassay'),
      loinc('34147-9', 'Treponema pallidum IgG+IgM Ab [Presence] in Serum'),
      loinc('47236-5', 'Treponema pallidum IgG+IgM Ab [Presence] in Serum by Immunoassay'),
      loinc('24312-1', 'Treponema pallidum Ab [Presence] in Serum by Agglutination'),
      loinc('20507-0', 'Reagin Ab [Presence] in Serum by RPR'),
      loinc('5292-8', 'Reagin Ab [Presence] in Serum by VDRL'),
    ],
    ...serology,
  },
  'borrelia-serology': {
    label: 'Borrelia serology',
    loinc: [
      loinc('20449-5', 'Borrelia burgdorferi Ab [Presence] in Serum by Immunoassay'),
      loinc('11006-4', 'Borrelia burgdorferi Ab [Presence] in Serum'),
    ],
    ...serology,
  },
  'hepatitis-b-surface-antigen': {
    label: 'Hepatitis B surface antigen',
    loinc: [
      loinc('5195-3', 'Hepatitis B virus surface Ag [Presence] in Serum'),
      loinc('5196-1', 'Hepatitis B virus surface Ag [Presence] in Serum or Plasma by Immunoassay'),
    ],
    ...serology,
  },
  'hepatitis-c-antibody': {
    label: 'Hepatitis C antibody',
    loinc: [loinc('13955-0', 'Hepatitis C virus Ab [Presence] in Serum or Plasma by Immunoassay')],
    ...serology,
  },
  'porphobilinogen-urine': {
    label: 'Porphobilinogen in urine',
    loinc: [loinc('2809-2', 'Porphobilinogen [Presence] in Urine')],
    ...serology,
  },

  // Neuronal and neuromuscular antibodies
  'achr-antibody': {
    label: 'Acetylcholine receptor antibody',
    loinc: [loinc('43624-6', 'Acetylcholine receptor binding Ab [Presence] in Serum')],
    ...serology,
  },
  'musk-antibody': { label: 'MuSK antibody', ...serology },
  'vgcc-antibody': { label: 'Voltage-gated calcium channel antibody', ...serology },
  'striated-muscle-antibody': {
    label: 'Striated muscle antibody',
    loinc: [loinc('57744-5', 'Striated muscle Ab [Presence] in Serum by Immunofluorescence')],
    ...serology,
  },
  'anti-gm1': { label: 'Anti-GM1 antibody', ...serology },
  'anti-gq1b': { label: 'Anti-GQ1b antibody', ...serology },
  'anti-mag': { label: 'Antibody against myelin-associated glycoprotein', ...serology },
  'nodal-antibody': {
    label: 'Antibody against nodal or paranodal proteins',
    loinc: [loinc('100845-7', 'Neurofascin155 IgG4 Ab [Presence] in Serum by Flow cytometry (FC)')],
    ...serology,
  },
  'paraneoplastic-antibody': { label: 'Paraneoplastic neuronal antibody', ...serology },
  'neuronal-surface-antibody': { label: 'Antibody against the neuronal surface (NMDA receptor, LGI1)', ...serology },
  'aquaporin-4-antibody': { label: 'Aquaporin-4 antibody', ...serology },
  'mog-antibody': { label: 'MOG antibody', ...serology },
  'myositis-antibody': {
    label: 'Myositis-specific antibody',
    loinc: [loinc('8076-2', 'Jo-1 extractable nuclear Ab [Presence] in Serum')],
    ...serology,
  },
  'hmgcr-antibody': { label: 'HMG-CoA reductase antibody', ...serology },
  'ganglionic-antibody': { label: 'Ganglionic acetylcholine receptor antibody', ...serology },

  // Cerebrospinal fluid, tissue, genes
  'csf-oligoclonal-bands': {
    label: 'Oligoclonal bands in cerebrospinal fluid alone',
    loinc: [loinc('100756-6', 'Oligoclonal bands [Interpretation] in Cerebral spinal fluid by Isoelectric focusing')],
    ...serology,
  },
  'csf-cytology': {
    label: 'Cytology of cerebrospinal fluid',
    values: grades({ normal: 'No malignant cells', malignant: 'Malignant cells' }),
    normal: ['normal'],
  },
  'csf-microbiology': { label: 'Culture or PCR of cerebrospinal fluid', ...serology },
  'csf-prion-seeding': { label: 'Prion seeding assay of cerebrospinal fluid (RT-QuIC)', ...serology },
  'csf-xanthochromia': { label: 'Xanthochromia of cerebrospinal fluid', ...serology },
  'nerve-biopsy': {
    label: 'Nerve biopsy',
    values: grades({
      normal: 'Normal',
      vasculitis: 'Vasculitis',
      amyloid: 'Amyloid',
      demyelination: 'Demyelination',
      axonal: 'Axonal loss',
      granuloma: 'Granuloma',
    }),
    normal: ['normal'],
  },
  'muscle-biopsy': {
    label: 'Muscle biopsy',
    values: grades({
      normal: 'Normal',
      inflammatory: 'Inflammatory',
      necrotising: 'Necrotising',
      'rimmed-vacuoles': 'Rimmed vacuoles',
      dystrophic: 'Dystrophic',
      neurogenic: 'Neurogenic',
      mitochondrial: 'Mitochondrial',
    }),
    normal: ['normal'],
    source: recalled('amato-russell', 'muscle biopsy'),
  },
  'skin-biopsy-nerve-fibre-density': {
    label: 'Intraepidermal nerve-fibre density',
    values: grades({ normal: 'Normal', reduced: 'Reduced' }),
    normal: ['normal'],
    source: recalled('aan-dsp-autonomic-2009', 'skin biopsy'),
  },
  'genetic-test': {
    label: 'Genetic test for the suspected disorder',
    loinc: [loinc('51969-4', 'Genetic analysis report')],
    values: grades({
      negative: 'No causal variant',
      'pmp22-duplication': 'PMP22 duplication',
      'pmp22-deletion': 'PMP22 deletion',
      'gjb1-variant': 'GJB1 variant',
      'mpz-variant': 'MPZ variant',
      'mfn2-variant': 'MFN2 variant',
      'ttr-variant': 'TTR variant',
      'smn1-deletion': 'SMN1 deletion',
      'fxn-expansion': 'FXN expansion',
      'dmpk-expansion': 'DMPK expansion',
      other: 'Other causal variant',
      uncertain: 'Variant of uncertain significance',
    }),
    normal: ['negative'],
    source: recalled('saporta-2011', 'genetic testing'),
  },
  'autonomic-tests': {
    label: 'Autonomic function tests',
    loinc: [loinc('46213-5', 'Tilt table study')],
    values: grades({
      normal: 'Normal',
      'orthostatic-hypotension': 'Orthostatic hypotension',
      'cardiovagal-failure': 'Cardiovagal failure',
      'sweat-loss': 'Loss of sweating',
    }),
    normal: ['normal'],
    source: recalled('aan-dsp-autonomic-2009', 'autonomic testing'),
  },
};

/** Results that are read and come as one of a list of values. */
export const codedResults: readonly CodedResult[] = Object.entries(entries).map(([key, entry]) =>
  Object.freeze({ key, kind: 'coded' as const, loinc: [], source: commonPractice, ...entry }),
);

import { commonPractice, read, recalled, type Source } from '../../kernel/cite.ts';

/** A test that may be proposed, by the service or because the examiner asks for it. */
export interface Investigation {
  readonly key: string;
  readonly label: string;
  /** LOINC code with its long name byte for byte, where one says the same. */
  readonly loinc?: { readonly code: string; readonly display: string };
  /** Keys of results that mean that it has been done. */
  readonly results: readonly string[];
  readonly source: Source;
}

const row = (
  key: string,
  label: string,
  results: readonly string[],
  source: Source,
  loinc?: readonly [code: string, display: string],
): Investigation => ({
  key,
  label,
  results,
  source,
  ...(loinc === undefined ? {} : { loinc: { code: loinc[0], display: loinc[1] } }),
});

const dsp = read('aan-dsp-laboratory-2009');
const emgBook = recalled('preston-shapiro');
const b12 = read('nice-ng239');
const cord = recalled('adams-victor', 'diseases of the spinal cord');

/** The investigations in the order in which equals are proposed. */
export const investigations: readonly Investigation[] = [
  row('glucose-or-hba1c', 'Blood glucose or HbA1c', ['hba1c', 'glucose-fasting', 'glucose-2h'], dsp),
  row('blood-glucose', 'Blood glucose', ['glucose-random', 'glucose-fasting'], recalled('nice-ng128'), [
    '14749-6',
    'Glucose [Moles/volume] in Serum or Plasma',
  ]),
  row('glucose-tolerance-test', 'Two-hour glucose tolerance test', ['glucose-2h'], dsp, [
    '14995-5',
    'Glucose [Moles/volume] in Serum or Plasma --2 hours post 75 g glucose PO',
  ]),
  row('vitamin-b12', 'Vitamin B12', ['vitamin-b12', 'active-b12'], dsp, [
    '14685-2',
    'Cobalamin (Vitamin B12) [Moles/volume] in Serum or Plasma',
  ]),
  row('methylmalonic-acid', 'Methylmalonic acid', ['methylmalonic-acid'], dsp),
  row('homocysteine', 'Homocysteine', ['homocysteine'], b12, [
    '13965-9',
    'Homocysteine [Moles/volume] in Serum or Plasma',
  ]),
  row('serum-immunofixation', 'Serum protein immunofixation', ['serum-immunofixation'], dsp, [
    '25700-6',
    'Immunofixation for Serum or Plasma',
  ]),
  row('free-light-chains', 'Free light chain ratio', ['free-light-chain-ratio'], recalled('ean-pns-cidp-2021'), [
    '48378-4',
    'Kappa light chains.free/Lambda light chains.free [Mass Ratio] in Serum',
  ]),
  row('full-blood-count', 'Full blood count', ['haemoglobin', 'white-cells', 'platelets'], recalled('nice-ng127'), [
    '58410-2',
    'Complete blood count (hemogram) panel - Blood by Automated count',
  ]),
  row('renal-function', 'Creatinine', ['creatinine', 'egfr'], recalled('nice-ng127'), [
    '14682-9',
    'Creatinine [Moles/volume] in Serum or Plasma',
  ]),
  row('thyroid-stimulating-hormone', 'Thyroid-stimulating hormone', ['tsh'], recalled('nice-ng127'), [
    '3016-3',
    'Thyrotropin [Units/volume] in Serum or Plasma',
  ]),
  row('erythrocyte-sedimentation-rate', 'Erythrocyte sedimentation rate', ['esr'], recalled('nice-ng127'), [
    '30341-2',
    'Erythrocyte sedimentation rate',
  ]),
  row('c-reactive-protein', 'C-reactive protein', ['crp'], commonPractice, [
    '1988-5',
    'C reactive protein [Mass/volume] in Serum or Plasma',
  ]),
  row('potassium', 'Potassium', ['potassium'], commonPractice, [
    '2823-3',
    'Potassium [Moles/volume] in Serum or Plasma',
  ]),
  row('calcium', 'Calcium', ['calcium', 'ionised-calcium'], commonPractice, [
    '2000-8',
    'Calcium [Moles/volume] in Serum or Plasma',
  ]),
  row('creatine-kinase', 'Creatine kinase', ['creatine-kinase'], recalled('eular-acr-myositis-2017'), [
    '2157-6',
    'Creatine kinase [Enzymatic activity/volume] in Serum or Plasma',
  ]),
  row('vitamin-d', '25-hydroxyvitamin D', ['vitamin-d'], commonPractice),
  row('copper-and-zinc', 'Copper, caeruloplasmin and zinc', ['copper'], cord),
  row('thiamine', 'Thiamine in whole blood', ['thiamine'], recalled('caine-1997'), [
    '32554-8',
    'Thiamine [Moles/volume] in Blood',
  ]),
  row(
    'tissue-transglutaminase-antibody',
    'Tissue transglutaminase IgA',
    ['tissue-transglutaminase-antibody'],
    recalled('nice-ng127'),
    ['31017-7', 'Tissue transglutaminase IgA Ab [Units/volume] in Serum'],
  ),
  row('hiv-test', 'HIV test', ['hiv-test'], commonPractice, [
    '56888-1',
    'HIV 1+2 Ab+HIV1 p24 Ag [Presence] in Serum or Plasma by Immunoassay',
  ]),
  row('syphilis-serology', 'Syphilis serology', ['syphilis-serology'], cord, [
    '47236-5',
    'Treponema pallidum IgG+IgM Ab [Presence] in Serum by Immunoassay',
  ]),
  row('borrelia-serology', 'Serology for Borrelia', ['borrelia-serology'], cord, [
    '20449-5',
    'Borrelia burgdorferi Ab [Presence] in Serum by Immunoassay',
  ]),
  row('htlv-test', 'HTLV-1 test', ['htlv-test'], cord, ['22362-8', 'HTLV I+II Ab [Presence] in Serum']),
  row('antinuclear-antibody', 'Antinuclear antibody', ['ana'], commonPractice, [
    '8061-4',
    'Nuclear Ab [Presence] in Serum',
  ]),
  row('anti-ro-antibody', 'Anti-Ro and anti-La antibodies', ['anti-ro', 'anti-la'], emgBook),
  row(
    'antineutrophil-cytoplasmic-antibody',
    'Antineutrophil cytoplasmic antibody',
    ['anca'],
    read('vasculitic-neuropathy-2010'),
  ),
  row('hepatitis-c-antibody', 'Hepatitis C antibody', ['hepatitis-c-antibody'], read('vasculitic-neuropathy-2010'), [
    '13955-0',
    'Hepatitis C virus Ab [Presence] in Serum or Plasma by Immunoassay',
  ]),
  row('cryoglobulins', 'Cryoglobulins', ['cryoglobulin'], read('vasculitic-neuropathy-2010'), [
    '5117-7',
    'Cryoglobulin [Presence] in Serum',
  ]),
  row(
    'urine-porphobilinogen',
    'Porphobilinogen in urine',
    ['porphobilinogen-urine'],
    recalled('adams-victor', 'porphyric polyneuropathy'),
    ['2809-2', 'Porphobilinogen [Presence] in Urine'],
  ),
  row(
    'acetylcholine-receptor-antibody',
    'Acetylcholine receptor antibody',
    ['achr-antibody', 'achr-antibody-level'],
    recalled('mg-consensus-2021'),
    ['20427-1', 'Acetylcholine receptor Ab [Moles/volume] in Serum'],
  ),
  row('musk-antibody', 'Antibody to MuSK', ['musk-antibody'], recalled('mg-consensus-2021')),
  row(
    'calcium-channel-antibody',
    'Voltage-gated calcium channel antibody',
    ['vgcc-antibody'],
    read('lems-titulaer-2011'),
  ),
  row('aquaporin-4-antibody', 'Aquaporin-4 antibody', ['aquaporin-4-antibody'], read('nmosd-2015')),
  row('mog-antibody', 'Antibody to MOG', ['mog-antibody'], recalled('nmosd-2015')),
  row('ganglioside-gm1-antibody', 'Ganglioside GM1 IgM antibody', ['anti-gm1'], read('mmn-efns-2010'), [
    '51703-7',
    'Ganglioside GM1 IgM Ab [Units/volume] in Serum by Immunoassay',
  ]),
  row('ganglioside-gq1b-antibody', 'Ganglioside GQ1b antibody', ['anti-gq1b'], read('ean-pns-gbs-2023')),
  row('anti-mag-antibody', 'Antibody to myelin-associated glycoprotein', ['anti-mag'], recalled('ean-pns-cidp-2021')),
  row('nodal-paranodal-antibodies', 'Nodal and paranodal antibodies', ['nodal-antibody'], read('ean-pns-cidp-2021')),
  row('paraneoplastic-antibodies', 'Paraneoplastic neuronal antibodies', ['paraneoplastic-antibody'], emgBook),
  row('myositis-antibodies', 'Myositis-specific antibodies', ['myositis-antibody'], read('eular-acr-myositis-2017')),
  row('hmgcr-antibody', 'HMG-CoA reductase antibody', ['hmgcr-antibody'], recalled('eular-acr-myositis-2017')),
  row('blood-cultures', 'Blood cultures', [], commonPractice),
  row(
    'nerve-conduction-study',
    'Nerve conduction study',
    ['nerve-conduction-pattern', 'nerve-conduction-site', 'motor-conduction-velocity-arm'],
    emgBook,
    ['29755-6', 'Nerve conduction study'],
  ),
  row('electromyography', 'Needle electromyography', ['needle-emg'], emgBook, ['18749-2', 'Electromyogram study']),
  row(
    'repetitive-stimulation',
    'Repetitive nerve stimulation',
    ['repetitive-stimulation'],
    recalled('mg-consensus-2021'),
  ),
  row('single-fibre-emg', 'Single-fibre electromyography', ['single-fibre-emg'], recalled('mg-consensus-2021')),
  row('nerve-ultrasound', 'Ultrasound of the nerve', ['nerve-ultrasound'], emgBook),
  row(
    'vital-capacity',
    'Forced vital capacity',
    ['vital-capacity-per-kg', 'forced-vital-capacity'],
    read('ean-pns-gbs-2023'),
    ['19868-9', 'Forced vital capacity [Volume] Respiratory system by Spirometry'],
  ),
  row(
    'respiratory-pressures',
    'Maximal inspiratory and expiratory pressures',
    ['max-inspiratory-pressure'],
    recalled('gbs-lawn-2001'),
  ),
  row('electrocardiogram', 'Electrocardiogram', ['ecg'], commonPractice, ['11524-6', 'EKG study']),
  row('electroencephalogram', 'Electroencephalogram', ['eeg'], commonPractice, ['11523-8', 'EEG study']),
  row(
    'lumbar-puncture',
    'Lumbar puncture: cells, protein, glucose',
    ['csf-protein', 'csf-white-cells', 'csf-glucose'],
    read('ean-pns-gbs-2023'),
  ),
  row('csf-oligoclonal-bands', 'Oligoclonal bands in cerebrospinal fluid', ['csf-oligoclonal-bands'], cord, [
    '100756-6',
    'Oligoclonal bands [Interpretation] in Cerebral spinal fluid by Isoelectric focusing',
  ]),
  row('csf-cytology', 'Cytology of cerebrospinal fluid', ['csf-cytology'], cord),
  row('bladder-scan', 'Bladder scan after voiding', ['post-void-residual'], read('girft-ces-2023')),
  row('mri-whole-spine', 'MRI of the whole spine', ['mri-whole-spine'], read('nice-ng234'), [
    '42698-1',
    'MR Cervical and thoracic and lumbar spine',
  ]),
  row(
    'mri-cervical-spine',
    'MRI of the cervical spine',
    ['mri-cervical-spine', 'mri-whole-spine'],
    recalled('cook-2010'),
    ['24935-9', 'MR Cervical spine'],
  ),
  row('mri-lumbar-spine', 'MRI of the lumbar spine', ['mri-lumbar-spine', 'mri-whole-spine'], recalled('nice-ng59'), [
    '24968-0',
    'MR Lumbar spine',
  ]),
  row('mri-brain', 'MRI of the brain', ['mri-brain'], recalled('nice-ng127'), ['24590-2', 'MR Brain']),
  row('ct-head', 'CT of the head without contrast', ['ct-head'], read('nice-ng128'), [
    '30799-1',
    'CT Head WO contrast',
  ]),
  row('ct-angiography', 'CT angiography of the head and neck', ['angiography-head-neck'], read('nice-ng128'), [
    '37498-3',
    'Head vessels and Neck vessels CT angiogram W contrast IV',
  ]),
  row(
    'aortic-angiography',
    'CT angiography of the aorta',
    [],
    recalled('adams-victor', 'infarction of the spinal cord'),
  ),
  row(
    'limb-angiography',
    'CT angiography of the arteries of the limb',
    [],
    recalled('limb-ischaemia-esvs-2020', 'first-line imaging'),
  ),
  row('mri-brachial-plexus', 'MRI of the brachial plexus', ['mri-brachial-plexus'], emgBook, [
    '24582-9',
    'MR Brachial plexus',
  ]),
  row('mri-lumbosacral-plexus', 'MRI of the lumbosacral plexus', ['mri-lumbosacral-plexus'], emgBook, [
    '30866-8',
    'MR Lumbosacral plexus',
  ]),
  row('ct-chest', 'CT of the chest', ['ct-chest'], recalled('mg-consensus-2021'), ['24627-2', 'CT Chest']),
  row('ct-abdomen', 'CT of the abdomen and pelvis', [], commonPractice),
  row('muscle-biopsy', 'Muscle biopsy', ['muscle-biopsy'], recalled('amato-russell')),
  row('nerve-biopsy', 'Nerve biopsy', ['nerve-biopsy'], read('vasculitic-neuropathy-2010')),
  row(
    'skin-biopsy',
    'Skin biopsy for nerve-fibre density',
    ['skin-biopsy-nerve-fibre-density'],
    read('aan-dsp-autonomic-2009'),
  ),
  row('autonomic-tests', 'Autonomic function tests', ['autonomic-tests'], read('aan-dsp-autonomic-2009')),
  row(
    'lying-standing-blood-pressure',
    'Blood pressure lying and standing',
    ['systolic-pressure-standing'],
    recalled('orthostatic-consensus-2011'),
  ),
  row('pmp22-and-neuropathy-genes', 'Genetic test for hereditary neuropathy', ['genetic-test'], read('saporta-2011')),
  row('ttr-gene', 'Transthyretin gene test', ['genetic-test'], recalled('saporta-2011')),
  row(
    'motor-neuron-disease-genes',
    'Genetic panel for motor neuron disease, after counselling',
    ['genetic-test'],
    recalled('gold-coast-2020'),
  ),
  row('muscle-disease-genes', 'Genetic test for muscle disease', ['genetic-test'], recalled('amato-russell')),
  row('ataxia-genes', 'Repeat-expansion panel for ataxia', ['genetic-test'], recalled('adams-victor')),

  // Further blood and urine tests
  row('sodium', 'Sodium', ['sodium'], commonPractice, ['2951-2', 'Sodium [Moles/volume] in Serum or Plasma']),
  row('magnesium', 'Magnesium', ['magnesium'], commonPractice, [
    '2601-3',
    'Magnesium [Moles/volume] in Serum or Plasma',
  ]),
  row(
    'osmolality',
    'Osmolality of serum and urine, sodium of urine',
    [],
    recalled('hyponatraemia-2014', 'osmolality and sodium of a spot urine first'),
  ),
  row(
    'parathyroid-hormone',
    'Parathyroid hormone',
    [],
    recalled('hypercalcaemia-2016', 'tells parathyroid disease from the rest'),
  ),
  row('liver-function', 'Liver function tests', ['alt', 'ast', 'albumin'], commonPractice, [
    '24325-3',
    'Hepatic function 2000 panel - Serum or Plasma',
  ]),
  row('ammonia', 'Ammonia', ['ammonia'], recalled('adams-victor', 'hepatic encephalopathy'), [
    '16362-6',
    'Ammonia [Moles/volume] in Plasma',
  ]),
  row('blood-gas', 'Arterial or venous blood gas', [], commonPractice),
  row('drug-screen', 'Drug and alcohol screen', [], commonPractice),
  row(
    'caeruloplasmin',
    'Caeruloplasmin and urinary copper',
    ['caeruloplasmin'],
    recalled('adams-victor', 'Wilson disease'),
    ['2064-4', 'Ceruloplasmin [Mass/volume] in Serum or Plasma'],
  ),
  row('vitamin-e', 'Vitamin E', ['vitamin-e'], recalled('adams-victor', 'vitamin E deficiency'), [
    '1823-4',
    'Alpha tocopherol [Mass/volume] in Serum or Plasma',
  ]),
  row('vitamin-b6', 'Vitamin B6', ['vitamin-b6'], emgBook, ['74442-5', 'Pyridoxal phosphate [Moles/volume] in Blood']),
  row(
    'heavy-metals',
    'Lead in blood, arsenic and thallium in urine',
    ['lead', 'arsenic-urine'],
    recalled('adams-victor', 'neuropathies of metals'),
  ),
  row('urine-catecholamines', 'Catecholamine metabolites in urine', [], recalled('adams-victor', 'neuroblastoma')),
  row('antiphospholipid-antibodies', 'Antiphospholipid antibodies', ['antiphospholipid-antibody'], commonPractice),
  row('thrombophilia-screen', 'Screen for thrombophilia', [], recalled('cvt-2017')),
  row('pregnancy-test', 'Pregnancy test', [], commonPractice),
  row('lipids', 'Lipid profile', [], recalled('nice-ng128', 'secondary prevention')),
  row('cortisol', 'Cortisol', ['cortisol'], recalled('pituitary-apoplexy-2011'), [
    '2143-6',
    'Cortisol [Mass/volume] in Serum or Plasma',
  ]),
  row('pituitary-hormones', 'Pituitary hormones with prolactin', [], recalled('pituitary-apoplexy-2011')),
  row('thyroid-receptor-antibody', 'Thyrotropin receptor antibody', [], commonPractice),
  row(
    'angiotensin-converting-enzyme',
    'Angiotensin-converting enzyme',
    ['angiotensin-converting-enzyme'],
    recalled('adams-victor', 'sarcoidosis'),
    ['2742-5', 'Angiotensin converting enzyme [Enzymatic activity/volume] in Serum or Plasma'],
  ),
  row(
    'autoimmune-encephalitis-antibodies',
    'Antibodies of autoimmune encephalitis in serum and fluid',
    ['neuronal-surface-antibody'],
    recalled('autoimmune-encephalitis-2016'),
  ),
  row(
    'ganglionic-antibody',
    'Ganglionic acetylcholine receptor antibody',
    ['ganglionic-antibody'],
    recalled('adams-victor', 'autonomic failure'),
    ['42233-7', 'Acetylcholine receptor ganglionic neuronal Ab [Moles/volume] in Serum'],
  ),
  row('vascular-endothelial-growth-factor', 'Vascular endothelial growth factor', [], recalled('ean-pns-cidp-2021')),
  row('alpha-galactosidase', 'Alpha-galactosidase A', [], recalled('adams-victor', 'Fabry disease')),
  row('phytanic-acid', 'Phytanic acid', [], recalled('adams-victor', 'Refsum disease')),
  row(
    'very-long-chain-fatty-acids',
    'Very-long-chain fatty acids',
    [],
    recalled('adams-victor', 'adrenomyeloneuropathy'),
  ),
  row('acid-alpha-glucosidase', 'Acid alpha-glucosidase in dried blood', [], recalled('amato-russell')),
  row('cholinesterase', 'Cholinesterase', [], recalled('adams-victor', 'organophosphates')),
  row('botulinum-toxin-assay', 'Botulinum toxin in serum, stool or food', [], read('botulism-2021')),
  row(
    'zoster-pcr',
    'PCR for varicella-zoster virus from vesicle or fluid',
    [],
    recalled('adams-victor', 'herpes zoster'),
  ),
  row('vasculitis-urine', 'Urine for blood and protein', [], read('vasculitic-neuropathy-2010')),
  row('drug-level', 'Level of the medicine in blood', [], commonPractice),
  row('toxoplasma-serology', 'Toxoplasma serology', [], recalled('adams-victor', 'toxoplasmosis')),
  row('skeletal-survey', 'Survey of the skeleton for bone lesions', [], recalled('ean-pns-cidp-2021')),
  row('skin-smear', 'Skin smear or biopsy for leprosy', [], recalled('adams-victor', 'leprous neuritis')),

  // Cerebrospinal fluid beyond cells and protein
  row(
    'csf-viral-pcr',
    'PCR of cerebrospinal fluid for herpes simplex and other viruses',
    ['csf-microbiology'],
    recalled('adams-victor', 'herpes simplex encephalitis'),
  ),
  row(
    'csf-tuberculosis-and-fungi',
    'Cerebrospinal fluid for tuberculosis and cryptococcus',
    ['csf-microbiology'],
    recalled('adams-victor', 'chronic meningitis'),
  ),
  row(
    'csf-opening-pressure',
    'Opening pressure of cerebrospinal fluid',
    ['csf-opening-pressure'],
    read('iih-consensus-2018'),
  ),
  row(
    'csf-xanthochromia',
    'Xanthochromia of cerebrospinal fluid, 12 hours after onset',
    ['csf-xanthochromia'],
    read('nice-ng228'),
  ),
  row(
    'prion-assay',
    'Prion seeding assay in cerebrospinal fluid',
    ['csf-prion-seeding'],
    recalled('adams-victor', 'prion disease'),
  ),
  row(
    'csf-tap-test',
    'Gait before and after removal of cerebrospinal fluid',
    [],
    recalled('adams-victor', 'normal pressure hydrocephalus'),
  ),

  // Imaging and measurements of the head, the vessels and the heart
  row('mr-venography', 'MR or CT venography', [], recalled('cvt-2017')),
  row('mri-orbit', 'MRI of the orbits', [], recalled('adams-victor', 'optic neuropathies'), [
    '24851-8',
    'MR Orbit - bilateral WO and W contrast IV',
  ]),
  row('mri-pituitary', 'MRI of the pituitary', [], recalled('pituitary-apoplexy-2011')),
  row('mri-inner-ear', 'MRI of the internal auditory canals', [], recalled('adams-victor', 'vestibular schwannoma')),
  row('ct-temporal-bone', 'CT of the temporal bone and skull base', [], commonPractice),
  row('carotid-ultrasound', 'Ultrasound of the carotid arteries', [], read('nice-ng128'), [
    '24616-5',
    'US Carotid arteries',
  ]),
  row('echocardiogram', 'Echocardiogram', [], recalled('nice-ng128'), ['42148-7', 'Heart US']),
  row('rhythm-monitoring', 'Monitoring of the heart rhythm', [], recalled('nice-ng128')),
  row('spinal-angiography', 'Spinal angiography', [], cord),
  row(
    'catheter-angiography',
    'Catheter angiography of the brain',
    [],
    recalled('adams-victor', 'vasculitis of the central nervous system'),
  ),
  row('dopamine-transporter-imaging', 'Imaging of the dopamine transporter', [], recalled('mds-parkinson-2015')),
  row('pet-ct', 'PET-CT for a hidden tumour', [], recalled('adams-victor', 'paraneoplastic disorders')),
  row('temporal-artery-imaging', 'Ultrasound or biopsy of the temporal artery', [], read('bsr-gca-2020')),
  row('audiogram', 'Pure-tone audiogram', [], commonPractice),
  row(
    'visual-fields-and-optical-coherence-tomography',
    'Formal visual fields and optical coherence tomography',
    [],
    commonPractice,
  ),
  row('eye-examination', 'Examination of the eye with dilated pupil', [], commonPractice),
  row(
    'visual-evoked-potentials',
    'Visual evoked potentials',
    ['visual-evoked-potentials'],
    recalled('adams-victor', 'multiple sclerosis'),
  ),
  row('tilt-table', 'Tilt-table test', ['autonomic-tests'], recalled('aan-dsp-autonomic-2009'), [
    '46213-5',
    'Tilt table study',
  ]),
  row('laryngoscopy', 'Laryngoscopy', [], commonPractice),
  row('swallowing-assessment', 'Swallowing assessment', [], commonPractice),
  row('chest-radiograph', 'Chest radiograph', [], commonPractice),
  row('diaphragm-ultrasound', 'Ultrasound or fluoroscopy of the diaphragm', [], emgBook),
  row('compartment-pressure', 'Pressure in the muscle compartment', [], commonPractice),
  row('mri-muscle', 'MRI of muscle', ['mri-muscle'], recalled('amato-russell')),
  row('mri-pelvis', 'MRI of the pelvis', [], commonPractice),
  row('limb-radiograph', 'Radiograph of the injured part', [], commonPractice),
  row('cognitive-assessment', 'Cognitive assessment with a scored test', [], recalled('nice-ng97')),
  row('ice-pack-test', 'Ice on the drooping lid for two minutes', [], recalled('mg-consensus-2021')),
  row('forearm-exercise-test', 'Forearm exercise test with lactate and ammonia', [], recalled('amato-russell')),
  row('fat-biopsy', 'Biopsy of fat or other tissue for amyloid', [], recalled('adams-victor', 'amyloid neuropathy')),

  // Genes
  row('pmp22-gene', 'PMP22 duplication or deletion', ['genetic-test'], read('saporta-2011')),
  row('gjb1-gene', 'GJB1 gene', ['genetic-test'], read('saporta-2011')),
  row(
    'axonal-neuropathy-genes',
    'MFN2, GJB1, MPZ and a panel of axonal neuropathy genes',
    ['genetic-test'],
    read('saporta-2011'),
  ),
  row('smn1-gene', 'SMN1 gene', ['genetic-test'], recalled('amato-russell')),
  row('androgen-receptor-gene', 'Androgen receptor repeat', ['genetic-test'], recalled('amato-russell')),
  row(
    'huntingtin-gene',
    'Huntingtin repeat, after counselling',
    ['genetic-test'],
    recalled('adams-victor', 'Huntington disease'),
  ),
  row('fmr1-gene', 'FMR1 repeat', ['genetic-test'], recalled('adams-victor')),
  row('spastic-paraplegia-genes', 'Panel of spastic paraplegia genes', ['genetic-test'], recalled('adams-victor')),
  row('mitochondrial-genes', 'Mitochondrial DNA', ['genetic-test'], recalled('adams-victor', 'mitochondrial diseases')),
  row('notch3-gene', 'NOTCH3 gene', ['genetic-test'], recalled('adams-victor')),
];

export const investigationKeys: readonly string[] = investigations.map(({ key }) => key);

import { commonPractice, recalled } from '../../kernel/cite.ts';
import { loinc, type QuantityResult, type UnitLine } from './result-row.ts';

type QuantityEntry = Omit<QuantityResult, 'key' | 'kind' | 'source' | 'loinc'> &
  Partial<Pick<QuantityResult, 'source' | 'loinc'>>;

const glucose = { unit: 'mmol/L', plausible: [0.1, 150], molarMass: 180.156 } as const;

// UCUM converts no arbitrary units, not even to their own multiples; and its U is an enzyme unit, though laboratories that
// write mU/L for this hormone mean the international unit. All of these are the same size.
const thyrotropinUnits = ['u[IU]/mL', 'm[iU]/L', 'u[iU]/mL', 'mU/L', 'uU/mL'] as const;

/** mmol/L from milliequivalents of an ion of that charge. */
const milliequivalents = (charge: number): readonly UnitLine[] => [
  { unit: 'meq/L', factor: 1 / charge, offset: 0, source: commonPractice },
];

const entries: Readonly<Record<string, QuantityEntry>> = {
  // Glucose
  hba1c: {
    label: 'Haemoglobin A1c',
    loinc: [
      loinc('4548-4', 'Hemoglobin A1c/Hemoglobin.total in Blood'),
      loinc('17856-6', 'Hemoglobin A1c/Hemoglobin.total in Blood by HPLC'),
      loinc('59261-8', 'Hemoglobin A1c/Hemoglobin.total in Blood by IFCC protocol'),
    ],
    unit: '%',
    plausible: [2, 25],
    // UCUM takes % and mmol/mol for the same kind of fraction; the two reporting systems differ by a calibration line.
    lines: [{ unit: 'mmol/mol', factor: 0.09148, offset: 2.152, source: recalled('ngsp-ifcc', 'master equation') }],
  },
  'glucose-fasting': {
    label: 'Fasting glucose',
    loinc: [
      loinc('1558-6', 'Fasting glucose [Mass/volume] in Serum or Plasma'),
      loinc('14771-0', 'Fasting glucose [Moles/volume] in Serum or Plasma'),
    ],
    ...glucose,
  },
  'glucose-random': {
    label: 'Random glucose',
    loinc: [
      loinc('2345-7', 'Glucose [Mass/volume] in Serum or Plasma'),
      loinc('14749-6', 'Glucose [Moles/volume] in Serum or Plasma'),
    ],
    ...glucose,
  },
  'glucose-2h': {
    label: 'Glucose two hours after 75 g glucose',
    loinc: [
      loinc('1518-0', 'Glucose [Mass/volume] in Serum or Plasma --2 hours post 75 g glucose PO'),
      loinc('14995-5', 'Glucose [Moles/volume] in Serum or Plasma --2 hours post 75 g glucose PO'),
      loinc('20436-2', 'Glucose [Mass/volume] in Serum or Plasma --2 hours post dose glucose'),
    ],
    ...glucose,
  },

  // Vitamins and trace elements
  'vitamin-b12': {
    label: 'Vitamin B12',
    loinc: [
      loinc('2132-9', 'Cobalamin (Vitamin B12) [Mass/volume] in Serum or Plasma'),
      loinc('14685-2', 'Cobalamin (Vitamin B12) [Moles/volume] in Serum or Plasma'),
    ],
    unit: 'pmol/L',
    plausible: [5, 100_000],
    molarMass: 1355.37,
  },
  'active-b12': { label: 'Active B12 (holotranscobalamin)', unit: 'pmol/L', plausible: [1, 5000] },
  'methylmalonic-acid': { label: 'Methylmalonic acid', unit: 'umol/L', plausible: [0.01, 2000], molarMass: 118.09 },
  homocysteine: {
    label: 'Homocysteine',
    loinc: [
      loinc('13965-9', 'Homocysteine [Moles/volume] in Serum or Plasma'),
      loinc('2428-1', 'Homocysteine [Mass/volume] in Serum or Plasma'),
    ],
    unit: 'umol/L',
    plausible: [0.5, 800],
    molarMass: 135.18,
  },
  folate: {
    label: 'Folate',
    loinc: [loinc('2284-8', 'Folate [Mass/volume] in Serum or Plasma')],
    unit: 'nmol/L',
    plausible: [0.5, 1000],
    molarMass: 441.4,
  },
  thiamine: {
    label: 'Thiamine, whole blood',
    loinc: [loinc('32554-8', 'Thiamine [Moles/volume] in Blood')],
    unit: 'nmol/L',
    plausible: [1, 5000],
  },
  'vitamin-b6': {
    label: 'Vitamin B6 (pyridoxal phosphate)',
    loinc: [loinc('74442-5', 'Pyridoxal phosphate [Moles/volume] in Blood')],
    unit: 'nmol/L',
    plausible: [1, 50_000],
    molarMass: 247.14,
  },
  'vitamin-e': {
    label: 'Vitamin E (alpha-tocopherol)',
    loinc: [loinc('1823-4', 'Alpha tocopherol [Mass/volume] in Serum or Plasma')],
    unit: 'umol/L',
    plausible: [0.1, 500],
    molarMass: 430.71,
  },
  'vitamin-d': {
    label: '25-hydroxyvitamin D3',
    loinc: [loinc('1989-3', '25-hydroxyvitamin D3 [Mass/volume] in Serum or Plasma')],
    unit: 'nmol/L',
    plausible: [1, 2500],
    molarMass: 400.64,
  },
  copper: {
    label: 'Copper',
    loinc: [loinc('5631-7', 'Copper [Mass/volume] in Serum or Plasma')],
    unit: 'umol/L',
    plausible: [0.1, 150],
    molarMass: 63.546,
  },
  zinc: {
    label: 'Zinc',
    loinc: [loinc('5763-8', 'Zinc [Mass/volume] in Serum or Plasma')],
    unit: 'umol/L',
    plausible: [0.5, 500],
    molarMass: 65.38,
  },
  caeruloplasmin: {
    label: 'Caeruloplasmin',
    loinc: [loinc('2064-4', 'Ceruloplasmin [Mass/volume] in Serum or Plasma')],
    unit: 'g/L',
    plausible: [0.001, 3],
  },
  lead: {
    label: 'Lead in blood',
    loinc: [loinc('5671-3', 'Lead [Mass/volume] in Blood')],
    unit: 'umol/L',
    plausible: [0, 100],
    molarMass: 207.2,
  },
  'arsenic-urine': {
    label: 'Arsenic in urine',
    loinc: [loinc('5586-3', 'Arsenic [Mass/volume] in Urine')],
    unit: 'ug/L',
    plausible: [0, 100_000],
    molarMass: 74.922,
  },

  // Thyroid and other hormones
  tsh: {
    label: 'Thyroid-stimulating hormone',
    loinc: [
      loinc('3016-3', 'Thyrotropin [Units/volume] in Serum or Plasma'),
      loinc('11579-0', 'Thyrotropin [Units/volume] in Serum or Plasma by Detection limit <= 0.05 mIU/L'),
      loinc('11580-8', 'Thyrotropin [Units/volume] in Serum or Plasma by Detection limit <= 0.005 mIU/L'),
    ],
    unit: 'm[IU]/L',
    plausible: [0, 1000],
    lines: thyrotropinUnits.map((unit) => ({ unit, factor: 1, offset: 0, source: commonPractice })),
  },
  'free-t4': {
    label: 'Free thyroxine',
    loinc: [loinc('3024-7', 'Thyroxine (T4) free [Mass/volume] in Serum or Plasma')],
    unit: 'pmol/L',
    plausible: [0.1, 200],
    molarMass: 776.87,
  },
  cortisol: {
    label: 'Cortisol',
    loinc: [loinc('2143-6', 'Cortisol [Mass/volume] in Serum or Plasma')],
    unit: 'nmol/L',
    plausible: [1, 5000],
    molarMass: 362.46,
  },

  // Salts, kidney, liver
  sodium: {
    label: 'Sodium',
    loinc: [loinc('2951-2', 'Sodium [Moles/volume] in Serum or Plasma')],
    unit: 'mmol/L',
    plausible: [80, 220],
    lines: milliequivalents(1),
  },
  potassium: {
    label: 'Potassium',
    loinc: [loinc('2823-3', 'Potassium [Moles/volume] in Serum or Plasma')],
    unit: 'mmol/L',
    plausible: [0.8, 15],
    lines: milliequivalents(1),
  },
  calcium: {
    label: 'Calcium',
    loinc: [
      loinc('2000-8', 'Calcium [Moles/volume] in Serum or Plasma'),
      loinc('17861-6', 'Calcium [Mass/volume] in Serum or Plasma'),
    ],
    unit: 'mmol/L',
    plausible: [0.5, 8],
    molarMass: 40.078,
    lines: milliequivalents(2),
  },
  'ionised-calcium': {
    label: 'Ionised calcium',
    loinc: [loinc('1995-0', 'Calcium.ionized [Moles/volume] in Serum or Plasma')],
    unit: 'mmol/L',
    plausible: [0.2, 5],
    molarMass: 40.078,
    lines: milliequivalents(2),
  },
  magnesium: {
    label: 'Magnesium',
    loinc: [
      loinc('2601-3', 'Magnesium [Moles/volume] in Serum or Plasma'),
      loinc('19123-9', 'Magnesium [Mass/volume] in Serum or Plasma'),
    ],
    unit: 'mmol/L',
    plausible: [0.05, 15],
    molarMass: 24.305,
    lines: milliequivalents(2),
  },
  phosphate: {
    label: 'Phosphate, as phosphorus',
    loinc: [loinc('2777-1', 'Phosphate [Mass/volume] in Serum or Plasma')],
    unit: 'mmol/L',
    plausible: [0.05, 15],
    molarMass: 30.974,
  },
  creatinine: {
    label: 'Creatinine',
    loinc: [
      loinc('2160-0', 'Creatinine [Mass/volume] in Serum or Plasma'),
      loinc('14682-9', 'Creatinine [Moles/volume] in Serum or Plasma'),
    ],
    unit: 'umol/L',
    plausible: [5, 5000],
    molarMass: 113.12,
  },
  egfr: {
    label: 'Estimated glomerular filtration rate',
    loinc: [
      loinc(
        '33914-3',
        'Glomerular filtration rate/1.73 sq M.predicted [Volume Rate/Area] in Serum or Plasma by Creatinine-based formula (MDRD)',
      ),
      loinc(
        '62238-1',
        'Glomerular filtration rate [Volume Rate/Area] in Serum, Plasma or Blood by Creatinine-based formula (CKD-EPI)/1.73 sq M',
      ),
      loinc(
        '98979-8',
        'Glomerular filtration rate [Volume Rate/Area] in Serum, Plasma or Blood by Creatinine-based formula (CKD-EPI 2021)/1.73 sq M',
      ),
    ],
    unit: 'mL/min/{1.73_m2}',
    plausible: [0, 250],
  },
  'urea-nitrogen': {
    label: 'Urea nitrogen',
    loinc: [loinc('3094-0', 'Urea nitrogen [Mass/volume] in Serum or Plasma')],
    unit: 'mmol/L',
    plausible: [0.2, 150],
    // Two nitrogen atoms: the mass is that of the nitrogen, the amount that of the urea.
    molarMass: 28.014,
  },
  alt: {
    label: 'Alanine aminotransferase',
    loinc: [loinc('1742-6', 'Alanine aminotransferase [Enzymatic activity/volume] in Serum or Plasma')],
    unit: 'U/L',
    plausible: [0, 50_000],
  },
  ast: {
    label: 'Aspartate aminotransferase',
    loinc: [loinc('1920-8', 'Aspartate aminotransferase [Enzymatic activity/volume] in Serum or Plasma')],
    unit: 'U/L',
    plausible: [0, 50_000],
  },
  ggt: {
    label: 'Gamma-glutamyl transferase',
    loinc: [loinc('2324-2', 'Gamma glutamyl transferase [Enzymatic activity/volume] in Serum or Plasma')],
    unit: 'U/L',
    plausible: [0, 20_000],
  },
  albumin: {
    label: 'Albumin',
    loinc: [loinc('1751-7', 'Albumin [Mass/volume] in Serum or Plasma')],
    unit: 'g/L',
    plausible: [3, 80],
  },
  ammonia: {
    label: 'Ammonia',
    loinc: [loinc('16362-6', 'Ammonia [Moles/volume] in Plasma')],
    unit: 'umol/L',
    plausible: [1, 3000],
    molarMass: 17.031,
  },

  // Blood
  haemoglobin: {
    label: 'Haemoglobin',
    loinc: [loinc('718-7', 'Hemoglobin [Mass/volume] in Blood')],
    unit: 'g/L',
    plausible: [10, 280],
  },
  mcv: {
    label: 'Mean red-cell volume',
    loinc: [
      loinc('787-2', 'MCV [Entitic volume] by Automated count'),
      loinc('30428-7', 'MCV [Entitic mean volume] in Red Blood Cells'),
    ],
    unit: 'fL',
    plausible: [40, 170],
  },
  'white-cells': {
    label: 'White cells',
    loinc: [loinc('6690-2', 'Leukocytes [#/volume] in Blood by Automated count')],
    unit: '10*9/L',
    plausible: [0, 1000],
  },
  eosinophils: {
    label: 'Eosinophils',
    loinc: [loinc('711-2', 'Eosinophils [#/volume] in Blood by Automated count')],
    unit: '10*9/L',
    plausible: [0, 300],
  },
  platelets: {
    label: 'Platelets',
    loinc: [loinc('777-3', 'Platelets [#/volume] in Blood by Automated count')],
    unit: '10*9/L',
    plausible: [0, 5000],
  },
  inr: {
    label: 'International normalised ratio (INR)',
    loinc: [loinc('6301-6', 'INR in Platelet poor plasma by Coagulation assay')],
    unit: '{INR}',
    plausible: [0.5, 20],
  },
  ferritin: {
    label: 'Ferritin',
    loinc: [loinc('2276-4', 'Ferritin [Mass/volume] in Serum or Plasma')],
    unit: 'ug/L',
    plausible: [0, 200_000],
  },
  esr: {
    label: 'Erythrocyte sedimentation rate',
    loinc: [
      loinc('30341-2', 'Erythrocyte sedimentation rate'),
      loinc('4537-7', 'Erythrocyte sedimentation rate by Westergren method'),
    ],
    unit: 'mm/h',
    plausible: [0, 200],
  },
  crp: {
    label: 'C-reactive protein',
    loinc: [loinc('1988-5', 'C reactive protein [Mass/volume] in Serum or Plasma')],
    unit: 'mg/L',
    plausible: [0, 1000],
  },
  'angiotensin-converting-enzyme': {
    label: 'Angiotensin-converting enzyme',
    loinc: [loinc('2742-5', 'Angiotensin converting enzyme [Enzymatic activity/volume] in Serum or Plasma')],
    unit: 'U/L',
    plausible: [0, 1000],
  },
  'complement-c3': {
    label: 'Complement C3',
    loinc: [loinc('4485-9', 'Complement C3 [Mass/volume] in Serum or Plasma')],
    unit: 'g/L',
    plausible: [0, 5],
  },
  'complement-c4': {
    label: 'Complement C4',
    loinc: [loinc('4498-2', 'Complement C4 [Mass/volume] in Serum or Plasma')],
    unit: 'g/L',
    plausible: [0, 3],
  },
  'monoclonal-protein': {
    label: 'Monoclonal protein',
    loinc: [loinc('33358-3', 'Protein.monoclonal [Mass/volume] in Serum or Plasma by Electrophoresis')],
    unit: 'g/L',
    plausible: [0, 150],
  },
  'free-light-chain-ratio': {
    label: 'Ratio of free kappa to lambda light chains',
    loinc: [loinc('48378-4', 'Kappa light chains.free/Lambda light chains.free [Mass Ratio] in Serum')],
    unit: '{ratio}',
    plausible: [0, 20_000],
  },
  igm: {
    label: 'Immunoglobulin M',
    loinc: [loinc('2472-9', 'IgM [Mass/volume] in Serum or Plasma')],
    unit: 'g/L',
    plausible: [0, 150],
  },

  // Muscle
  'creatine-kinase': {
    label: 'Creatine kinase',
    loinc: [loinc('2157-6', 'Creatine kinase [Enzymatic activity/volume] in Serum or Plasma')],
    unit: 'U/L',
    plausible: [1, 2_000_000],
  },
  ldh: {
    label: 'Lactate dehydrogenase',
    loinc: [loinc('2532-0', 'Lactate dehydrogenase [Enzymatic activity/volume] in Serum or Plasma')],
    unit: 'U/L',
    plausible: [1, 100_000],
  },
  lactate: {
    label: 'Lactate',
    loinc: [loinc('2524-7', 'Lactate [Moles/volume] in Serum or Plasma')],
    unit: 'mmol/L',
    plausible: [0.1, 50],
    molarMass: 90.08,
  },

  // Cerebrospinal fluid
  'csf-protein': {
    label: 'Protein in cerebrospinal fluid',
    loinc: [loinc('2880-3', 'Protein [Mass/volume] in Cerebral spinal fluid')],
    unit: 'g/L',
    plausible: [0, 100],
  },
  'csf-white-cells': {
    label: 'White cells in cerebrospinal fluid',
    loinc: [
      loinc('806-0', 'Leukocytes [#/volume] in Cerebral spinal fluid by Manual count'),
      loinc('26465-5', 'Leukocytes [#/volume] in Cerebral spinal fluid'),
    ],
    unit: '10*6/L',
    plausible: [0, 200_000],
  },
  'csf-red-cells': {
    label: 'Red cells in cerebrospinal fluid',
    loinc: [loinc('26454-9', 'Erythrocytes [#/volume] in Cerebral spinal fluid')],
    unit: '10*6/L',
    plausible: [0, 6_000_000],
  },
  'csf-glucose': {
    label: 'Glucose in cerebrospinal fluid',
    loinc: [loinc('2342-4', 'Glucose [Mass/volume] in Cerebral spinal fluid')],
    unit: 'mmol/L',
    plausible: [0, 60],
    molarMass: 180.156,
  },
  'csf-lactate': {
    label: 'Lactate in cerebrospinal fluid',
    loinc: [loinc('2520-5', 'Lactate [Moles/volume] in Cerebral spinal fluid')],
    unit: 'mmol/L',
    plausible: [0.1, 40],
    molarMass: 90.08,
  },
  'csf-opening-pressure': { label: 'Opening pressure of cerebrospinal fluid', unit: 'cm[H2O]', plausible: [0, 120] },

  'csf-eosinophils': {
    label: 'Eosinophils among the white cells of cerebrospinal fluid',
    unit: '%',
    plausible: [0, 100],
    source: recalled('adams-victor', 'eosinophilic meningitis'),
  },

  // Blood gases, ketones and poisons
  'blood-ph': {
    label: 'pH of blood',
    unit: '[pH]',
    plausible: [6.3, 8],
    lines: [{ unit: '1', factor: 1, offset: 0, source: commonPractice }],
  },
  bicarbonate: { label: 'Bicarbonate', unit: 'mmol/L', plausible: [1, 70] },
  ketones: { label: 'Beta-hydroxybutyrate in blood (ketones)', unit: 'mmol/L', plausible: [0, 30], molarMass: 104.1 },
  'osmolal-gap': { label: 'Osmolal gap', unit: 'mosm/kg', plausible: [-40, 600] },
  carboxyhaemoglobin: { label: 'Carboxyhaemoglobin', unit: '%', plausible: [0, 90] },
  chloride: { label: 'Chloride', unit: 'mmol/L', plausible: [40, 180], lines: milliequivalents(1) },
  'phenytoin-level': { label: 'Phenytoin in serum', unit: 'umol/L', plausible: [0, 800], molarMass: 252.27 },
  'lithium-level': { label: 'Lithium in serum', unit: 'mmol/L', plausible: [0, 15] },

  // Neurophysiology
  'motor-conduction-velocity-arm': {
    label: 'Motor conduction velocity in the arm',
    unit: 'm/s',
    plausible: [1, 100],
    source: recalled('saporta-2011', 'motor velocity of the arm: 38 m/s parts demyelinating from axonal neuropathy'),
  },

  // Bedside measurements
  'forced-vital-capacity': {
    label: 'Forced vital capacity',
    loinc: [
      loinc('19868-9', 'Forced vital capacity [Volume] Respiratory system by Spirometry'),
      loinc('19876-2', 'Forced vital capacity [Volume] Respiratory system by Spirometry --pre bronchodilation'),
    ],
    unit: 'L',
    plausible: [0.05, 12],
  },
  'vital-capacity-per-kg': { label: 'Vital capacity for body weight', unit: 'mL/kg', plausible: [0.5, 150] },
  'vital-capacity-fall-supine': {
    label: 'Fall of vital capacity on lying down',
    unit: '%',
    plausible: [-50, 100],
  },
  'max-inspiratory-pressure': {
    label: 'Maximal inspiratory pressure, as a positive number',
    unit: 'cm[H2O]',
    plausible: [0, 300],
  },
  'max-expiratory-pressure': { label: 'Maximal expiratory pressure', unit: 'cm[H2O]', plausible: [0, 400] },
  'single-breath-count': {
    label: 'Count reached on one breath',
    unit: '{count}',
    plausible: [0, 150],
  },
  'oxygen-saturation': {
    label: 'Oxygen saturation',
    loinc: [
      loinc('59408-5', 'Oxygen saturation in Arterial blood by Pulse oximetry'),
      loinc('2708-6', 'Oxygen saturation in Arterial blood'),
    ],
    unit: '%',
    plausible: [20, 100],
  },
  'respiratory-rate': {
    label: 'Respiratory rate',
    loinc: [loinc('9279-1', 'Respiratory rate')],
    unit: '/min',
    plausible: [0, 120],
  },
  'heart-rate': {
    label: 'Heart rate',
    loinc: [loinc('8867-4', 'Heart rate')],
    unit: '/min',
    plausible: [10, 350],
  },
  'body-temperature': {
    label: 'Body temperature',
    loinc: [loinc('8310-5', 'Body temperature')],
    unit: 'Cel',
    plausible: [20, 45],
  },
  'body-weight': {
    label: 'Body weight',
    loinc: [loinc('29463-7', 'Body weight')],
    unit: 'kg',
    plausible: [0.3, 700],
  },
  'systolic-pressure-supine': {
    label: 'Systolic pressure lying',
    loinc: [loinc('8461-6', 'Systolic blood pressure--supine')],
    unit: 'mm[Hg]',
    plausible: [30, 350],
  },
  'systolic-pressure-standing': {
    label: 'Systolic pressure standing',
    loinc: [loinc('8460-8', 'Systolic blood pressure--standing')],
    unit: 'mm[Hg]',
    plausible: [20, 350],
  },
  'post-void-residual': { label: 'Post-void residual volume', unit: 'mL', plausible: [0, 6000] },

  // Antibodies that come as a number
  'achr-antibody-level': {
    label: 'Acetylcholine receptor antibody, level',
    loinc: [loinc('20427-1', 'Acetylcholine receptor Ab [Moles/volume] in Serum')],
    unit: 'nmol/L',
    plausible: [0, 10_000],
  },
};

/** Results that come as a number with a unit. */
export const quantityResults: readonly QuantityResult[] = Object.entries(entries).map(([key, entry]) =>
  Object.freeze({ key, kind: 'quantity' as const, loinc: [], source: commonPractice, ...entry }),
);

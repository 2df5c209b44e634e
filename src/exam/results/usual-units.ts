import type { QuantityResult } from '../catalogue/results.ts';
import { unitsTaken } from './canonical-quantity.ts';

/**
 * UCUM codes in which laboratories and wards also report a result, by key, the commonest first. Common practice in the
 * United Kingdom, the United States and continental Europe. Any other unit of the same kind is taken as well.
 */
const alsoReportedIn: Readonly<Record<string, readonly string[]>> = {
  'glucose-fasting': ['mg/dL'],
  'glucose-random': ['mg/dL'],
  'glucose-2h': ['mg/dL'],
  'vitamin-b12': ['pg/mL', 'ng/L'],
  'methylmalonic-acid': ['nmol/L'],
  homocysteine: ['mg/L'],
  folate: ['ng/mL', 'ug/L'],
  'vitamin-b6': ['ug/L', 'ng/mL'],
  'vitamin-e': ['mg/L', 'mg/dL'],
  'vitamin-d': ['ng/mL'],
  copper: ['ug/dL', 'ug/L'],
  zinc: ['ug/dL', 'ug/L'],
  caeruloplasmin: ['mg/dL', 'mg/L'],
  lead: ['ug/dL', 'ug/L'],
  'free-t4': ['ng/dL'],
  cortisol: ['ug/dL'],
  calcium: ['mg/dL'],
  'ionised-calcium': ['mg/dL'],
  magnesium: ['mg/dL'],
  phosphate: ['mg/dL'],
  creatinine: ['mg/dL'],
  'urea-nitrogen': ['mg/dL'],
  alt: ['ukat/L'],
  ast: ['ukat/L'],
  ggt: ['ukat/L'],
  albumin: ['g/dL'],
  ammonia: ['ug/dL'],
  haemoglobin: ['g/dL'],
  'white-cells': ['10*3/uL', '/uL'],
  eosinophils: ['10*3/uL', '/uL'],
  platelets: ['10*3/uL', '/uL'],
  ferritin: ['ng/mL'],
  crp: ['mg/dL'],
  'complement-c3': ['mg/dL'],
  'complement-c4': ['mg/dL'],
  'monoclonal-protein': ['g/dL'],
  igm: ['mg/dL'],
  'creatine-kinase': ['ukat/L'],
  ldh: ['ukat/L'],
  lactate: ['mg/dL'],
  'phenytoin-level': ['mg/L', 'ug/mL'],
  'csf-protein': ['mg/dL', 'mg/L'],
  'csf-white-cells': ['/uL', '/mm3'],
  'csf-red-cells': ['/uL', '/mm3'],
  'csf-glucose': ['mg/dL'],
  'csf-lactate': ['mg/dL'],
  'csf-opening-pressure': ['mm[H2O]', 'mm[Hg]'],
  'forced-vital-capacity': ['mL'],
  'body-temperature': ['[degF]'],
  'body-weight': ['[lb_av]'],
  'max-inspiratory-pressure': ['kPa'],
  'max-expiratory-pressure': ['kPa'],
  'systolic-pressure-supine': ['kPa'],
  'systolic-pressure-standing': ['kPa'],
  'post-void-residual': ['L'],
};

/** Units to choose from for a result, the canonical one first; each is taken by `canonicalValue`. */
export function usualUnits(row: QuantityResult): readonly string[] {
  return [...new Set([row.unit, ...(alsoReportedIn[row.key] ?? []), ...unitsTaken(row)])];
}

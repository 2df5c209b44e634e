import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const sign = (name: string, side?: string) => ({ sign: name, present: true, ...(side === undefined ? {} : { side }) });
const measured = (key: string, value: number, unit: string) => ({
  key,
  valueQuantity: { value, unit, code: unit, system: 'http://unitsofmeasure.org' },
});

type Place = readonly [site: string, kind: SiteKind];
const brain: Place = ['diffuse-encephalopathy', 'encephalopathy'];
const movements: Place = ['hyperkinetic-syndrome', 'basal-ganglia'];
const muscle: Place = ['proximal-myopathy', 'muscle'];
const opticNerve: Place = ['optic-nerve', 'visual-pathway'];
const plexus: Place = ['upper-trunk', 'plexus'];

function ranked(at: Place, parts: Record<string, unknown>) {
  return rankCauses(bedsideExam(parts), localised(site(at[0], at[1], 1)));
}

describe('poisonings, eclampsia, withdrawal and the plexus under pressure', () => {
  it.each<[cause: string, at: Place, parts: Record<string, unknown>]>([
    [
      'carbon-monoxide-poisoning',
      brain,
      {
        history: { onset: { pace: 'hyperacute', durationDays: 0 }, symptoms: has('headache', 'nausea') },
        results: [measured('carboxyhaemoglobin', 27, '%')],
      },
    ],
    [
      'methanol-poisoning',
      opticNerve,
      {
        history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: has('visual-loss', 'vomiting') },
        results: [measured('osmolal-gap', 38, 'mosm/kg'), measured('blood-ph', 7.02, '[pH]')],
      },
    ],
    [
      'lithium-poisoning',
      brain,
      {
        history: { onset: { pace: 'acute', durationDays: 3 }, medications: has('lithium', 'ace-inhibitor') },
        results: [measured('lithium-level', 2.9, 'mmol/L')],
      },
    ],
    [
      'eclampsia',
      brain,
      {
        person: { ageYears: 24, sex: 'female' },
        history: {
          onset: { pace: 'hyperacute', durationDays: 0 },
          symptoms: has('seizure', 'headache'),
          conditions: has('pre-eclampsia'),
        },
        results: [{ key: 'urine-protein', value: 'raised' }],
      },
    ],
    [
      'positional-brachial-plexus-injury',
      plexus,
      {
        person: { ageYears: 55, sex: 'male' },
        history: { onset: { pace: 'acute', durationDays: 5 }, exposures: has('surgical-positioning') },
      },
    ],
    [
      'baclofen-withdrawal',
      brain,
      {
        history: {
          onset: { pace: 'acute', durationDays: 2 },
          symptoms: has('stiffness', 'seizure'),
          exposures: has('baclofen-withdrawal'),
        },
      },
    ],
    [
      'renal-tubular-acidosis-paralysis',
      muscle,
      {
        person: { ageYears: 41, sex: 'female' },
        history: { onset: { pace: 'acute', durationDays: 1 }, conditions: has('sjogren-syndrome') },
        results: [
          measured('potassium', 1.8, 'mmol/L'),
          measured('bicarbonate', 12, 'mmol/L'),
          measured('chloride', 115, 'mmol/L'),
        ],
      },
    ],
    [
      'posterior-ischaemic-optic-neuropathy',
      opticNerve,
      {
        person: { ageYears: 60, sex: 'male' },
        history: { onset: { pace: 'hyperacute', durationDays: 1 }, exposures: has('recent-surgery') },
        findings: {
          cranialNerves: [
            sign('reduced-visual-acuity', 'both'),
            { sign: 'optic-disc-swelling', side: 'both', present: false },
          ],
        },
      },
    ],
    [
      'sydenham-chorea',
      movements,
      {
        person: { ageYears: 9, sex: 'female' },
        history: { onset: { pace: 'subacute', durationDays: 21 }, conditions: has('streptococcal-infection') },
        results: [{ key: 'antistreptolysin', value: 'positive' }],
      },
    ],
    [
      'ataxia-telangiectasia',
      ['cerebellar-degeneration', 'cerebellum'],
      {
        person: { ageYears: 7, sex: 'male' },
        history: { onset: { pace: 'chronic', durationDays: 1500 } },
        findings: { inspection: [sign('conjunctival-telangiectasia')] },
      },
    ],
  ])('%s leads where its level or its story tells of it', (cause, at, parts) => {
    expect(ranked(at, parts)[0]?.key).toBe(cause);
  });
});

describe('a sign that tells of one cause', () => {
  it.each<[cause: string, at: Place, section: string, entry: unknown]>([
    ['hepatic-encephalopathy', brain, 'inspection', sign('jaundice')],
    ['hypertensive-encephalopathy', brain, 'cranialNerves', sign('retinal-haemorrhages', 'both')],
    ['serotonin-syndrome', brain, 'clonus', { site: 'ankle', side: 'both', beats: 9 }],
    ['acute-drug-dystonia', movements, 'involuntaryMovements', sign('oculogyric-crisis')],
    ['tetanus', movements, 'involuntaryMovements', sign('risus-sardonicus')],
    ['tetanus', movements, 'cranialNerves', sign('trismus')],
    ['autoimmune-encephalitis', brain, 'higherFunction', sign('delusions')],
    ['myotonic-dystrophy', ['myotonic-myopathy', 'muscle'], 'inspection', sign('temporal-wasting')],
    [
      'cluster-headache',
      ['oculosympathetic-chain', 'cranial-nerve'],
      'inspection',
      sign('tearing-or-runny-nostril', 'left'),
    ],
    ['organophosphate-poisoning', brain, 'autonomic', sign('hypersecretion')],
    ['thyroid-eye-disease', ['orbital-apex', 'cranial-nerve'], 'cranialNerves', sign('lid-lag', 'both')],
    ['parkinson-disease', ['akinetic-rigid-syndrome', 'basal-ganglia'], 'involuntaryMovements', sign('micrographia')],
    [
      'storage-disease-of-the-brain',
      ['cerebellar-degeneration', 'cerebellum'],
      'inspection',
      sign('tendon-xanthoma', 'both'),
    ],
    [
      'poems-syndrome',
      ['length-dependent-polyneuropathy', 'polyneuropathy'],
      'inspection',
      sign('skin-hyperpigmentation'),
    ],
  ])('raises %s', (cause, at, section, entry) => {
    const chance = (findings: Record<string, unknown>) =>
      ranked(at, { person: { ageYears: 40, sex: 'male' }, findings }).find(({ key }) => key === cause)?.probability ??
      0;
    const other = { gait: [sign('unable-to-walk')] };
    expect(chance({ ...other, [section]: [entry] })).toBeGreaterThan(chance(other));
  });
});

import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

const kinds: Readonly<Record<string, SiteKind>> = {
  'length-dependent-polyneuropathy': 'polyneuropathy',
  'sensory-polyneuropathy': 'polyneuropathy',
  'motor-polyneuropathy': 'polyneuropathy',
  'small-fibre-polyneuropathy': 'polyneuropathy',
  'autonomic-neuropathy': 'polyneuropathy',
  'demyelinating-polyradiculoneuropathy': 'polyradiculoneuropathy',
  'sensory-ganglionopathy': 'ganglion',
  'multiple-mononeuropathy': 'multiple-nerves',
  'spinal-cord-posterolateral': 'cord',
};

const yes = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const no = (...keys: readonly string[]) => keys.map((key) => ({ key, present: false }));
const like = (relation: string, key = 'similar-disorder') => ({ key, present: true, relation });
const person = (ageYears: number, sex: 'male' | 'female') => ({ ageYears, sex });
const since = (pace: string, durationDays: number, course = 'progressive') => ({
  onset: { pace, durationDays },
  course,
});
const value = (key: string, said: string) => ({ key, value: said });
const number = (key: string, measured: number, unit: string) => ({
  key,
  valueQuantity: { value: measured, unit, system: 'http://unitsofmeasure.org', code: unit },
});
const velocity = (metres: number) => number('motor-conduction-velocity-arm', metres, 'm/s');
const oldFeet = {
  inspection: [
    { sign: 'pes-cavus', side: 'both', present: true },
    { sign: 'hammer-toes', side: 'both', present: true },
  ],
};
const inspect = (sign: string, side?: string) => ({
  inspection: [{ sign, present: true, ...(side === undefined ? {} : { side }) }],
});

const ranked = (place: string, parts: Record<string, unknown>) =>
  rankCauses(bedsideExam(parts), localised(site(place, kinds[place] ?? 'polyneuropathy')));
const leading = (place: string, parts: Record<string, unknown>, count = 3) =>
  ranked(place, parts)
    .slice(0, count)
    .map(({ key }) => key);

const distal = 'length-dependent-polyneuropathy';
const cmt1 = 'charcot-marie-tooth-disease-type-1';
const cmt2 = 'charcot-marie-tooth-disease-type-2';
const cmtX = 'charcot-marie-tooth-disease-x-linked';

describe('causes of neuropathy', () => {
  // Adams and Victor and the works beside the rows tell these pictures; persons and numbers are invented.
  it.each([
    // Visser et al. 2015: diabetes 32 %, idiopathic 26 % of new polyneuropathy.
    [
      'diabetes',
      distal,
      'diabetic-polyneuropathy',
      {
        person: person(62, 'male'),
        history: { ...since('chronic', 900), conditions: yes('diabetes-mellitus') },
        results: [number('hba1c', 8.4, '%')],
      },
    ],
    [
      'nothing found at 74',
      distal,
      'chronic-idiopathic-axonal-polyneuropathy',
      {
        person: person(74, 'male'),
        history: {
          ...since('chronic', 1500),
          conditions: no('diabetes-mellitus'),
          exposures: no('alcohol-excess'),
          family: no('similar-disorder'),
        },
        results: [
          number('hba1c', 5.4, '%'),
          number('vitamin-b12', 380, 'pmol/L'),
          value('serum-immunofixation', 'normal'),
          value('nerve-conduction-pattern', 'axonal'),
        ],
      },
    ],
    // Hanewinckel et al. 2016.
    [
      'alcohol',
      distal,
      'alcohol-related-neuropathy',
      {
        person: person(52, 'male'),
        history: { ...since('chronic', 700), exposures: yes('alcohol-excess'), symptoms: yes('burning-feet') },
        results: [number('hba1c', 5.2, '%'), number('mcv', 104, 'fL')],
      },
    ],
    // NICE NG239: metformin, and B12 under 133 pmol/L.
    [
      'lack of vitamin B12',
      distal,
      'vitamin-b12-deficiency',
      {
        person: person(67, 'female'),
        history: { ...since('subacute', 150), medications: yes('metformin'), conditions: yes('pernicious-anaemia') },
        results: [number('vitamin-b12', 85, 'pmol/L'), number('mcv', 112, 'fL')],
      },
    ],
    [
      'vincristine',
      distal,
      'chemotherapy-neuropathy',
      {
        person: person(45, 'female'),
        history: { ...since('subacute', 60), conditions: yes('lymphoma'), medications: yes('vincristine') },
      },
    ],
    // EAN/PNS guideline on CIDP 2021, differential diagnosis: anti-MAG neuropathy is sensory, ataxic and tremulous.
    [
      'IgM and tremor',
      'sensory-polyneuropathy',
      'anti-mag-neuropathy',
      {
        person: person(70, 'male'),
        history: { ...since('chronic', 1200), symptoms: yes('unsteadiness', 'tremor') },
        results: [
          value('serum-immunofixation', 'igm-kappa'),
          value('nerve-conduction-pattern', 'demyelinating-uniform'),
        ],
      },
    ],
    [
      'vitamin B6 taken for years',
      'sensory-polyneuropathy',
      'vitamin-b6-neuropathy',
      {
        person: person(48, 'female'),
        history: { ...since('chronic', 400), conditions: no('diabetes-mellitus'), exposures: yes('pyridoxine-excess') },
        results: [value('nerve-conduction-pattern', 'sensory-only'), number('hba1c', 5.2, '%')],
      },
    ],
    // England et al. 2009: glucose tolerance in painful sensory neuropathy.
    [
      'impaired glucose tolerance',
      'small-fibre-polyneuropathy',
      'prediabetic-neuropathy',
      {
        person: person(58, 'male'),
        history: { ...since('chronic', 500), symptoms: yes('burning-feet'), conditions: yes('obesity') },
        results: [number('glucose-2h', 9.2, 'mmol/L'), number('hba1c', 6.1, '%')],
      },
    ],
    [
      'pain since boyhood with angiokeratomas',
      'small-fibre-polyneuropathy',
      'fabry-disease',
      {
        person: person(24, 'male'),
        history: { ...since('chronic', 5000), symptoms: yes('neuropathic-pain', 'altered-sweating') },
        findings: inspect('angiokeratoma'),
      },
    ],
    [
      'pain after fast control of glucose',
      'small-fibre-polyneuropathy',
      'treatment-induced-neuropathy-of-diabetes',
      {
        person: person(29, 'female'),
        history: {
          ...since('acute', 30),
          conditions: yes('diabetes-mellitus', 'rapid-glucose-control'),
          symptoms: yes('neuropathic-pain'),
        },
      },
    ],
    [
      'carpal tunnels, heart and gut with affected kin',
      'small-fibre-polyneuropathy',
      'hereditary-transthyretin-amyloidosis',
      {
        person: person(55, 'male'),
        history: {
          ...since('chronic', 700),
          conditions: yes('carpal-tunnel-syndrome', 'cardiomyopathy'),
          symptoms: yes('early-satiety', 'light-headed-on-standing', 'weight-loss'),
          family: [like('parent', 'cardiomyopathy-or-sudden-death')],
        },
        results: [value('serum-immunofixation', 'normal')],
      },
    ],
    [
      'light chain and failing heart',
      'autonomic-neuropathy',
      'al-amyloidosis',
      {
        person: person(66, 'male'),
        history: {
          ...since('chronic', 400),
          conditions: [...yes('heart-failure'), ...no('diabetes-mellitus')],
          symptoms: yes('light-headed-on-standing', 'weight-loss'),
        },
        results: [value('serum-immunofixation', 'light-chain')],
      },
    ],
    [
      'faints for years and nothing else',
      'autonomic-neuropathy',
      'pure-autonomic-failure',
      {
        person: person(68, 'male'),
        history: {
          ...since('chronic', 2000),
          symptoms: [...yes('syncope', 'light-headed-on-standing'), ...no('numbness', 'weight-loss')],
          conditions: no('diabetes-mellitus'),
          medications: no('alpha-blocker', 'diuretic'),
        },
      },
    ],
    [
      'dry mouth, ileus and wide pupils after an infection',
      'autonomic-neuropathy',
      'autoimmune-autonomic-ganglionopathy',
      {
        person: person(42, 'female'),
        history: {
          ...since('acute', 20),
          symptoms: yes('preceding-infection', 'dry-mouth', 'early-satiety', 'syncope'),
          conditions: no('diabetes-mellitus'),
        },
        findings: { cranialNerves: [{ sign: 'unreactive-pupil', side: 'both', present: true }] },
      },
    ],
    [
      'wrist drop in a battery worker',
      'motor-polyneuropathy',
      'lead-neuropathy',
      {
        person: person(41, 'male'),
        history: { ...since('subacute', 120), exposures: yes('lead'), symptoms: yes('abdominal-pain') },
        findings: inspect('wrist-drop', 'both'),
      },
    ],
    [
      'belly pain, then weakness',
      'motor-polyneuropathy',
      'acute-porphyria',
      {
        person: person(27, 'female'),
        history: { ...since('acute', 10), symptoms: yes('abdominal-pain', 'dark-urine', 'behaviour-change') },
        results: [number('sodium', 122, 'mmol/L')],
      },
    ],
    // EAN/PNS guideline on Guillain-Barré syndrome 2023: variants, antecedent events.
    [
      'weakness without numbness after diarrhoea',
      'motor-polyneuropathy',
      'acute-motor-axonal-neuropathy',
      {
        person: person(23, 'male'),
        history: { ...since('acute', 6), symptoms: [...yes('preceding-gastroenteritis'), ...no('numbness')] },
        results: [value('nerve-conduction-pattern', 'motor-only-axonal'), value('anti-gm1', 'positive')],
      },
    ],
    [
      'paranodal antibody',
      'demyelinating-polyradiculoneuropathy',
      'autoimmune-nodopathy',
      {
        person: person(33, 'male'),
        history: { ...since('subacute', 90), symptoms: yes('tremor', 'unsteadiness') },
        results: [value('nodal-antibody', 'positive'), value('nerve-conduction-pattern', 'demyelinating-non-uniform')],
      },
    ],
    [
      'lambda chain, many platelets, swollen legs',
      'demyelinating-polyradiculoneuropathy',
      'poems-syndrome',
      {
        person: person(51, 'male'),
        history: { ...since('subacute', 150), symptoms: yes('weight-loss') },
        findings: inspect('oedema', 'both'),
        results: [
          value('serum-immunofixation', 'iga-lambda'),
          number('platelets', 610, '10*9/L'),
          value('nerve-conduction-pattern', 'demyelinating-uniform'),
        ],
      },
    ],
    [
      'weak palate after diphtheria',
      'demyelinating-polyradiculoneuropathy',
      'diphtheritic-neuropathy',
      {
        person: person(19, 'male'),
        history: {
          ...since('subacute', 40),
          conditions: yes('diphtheria'),
          symptoms: yes('dysphagia', 'voice-change'),
        },
        findings: { cranialNerves: [{ sign: 'palatal-weakness', side: 'both', present: true }] },
      },
    ],
    // Collins et al. 2010 on vasculitic neuropathy: painful, stepwise, with raised inflammatory markers.
    [
      'purpura and asthma',
      'multiple-mononeuropathy',
      'vasculitic-neuropathy',
      {
        person: person(58, 'female'),
        history: { ...since('acute', 25), conditions: yes('asthma'), symptoms: yes('neuropathic-pain', 'rash') },
        results: [number('crp', 88, 'mg/L'), value('anca', 'positive')],
      },
    ],
    // EFNS/PNS guideline 2010 on multifocal motor neuropathy.
    [
      'block without numbness',
      'multiple-mononeuropathy',
      'multifocal-motor-neuropathy',
      {
        person: person(43, 'male'),
        history: { ...since('chronic', 800), symptoms: no('numbness', 'neuropathic-pain') },
        results: [value('nerve-conduction-pattern', 'motor-conduction-block')],
      },
    ],
    // EAN/PNS guideline on CIDP 2021: multifocal variant.
    [
      'patchy demyelination with numbness',
      'multiple-mononeuropathy',
      'multifocal-cidp',
      {
        person: person(50, 'male'),
        history: { ...since('subacute', 200), symptoms: [...yes('numbness'), ...no('neuropathic-pain')] },
        results: [value('nerve-conduction-pattern', 'demyelinating-non-uniform'), number('crp', 2, 'mg/L')],
      },
    ],
    [
      'pale patches and thick nerves',
      'multiple-mononeuropathy',
      'leprosy',
      {
        person: person(31, 'male'),
        history: { ...since('chronic', 900), exposures: yes('travel'), symptoms: yes('painless-injury') },
        findings: {
          inspection: [
            { sign: 'hypopigmented-patch', present: true },
            { sign: 'thickened-nerve', present: true },
          ],
        },
      },
    ],
    // Szigeti and Lupski 2009: PMP22 deletion.
    [
      'palsies after pressure in the family',
      'multiple-mononeuropathy',
      'hereditary-neuropathy-with-liability-to-pressure-palsies',
      {
        person: person(26, 'male'),
        history: {
          ...since('hyperacute', 20, 'relapsing-remitting'),
          conditions: yes('previous-pressure-palsy'),
          family: [like('parent', 'pressure-palsies')],
        },
      },
    ],
    // Preston and Shapiro, sensory neuronopathy: cancer, Sjögren syndrome, platinum, pyridoxine.
    [
      'smoker who loses weight',
      'sensory-ganglionopathy',
      'paraneoplastic-sensory-neuronopathy',
      {
        person: person(64, 'female'),
        history: { ...since('subacute', 70), exposures: yes('tobacco'), symptoms: yes('weight-loss') },
      },
    ],
    [
      'dry eyes and anti-Ro',
      'sensory-ganglionopathy',
      'sjogren-syndrome',
      {
        person: person(52, 'female'),
        history: { ...since('subacute', 200), symptoms: yes('dry-eyes', 'dry-mouth') },
        results: [value('anti-ro', 'positive')],
      },
    ],
    [
      'cisplatin',
      'sensory-ganglionopathy',
      'platinum-ganglionopathy',
      {
        person: person(57, 'male'),
        history: { ...since('subacute', 90), conditions: yes('cancer'), medications: yes('cisplatin') },
      },
    ],
  ])('knows the picture: %s', (_, place, cause, parts) => {
    expect(leading(place, parts, 1)).toEqual([cause]);
  });

  // Saporta et al. 2011: motor velocity of the arm under 38 m/s in type 1, 30 to 45 m/s in X-linked, kept in type 2.
  describe('Charcot-Marie-Tooth disease', () => {
    const slow = (...results: readonly unknown[]) => ({
      person: person(34, 'male'),
      history: { ...since('chronic', 7000), family: [like('sibling')] },
      findings: oldFeet,
      results,
    });
    it.each([
      ['22 m/s', velocity(22), cmt1],
      ['uniform slowing', value('nerve-conduction-pattern', 'demyelinating-uniform'), cmt1],
      ['52 m/s', velocity(52), cmt2],
      ['an axonal pattern', value('nerve-conduction-pattern', 'axonal'), cmt2],
      ['41 m/s', velocity(41), cmtX],
    ])('is parted by conduction: %s', (_, result, expected) => {
      expect(leading(distal, slow(result), 1)).toEqual([expected]);
    });

    it('is parted by the gene, whatever was thought before', () => {
      const genes = [
        ['pmp22-duplication', cmt1],
        ['gjb1-variant', cmtX],
        ['mfn2-variant', cmt2],
      ] as const;
      for (const [gene, expected] of genes) {
        expect(leading(distal, slow(value('genetic-test', gene)), 1), gene).toEqual([expected]);
      }
    });

    it('is not ousted by inflammation when slowing is uniform and feet are old, and yields when slowing is patchy', () => {
      const roots = 'demyelinating-polyradiculoneuropathy';
      const uniform = slow(value('nerve-conduction-pattern', 'demyelinating-uniform'));
      expect(leading(roots, uniform, 1)).toEqual([cmt1]);
      const patchy = {
        person: person(56, 'male'),
        history: { ...since('subacute', 150), family: no('similar-disorder') },
        results: [value('nerve-conduction-pattern', 'demyelinating-non-uniform')],
      };
      expect(leading(roots, patchy, 1)).toEqual(['chronic-inflammatory-demyelinating-polyradiculoneuropathy']);
    });

    // Found late: the feet are older than the complaint.
    const late = {
      person: person(67, 'female'),
      history: {
        ...since('chronic', 1100),
        conditions: no('diabetes-mellitus'),
        exposures: no('alcohol-excess'),
      },
      findings: oldFeet,
      results: [
        number('hba1c', 5.3, '%'),
        number('glucose-fasting', 5.1, 'mmol/L'),
        number('vitamin-b12', 420, 'pmol/L'),
      ],
    };

    it('leads late in life when the feet are deformed since long and common causes were sought in vain', () => {
      expect(leading(distal, late, 1)[0]).toMatch(/^charcot-marie-tooth-disease/);
    });

    it('is raised further by relatives, and lowered when they are well', () => {
      const share = (family: readonly unknown[]) =>
        ranked(distal, { ...late, history: { ...late.history, family } })
          .filter(({ key }) => key.startsWith('charcot'))
          .reduce((sum, { probability }) => sum + probability, 0);
      expect(share([like('parent')])).toBeGreaterThan(share([]));
      expect(share(no('similar-disorder'))).toBeLessThan(share([]));
    });

    it('says which foot, which relative and which number speak for it', () => {
      const [first] = ranked(distal, slow(velocity(22)));
      const pointers = first?.supporting.map(({ pointer }) => pointer);
      expect(pointers).toContain('/findings/inspection/0');
      expect(pointers).toContain('/history/family/0');
      expect(pointers).toContain('/results/0');
    });

    it('leads with type 1 in a young person of an affected family, the other types close behind', () => {
      const young = { person: person(20, 'male'), history: { ...since('chronic', 3000), family: [like('parent')] } };
      const types = leading(distal, young, 5);
      expect(types[0]).toBe(cmt1);
      expect(types).toEqual(expect.arrayContaining([cmt2, cmtX]));
    });
  });

  // A normal result lowers; none removes.
  it.each([
    ['HbA1c', distal, 'diabetic-polyneuropathy', number('hba1c', 5.2, '%')],
    ['vitamin B12', 'spinal-cord-posterolateral', 'vitamin-b12-deficiency', number('vitamin-b12', 300, 'pmol/L')],
  ])('keeps what a normal result does not exclude: %s', (_, place, cause, normal) => {
    const chance = (results: readonly unknown[]) =>
      ranked(place, { person: person(66, 'male'), history: since('chronic', 800), results }).find(
        ({ key }) => key === cause,
      )?.probability ?? 0;
    expect(chance([normal])).toBeLessThan(chance([]));
    expect(chance([normal])).toBeGreaterThan(0);
  });

  // Mendel: type 1 goes from parent to child; a man has his X chromosome, and with it GJB1, from his mother's side.
  it('reads the family tree', () => {
    const share = (cause: string, relation: string) =>
      ranked('motor-polyneuropathy', {
        person: person(30, 'male'),
        history: { ...since('chronic', 5000), family: [like(relation)] },
        findings: oldFeet,
      }).find(({ key }) => key === cause)?.probability ?? 0;
    expect(share(cmt1, 'parent')).toBeGreaterThan(share(cmt1, 'aunt-or-uncle'));
    expect(share(cmtX, 'aunt-or-uncle')).toBeGreaterThan(share(cmtX, 'parent'));
  });
});

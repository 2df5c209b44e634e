import { read, recalled } from '../kernel/cite.ts';
import { type BedsideFacts, isOneCranialNerveAlone } from './bedside-facts.ts';
import type { WorkupRule } from './workup-rule.ts';

const dsp = read('aan-dsp-laboratory-2009', 'tests of highest yield');
const gbs = read('ean-pns-gbs-2023');
const emgBook = recalled('preston-shapiro');
const symmetricNeuropathies = [
  'length-dependent-polyneuropathy',
  'sensory-polyneuropathy',
  'small-fibre-polyneuropathy',
];

/** Motor velocity of the arm below which nerves are called demyelinated in hereditary neuropathy. */
const slowVelocity = 38;

function armVelocity({ query }: BedsideFacts): number | undefined {
  return query.quantity('motor-conduction-velocity-arm', 'm/s')?.value;
}

function isUniformlySlow(facts: BedsideFacts): boolean {
  const velocity = armVelocity(facts);
  if (velocity !== undefined) return velocity < slowVelocity;
  return facts.query.result('nerve-conduction-pattern')?.value === 'demyelinating-uniform';
}

/** A purely motor, painless loss is no vasculitis. */
function isPainfulOrNumb({ query, told }: BedsideFacts): boolean {
  const numb = query.abnormalWhere(({ item }) => item.section === 'sensation');
  return numb.length > 0 || told('neuropathic-pain', 'leg-pain', 'arm-pain', 'foot-pain', 'numbness').length > 0;
}

function isAxonal(facts: BedsideFacts): boolean {
  const velocity = armVelocity(facts);
  if (velocity !== undefined) return velocity >= slowVelocity;
  return facts.query.result('nerve-conduction-pattern')?.value === 'axonal';
}

/** Hands or feet that drop, as far as nothing speaks for the upper motor neuron. */
function dropsLimply({ query, upperMotorSigns }: BedsideFacts): boolean {
  const drops = ['inspection/foot-drop', 'inspection/wrist-drop', 'inspection/finger-drop'];
  return query.abnormal(drops).length > 0 && upperMotorSigns.length === 0;
}

/** Tests for disease of many nerves, of roots and nerves together, and of ganglia. */
export const neuropathyTests: readonly WorkupRule[] = [
  // Polyneuropathy
  {
    tests: ['nerve-conduction-study'],
    causes: [
      'chemotherapy-neuropathy',
      'drug-induced-polyneuropathy',
      'fibular-compression-at-fibular-neck',
      'multifocal-motor-neuropathy',
      'vasculitic-neuropathy',
      'guillain-barre-syndrome',
      'chronic-inflammatory-demyelinating-polyradiculoneuropathy',
    ],
    when: (facts) => facts.weakLimbs.length > 0 || dropsLimply(facts),
    tier: 2,
    priority: 'routine',
    because: 'shows which nerves suffer, and whether axon or myelin',
    source: emgBook,
  },
  {
    tests: ['nerve-conduction-study', 'electromyography'],
    kinds: [
      'polyneuropathy',
      'multiple-nerves',
      'polyradiculoneuropathy',
      'anterior-horn',
      'motor-neuron-system',
      'root',
    ],
    when: dropsLimply,
    tier: 2,
    priority: 'routine',
    because: 'a hand or foot that drops: nerve, root, anterior horn or muscle',
    source: emgBook,
  },
  {
    tests: ['heavy-metals'],
    kinds: ['polyneuropathy', 'multiple-nerves', 'anterior-horn', 'motor-neuron-system', 'cord', 'nerve', 'muscle'],
    when: (facts) =>
      dropsLimply(facts) && facts.told('abdominal-pain').length > 0 && facts.exam.onset.pace !== 'hyperacute',
    tier: 2,
    priority: 'routine',
    because: 'colic with hands or feet that drop: lead',
    source: recalled('adams-victor', 'neuropathies of metals'),
  },
  {
    tests: ['nerve-conduction-study', 'anti-ro-antibody', 'paraneoplastic-antibodies'],
    sites: ['spinal-cord-posterior'],
    when: ({ reducedReflexes, upperMotorSigns }) => reducedReflexes.length > 0 && upperMotorSigns.length === 0,
    tier: 2,
    priority: 'routine',
    because: 'limbs that have lost position sense and jerks: the sensory ganglia rather than the columns',
    source: emgBook,
  },
  {
    tests: ['glucose-or-hba1c', 'vitamin-b12', 'methylmalonic-acid', 'serum-immunofixation'],
    sites: symmetricNeuropathies,
    tier: 1,
    priority: 'routine',
    because:
      'glucose, vitamin B12 with methylmalonic acid, and immunofixation have the highest yield in distal symmetric polyneuropathy',
    source: dsp,
  },
  {
    tests: [
      'full-blood-count',
      'renal-function',
      'thyroid-stimulating-hormone',
      'erythrocyte-sedimentation-rate',
      'tissue-transglutaminase-antibody',
    ],
    sites: symmetricNeuropathies,
    tier: 2,
    priority: 'routine',
    because: 'second-line blood tests of a symmetrical polyneuropathy',
    source: recalled('nice-ng127', 'sensory symptoms'),
  },
  {
    tests: ['nerve-conduction-study'],
    kinds: ['polyneuropathy'],
    tier: 2,
    priority: 'routine',
    because:
      'shows fibre type and whether axon or myelin is lost; needed when the picture is motor, atypical or severe',
    source: emgBook,
  },
  {
    tests: ['glucose-tolerance-test', 'skin-biopsy', 'autonomic-tests'],
    sites: ['small-fibre-polyneuropathy'],
    tier: 2,
    priority: 'routine',
    because: 'nerve conduction does not see small fibres',
    source: read('aan-dsp-autonomic-2009'),
  },
  {
    tests: ['nerve-conduction-study', 'electromyography'],
    sites: ['motor-polyneuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'purely motor weakness calls for a search for conduction block and for motor neuron disease',
    source: read('mmn-efns-2010'),
  },
  {
    tests: ['ttr-gene', 'free-light-chains', 'electrocardiogram', 'lying-standing-blood-pressure'],
    causes: ['hereditary-transthyretin-amyloidosis', 'al-amyloidosis'],
    tier: 2,
    priority: 'urgent',
    because: 'amyloid neuropathy is treatable and progresses fast',
    source: recalled('adams-victor', 'amyloid neuropathy'),
  },
  {
    tests: ['homocysteine', 'copper-and-zinc'],
    causes: ['vitamin-b12-deficiency', 'nitrous-oxide-myeloneuropathy', 'copper-deficiency'],
    tier: 2,
    priority: 'urgent',
    because: 'a shortage that can be replaced',
    source: read('nice-ng239'),
  },
  {
    tests: ['anti-mag-antibody'],
    causes: ['anti-mag-neuropathy'],
    tier: 3,
    priority: 'routine',
    because: 'for an IgM paraprotein',
    source: recalled('ean-pns-cidp-2021'),
  },
  {
    tests: ['lumbar-puncture'],
    causes: [
      'guillain-barre-syndrome',
      'acute-motor-axonal-neuropathy',
      'miller-fisher-syndrome',
      'chronic-inflammatory-demyelinating-polyradiculoneuropathy',
      'multifocal-cidp',
      'autoimmune-nodopathy',
      'neuroborreliosis',
      'cytomegalovirus-polyradiculitis',
    ],
    when: ({ kindProbability }) => kindProbability('polyradiculoneuropathy', 'root', 'cauda-equina', 'meninges') >= 0.3,
    tier: 2,
    priority: 'urgent',
    because: 'protein without cells in inflamed roots; cells speak for infection or cancer',
    source: gbs,
  },
  {
    tests: ['nerve-conduction-study'],
    kinds: ['polyradiculoneuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'shows demyelination of roots and nerves',
    source: gbs,
  },
  {
    tests: ['vital-capacity', 'electrocardiogram'],
    causes: ['guillain-barre-syndrome'],
    when: (facts) => !isOneCranialNerveAlone(facts),
    tier: 1,
    priority: 'urgent',
    because: 'breathing and heart rhythm may fail',
    source: gbs,
  },
  {
    tests: ['ganglioside-gq1b-antibody'],
    causes: ['miller-fisher-syndrome'],
    tier: 2,
    priority: 'urgent',
    because: 'raised in Miller Fisher syndrome',
    source: gbs,
  },
  {
    tests: ['urine-porphobilinogen'],
    causes: ['acute-porphyria'],
    tier: 3,
    priority: 'urgent',
    because: 'porphyria imitates Guillain-Barré syndrome',
    source: recalled('adams-victor', 'porphyric polyneuropathy'),
  },
  {
    tests: ['serum-immunofixation', 'free-light-chains'],
    causes: [
      'chronic-inflammatory-demyelinating-polyradiculoneuropathy',
      'poems-syndrome',
      'paraproteinaemic-neuropathy',
    ],
    tier: 1,
    priority: 'urgent',
    because: 'a paraprotein changes the diagnosis and the treatment',
    source: read('ean-pns-cidp-2021'),
  },
  {
    tests: ['nodal-paranodal-antibodies'],
    causes: ['chronic-inflammatory-demyelinating-polyradiculoneuropathy'],
    tier: 3,
    priority: 'routine',
    because: 'for tremor, ataxia or poor response to immunoglobulin',
    source: read('ean-pns-cidp-2021'),
  },
  {
    tests: [
      'nerve-conduction-study',
      'erythrocyte-sedimentation-rate',
      'c-reactive-protein',
      'antineutrophil-cytoplasmic-antibody',
      'antinuclear-antibody',
      'hepatitis-c-antibody',
      'cryoglobulins',
      'glucose-or-hba1c',
    ],
    kinds: ['multiple-nerves'],
    // Nerves that fail one after the other within weeks are infarcted ones, whether anybody has asked for pain or tried the skin.
    when: (facts) => isPainfulOrNumb(facts) || facts.beganWithin(92) === 'yes',
    tier: 1,
    priority: 'urgent',
    because: 'several named nerves: vasculitis must be excluded',
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    tests: ['nerve-biopsy'],
    causes: ['vasculitic-neuropathy'],
    tier: 3,
    priority: 'urgent',
    because: 'proof of vasculitis in an affected nerve',
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    tests: ['ganglioside-gm1-antibody'],
    causes: ['multifocal-motor-neuropathy'],
    tier: 2,
    priority: 'routine',
    because: 'supports multifocal motor neuropathy',
    source: read('mmn-efns-2010'),
  },
  {
    tests: [
      'nerve-conduction-study',
      'anti-ro-antibody',
      'hiv-test',
      'syphilis-serology',
      'paraneoplastic-antibodies',
      'ct-chest',
    ],
    kinds: ['ganglion'],
    tier: 1,
    priority: 'urgent',
    because: 'a sensory ganglionopathy may reveal Sjögren syndrome or a cancer',
    source: emgBook,
  },

  // By cause, and by the results that are back
  {
    tests: ['glucose-tolerance-test'],
    sites: ['sensory-polyneuropathy', 'length-dependent-polyneuropathy'],
    when: ({ query }) => query.result('hba1c') !== undefined || query.result('glucose-fasting') !== undefined,
    tier: 2,
    priority: 'routine',
    because: 'a normal fasting glucose does not exclude impaired tolerance in a sensory, painful neuropathy',
    source: read('aan-dsp-laboratory-2009'),
  },
  {
    tests: ['methylmalonic-acid', 'homocysteine'],
    kinds: ['polyneuropathy'],
    when: ({ query }) => {
      const b12 = query.quantity('vitamin-b12', 'pmol/L');
      return b12 !== undefined && b12.value >= 133 && b12.value < 258;
    },
    tier: 1,
    priority: 'routine',
    because: 'a vitamin B12 in the borderline range does not exclude a shortage',
    source: recalled('nice-ng239', 'total B12 133 to 258 pmol/L'),
  },
  {
    tests: ['free-light-chains', 'anti-mag-antibody'],
    kinds: ['polyneuropathy', 'polyradiculoneuropathy'],
    when: ({ query }) => {
      const found = query.result('serum-immunofixation')?.value;
      return found !== undefined && found !== 'normal';
    },
    tier: 2,
    priority: 'urgent',
    because: 'a paraprotein is there: which disease does it make',
    source: recalled('ean-pns-cidp-2021'),
  },
  {
    tests: ['pmp22-gene'],
    causes: ['charcot-marie-tooth-disease-type-1'],
    when: isUniformlySlow,
    tier: 2,
    priority: 'routine',
    because: 'slowing below 38 m/s alike in all nerves: PMP22 first, found in 70 % of type 1',
    source: read('saporta-2011'),
  },
  {
    tests: ['pmp22-gene'],
    causes: ['hereditary-neuropathy-with-liability-to-pressure-palsies'],
    tier: 2,
    priority: 'routine',
    because: 'palsies at places of pressure that recover',
    source: read('saporta-2011'),
  },
  {
    tests: ['gjb1-gene'],
    causes: ['charcot-marie-tooth-disease-x-linked'],
    when: ({ query }) =>
      query.result('nerve-conduction-pattern') !== undefined ||
      query.quantity('motor-conduction-velocity-arm', 'm/s') !== undefined,
    tier: 2,
    priority: 'routine',
    because: 'intermediate velocities, or no father who passed it to a son',
    source: read('saporta-2011'),
  },
  {
    tests: ['axonal-neuropathy-genes'],
    causes: ['charcot-marie-tooth-disease-type-2'],
    when: isAxonal,
    tier: 2,
    priority: 'routine',
    because: 'velocities are kept: the axonal genes',
    source: read('saporta-2011'),
  },
  {
    tests: ['nerve-conduction-study'],
    causes: [
      'charcot-marie-tooth-disease-type-1',
      'charcot-marie-tooth-disease-type-2',
      'charcot-marie-tooth-disease-x-linked',
      'hereditary-neuropathy-with-liability-to-pressure-palsies',
      'distal-hereditary-motor-neuropathy',
    ],
    tier: 1,
    priority: 'routine',
    because: 'the conduction velocity chooses the gene to test first',
    source: read('saporta-2011'),
  },
  {
    tests: ['pmp22-and-neuropathy-genes'],
    causes: [
      'charcot-marie-tooth-disease-type-1',
      'charcot-marie-tooth-disease-type-2',
      'charcot-marie-tooth-disease-x-linked',
      'distal-hereditary-motor-neuropathy',
      'hereditary-sensory-autonomic-neuropathy',
    ],
    tier: 3,
    priority: 'routine',
    because: 'after the conduction study; new mutations occur without a family history',
    source: read('saporta-2011'),
  },
  {
    tests: [
      'lying-standing-blood-pressure',
      'glucose-or-hba1c',
      'serum-immunofixation',
      'free-light-chains',
      'autonomic-tests',
    ],
    sites: ['autonomic-neuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'autonomic failure: diabetes and amyloid first',
    source: read('aan-dsp-autonomic-2009'),
  },
  {
    tests: ['ganglionic-antibody'],
    causes: ['autoimmune-autonomic-ganglionopathy'],
    tier: 2,
    priority: 'urgent',
    because: 'an acute loss of autonomic function may be immune',
    source: recalled('adams-victor', 'autonomic failure'),
  },
  {
    tests: ['fat-biopsy', 'ttr-gene', 'echocardiogram'],
    causes: ['al-amyloidosis', 'hereditary-transthyretin-amyloidosis'],
    tier: 2,
    priority: 'urgent',
    because: 'proof and type of amyloid',
    source: recalled('adams-victor', 'amyloid neuropathy'),
  },
  {
    tests: ['vascular-endothelial-growth-factor', 'full-blood-count', 'skeletal-survey'],
    causes: ['poems-syndrome'],
    tier: 2,
    priority: 'urgent',
    because: 'raised in POEMS syndrome, with the platelets',
    source: recalled('ean-pns-cidp-2021'),
  },
  {
    tests: ['anti-ro-antibody'],
    sites: ['small-fibre-polyneuropathy'],
    causes: ['sjogren-syndrome'],
    tier: 2,
    priority: 'routine',
    because: 'small fibres and ganglia suffer in Sjögren syndrome',
    source: read('aan-dsp-autonomic-2009'),
  },
  {
    tests: ['alpha-galactosidase'],
    causes: ['fabry-disease'],
    tier: 3,
    priority: 'routine',
    because: 'burning since boyhood',
    source: recalled('adams-victor', 'Fabry disease'),
  },
  {
    tests: ['phytanic-acid'],
    causes: ['refsum-disease'],
    tier: 3,
    priority: 'routine',
    because: 'ataxia, scaly skin and night blindness',
    source: recalled('adams-victor', 'Refsum disease'),
  },
  {
    tests: ['heavy-metals'],
    causes: ['lead-neuropathy', 'arsenic-neuropathy', 'thallium-neuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'the metal must be measured before it is gone',
    source: recalled('adams-victor', 'neuropathies of metals'),
  },
  {
    tests: ['vitamin-b6'],
    causes: ['vitamin-b6-neuropathy'],
    tier: 2,
    priority: 'routine',
    because: 'too much or too little',
    source: recalled('preston-shapiro'),
  },
  {
    tests: ['thiamine'],
    causes: ['thiamine-deficiency-neuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'beriberi is treated before the result',
    source: recalled('caine-1997'),
  },
  {
    tests: ['skin-smear'],
    causes: ['leprosy'],
    tier: 1,
    priority: 'urgent',
    because: 'leprosy is cured',
    source: recalled('adams-victor', 'leprous neuritis'),
  },
  {
    tests: ['vasculitis-urine', 'full-blood-count', 'renal-function', 'hiv-test'],
    kinds: ['multiple-nerves'],
    tier: 1,
    priority: 'urgent',
    because: 'vasculitis elsewhere: kidneys, blood, viruses',
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    tests: ['hiv-test', 'hepatitis-c-antibody'],
    causes: ['hiv-neuropathy', 'hepatitis-c-cryoglobulinaemic-neuropathy'],
    tier: 2,
    priority: 'routine',
    because: 'viruses that harm nerves',
    source: recalled('adams-victor', 'HIV infection'),
  },
  {
    tests: ['cryoglobulins'],
    causes: ['hepatitis-c-cryoglobulinaemic-neuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'cryoglobulins of hepatitis C',
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    tests: ['respiratory-pressures', 'blood-gas'],
    flags: ['acute-ascending-weakness', 'neuromuscular-respiratory-failure'],
    tier: 2,
    priority: 'stat',
    because: 'the strength of breathing, repeated while weakness grows',
    source: read('ean-pns-gbs-2023'),
  },
  {
    tests: ['nodal-paranodal-antibodies'],
    causes: ['autoimmune-nodopathy'],
    tier: 2,
    priority: 'routine',
    because: 'tremor, ataxia, poor response to immunoglobulin',
    source: read('ean-pns-cidp-2021'),
  },
  {
    tests: ['thiamine'],
    causes: ['alcohol-related-neuropathy'],
    tier: 2,
    priority: 'routine',
    because: 'drink empties the stores of thiamine',
    source: recalled('caine-1997'),
  },
  {
    tests: ['antinuclear-antibody'],
    kinds: ['ganglion'],
    tier: 1,
    priority: 'urgent',
    because: 'connective tissue disease behind a ganglionopathy',
    source: emgBook,
  },
  {
    tests: ['autonomic-tests'],
    causes: ['al-amyloidosis', 'hereditary-transthyretin-amyloidosis'],
    tier: 2,
    priority: 'urgent',
    because: 'autonomic fibres are lost early in amyloid',
    source: read('aan-dsp-autonomic-2009'),
  },
  {
    tests: ['autonomic-tests'],
    causes: ['diabetic-autonomic-neuropathy', 'pure-autonomic-failure'],
    tier: 2,
    priority: 'routine',
    because: 'how far autonomic function has gone',
    source: read('aan-dsp-autonomic-2009'),
  },
  {
    tests: ['nerve-conduction-study', 'electromyography', 'creatine-kinase'],
    causes: ['critical-illness-polyneuropathy', 'critical-illness-myopathy'],
    tier: 1,
    priority: 'routine',
    because: 'separates nerve from muscle after critical illness',
    source: emgBook,
  },
  {
    tests: [
      'nerve-conduction-study',
      'antineutrophil-cytoplasmic-antibody',
      'c-reactive-protein',
      'erythrocyte-sedimentation-rate',
      'vasculitis-urine',
      'renal-function',
    ],
    flags: ['suspected-vasculitic-neuropathy'],
    tier: 1,
    priority: 'urgent',
    because: 'an infarcted nerve is treated as fast as an infarcted kidney',
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    tests: ['nerve-biopsy'],
    flags: ['suspected-vasculitic-neuropathy'],
    tier: 2,
    priority: 'urgent',
    because: 'proof of vasculitis in an affected nerve',
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    tests: ['ganglioside-gm1-antibody'],
    causes: ['acute-motor-axonal-neuropathy'],
    tier: 2,
    priority: 'routine',
    because: 'often found in the motor axonal form',
    source: recalled('ean-pns-gbs-2023'),
  },
];

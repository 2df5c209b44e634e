import type { Reason } from '../../causes/ranked-cause.ts';
import { lowerFirst, quantityWords } from '../../exam/describe.ts';
import type { InvestigationResult } from '../../exam/exam.ts';
import { cameFast } from '../../exam/pace.ts';
import { fromMemory, read, recalled, type Source } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { dangerOf } from './danger-words.ts';
import { headImages } from './head-images.ts';
import { isAtLeast, isUnder } from './thresholds.ts';

/** A result that shows the danger itself, so that the signs which usually lead to it may all be missing from the record. */
interface RaisingResult {
  readonly flag: string;
  readonly results: readonly string[];
  /** Values of a coded result; or a number in its unit from which it counts. */
  readonly values?: readonly string[];
  readonly from?: { readonly unit: string; readonly value: number };
  /** Likewise a number under which it counts. */
  readonly under?: { readonly unit: string; readonly value: number };
  /** Days since onset beyond which it is old news; no limit when not given. */
  readonly withinDays?: number;
  /** What must be told or found beside it: a result alone may have been found by chance. */
  readonly beside?: (facts: BedsideFacts) => readonly Reason[];
  readonly source: Source;
}

const spineImages = ['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const;
const anySpineImage = [...spineImages, 'mri-lumbar-spine'] as const;
const { headPain, limbTrouble, mindOrMeninges, spinalPain, anyDeficit, thirdNerveTrouble } = dangerOf;

export const raisingResults: readonly RaisingResult[] = [
  {
    flag: 'thunderclap-headache',
    results: ['ct-head'],
    values: ['subarachnoid-haemorrhage'],
    withinDays: 28,
    source: read('nice-ng228'),
  },
  {
    flag: 'thunderclap-headache',
    results: ['csf-xanthochromia'],
    values: ['positive'],
    withinDays: 28,
    beside: headPain,
    source: read('nice-ng228'),
  },
  {
    // Fewer red cells and clear fluid spoke against an aneurysm in a cohort of sudden headaches.
    flag: 'thunderclap-headache',
    results: ['csf-red-cells'],
    from: { unit: '10*6/L', value: 2000 },
    withinDays: 28,
    beside: headPain,
    source: fromMemory,
  },
  {
    flag: 'suspected-stroke',
    results: ['angiography-head-neck'],
    values: ['occlusion', 'dissection'],
    withinDays: 7,
    beside: (facts) => (cameFast(facts.exam.onset) ? anyDeficit(facts) : []),
    source: recalled('nice-ng128', 'imaging'),
  },
  {
    flag: 'suspected-poisoning',
    results: ['carboxyhaemoglobin'],
    from: { unit: '%', value: 10 },
    withinDays: 28,
    source: recalled('adams-victor', 'carbon monoxide'),
  },
  {
    flag: 'suspected-poisoning',
    results: ['lithium-level'],
    from: { unit: 'mmol/L', value: 2 },
    withinDays: 183,
    source: recalled('adams-victor', 'lithium'),
  },
  {
    // Alcohol raises the gap as well; with eyes or a mind that fail it is methanol until shown otherwise.
    flag: 'suspected-poisoning',
    results: ['osmolal-gap'],
    from: { unit: 'mosm/kg', value: 20 },
    withinDays: 28,
    beside: (facts) => [...mindOrMeninges(facts), ...facts.told('visual-loss', 'vomiting', 'seizure')],
    source: recalled('adams-victor', 'methanol'),
  },
  {
    flag: 'suspected-meningitis',
    results: ['csf-eosinophils'],
    from: { unit: '%', value: 10 },
    withinDays: 60,
    source: recalled('adams-victor', 'eosinophilic meningitis'),
  },
  {
    flag: 'suspected-stroke',
    results: headImages,
    values: ['infarct', 'haemorrhage'],
    withinDays: 7,
    beside: (facts) => (cameFast(facts.exam.onset) ? anyDeficit(facts) : []),
    source: recalled('nice-ng128', 'imaging'),
  },
  {
    // More than five white cells is abnormal; ten keeps clear of what demyelination and a seizure bring. Judged.
    flag: 'suspected-meningitis',
    results: ['csf-white-cells'],
    from: { unit: '10*6/L', value: 10 },
    withinDays: 60,
    beside: mindOrMeninges,
    source: recalled('nice-ng240', 'cerebrospinal fluid'),
  },
  {
    flag: 'suspected-meningitis',
    results: ['csf-glucose'],
    under: { unit: 'mmol/L', value: 2.2 },
    withinDays: 60,
    beside: mindOrMeninges,
    source: recalled('nice-ng240', 'cerebrospinal fluid'),
  },
  {
    flag: 'suspected-meningitis',
    results: ['csf-lactate'],
    from: { unit: 'mmol/L', value: 3.5 },
    withinDays: 60,
    beside: mindOrMeninges,
    source: recalled('nice-ng240', 'cerebrospinal fluid'),
  },
  {
    flag: 'suspected-meningitis',
    results: ['csf-microbiology'],
    values: ['positive'],
    withinDays: 60,
    beside: mindOrMeninges,
    source: recalled('nice-ng240', 'cerebrospinal fluid'),
  },
  {
    flag: 'suspected-encephalitis',
    results: ['mri-brain'],
    values: ['encephalitis'],
    withinDays: 92,
    source: recalled('autoimmune-encephalitis-2016', 'possible and definite limbic encephalitis'),
  },
  {
    flag: 'suspected-encephalitis',
    results: ['neuronal-surface-antibody'],
    values: ['positive'],
    withinDays: 183,
    beside: (facts) => [
      ...mindOrMeninges(facts),
      ...facts.told('seizure', 'behaviour-change', 'cognitive-change', 'ongoing-seizure'),
    ],
    source: recalled('autoimmune-encephalitis-2016', 'antibodies'),
  },
  {
    flag: 'raised-intracranial-pressure',
    results: ['csf-opening-pressure'],
    from: { unit: 'cm[H2O]', value: 25 },
    withinDays: 730,
    beside: (facts) => [
      ...headPain(facts),
      ...facts.told('vomiting', 'transient-visual-loss', 'visual-loss', 'pulsatile-tinnitus', 'diplopia'),
    ],
    source: read('iih-consensus-2018'),
  },
  {
    flag: 'raised-intracranial-pressure',
    results: headImages,
    values: ['hydrocephalus'],
    withinDays: 183,
    beside: (facts) => [...headPain(facts), ...facts.told('vomiting'), ...mindOrMeninges(facts)],
    source: recalled('adams-victor', 'obstructive hydrocephalus'),
  },
  {
    flag: 'suspected-space-occupying-lesion',
    results: headImages,
    values: ['space-occupying', 'ring-enhancing'],
    withinDays: 730,
    source: recalled('nice-ng127'),
  },
  {
    flag: 'suspected-cerebral-venous-thrombosis',
    results: ['mri-brain'],
    values: ['venous-thrombosis'],
    withinDays: 92,
    source: recalled('cvt-2017', 'diagnosis'),
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    results: ['mri-brain'],
    values: ['wernicke-signal'],
    withinDays: 60,
    source: recalled('caine-1997'),
  },
  {
    flag: 'head-injury-with-deficit',
    results: headImages,
    values: ['subdural-haematoma'],
    withinDays: 92,
    source: recalled('nice-ng232', 'CT of the head'),
  },
  {
    flag: 'compressive-third-nerve-palsy',
    results: ['angiography-head-neck'],
    values: ['aneurysm'],
    withinDays: 183,
    beside: thirdNerveTrouble,
    source: read('third-nerve-cohort-2017'),
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    results: ['nerve-biopsy'],
    values: ['vasculitis'],
    withinDays: 730,
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    flag: 'suspected-cord-compression',
    results: spineImages,
    values: ['cord-compression', 'cord-lesion-short', 'cord-lesion-long', 'haematoma', 'infection-or-abscess'],
    withinDays: 28,
    beside: limbTrouble,
    source: recalled('nice-ng234', 'recognition and imaging'),
  },
  {
    flag: 'suspected-cord-compression',
    results: ['mri-lumbar-spine'],
    values: ['conus-lesion'],
    withinDays: 28,
    beside: (facts) => [...facts.saddleLoss, ...facts.sphincterFailure, ...limbTrouble(facts)],
    source: recalled('adams-victor', 'conus medullaris'),
  },
  {
    flag: 'progressive-cord-signs',
    results: spineImages,
    values: ['cord-compression'],
    withinDays: 730,
    beside: (facts) => (facts.beganWithin(28) === 'no' ? limbTrouble(facts) : []),
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    results: spineImages,
    values: ['metastasis', 'cord-compression'],
    withinDays: 183,
    beside: (facts) => (facts.told('cancer', 'lymphoma').length > 0 ? limbTrouble(facts) : []),
    source: read('nice-ng234'),
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    results: ['mri-lumbar-spine', 'mri-whole-spine'],
    values: ['cauda-equina-compression'],
    withinDays: 28,
    beside: (facts) => [
      ...facts.saddleLoss,
      ...facts.sphincterFailure,
      ...(facts.bothLegsWeak ? limbTrouble(facts) : []),
    ],
    source: read('girft-ces-2023'),
  },
  {
    flag: 'threatened-cauda-equina',
    results: ['mri-lumbar-spine', 'mri-whole-spine'],
    values: ['cauda-equina-compression'],
    withinDays: 183,
    source: read('girft-ces-2023'),
  },
  {
    flag: 'suspected-spinal-infection',
    results: anySpineImage,
    values: ['infection-or-abscess'],
    withinDays: 183,
    source: recalled('adams-victor', 'spinal epidural abscess'),
  },
  {
    flag: 'suspected-spinal-haematoma',
    results: anySpineImage,
    values: ['haematoma'],
    withinDays: 28,
    beside: (facts) => [...spinalPain(facts), ...limbTrouble(facts)],
    source: recalled('adams-victor', 'spinal haematoma'),
  },
  {
    flag: 'suspected-spinal-haematoma',
    results: ['mri-lumbosacral-plexus'],
    values: ['haematoma'],
    withinDays: 28,
    beside: (facts) => [...spinalPain(facts), ...limbTrouble(facts)],
    source: recalled('adams-victor', 'retroperitoneal haematoma'),
  },
  {
    // Fifty micrograms in a decilitre.
    flag: 'suspected-poisoning',
    results: ['lead'],
    from: { unit: 'umol/L', value: 2.4 },
    withinDays: 183,
    beside: (facts) => [...mindOrMeninges(facts), ...facts.told('abdominal-pain', 'seizure'), ...limbTrouble(facts)],
    source: recalled('adams-victor', 'lead'),
  },
  {
    flag: 'suspected-poisoning',
    results: ['arsenic-urine'],
    from: { unit: 'ug/L', value: 100 },
    withinDays: 183,
    beside: (facts) => [...mindOrMeninges(facts), ...facts.told('abdominal-pain', 'vomiting'), ...limbTrouble(facts)],
    source: recalled('adams-victor', 'arsenic'),
  },
  {
    flag: 'suspected-acute-porphyria',
    results: ['porphobilinogen-urine'],
    values: ['positive'],
    withinDays: 60,
    beside: (facts) => [...facts.told('abdominal-pain', 'seizure', 'behaviour-change'), ...limbTrouble(facts)],
    source: recalled('adams-victor', 'porphyric polyneuropathy'),
  },
];

/** Reasons for which results alone raise a flag; empty when none does. What stands still or mends is no new danger. */
export function shownBy(flag: string, facts: BedsideFacts): readonly Reason[] {
  if (!facts.maybeProgressing) return [];
  return raisingResults.flatMap((row): readonly Reason[] => {
    if (row.flag !== flag) return [];
    if (row.withinDays !== undefined && facts.beganWithin(row.withinDays) === 'no') return [];
    const shown = row.results.flatMap((key) => reasonOf(row, facts.query.result(key)));
    const beside = row.beside === undefined ? [] : row.beside(facts);
    return shown.length > 0 && (row.beside === undefined || beside.length > 0) ? [...shown, ...beside.slice(0, 4)] : [];
  });
}

function reasonOf({ values, from, under }: RaisingResult, result: InvestigationResult | undefined): readonly Reason[] {
  if (result === undefined) return [];
  const { pointer, value, quantity, comparator } = result;
  const label = lowerFirst(result.label);
  if (value !== undefined && values?.includes(value) === true)
    return [{ pointer, text: `${label}: ${value.replaceAll('-', ' ')}` }];
  const limit = from ?? under;
  if (limit === undefined || quantity?.unit !== limit.unit) return [];
  const measured = { value: quantity.value, label, pointer, ...(comparator === undefined ? {} : { comparator }) };
  const isMet = from === undefined ? isUnder(measured, limit.value) : isAtLeast(measured, limit.value);
  return isMet ? [{ pointer, text: `${label} ${comparator ?? ''}${quantityWords(measured.value, limit.unit)}` }] : [];
}

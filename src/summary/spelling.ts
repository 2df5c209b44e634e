import { capitalised } from '../kernel/words.ts';

export type Spelling = 'uk' | 'us';

/** British stems and their American forms; longer stems first where one holds another. */
const stems: readonly (readonly [uk: string, us: string])[] = [
  ['haemorrh', 'hemorrh'],
  ['haemat', 'hemat'],
  ['haemo', 'hemo'],
  ['anaemi', 'anemi'],
  ['ischaemi', 'ischemi'],
  ['glycaemi', 'glycemi'],
  ['uraemi', 'uremi'],
  ['proteinaemi', 'proteinemi'],
  ['anaesthe', 'anesthe'],
  ['paraesthe', 'paresthe'],
  ['oedema', 'edema'],
  ['rrhoea', 'rrhea'],
  ['faec', 'fec'],
  ['caeruloplasmin', 'ceruloplasmin'],
  ['gynaec', 'gynec'],
  ['coeliac', 'celiac'],
  ['aetiolog', 'etiolog'],
  ['tumour', 'tumor'],
  ['behaviour', 'behavior'],
  ['colour', 'color'],
  ['labour', 'labor'],
  ['fibre', 'fiber'],
  ['litre', 'liter'],
  ['centre', 'center'],
  ['grey', 'gray'],
  ['manoeuvre', 'maneuver'],
  ['licence', 'license'],
  ['paralyse', 'paralyze'],
  ['paralysing', 'paralyzing'],
  ['necrotising', 'necrotizing'],
  ['localis', 'localiz'],
  ['generalis', 'generaliz'],
  ['recognis', 'recogniz'],
  ['catheteris', 'catheteriz'],
  ['paediatr', 'pediatr'],
  ['globulinaemi', 'globulinemi'],
  ['ionised', 'ionized'],
  ['arterialised', 'arterialized'],
  ['mould', 'mold'],
  ['counselling', 'counseling'],
  ['programme', 'program'],
];

/** The same text in the wanted spelling; capitals are kept. Names of works and keys are not passed through here. */
export function spell(text: string, spelling: Spelling): string {
  if (spelling === 'uk') return text;
  return stems.reduce((spelt, [uk, us]) => spelt.replaceAll(uk, us).replaceAll(capitalised(uk), capitalised(us)), text);
}

/** Properties of a document that hold words of ours; keys, names of works and what code systems print stay as they are. */
const ofWords: ReadonlySet<string> = new Set(['label', 'text', 'because', 'action']);

/** What `JSON.stringify` makes of each value so that the words of a document are in the wanted spelling; undefined where they are. */
export function respelling(spelling: Spelling): ((name: string, value: unknown) => unknown) | undefined {
  if (spelling === 'uk') return undefined;
  return (name, value) => (ofWords.has(name) && typeof value === 'string' ? spell(value, spelling) : value);
}

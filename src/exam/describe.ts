import { bodyPartTable } from '../anatomy/body-parts.ts';
import { skinPlace } from '../anatomy/skin-places.ts';
import type { Side } from '../kernel/side.ts';
import { joinWords } from '../kernel/words.ts';
import { comaScale } from './catalogue/coma-scale.ts';
import type { Item } from './catalogue/item.ts';
import { resultByKey } from './catalogue/results.ts';
import { sectionOf } from './catalogue/sections.ts';
import type { InvestigationResult } from './exam.ts';
import type { Finding, FindingPlace, NormalStatement, NotTestedReason, ScoredScale } from './finding.ts';

/**
 * A finding in the words of the trade, without a capital at the start and without a full stop, so that it can stand in
 * a list or a sentence: "left ankle dorsiflexion 3/5", "no ptosis on the right", "vibration absent in the left L5
 * dermatome", "left ankle dorsiflexion not tested (pain)".
 */
export function describeFinding(finding: Finding): string {
  const { item, notTested } = finding;
  if (notTested !== undefined) return `${subject(finding)} not tested (${reasonWords[notTested]})`;
  const value = String(finding.value);
  switch (item.scale) {
    case 'beats':
      return clonusWords(finding);
    case 'mrc-power':
      return `${subject(finding)} ${value}/5`;
    case 'reflex-grade':
    case 'superficial-reflex':
      return `${subject(finding)} ${reflexWords(item, value)}${finding.reinforced === true ? ' with reinforcement' : ''}`;
    case 'tone':
      return `${value} ${subject(finding)}`;
    case 'presence':
      return presenceWords(finding);
    case 'coordination':
      return `${subject(finding)} ${value === 'impaired-by-weakness' ? 'impaired in proportion to weakness' : value}`;
    case 'performance':
      return withValue(finding, value === 'unable' ? 'not possible' : value);
    case 'sensation': {
      const { side, place } = finding;
      return [sense(item), value, place === undefined ? `on the ${side}` : describePlace(place, side)].join(' ');
    }
    case 'test-result':
      return testWords(finding, value);
    case 'plantar-response':
      return `${subject(finding)} ${value}`;
  }
}

/** Where, with the side: "at the top of the left foot", "in the left L5 dermatome", "below T10 on the left". */
export function describePlace(place: FindingPlace, side: Side): string {
  switch (place.kind) {
    case 'dermatome':
      return `in the ${sided('', side)}${place.key} dermatome`;
    case 'territory':
      return `in the ${sided('', side)}${lowerFirst(skinPlace('territory', place.key)?.label ?? place.key)}`;
    case 'landmark':
      return `at the ${onSide(lowerFirst(skinPlace('landmark', place.key)?.label ?? place.key), side)}`;
    case 'body-part':
      return `at the ${onSide(lowerFirst(bodyPartTable.get(place.key)?.label ?? place.key), side)}`;
    case 'level-below':
      return `below ${place.key}${suffix(side)}`;
    case 'region':
      return regionWords(place.key, side);
  }
}

const reasonWords: Readonly<Record<NotTestedReason, string>> = {
  pain: 'pain',
  declined: 'declined',
  unable: 'unable',
  'not-done': 'not done',
  'limb-absent': 'limb absent',
  other: 'other reason',
};

/** What was examined, with side and place: "left ankle dorsiflexion", "walking on the heels on the left". */
function subject(finding: Finding): string {
  const { item, side, place } = finding;
  if (item.section === 'sensation') {
    return `${sense(item)} ${place === undefined ? `on the ${side}` : describePlace(place, side)}`;
  }
  const label = plainLabel(item);
  if (place !== undefined) return `${label} ${describePlace(place, side)}`;
  if (speaksOfThisSide(label)) return onThisSide(label, side);
  if (side === 'midline') return label;
  if (item.section === 'tone') return label.replace(/ the /, ` the ${side} `);
  return isPlainNoun(label) ? `${side} ${label}` : `${label} on the ${side}`;
}

/**
 * A test that has a name is positive or negative; one that is named by what it shows ("neck stiffness", "relief of arm pain
 * on traction of the neck") shows it or does not.
 */
function testWords(finding: Finding, value: string): string {
  const { item, side } = finding;
  const label = plainLabel(item);
  const isNamed = /\b(?:drift|manoeuvre|raise|response|sign|stretch|test)\b|\breflex$/.test(label);
  if (isNamed && speaksOfThisSide(label)) return `${value} ${subject(finding)}`;
  if (isNamed || value === 'equivocal' || speaksOfThisSide(label)) return withValue(finding, value);
  const words = describeItem(item, side);
  return value === 'positive' ? words : denied(words);
}

/** What a test came to, with the side last: "straight-leg raise negative on the left". */
function withValue(finding: Finding, value: string): string {
  const { item, side, place } = finding;
  const label = plainLabel(item);
  return place === undefined && !speaksOfThisSide(label)
    ? `${label} ${value}${suffix(side)}`
    : `${subject(finding)} ${value}`;
}

/** A side may stand before a name without a clause of its own: "left grip myotonia", not "left weakness of the palate". */
function isPlainNoun(label: string): boolean {
  return (
    !/,|\b(?:on|of|at|to|with|without|that|which)\b/.test(label) ||
    /^[a-z -]+ (?:extension|flexion|abduction|adduction|rotation|elevation|opposition)\b/.test(label)
  );
}

/** An item of one side that is still to be examined: "hip abduction on the left", "unequal pupils, the left one abnormal". */
export function describeItem(item: Item, side: Side): string {
  const label = plainLabel(item);
  return speaksOfThisSide(label) ? onThisSide(label, side) : `${label}${suffix(side)}`;
}

function speaksOfThisSide(label: string): boolean {
  return /\bthis\b/.test(label);
}

function presenceWords(finding: Finding): string {
  const { item, side, place } = finding;
  const label = plainLabel(item);
  const isAbsent = finding.value === 'absent';
  const ability = /^unable to (.*)$/.exec(label)?.[1];
  if (ability !== undefined)
    return `${isAbsent ? '' : 'un'}able to ${ability}${side === 'midline' ? '' : ` on the ${side}`}`;
  const words =
    place === undefined || speaksOfThisSide(label)
      ? describeItem(item, side)
      : `${label} ${describePlace(place, side)}`;
  return isAbsent ? denied(words) : words;
}

/**
 * "this eye" of a label is the eye of the side, and a half of what is seen is named by the side alone: "homonymous
 * hemianopia on the left". Without a side, neither is meant more than the other, and nothing is compared.
 */
function onThisSide(label: string, side: Side): string {
  const words =
    side === 'midline' ? withoutComparison(label).replace(/ (?:on this side|of this half)(?=$| of )/, '') : label;
  return words
    .replace(/, this side of space$/, side === 'midline' ? ' on either side' : suffix(side))
    .replace(/\bthis\b/, side === 'midline' ? 'either' : `the ${side}`);
}

/** A sign of one side without what it does to the other: "weakness of the palate on this side with the uvula drawn to the other". */
export function withoutComparison(words: string): string {
  return words.replace(/(?: with|, which) .* the other(?: cheek)?$/, '');
}

/** Most labels are nouns ("no ptosis"); some are an adjective or a short clause. */
function denied(words: string): string {
  if (/^(?:breathless|unaware)\b/.test(words)) return `not ${words}`;
  const clause = /^(jaw|tongue|eye|voice|reflex or power) (deviate|turn|tire|return)s (.*)$/.exec(words);
  return clause === null ? `no ${words}` : `${clause[1]} does not ${clause[2]} ${clause[3]}`;
}

function reflexWords(item: Item, grade: string): string {
  if (item.scale === 'superficial-reflex') return grade === '0' ? 'absent' : grade === '1' ? 'reduced' : 'present';
  switch (grade) {
    case '0':
      return 'absent';
    case 'trace':
      return 'barely present';
    case '1':
      return 'reduced';
    case '2':
      return 'normal';
    case '3':
      return 'brisk';
    default:
      return 'very brisk';
  }
}

function clonusWords(finding: Finding): string {
  const beats = Number(finding.value);
  const name = subject(finding);
  if (beats === 0) return `no ${name}`;
  return `${name}, ${beats === 99 ? 'sustained' : `${beats} beat${beats === 1 ? '' : 's'}`}`;
}

function sense(item: Item): string {
  if (item.key === 'temperature') return 'temperature sense';
  if (item.key === 'joint-position') return 'joint position sense';
  return lowerFirst(item.label);
}

/** Left or right before the noun it belongs to: "left calf", "top of the left foot", "back of the hand on the left". */
function onSide(place: string, side: Side): string {
  if (side === 'midline') return place;
  if (place.startsWith('half of ')) return `${side} ${place}`;
  const inner = /^([^,]* of the )([^,]+)$/.exec(place);
  if (inner !== null) return `${inner[1]}${side} ${inner[2]}`;
  return / the |,/.test(place) ? `${place} on the ${side}` : `${side} ${place}`;
}

function regionWords(region: string, side: Side): string {
  return `${isLimbs(region) ? 'in' : 'over'} the ${regionName(region, side)}`;
}

/** "lower limbs", "left lower limb", "left side of the trunk" */
function regionName(region: string, side: Side): string {
  const name = region.replace('-', ' ');
  if (side === 'midline') return name;
  return isLimbs(region) ? `${side} ${name.replace(/s$/, '')}` : `${side} side of the ${name}`;
}

function isLimbs(region: string): boolean {
  return region === 'upper-limbs' || region === 'lower-limbs';
}

/** "eye opening 4, verbal response not tested, motor response 6" */
export function describeParts({ parts }: ScoredScale): string {
  return comaScale.parts.map(({ key, label }) => `${label.toLowerCase()} ${parts[key] ?? 'not tested'}`).join(', ');
}

/** Several statements, each part of the body named once: "cranial nerves" and "power and reflexes of the upper limbs". */
export function describeStatements(statements: readonly Omit<NormalStatement, 'pointer'>[]): readonly string[] {
  const sections = new Map<string, string[]>();
  for (const statement of statements) {
    const whole = describeStatement(statement);
    const name = lowerFirst(sectionOf(statement.section).label);
    const where = whole.startsWith(name) ? whole.slice(name.length) : '';
    sections.set(where, [...(sections.get(where) ?? []), where === '' ? whole : name]);
  }
  return [...sections].flatMap(([where, names]) => {
    const distinct = [...new Set(names)];
    return where === '' ? distinct : [`${joinWords(distinct)}${where}`];
  });
}

/** What a summary statement speaks of: "cranial nerves", "power of the left lower limb", "sensation on the right". */
export function describeStatement({ section, region, side }: Omit<NormalStatement, 'pointer'>): string {
  const label = lowerFirst(sectionOf(section).label);
  const one = side === undefined || side === 'both' ? 'midline' : side;
  return region === undefined ? `${label}${suffix(one)}` : `${label} of the ${regionName(region, one)}`;
}

function sided(text: string, side: Side): string {
  return side === 'midline' ? text : `${side} ${text}`;
}

function suffix(side: Side): string {
  return side === 'midline' ? '' : ` on the ${side}`;
}

/** The label without its explanation after a colon or in brackets, ready to stand inside a sentence. */
export function plainLabel(item: Item): string {
  const short = item.label.replace(/:.*$/, '').replaceAll(/ \([^)]*\)/g, '');
  return lowerFirst(short);
}

/** Names of people keep their capital, and so do single letters and abbreviations (T10, HIV). */
const properNames =
  /^(?:Achilles|Adie|Adson|Alexander|Alzheimer|Argyll|Babinski|Becker|Beevor|Behçet|Bell|Bethlem|Borrelia|Brudzinski|Chaddock|Charcot|Chiari|Chvostek|Creutzfeldt|Dix|Duchenne|Emery|Fabry|Friedreich|Froment|Glasgow|Gordon|Gottron|Gowers|Guillain|Guyon|Hirayama|Hoffmann|Hoover|Horner|Huntington|Kayser|Kennedy|Kernig|Lambert|Lasegue|Leber|Leigh|Lhermitte|Lyme|McArdle|Marchiafava|Melkersson|Ménière|Miller|Moro|Morton|MuSK|Niemann|Oppenheim|Parkinson|Phalen|Pompe|Prader|Ramsay|Rasmussen|Refsum|Romberg|Sjögren|Spurling|Susac|Sydenham|Tangier|Tinel|Tolosa|Tourette|Trendelenburg|Trömner|Trousseau|Wernicke|Whipple|Wilson|Wolfram|[A-Z][A-Z0-9]|Ig[A-Z]|[A-Z]\b)/;

export function lowerFirst(label: string): string {
  return properNames.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);
}

/** UCUM units as people write them. */
const unitNames: ReadonlyMap<string, string> = new Map([
  ['mm[Hg]', 'mmHg'],
  ['cm[H2O]', 'cmH2O'],
  ['Cel', '°C'],
  ['m[IU]/L', 'mIU/L'],
  ['umol/L', 'µmol/L'],
  ['ug/L', 'µg/L'],
  ['10*9/L', 'x 10^9/L'],
  ['10*6/L', 'x 10^6/L'],
  ['mosm/kg', 'mOsm/kg'],
  ['mL/min/{1.73_m2}', 'mL/min/1.73 m²'],
  ['[pH]', ''],
  ['1', ''],
]);

/** A number with its unit: "38.5 °C", "250 mL". */
export function quantityWords(value: number, unit: string): string {
  // What stands in braces is a note, not a unit.
  return `${roundedForWords(value)} ${unitNames.get(unit) ?? unit.replaceAll(/\{[^}]*\}/g, '')}`.trim();
}

/** Four figures of what was converted from another unit; whole numbers as they are. */
function roundedForWords(value: number): number {
  if (Number.isInteger(value)) return value;
  return Math.abs(value) >= 1000 ? Math.round(value) : Number(value.toPrecision(4));
}

/** "MRI of the brain: infarct", "creatine kinase 5200 U/L". */
export function describeResult({ key, label, value, quantity, comparator }: InvestigationResult): string {
  const name = lowerFirst(label);
  if (quantity !== undefined) return `${name} ${comparator ?? ''}${quantityWords(quantity.value, quantity.unit)}`;
  const row = resultByKey.get(key);
  const grade = row?.kind === 'coded' ? row.values.find((one) => one.key === value) : undefined;
  return `${name}: ${lowerFirst(grade?.label ?? String(value))}`;
}

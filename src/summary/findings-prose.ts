import { dermatomeKeys } from '../anatomy/skin.ts';
import { skinPlace } from '../anatomy/skin-places.ts';
import { onBothSides } from '../causes/reasons.ts';
import { type SectionKey, sectionKeys } from '../exam/catalogue/item.ts';
import { describeFinding, lowerFirst, plainLabel } from '../exam/describe.ts';
import type { Finding } from '../exam/finding.ts';
import type { Side } from '../kernel/side.ts';
import { joinWords } from '../kernel/words.ts';

type Span = Side | 'both';

/** One finding, or the same finding on both sides. */
interface Merged {
  readonly finding: Finding;
  readonly span: Span;
}

/** Clauses of one section that are said one by one. */
const mostOfSection = 40;

const spanOrder: Readonly<Record<Span, number>> = { midline: 0, both: 1, left: 2, right: 3 };

/**
 * Findings as clauses, in the order of the examination: what is the same on both sides is said once, and what has the
 * same grade is said together ("on the left, ankle dorsiflexion and eversion 3/5").
 * @param tested everything that was found in the exam, of which `findings` is what is to be said
 */
export function findingClauses(findings: readonly Finding[], tested = findings): readonly string[] {
  return sectionKeys.flatMap((section) => sectionClauses(section, findings, tested));
}

/** The clauses of one section out of all findings. */
export function sectionClauses(
  section: SectionKey,
  findings: readonly Finding[],
  tested: readonly Finding[] = findings,
): readonly string[] {
  const merged = mergeSides(findings.filter((finding) => finding.item.section === section));
  switch (section) {
    case 'power':
      return bySpan(merged, (group, span) => {
        const there = tested.filter(({ side }) => span === 'both' || side === span);
        return joinWords(gradesOf(group).map((value) => `${joinWords(movementsOf(value, group, there))} ${value}/5`));
      });
    case 'reflexes':
      return bySpan(merged, (group) => byValue(group, (value, items) => `${reflexNames(items)} ${reflexWords(value)}`));
    case 'sensation':
      return bySpan(merged, sensationWords);
    case 'plantars':
      return merged.map(({ finding, span }) =>
        span === 'both' ? `both plantar responses ${finding.value}` : `the ${span} plantar response ${finding.value}`,
      );
    default:
      return byPlaces(merged.slice(0, mostOfSection));
  }
}

/** A sign that is there at several places of one side is said once: "muscle wasting at the hand and forearm on the left". */
function byPlaces(merged: readonly Merged[]): readonly string[] {
  const groups = new Map<string, Merged[]>();
  merged.forEach((one, index) => {
    const { finding, span } = one;
    const isSign = finding.place !== undefined && finding.abnormal && finding.item.scale === 'presence';
    const key = isSign ? `${finding.item.key} ${finding.value} ${span}` : String(index);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  });
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { finding, span } = first;
    if (group.length === 1) {
      const text = describeFinding(finding);
      return [span === 'both' ? onBothSides(text, finding.side) : text];
    }
    const where = span === 'midline' ? '' : span === 'both' ? ' on both sides' : ` on the ${span}`;
    return [`${plainLabel(finding.item)} ${places(group.map((one) => one.finding))}${where}`];
  });
}

function mergeSides(findings: readonly Finding[]): readonly Merged[] {
  const used = new Set<Finding>();
  const merged: Merged[] = [];
  for (const finding of findings) {
    if (used.has(finding)) continue;
    used.add(finding);
    const twin = findings.find((other) => !used.has(other) && isSameElsewhere(finding, other));
    if (twin !== undefined) used.add(twin);
    merged.push({ finding, span: twin === undefined ? finding.side : 'both' });
  }
  return merged;
}

function isSameElsewhere(a: Finding, b: Finding): boolean {
  return (
    a.item === b.item &&
    a.side !== b.side &&
    a.side !== 'midline' &&
    b.side !== 'midline' &&
    a.value === b.value &&
    a.notTested === b.notTested &&
    a.place?.kind === b.place?.kind &&
    a.place?.key === b.place?.key
  );
}

/** Clauses side by side, each side named once: both sides first, then left, then right. */
function bySpan(
  merged: readonly Merged[],
  words: (group: readonly Finding[], span: Span) => string,
): readonly string[] {
  const spans = [...new Set(merged.map(({ span }) => span))].sort((a, b) => spanOrder[a] - spanOrder[b]);
  return spans.map((span) => {
    const group = merged.filter((entry) => entry.span === span).map(({ finding }) => finding);
    const text = words(group, span);
    if (span === 'midline') return text;
    return span === 'both' ? `${text} on both sides` : `${text} on the ${span}`;
  });
}

/** From so many movements of a limb on, all of one grade, the limb is named and not each of them. Judged. */
const wholeLimb = 5;

const limbs = [
  ['upper-limbs', 'upper limb'],
  ['lower-limbs', 'lower limb'],
] as const;

/** What has this grade: single movements, or "all movements tested of the upper limb" where no other grade was found there. */
function movementsOf(value: string, group: readonly Finding[], tested: readonly Finding[]): readonly string[] {
  const same = group.filter((finding) => String(finding.value) === value);
  const whole = limbs.filter(([region]) => {
    const ofLimb = tested.filter(({ item }) => item.section === 'power' && item.region === region);
    return (
      same.filter(({ item }) => item.region === region).length >= wholeLimb &&
      ofLimb.every((finding) => finding.value === null || String(finding.value) === value)
    );
  });
  const single = same.filter(({ item }) => !whole.some(([region]) => region === item.region));
  return [
    ...sameJointOnce(single.map(({ item }) => plainLabel(item))),
    ...(whole.length === 0 ? [] : [`all movements tested of the ${joinWords(whole.map(([, name]) => name))}`]),
  ];
}

const joint = /^(?:shoulder|elbow|wrist|finger|thumb|hip|knee|ankle|great toe|toe|neck|trunk) /;

/** "ankle inversion", "eversion": a joint is named once for the movements of it that follow one another. */
function sameJointOnce(movements: readonly string[]): readonly string[] {
  return movements.map((movement, index) => {
    const [name] = joint.exec(movement) ?? [];
    return name !== undefined && movements[index - 1]?.startsWith(name) === true
      ? movement.slice(name.length)
      : movement;
  });
}

function gradesOf(group: readonly Finding[]): readonly string[] {
  return [...new Set(group.map((finding) => String(finding.value)))];
}

function byValue(group: readonly Finding[], words: (value: string, items: readonly string[]) => string): string {
  return joinWords(
    gradesOf(group).map((value) =>
      words(
        value,
        group.filter((finding) => String(finding.value) === value).map((f) => plainLabel(f.item)),
      ),
    ),
  );
}

/** "knee and ankle reflexes" out of "knee reflex", "ankle reflex". */
function reflexNames(names: readonly string[]): string {
  const all = names.every((name) => name.endsWith(' reflex'));
  if (!all || names.length === 1) return joinWords(names);
  return `${joinWords(names.map((name) => name.replace(/ reflex$/, '')))} reflexes`;
}

const reflexValues = new Map([
  ['0', 'absent'],
  ['trace', 'barely present'],
  ['1', 'reduced'],
  ['2', 'normal'],
  ['3', 'brisk'],
  ['4', 'very brisk'],
]);

function reflexWords(value: string): string {
  return reflexValues.get(value) ?? value;
}

/** "pinprick reduced over the dorsum of the foot and the outer shin, light touch and vibration absent at the great toe". */
function sensationWords(group: readonly Finding[]): string {
  const keys = [...new Set(group.map((finding) => `${finding.item.key} ${finding.value}`))];
  const found = new Map<string, string[]>();
  for (const key of keys) {
    const same = group.filter((finding) => `${finding.item.key} ${finding.value}` === key);
    const [first] = same;
    if (first === undefined) continue;
    // Modalities that are changed alike at the same places are said together.
    const change = `${first.value} ${places(same)}`;
    found.set(change, [...(found.get(change) ?? []), senses.get(first.item.key) ?? plainLabel(first.item)]);
  }
  return joinWords([...found].map(([change, modalities]) => `${joinWords(modalities)} ${change}`));
}

const senses = new Map([
  ['joint-position', 'joint position sense'],
  ['temperature', 'temperature sense'],
]);

function places(findings: readonly Finding[]): string {
  const dermatomes = dermatomeRuns(
    findings.filter(({ place }) => place?.kind === 'dermatome').map(({ place }) => place?.key ?? ''),
  );
  const below = findings.filter(({ place }) => place?.kind === 'level-below').map(({ place }) => `below ${place?.key}`);
  const others = findings
    .filter(({ place }) => place !== undefined && place.kind !== 'dermatome' && place.kind !== 'level-below')
    .map(({ place }) => placeName(place));
  const [territories, spots] = [true, false].map((isOfNerve) =>
    others.filter((name) => ofNerve.test(name) === isOfNerve).map((name) => name.replace(ofNerve, '')),
  );
  return joinWords([
    ...(spots !== undefined && spots.length > 0 ? [`at the ${joinWords(spots)}`] : []),
    ...(territories !== undefined && territories.length > 0
      ? [`in the territory of the ${joinWords(territories, 'and the')}`]
      : []),
    ...(dermatomes.length > 0 ? [`in ${joinWords(dermatomes)}`] : []),
    ...below,
  ]);
}

const ofNerve = / territory$/;

/** "C6 to C8" for neighbours, in the order of the body. */
function dermatomeRuns(keys: readonly string[]): readonly string[] {
  const indices = keys.map((key) => (dermatomeKeys as readonly string[]).indexOf(key)).sort((a, b) => a - b);
  const runs: { readonly first: number; last: number }[] = [];
  for (const index of indices) {
    const run = runs.at(-1);
    if (run?.last === index - 1) run.last = index;
    else runs.push({ first: index, last: index });
  }
  return runs.flatMap(({ first, last }) => {
    const [from, to] = [dermatomeKeys[first] ?? '', dermatomeKeys[last] ?? ''];
    return last - first > 1 ? [`${from} to ${to}`] : first === last ? [from] : [from, to];
  });
}

function placeName(place: Finding['place']): string {
  if (place === undefined) return '';
  if (place.kind === 'landmark' || place.kind === 'territory') {
    // The side that follows says which half.
    return lowerFirst(skinPlace(place.kind, place.key)?.label ?? place.key).replace(/^half of the /, '');
  }
  return place.key.replaceAll('-', ' ');
}

/** What was asked for and could not be tested, with the reason. */
export function notTestedClauses(findings: readonly Finding[]): readonly string[] {
  const missing = findings.filter((finding) => finding.value === null);
  return mergeSides(missing).map(({ finding, span }) => {
    const [name = '', reason = ''] = describeFinding(finding).split(' not tested');
    return `${span === 'both' ? onBothSides(name, finding.side) : name}${reason}`;
  });
}

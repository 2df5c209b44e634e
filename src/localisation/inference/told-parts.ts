import { itemById } from '../../exam/catalogue/catalogue.ts';
import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { hypotheses, noLesionIndex } from '../hypotheses/hypotheses.ts';
import { siteId } from '../hypothesis.ts';
import { contextOf } from '../observation/context.ts';
import type { ProbeModel } from '../observation/probe-model.ts';
import { probeModel } from '../observation/probe-models.ts';
import type { StateColumns } from './columns.ts';
import type { Applies, Shift } from './shift.ts';
import { shiftsOfTold } from './told.ts';

/** An item, and where on the body when it is examined at a place, by which a complaint would show. */
type Sign = string | readonly [item: string, landmark: string];

const movements = (...keys: readonly string[]): readonly Sign[] => keys.map((key) => `power/${key}`);
/** Pain sense of the skin there; the cortex is asked at the hand, by touch. */
const feeling = (...keys: readonly string[]): readonly Sign[] =>
  keys.map((key) => ['sensation/pinprick', key] as const);
const touch = (key: string): Sign => ['sensation/light-touch', key];
const position = (key: string): Sign => ['sensation/joint-position', key];

const armPower = movements(
  ...['shoulder-abduction', 'elbow-flexion', 'elbow-extension', 'wrist-extension', 'finger-extension'],
  ...['finger-flexion', 'finger-abduction', 'thumb-abduction'],
);
const legPower = movements(
  ...['hip-flexion', 'hip-extension', 'knee-extension', 'knee-flexion', 'ankle-dorsiflexion', 'ankle-plantarflexion'],
);
const armFeeling = [
  ...feeling(
    ...['shoulder-tip', 'outer-upper-arm', 'inner-upper-arm', 'back-of-arm', 'outer-forearm', 'inner-forearm'],
    ...['back-of-forearm', 'dorsum-of-hand', 'palm', 'thumb', 'index-finger', 'little-finger'],
  ),
  touch('index-finger'),
  position('index-finger'),
];
const legFeeling = [
  ...feeling(
    ...['groin', 'outer-thigh', 'front-of-thigh', 'inner-thigh', 'back-of-thigh', 'inner-shin', 'outer-shin'],
    ...['calf', 'dorsum-of-foot', 'great-toe', 'heel', 'sole', 'outer-border-of-foot'],
  ),
  touch('dorsum-of-foot'),
  position('great-toe'),
];
const trunkFeeling = feeling('chest', 'epigastrium', 'lower-abdomen', 'lower-back', 'buttock');
const faceFeeling = ['cranial-nerves/facial-numbness'] as const;
const anyFeeling = [...armFeeling, ...trunkFeeling, ...legFeeling, ...faceFeeling];
const arm = [...armPower, ...armFeeling];
const leg = [...legPower, ...legFeeling];
const ear = ['cranial-nerves/hearing-loss'] as const;
const eye = [
  ...['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/third-nerve-palsy', 'cranial-nerves/sixth-nerve-palsy'],
  'cranial-nerves/facial-numbness',
];

/** By what each complaint would show, were it examined. */
const shownBy: Readonly<Record<string, readonly Sign[]>> = {
  'arm-weakness': armPower,
  'leg-weakness': legPower,
  weakness: [...armPower, ...legPower],
  'fatigable-weakness': [...armPower, ...legPower],
  'episodic-weakness': [...armPower, ...legPower],
  'muscle-thinning': [...armPower, ...legPower],
  clumsiness: [
    ...armPower,
    position('index-finger'),
    ...['coordination/finger-nose', 'coordination/rapid-alternating-movements'],
  ],
  numbness: anyFeeling,
  paraesthesiae: anyFeeling,
  'neuropathic-pain': anyFeeling,
  allodynia: anyFeeling,
  'nocturnal-hand-paraesthesiae': arm,
  'arm-pain': arm,
  'radicular-arm-pain': arm,
  'shoulder-pain': arm,
  'hand-pain': arm,
  'leg-pain': leg,
  'radicular-leg-pain': leg,
  'thigh-pain': leg,
  'foot-pain': leg,
  'burning-feet': leg,
  'limb-lump': [...arm, ...leg],
  'face-numbness': faceFeeling,
  'face-droop': ['cranial-nerves/facial-weakness', 'cranial-nerves/lower-facial-weakness'],
  'facial-pain': faceFeeling,
  'triggered-facial-pain': faceFeeling,
  'drooping-eyelids': ['cranial-nerves/ptosis'],
  'eye-pain': eye,
  'eye-pain-attacks': eye,
  'red-eye': eye,
  'visual-loss': ['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/homonymous-hemianopia'],
  'transient-visual-loss': ['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/homonymous-hemianopia'],
  'hearing-loss': ear,
  tinnitus: ear,
  'pulsatile-tinnitus': ear,
  'ear-fullness': ear,
  'ear-pain': [...ear, 'cranial-nerves/facial-weakness'],
};

/** On which side a lesion of a place would make the complaint. */
type Reach = BodySide | 'both' | 'neither';

/**
 * How much likelier a place is when the complaint is of the side on which it makes it, of the other one, and of both; the same
 * for a place that makes it on both sides. Out of a patient's sureness which side it is, and lesions that are worse on one. Judged.
 */
const factors = {
  ofOneSide: { own: 2.5, other: 0.2, both: 0.3 },
  ofBothSides: { one: 0.6, both: 1.8 },
} as const;

/** Odds of a place of which a lesion would not make the complaint, before anybody has found a sign and beside signs. Judged. */
const ofNeither = { alone: 0.5, besideSigns: 0.85 } as const;

/** How much of that of sides counts for the second and further complaints, and for all once abnormal signs say more exactly where. */
const weightOf = { first: 1, further: 0.4, besideSigns: 0.4 } as const;

/** How much likelier an abnormal result must be than in health for a lesion to show a sign. Judged. */
const shows = 0.25;
/** Share of the forms of a lesion of a place, by how often they are met, that must show it. Judged. */
const ofItsForms = 0.15;

const said = shiftsOfTold('told-part');
const known = new Map<string, Readonly<Record<Reach, Applies>>>();

/**
 * What is complained of, set against what a lesion of each place would show: by the same wiring by which signs are weighed, so
 * the brain answers for the other side and a root for its own, and a place that serves nothing of the kind does not answer.
 */
export function toldPartShifts({ history, findings }: Exam): readonly Shift[] {
  const isFound = findings.some(({ abnormal }) => abnormal);
  const told = history.filter(({ key, kind, present }) => kind === 'symptom' && present && key in shownBy);
  const [first] = told.filter(({ side }) => side !== undefined);
  return told.flatMap((statement) => [
    said(
      statement,
      placesOf(statement.key).neither,
      isFound ? ofNeither.besideSigns : ofNeither.alone,
      'a lesion there does not make it',
    ),
    ...sideShifts(statement, isFound ? weightOf.besideSigns : statement === first ? weightOf.first : weightOf.further),
  ]);
}

/**
 * Works out beforehand what the first complaint of a kind would otherwise wait for, a sign at a time, out of the states that are
 * worked out for what is examined.
 */
export function* prepareToldParts(columns: StateColumns): Generator<void> {
  for (const [key, signs] of Object.entries(shownBy)) {
    for (const sign of signs) {
      for (const side of bodySides) {
        if (shownSigns.has(`${sign}|${side}`)) continue;
        showing(sign, side, columns);
        yield;
      }
    }
    placesOf(key);
  }
}

function sideShifts(statement: HistoryStatement, weight: number): readonly Shift[] {
  const { key, side } = statement;
  if (side === undefined) return [];
  const places = placesOf(key);
  const shift = (reach: Reach, factor: number, because: string): Shift =>
    said(statement, places[reach], factor ** weight, because);
  const onBoth = shift(
    'both',
    side === 'both' ? factors.ofBothSides.both : factors.ofBothSides.one,
    'a lesion there shows on both sides',
  );
  return [
    onBoth,
    ...bodySides.map((own) => {
      const { own: same, other, both } = factors.ofOneSide;
      return shift(
        own,
        side === 'both' ? both : side === own ? same : other,
        `a lesion there shows on the ${own} side`,
      );
    }),
  ];
}

/** The places that would make a complaint, by the side on which they make it; worked out once. */
function placesOf(key: string): Readonly<Record<Reach, Applies>> {
  const places = known.get(key) ?? placesThatShow(shownBy[key] ?? []);
  known.set(key, places);
  return places;
}

function placesThatShow(signs: readonly Sign[]): Readonly<Record<Reach, Applies>> {
  const [onLeft, onRight] = bodySides.map((side) => signs.map((sign) => showing(sign, side)));
  // By how often each form of a lesion is met: most in one half of the cerebellum keep to it.
  const counts = new Map<string, Record<Reach, number>>();
  hypotheses.forEach(({ site, frequency }, index) => {
    const left = onLeft?.some((shown) => shown[index] === 1) === true;
    const right = onRight?.some((shown) => shown[index] === 1) === true;
    const id = siteId(site);
    const count = counts.get(id) ?? { left: 0, right: 0, both: 0, neither: 0 };
    counts.set(id, count);
    count[left && right ? 'both' : left ? 'left' : right ? 'right' : 'neither'] += frequency;
  });
  const reaches = new Map([...counts].map(([id, count]) => [id, reachOf(count)] as const));
  const those =
    (reach: Reach): Applies =>
    (site) =>
      site.kind !== 'none' && reaches.get(siteId(site)) === reach;
  return { left: those('left'), right: those('right'), both: those('both'), neither: those('neither') };
}

function reachOf({ left, right, both, neither }: Readonly<Record<Reach, number>>): Reach {
  const showing = left + right + both;
  if (showing < ofItsForms * (showing + neither)) return 'neither';
  return left > right + both ? 'left' : right > left + both ? 'right' : 'both';
}

const shownSigns = new Map<string, Uint8Array>();

/** 1 for every hypothesis that shows the sign on that side; worked out once. */
function showing(sign: Sign, side: BodySide, columns?: StateColumns): Uint8Array {
  const name = `${sign}|${side}`;
  const shown = shownSigns.get(name) ?? hypothesesThatShow(sign, side, columns);
  shownSigns.set(name, shown);
  return shown;
}

function hypothesesThatShow(sign: Sign, side: BodySide, columns?: StateColumns): Uint8Array {
  const [id, landmark] = typeof sign === 'string' ? [sign] : sign;
  const item = itemById.get(id);
  if (item === undefined) throw new Error(`${id} is no item`);
  const place = landmark === undefined ? {} : { place: { kind: 'landmark', key: landmark } };
  const target = { item, side, ...place };
  const column = columns?.column(target) ?? null;
  const model = column?.model ?? probeModel(target);
  const healthy = hypotheses[noLesionIndex];
  if (model === null || healthy === undefined) return new Uint8Array(hypotheses.length);
  const usual = chanceOfAbnormal(model, model.state(healthy));
  const isShown = Array.from({ length: model.states }, (_, state) => chanceOfAbnormal(model, state) - usual > shows);
  const states = column === null ? hypotheses.map(model.state) : columns?.statesOf(column);
  return Uint8Array.from(states ?? [], (state) => (isShown[state] === true ? 1 : 0));
}

const anybody = contextOf({ onset: {}, person: {} });

function chanceOfAbnormal({ normal, distribution }: ProbeModel, state: number): number {
  return distribution(state, anybody).reduce((sum, chance, index) => (normal[index] === true ? sum : sum + chance), 0);
}

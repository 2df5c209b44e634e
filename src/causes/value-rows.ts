import type { ExamQuery } from './exam-query.ts';
import type { Cause, ValueRatio } from './table/cause.ts';

const wholeSpine = 'mri-whole-spine';
/** Results whose images together show the whole spine. */
export const imagesOfItsParts = ['mri-cervical-spine', 'mri-thoracic-spine', 'mri-lumbar-spine'] as const;
const spineImages: readonly string[] = [wholeSpine, ...imagesOfItsParts];

/** What diseases of every level show: it is the same wherever it was seen. */
const sameEverywhere: ReadonlySet<string> = new Set(['root-enhancement', 'dorsal-column-signal']);

/** Exponent of the ratio of a positive test where it came back as equivocal. Judged. */
const equivocalPower = 0.25;

/** Exponent of the ratio of a normal image where it shows changes that do not explain the deficit, to the eye of one reader. Judged. */
const incidentalPower = 0.4;

/**
 * The ratio that a row gives to a value. Changes that do not explain the deficit are nearly as good as a normal image, and
 * an equivocal test says a little of what a positive one would.
 */
export function ratioOf(row: ValueRatio, value: string | undefined): number | undefined {
  const given = (wanted: string): number | undefined => row.ratios.find(([one]) => one === wanted)?.[1];
  if (value === undefined) return undefined;
  const own = given(value);
  if (own !== undefined) return own;
  if (value === 'incidental') return weaker(given('normal'), incidentalPower);
  return value === 'equivocal' ? weaker(given('positive'), equivocalPower) : undefined;
}

function weaker(ratio: number | undefined, power: number): number | undefined {
  return ratio === undefined ? undefined : ratio ** power;
}

/**
 * The rows of a cause for what came back. Where an image of the spine has no row, those of other images of it stand in: the
 * whole spine shows what any of its parts would, and a part shows what is told of the whole alone.
 */
export function valueRowsOf({ values = [] }: Cause, query: ExamQuery): readonly ValueRatio[] {
  const spine = values.filter(({ result }) => spineImages.includes(result));
  if (spine.length === 0) return values;
  const borrowed = spineImages.flatMap((image): readonly ValueRatio[] => {
    const value = query.result(image)?.value;
    if (value === undefined) return [];
    if (spine.some((row) => row.result === image && ratioOf(row, value) !== undefined)) return [];
    const ratios = spine
      .filter(({ result }) => lends(result, image, value, spine))
      .flatMap((row) => ratioOf(row, value) ?? []);
    const [first, ...others] = ratios;
    if (first === undefined) return [];
    const strongest = others.reduce((a, b) => (Math.abs(Math.log(b)) > Math.abs(Math.log(a)) ? b : a), first);
    return [{ result: image, ratios: [[value, strongest]], source: (spine[0] as ValueRatio).source }];
  });
  return borrowed.length === 0 ? values : [...values, ...borrowed];
}

/** Whether a row on one image may speak for another. */
function lends(from: string, to: string, value: string, spine: readonly ValueRatio[]): boolean {
  if (sameEverywhere.has(value)) return true;
  if (to === wholeSpine) return from !== wholeSpine && spine.every(({ result }) => result !== wholeSpine);
  const isOfTheWholeAlone = spine.every(({ result }) => result === wholeSpine);
  return isOfTheWholeAlone && value !== 'normal' && value !== 'incidental';
}

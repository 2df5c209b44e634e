import { segmentIndex } from '../../anatomy/segments.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Lasting, type PaceFactors } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type Process, processOf } from '../process.ts';
import { cordLevels, cordSite, levelFrequency, ownSegment, signsAtLevel, totalFrequency } from './cord-levels.ts';

/**
 * Lesions of the whole cord that do not take strength and feeling alike. Of injured cords that have lost all strength one in
 * ten or more still feels below the lesion (grade B of the International Standards, from-memory); inflammation often numbs
 * what it hardly weakens. Loss of strength and of feeling, and percent of all findings, judged.
 */
const unevenForms = [
  { key: 'strength-more', strength: 0.98, feeling: 0.5, percent: 0.32 },
  { key: 'strength-more', strength: 0.75, feeling: 0.3, percent: 0.28 },
  { key: 'feeling-more', strength: 0.4, feeling: 0.85, percent: 0.25 },
] as const;

/** The same in the first days, with limbs that hang and flat jerks; how often, at which pace and how long, judged. */
const silenced: { readonly share: number; readonly paces: PaceFactors; readonly lasting: Lasting } = {
  share: 0.06,
  paces: { hyperacute: 10, acute: 6, subacute: 0.3, chronic: 0.01 },
  lasting: { years: 0.12, beyond: 0.01 },
};
const deepEnoughForShock = 0.9;

function shockBelow(level: number): Process {
  return processOf({
    shock: ({ segment }) => (segment !== null && segment > level ? 0.9 : 0),
    because: 'a fresh lesion silences the cord below it',
  });
}

function unevenCrossSection(): Hypothesis[] {
  return cordLevels.flatMap((level) =>
    unevenForms.flatMap(({ key, strength, feeling, percent }) => {
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        lesion.cord('corticospinal', side, level, strength);
        lesion.cord('dorsalColumn', side, level, feeling).cord('spinothalamic', side, level, feeling);
        ownSegment(lesion, side, level, Math.min(strength, feeling));
      }
      const site = cordSite('spinal-cord-transverse', 'whole cross-section', level, 'both');
      const frequency = (percent * levelFrequency(level)) / totalFrequency;
      const faculties = signsAtLevel(bodySides, level, Math.max(strength, feeling));
      const damage = lesion.build();
      const usual = hypothesis(site, `${key}-${strength}`, frequency, damage, { faculties });
      if (strength < deepEnoughForShock) return [usual];
      const { share, paces, lasting } = silenced;
      return [
        usual,
        hypothesis(site, `${key}-${strength}-in-shock`, frequency * share, damage, {
          faculties,
          paces,
          lasting,
          process: shockBelow(level),
        }),
      ];
    }),
  );
}

/** What presses on the front of the neck's cord for years spares feeling; who grows weak in days shows other signs. Judged. */
const wornNeckPaces: PaceFactors = { hyperacute: 0.05, acute: 0.3, subacute: 0.9, chronic: 1.3 };
const wornNeckAges = { from: 40, outside: 0.3 } as const;

/**
 * Narrowing over several discs of the neck that wastes hands or shoulders and stiffens the legs while feeling is kept, as in
 * spondylotic amyotrophy with tract signs; it is taken for disease of motor cells (from-memory). Frequency judged.
 */
function motorNarrowing(): Hypothesis[] {
  return (
    [
      { top: 'C4', bottom: 'C6', horn: 0.5 },
      { top: 'C5', bottom: 'C8', horn: 0.5 },
      { top: 'C6', bottom: 'T1', horn: 0.55 },
    ] as const
  ).flatMap(({ top, bottom, horn }) =>
    [0.45, 0.2].map((depth) => {
      const level = segmentIndex(top);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        lesion.cord('corticospinal', side, level, depth).cord('dorsalColumn', side, level, 0.08);
        for (let segment = level; segment <= segmentIndex(bottom); segment += 1)
          lesion.cord('anteriorHorn', side, segment, horn);
      }
      return hypothesis(
        cordSite('spinal-cord-transverse', 'whole cross-section', level, 'both'),
        `motor-${bottom}-${depth}`,
        0.035,
        lesion.build(),
        {
          process: processOf({
            release: ({ segment }) => (segment !== null && segment > level ? 0.35 : 0),
            because: 'descending fibres that hold the reflexes back fail before strength does',
          }),
          paces: wornNeckPaces,
          ages: wornNeckAges,
        },
      );
    }),
  );
}

/** Every lesion of the whole cord that takes strength and feeling unevenly. */
export function unevenHypotheses(): Hypothesis[] {
  return [...unevenCrossSection(), ...motorNarrowing()];
}

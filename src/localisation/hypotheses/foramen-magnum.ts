import { segmentIndex } from '../../anatomy/segments.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';

/** How deep the tracts are hurt, and the nodule that hangs above them: many are seen before a limb is weak. Judged. */
const foramenDepths = [
  { depth: 0.75, nodule: 0.55, cerebellum: 0, share: 0.05 },
  { depth: 0.45, nodule: 0.4, cerebellum: 0, share: 0.05 },
  { depth: 0.25, nodule: 0.5, cerebellum: 0, share: 0.03 },
  // The cerebellum that hangs down is pressed itself: ataxia in a third of those with a Chiari malformation (from-memory).
  { depth: 0.4, nodule: 0.55, cerebellum: 0.5, share: 0.009 },
] as const;

/** Tonsils, meningiomas and a worn joint press slowly; an injury seldom does. Judged. */
const foramenPaces = { hyperacute: 0.2, acute: 0.5, subacute: 1, chronic: 2 } as const;

/** What hangs down grows with the skull or with a tumour. Judged. */
const tonsilPaces = { hyperacute: 0.03, acute: 0.1, subacute: 0.4, chronic: 2 } as const;

/** Compression where the cord becomes the brainstem: tracts of both sides, the lowest nuclei, the nodule above. */
export function foramenMagnum(): Hypothesis[] {
  const sides = [
    { key: 'even', left: 1, right: 1 },
    { key: 'left-worse', left: 1, right: 0.4 },
    { key: 'right-worse', left: 0.4, right: 1 },
  ] as const;
  return sides.flatMap((sided) =>
    foramenDepths.map(({ depth, nodule, cerebellum, share }) => {
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        const own = depth * sided[side];
        lesion.cord('corticospinal', side, segmentIndex('C1'), own);
        lesion.brain(side, 'dorsal-column-nuclei', own * 0.7);
        lesion.cord('spinothalamic', side, segmentIndex('C1'), own * 0.4);
        lesion.cord('dorsalRoot', side, segmentIndex('C2'), own * 0.5);
        lesion.brain(side, 'accessory-nerve', own * 0.5).brain(side, 'hypoglossal-nucleus', own * 0.4);
        lesion
          .brain(side, 'spinal-trigeminal-tract-in-medulla', own * 0.35)
          .place(side, 'spinal-accessory-nerve', own * 0.4, 0);
        lesion.brain(side, 'inferior-cerebellar-peduncle', own * 0.25);
        lesion.brain(side, 'cerebellar-hemisphere', cerebellum * sided[side]);
      }
      lesion.brain('left', 'flocculonodular-lobe', nodule).brain('left', 'cerebellar-vermis', cerebellum);
      return hypothesis(
        { key: 'foramen-magnum', label: 'Foramen magnum', side: 'both', level: null, kind: 'brainstem' },
        `${sided.key}-${depth}`,
        share,
        lesion.build(),
        { paces: cerebellum === 0 ? foramenPaces : tonsilPaces },
      );
    }),
  );
}

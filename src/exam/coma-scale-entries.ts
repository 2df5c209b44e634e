import type { Fault } from '../kernel/errors.ts';
import { comaScale } from './catalogue/coma-scale.ts';
import { pointerInto } from './faults/pointer.ts';
import type { SoundEntry } from './faults/sound-parts.ts';
import type { NotTestedReason, ScoredScale } from './finding.ts';
import type { ComaScaleEntry } from './request.ts';

type Part = keyof ScoredScale['parts'];

/** The coma scale as sent, at most once, and the faults of a wrong total or of two that contradict. */
export function readComaScale(entries: readonly SoundEntry<ComaScaleEntry>[]): {
  readonly scales: readonly ScoredScale[];
  readonly faults: readonly Fault[];
} {
  const faults: Fault[] = [];
  let kept: ScoredScale | undefined;
  for (const { entry, pointer } of entries) {
    const scale = toScale(entry, pointer);
    if (entry.total !== undefined && entry.total !== scale.total) faults.push(totalFault(scale));
    if (kept === undefined) kept = scale;
    else if (content(kept) !== content(scale)) faults.push(contradiction(kept, scale), contradiction(scale, kept));
  }
  return { scales: kept === undefined ? [] : [kept], faults };
}

function toScale(entry: ComaScaleEntry, pointer: string): ScoredScale {
  const parts: Record<Part, number | null> = { eye: null, verbal: null, motor: null };
  const notTested: Partial<Record<Part, NotTestedReason>> = {};
  for (const { key } of comaScale.parts) {
    const sent = entry[key];
    if (typeof sent === 'number') parts[key] = sent;
    else {
      const reason = sent?.notTested ?? entry.notTested;
      if (reason !== undefined) notTested[key] = reason;
    }
  }
  const { eye, verbal, motor } = parts;
  return {
    scale: entry.scale,
    parts,
    total: eye === null || verbal === null || motor === null ? null : eye + verbal + motor,
    notTested,
    ...(entry.note === undefined ? {} : { note: entry.note }),
    pointer,
  };
}

function totalFault({ total, pointer }: ScoredScale): Fault {
  return {
    pointer: pointerInto(pointer, 'total'),
    code: 'CONTRADICTION',
    message:
      total === null
        ? 'There is no total while a part is not tested: leave out `total`.'
        : `The parts add up to ${total}: mend them, or leave out \`total\`.`,
  };
}

function content({ parts, notTested }: ScoredScale): string {
  return JSON.stringify([parts, notTested]);
}

function contradiction(here: ScoredScale, there: ScoredScale): Fault {
  return {
    pointer: here.pointer,
    code: 'CONTRADICTION',
    message: `'${comaScale.key}' has other parts at ${there.pointer}.`,
  };
}

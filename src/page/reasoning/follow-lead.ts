import type { CatalogueIndex } from '../catalogue.ts';
import type { BuiltExam } from '../draft/exam-of-draft.ts';
import { showCell } from '../recording/quick-entry.tsx';
import { go } from '../view.ts';
import { cellOfItem, leadOf } from './lead-to-record.ts';

/** Shows the finding that an answer speaks of, in the record, and moves the focus there. */
export function followLead(pointer: string, built: BuiltExam, index: CatalogueIndex): void {
  const lead = leadOf(pointer, built);
  if (lead.kind === 'cell') showCell(lead, index);
  else go(lead.view, lead.detail);
}

/** Shows the cell in which a proposed item would be recorded, and moves the focus there. */
export function showItem(
  item: string,
  side: 'left' | 'right' | null,
  place: string | undefined,
  index: CatalogueIndex,
): void {
  const address = cellOfItem(item, side, place, index);
  if (address !== undefined) showCell({ addresses: [address] }, index);
}

import { describe, expect, it } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { candidatesOf, readEntry } from '../../src/page/recording/read-entry.ts';
import { catalogue } from './catalogue.ts';

const index = indexCatalogue(catalogue);
const candidates = candidatesOf(index);

function first(line: string) {
  const [reading] = readEntry(line, candidates, 5);
  if (reading === undefined) return undefined;
  const { item, addresses, value, notTested } = reading;
  const place = addresses[0]?.place?.key;
  return [
    item.id,
    ...(place === undefined ? [] : [place]),
    addresses.map(({ side }) => side).join('+'),
    notTested ?? value,
  ];
}

/** What an examiner would mean by these words. Common practice. */
const lines: readonly (readonly [line: string, ...meant: (string | number)[]])[] = [
  ['ankle dorsi l 3', 'power/ankle-dorsiflexion', 'left', '3'],
  ['ankle dorsiflexion left 4-', 'power/ankle-dorsiflexion', 'left', '4-'],
  ['dorsiflexion r 4+', 'power/ankle-dorsiflexion', 'right', '4+'],
  ['toe extension l 1', 'power/toe-extension', 'left', '1'],
  ['great toe ext l 1', 'power/great-toe-extension', 'left', '1'],
  ['hip flex both 5', 'power/hip-flexion', 'right+left', '5'],
  ['plantar r ext', 'plantars/plantar-response', 'right', 'extensor'],
  ['plantar flexor', 'plantars/plantar-response', 'right+left', 'flexor'],
  ['ankle jerk b 0', 'reflexes/ankle', 'right+left', '0'],
  ['knee jerk l 3+', 'reflexes/knee', 'left', '3'],
  ['pin l5 left reduced', 'sensation/pinprick', 'L5', 'left', 'reduced'],
  ['pin dorsum of foot left reduced', 'sensation/pinprick', 'dorsum-of-foot', 'left', 'reduced'],
  ['vib great toe b absent', 'sensation/vibration', 'great-toe', 'right+left', 'absent'],
  ['ptosis r pres', 'cranial-nerves/ptosis', 'right', 'present'],
  ['ankle clonus l 6', 'clonus/ankle', 'left', 6],
  ['romberg nt unable', 'gait/romberg', 'midline', 'unable'],
  ['tone lower limb b spastic', 'tone/lower-limb', 'right+left', 'spastic'],
  ['finger nose l impaired', 'coordination/finger-nose', 'left', 'impaired'],
  ['urinary retention absent', 'sphincters/urinary-retention', 'midline', 'absent'],
];

describe('a typed finding', () => {
  for (const [line, ...meant] of lines) {
    it(line, () => expect(first(line)).toEqual(meant));
  }

  it('leads to an item without recording anything where no value is typed', () => {
    expect(first('heel shin')?.at(-1)).toBeUndefined();
  });

  it('finds every item of the catalogue by its own label', () => {
    const lost = index.catalogue.sections.flatMap(({ items }) =>
      items.filter(
        ({ id, label }) =>
          !readEntry(label.replaceAll(/[^A-Za-z0-9 ]/g, ' '), candidates, 7).some(({ item }) => item.id === id),
      ),
    );
    expect(lost.map(({ id }) => id)).toEqual([]);
  });

  it('takes reinforcement, and a note after a semicolon', () => {
    const [reading] = readEntry('ankle jerk b trace reinf; with the Jendrassik manoeuvre', candidates, 5);
    expect(reading).toMatchObject({ value: 'trace', reinforced: true, note: 'with the Jendrassik manoeuvre' });
  });

  it('says nothing of what it does not know', () => {
    expect(readEntry('zzz l 3', candidates, 5)).toEqual([]);
  });
});

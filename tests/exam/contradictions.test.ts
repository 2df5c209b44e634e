import { describe, expect, it } from 'vitest';
import { requestWith, requestWithFindings } from './support/exam-request.ts';
import { faultsOf, read } from './support/read.ts';

const dorsiflexion = { movement: 'ankle-dorsiflexion', side: 'left', grade: '3' };
const contradictionAt = (pointer: string, other: string) => ({
  pointer,
  code: 'CONTRADICTION',
  message: expect.stringContaining(other),
});

describe('the same item twice', () => {
  it('is a fault at both places, each naming the other', () => {
    expect(faultsOf(requestWithFindings({ power: [dorsiflexion, { ...dorsiflexion, grade: '4' }] }))).toEqual([
      contradictionAt('/findings/power/0', '/findings/power/1'),
      contradictionAt('/findings/power/1', '/findings/power/0'),
    ]);
  });

  it('is found through "both"', () => {
    const faults = faultsOf(
      requestWithFindings({
        power: [
          { ...dorsiflexion, side: 'both' },
          { ...dorsiflexion, grade: '4' },
        ],
      }),
    );
    expect(faults).toHaveLength(2);
    expect(faults[0]?.message).toContain('on the left');
  });

  it('is no fault on the other side, at another place, or with the same value', () => {
    const pinprick = { modality: 'pinprick', side: 'left', result: 'normal' };
    const body = requestWithFindings({
      power: [dorsiflexion, { ...dorsiflexion, side: 'right', grade: '5' }, dorsiflexion],
      sensation: [
        { ...pinprick, dermatome: 'L5' },
        { ...pinprick, dermatome: 'S1', result: 'absent' },
        { ...pinprick, levelBelow: 'L5', result: 'reduced' },
      ],
    });
    expect(faultsOf(body)).toEqual([]);
  });

  it('is a fault when one is a value and the other is not tested, or when the notes differ', () => {
    const { grade, ...ungraded } = dorsiflexion;
    expect(faultsOf(requestWithFindings({ power: [dorsiflexion, { ...ungraded, notTested: 'pain' }] }))).toHaveLength(
      2,
    );
    const noted = (note: string) => ({ ...dorsiflexion, note });
    expect(faultsOf(requestWithFindings({ power: [noted('first try'), noted('second try')] }))).toHaveLength(2);
    expect(read(requestWithFindings({ power: [dorsiflexion, noted('splinted')] })).findings).toMatchObject([
      { value: grade, note: 'splinted' },
    ]);
  });

  it('is a fault in the history, but not for two relatives', () => {
    const statements = (list: string, entries: readonly unknown[]) =>
      faultsOf(requestWith({ history: { [list]: entries } }));
    const pain = { key: 'back-pain', present: true };
    expect(statements('symptoms', [pain, { ...pain, present: false }])).toEqual([
      contradictionAt('/history/symptoms/0', '/history/symptoms/1'),
      contradictionAt('/history/symptoms/1', '/history/symptoms/0'),
    ]);
    expect(
      statements('family', [
        { key: 'similar-disorder', present: true, relation: 'parent' },
        { key: 'similar-disorder', present: false, relation: 'sibling' },
      ]),
    ).toEqual([]);
    expect(
      statements('symptoms', [
        { ...pain, side: 'both' },
        { ...pain, side: 'left', present: false },
      ]),
    ).toHaveLength(2);
  });
});

describe('an absent limb', () => {
  const amputation = { sign: 'amputation', site: 'knee', side: 'left', present: true };

  it('cannot be examined at or beyond the lost part', () => {
    const faults = faultsOf(requestWithFindings({ inspection: [amputation], power: [dorsiflexion] }));
    expect(faults).toEqual([
      { pointer: '/findings/power/0', code: 'LIMB_ABSENT', message: expect.stringContaining('/findings/inspection/0') },
      { pointer: '/findings/inspection/0', code: 'LIMB_ABSENT', message: expect.stringContaining('/findings/power/0') },
    ]);
  });

  it('can be examined above it and on the other side, and be named as the reason', () => {
    const body = requestWithFindings({
      inspection: [amputation],
      power: [
        { movement: 'hip-flexion', side: 'left', grade: '5' },
        { ...dorsiflexion, side: 'right' },
        { movement: 'ankle-dorsiflexion', side: 'left', notTested: 'limb-absent' },
      ],
    });
    expect(faultsOf(body)).toEqual([]);
  });

  it('is also known from the reason of another item', () => {
    const faults = faultsOf(
      requestWithFindings({
        power: [{ movement: 'ankle-dorsiflexion', side: 'left', notTested: 'limb-absent' }],
        plantars: [{ side: 'left', response: 'flexor' }],
      }),
    );
    expect(faults.map((fault) => fault.pointer)).toEqual(['/findings/plantars/0', '/findings/power/0']);
  });
});

describe('the coma scale twice', () => {
  it('is a fault at both places unless the parts agree', () => {
    const scale = { scale: 'glasgow-coma-scale', eye: 4, verbal: 5, motor: 6 };
    expect(faultsOf(requestWithFindings({ higherFunction: [scale, scale] }))).toEqual([]);
    expect(faultsOf(requestWithFindings({ higherFunction: [scale, { ...scale, eye: 3 }] }))).toHaveLength(2);
  });
});

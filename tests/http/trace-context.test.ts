import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { traceContextOf } from '../../src/http/trace-context.ts';

/** Source of headers and rules: W3C Trace Context (Recommendation, 23 November 2021), sections 3.2.2, 3.2.3 and 4.3. */
const trace = '4bf92f3577b34da6a3ce929d0e0e4736';
const parent = '00f067aa0ba902b7';

describe('the trace context of a request', () => {
  it('goes on with the trace of a valid header, of this version or a later one', () => {
    const valid = [
      `00-${trace}-${parent}-01`,
      `00-${trace}-${parent}-00`,
      `00-${trace}-${parent}-ff`,
      `cc-${trace}-${parent}-01`,
      `01-${trace}-${parent}-01-what-the-future-will-be-like`,
      `01-${trace}-${parent}-01-`,
    ];
    for (const header of valid) {
      const context = traceContextOf(header);
      expect(context, header).toMatchObject({ traceId: trace, parentId: parent });
      expect(context.spanId).not.toBe(parent);
    }
  });

  it('begins a new trace where the header is not valid', () => {
    const invalid = [
      undefined,
      '',
      [`00-${trace}-${parent}-01`, `00-${trace}-${parent}-01`],
      `00-${trace}-${parent}-01, 00-${trace}-${parent}-01`,
      `ff-${trace}-${parent}-01`,
      `00-${'0'.repeat(32)}-${parent}-01`,
      `00-${trace}-${'0'.repeat(16)}-01`,
      `00-${trace}-${parent}-01-more`,
      `01-${trace}-${parent}-01.more`,
      `00-${trace.toUpperCase()}-${parent}-01`,
      `00-${trace.slice(1)}-${parent}-01`,
      `00-${trace}-${parent}`,
      `00-${trace}-${parent}-1`,
    ];
    for (const header of invalid) {
      const { traceId, parentId } = traceContextOf(header);
      expect(traceId, String(header)).toMatch(/^(?!0{32})[0-9a-f]{32}$/);
      expect(traceId).not.toBe(trace);
      expect(parentId).toBeUndefined();
    }
  });

  it('takes nothing but hexadecimal ids from whatever is sent', () => {
    const piece = fc.oneof(fc.string(), fc.constantFrom('00', '01', 'ff', trace, parent, '-'));
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
        const { traceId, spanId, parentId = parent } = traceContextOf(pieces.join('-'));
        expect([traceId, spanId, parentId].join(' ')).toMatch(/^[0-9a-f]{32} [0-9a-f]{16} [0-9a-f]{16}$/);
      }),
    );
  });
});

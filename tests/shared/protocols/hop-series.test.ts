import { type ChoiceParameter, HOP_PROTOCOLS, type NumberParameter } from '@surae/shared';
import { expect, test } from 'vitest';

test('every hop protocol is complete, and each of its parameters lies in its range', () => {
  for (const protocol of HOP_PROTOCOLS) {
    expect(protocol.test).toBe('hop-series');
    expect(protocol.remarks.join(' ')).toContain('no clearance');
    for (const parameter of Object.values(protocol.parameters) as (ChoiceParameter | NumberParameter)[]) {
      const { allowed, value } = parameter;
      if (typeof value === 'string') expect(allowed).toContain(value);
      else if (value !== null && 'least' in allowed) {
        expect(value).toBeGreaterThanOrEqual(allowed.least);
        expect(value).toBeLessThanOrEqual(allowed.most);
      }
    }
  }
  expect(new Set(HOP_PROTOCOLS.map(({ id }) => id)).size).toBe(HOP_PROTOCOLS.length);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packetLayout } from '../../../packages/sensors/src/describe/layout-schema.ts';
import { arbitraryLayout } from '../../support/arbitrary-layouts.ts';
import { runs } from '../../support/runs.ts';

test('every layout that can be used passes through JSON and the schema unchanged', () => {
  fc.assert(
    fc.property(arbitraryLayout, (layout) => {
      expect(packetLayout.parse(JSON.parse(JSON.stringify(layout)))).toEqual(layout);
    }),
    runs(100, 5000),
  );
});

test('what is no layout does not pass', () => {
  const channel = { kind: 'channel', form: 'i16', quantity: 'force', axis: null, unit: 'N' };
  const passes = (change: object, value: object = {}): boolean =>
    packetLayout.safeParse({
      order: 'big',
      fields: [{ kind: 'samples', repeat: 1, values: [{ ...channel, ...value }], ...change }],
    }).success;
  expect(passes({})).toBe(true);
  expect(passes({ repeat: 0 })).toBe(false);
  expect(passes({ repeat: 1.5 })).toBe(false);
  expect(passes({ values: [] })).toBe(false);
  expect(passes({ arrangement: 'mixed' })).toBe(false);
  for (const wrong of [
    { form: 'i64' },
    { quantity: 'time' },
    { axis: 'w' },
    { unit: '' },
    { scale: '1' },
    { notKnown: ['7FFF'] },
  ]) {
    expect([wrong, passes({}, wrong)]).toEqual([wrong, false]);
  }
});

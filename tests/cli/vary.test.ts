import { expect, test } from 'vitest';
import { readVary } from '../../apps/cli/src/vary.ts';

test('a parameter and its values', () => {
  expect(readVary('heightFraction=0.6,0.75')).toEqual({ parameter: 'heightFraction', values: ['0.6', '0.75'] });
});

test.each(['heightFraction', 'heightFraction=0.6', 'heightFraction=0.6,0.6', '=0.6,0.7', 'heightFraction=0.6,,0.7'])(
  '"%s" asks for nothing that can be done',
  (text) => {
    expect(() => readVary(text)).toThrow(`--vary ${text}: expected a parameter and its values`);
  },
);

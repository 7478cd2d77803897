import { INCLINE_10 } from '@surae/shared';
import { expect, test } from 'vitest';
import { variedProtocols } from '../../apps/cli/src/varied-protocols.ts';
import { readVary } from '../../apps/cli/src/vary.ts';

test('one protocol for each value, each with a fingerprint of its own; numbers and words', () => {
  const found = variedProtocols(INCLINE_10, readVary('heightFraction=0.6,0.9'));
  expect(found.map(({ value, protocol }) => [value, protocol.parameters.heightFraction.value])).toEqual([
    ['heightFraction 0.6', 0.6],
    ['heightFraction 0.9', 0.9],
  ]);
  const [, shoe] = variedProtocols(INCLINE_10, readVary('footwear=barefoot,shoe'));
  expect(shoe.protocol.parameters.footwear.value).toBe('shoe');
  expect(variedProtocols(INCLINE_10, undefined)).toEqual([]);
});

test('a parameter that is none, or a value that it cannot have, is a fault of the command line', () => {
  expect(() => variedProtocols(INCLINE_10, readVary('height=0.6,0.7'))).toThrow('--vary height=0.6: expected one of');
  expect(() => variedProtocols(INCLINE_10, readVary('heightFraction=0.6,7'))).toThrow(
    '--vary heightFraction=7: expected',
  );
});

import { protocolFingerprint } from '@surae/analysis';
import { FLOOR, INCLINE_10, type Protocol } from '@surae/shared';
import { expect, test } from 'vitest';
import { NOTHING_TOLD } from '../../../packages/study/src/listed/told.ts';
import { toldProtocol } from '../../../packages/study/src/listed/told-protocol.ts';

const print = (protocol: Protocol): string => protocolFingerprint(protocol, 'heel', 'best-two-of-first-repetitions');

test('shoes make another test of the same protocol, bare feet the usual one', () => {
  const shod = toldProtocol(INCLINE_10, { ...NOTHING_TOLD, footwear: 'shoe', support: 'rail' }) as Protocol;
  expect([shod.parameters.footwear.value, shod.parameters.support.value]).toEqual(['shoe', 'rail']);
  expect(shod.id).toBe(INCLINE_10.id);
  expect(print(shod)).not.toBe(print(INCLINE_10));
  expect(toldProtocol(INCLINE_10, { ...NOTHING_TOLD, footwear: 'barefoot' })).toBe(INCLINE_10);
  expect(toldProtocol(INCLINE_10, NOTHING_TOLD)).toBe(INCLINE_10);
});

test('a surface or knee that the protocol is not done with is a contradiction', () => {
  expect(toldProtocol(INCLINE_10, { ...NOTHING_TOLD, surface: 'floor' })).toEqual({
    contradiction: 'column "surface": the protocol single-leg.incline10 is done with incline10, got floor',
  });
  expect(toldProtocol(FLOOR, { ...NOTHING_TOLD, surface: 'floor', knee: 'bent' })).toMatchObject({
    contradiction: expect.stringContaining('column "knee"') as string,
  });
});

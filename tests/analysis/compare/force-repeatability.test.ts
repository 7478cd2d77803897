import { chooseReliability } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

const choose = (protocolId: string, placement?: string) =>
  chooseReliability({
    measure: 'peak-force',
    protocolId,
    unit: 'N',
    before: 1000,
    own: null,
    ...(placement === undefined ? {} : { placement }),
  });

test('seated on a plate: the published error, whose change is 118 N', () => {
  const found = choose('isometric.seated', 'platform');
  expect(found).toMatchObject({ standardError: 42.6, source: { kind: 'published', people: 61 } });
  expect([1.96 * Math.SQRT2 * 42.6]).toBeCloseToEach([118], { rtol: 0, atol: 0.1 });
});

test('a cell, another position or an unknown place has the cautious 15 %, and no error of a plate', () => {
  for (const found of [
    choose('isometric.seated', 'inline'),
    choose('isometric.straight', 'platform'),
    choose('isometric.seated'),
  ]) {
    expect(found?.source.kind).toBe('cautious-default');
    expect([1.96 * Math.SQRT2 * (found?.standardError ?? 0)]).toBeCloseToEach([150], { rtol: 1e-9, atol: 0 });
  }
});

import { LADDER_RUNGS } from '@surae/shared';
import { expect, test } from 'vitest';

test('the rungs go from walking to hops, each once and with where it comes from', () => {
  const codes = LADDER_RUNGS.map(({ code }) => code);
  expect(codes).toEqual(['walk', 'two-leg-raise', 'one-raise', 'ten-raises', 'three-hops', 'ten-hops']);
  for (const { code, id, source } of LADDER_RUNGS) {
    expect(id).toBe(`ladder.${code}`);
    expect(source).not.toBe('');
  }
});

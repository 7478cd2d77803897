import { expect, test } from 'vitest';
import { keepHand, keptHand } from '../../../apps/dashboard/src/journey/thumb-side.ts';

function memory(kept: Record<string, string> = {}) {
  return {
    getItem: (key: string) => kept[key] ?? null,
    setItem: (key: string, value: string) => {
      kept[key] = value;
    },
  };
}

test('the hand that was chosen is the one that is found again', () => {
  const device = memory();
  expect(keptHand(device)).toBeUndefined();
  for (const hand of ['left', 'right'] as const) {
    keepHand(device, hand);
    expect(keptHand(device)).toBe(hand);
  }
});

test('what is no hand counts as not chosen', () => {
  expect(keptHand(memory({ 'surae.hand': 'both' }))).toBeUndefined();
});

import { SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';
import { redFlags } from '../../../apps/dashboard/src/legs/red-flags.ts';

test('every flag is a line of the safety list, and one that leaves the list leaves the page', () => {
  const { lines } = redFlags();
  expect(lines).toHaveLength(4);
  expect(redFlags(SAFETY_LIST.filter(({ id }) => id !== 'safety.clot')).lines).toEqual(
    lines.filter((line) => !/swollen/.test(line)),
  );
  expect(redFlags([]).lines).toEqual([]);
});

test('the lines that ask for a doctor on the same day are all told', () => {
  const sameDay = SAFETY_LIST.filter(({ next }) => /same day/.test(next));
  expect(sameDay).toHaveLength(3);
  for (const { id } of sameDay) {
    expect(redFlags(SAFETY_LIST.filter((one) => one.id !== id)).lines, id).toHaveLength(3);
  }
});

test('whom to ring is what the clinic said: no number stands there', () => {
  const { title, emergency, ring, lines } = redFlags();
  expect(ring).toMatch(/the number your clinic gave you/);
  expect([title, emergency, ring, ...lines].join(' ')).not.toMatch(/\d/);
});

import { SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';
import { redFlags } from '../../../apps/dashboard/src/legs/red-flags.ts';

test('every flag is a line of the safety list, and one that leaves the list leaves the page', () => {
  const { lines } = redFlags(null);
  expect(lines).toHaveLength(7);
  const without = SAFETY_LIST.filter(({ id }) => id !== 'safety.clot');
  expect(redFlags(null, without).lines).toEqual(lines.filter((line) => !/swollen/.test(line)));
  expect(redFlags(null, []).lines).toEqual([]);
});

test('the lines that ask for a doctor on the same day, and those of bones and medicines, are all told', () => {
  const told = SAFETY_LIST.filter(({ id, next }) => /same day/.test(next) || /bone|fluoroquinolone|steroid/.test(id));
  expect(told).toHaveLength(6);
  for (const { id } of told) {
    expect(
      redFlags(
        null,
        SAFETY_LIST.filter((one) => one.id !== id),
      ).lines,
      id,
    ).toHaveLength(6);
  }
});

test('whom to ring is what the clinic typed; without that no number stands there', () => {
  const { title, emergency, ring, lines } = redFlags(null);
  expect(ring).toMatch(/the number your clinic gave you/);
  expect([title, emergency, ring, ...lines].join(' ')).not.toMatch(/\d/);
  const contact = { name: 'Practice at the mill', telephone: '000 11 22' };
  expect(redFlags(contact).ring).toBe(
    'Stop the exercises and ring Practice at the mill, 000 11 22, today, if one of these is new:',
  );
  expect(redFlags(contact).lines).toEqual(lines);
});

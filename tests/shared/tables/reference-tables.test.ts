import { PROTOCOLS, REFERENCE_TABLES } from '@surae/shared';
import { expect, test } from 'vitest';

const byDecade = REFERENCE_TABLES.filter(({ id }) => /^reference\.repetitions\.(men|women)\.\d\d$/.test(id));

test('the decades follow each other without a hole, and each entry says whom it is of', () => {
  for (const sex of ['men', 'women'] as const) {
    const groups = byDecade.filter((entry) => entry.group.sex === sex).map(({ group, id }) => ({ ...group, id }));
    expect(groups.map((group) => [group.ageFrom, group.ageBelow])).toEqual([
      [20, 30],
      [30, 40],
      [40, 50],
      [50, 60],
      [60, 70],
      [70, 80],
    ]);
    for (const group of groups) expect(group.id).toBe(`reference.repetitions.${sex}.${group.ageFrom}`);
  }
});

test('the sixties are where men and women meet: 19 both', () => {
  const sixties = byDecade.filter((entry) => entry.group.ageFrom === 60);
  expect(sixties.map((entry) => [entry.group.sex, entry.value])).toEqual([
    ['men', 19],
    ['women', 19],
  ]);
});

test('an entry is held beside results of protocols that there are, in the unit of its measure', () => {
  const known = new Set(PROTOCOLS.map(({ id }) => id));
  const units = { repetitions: '1', displacement: 'm', work: 'J', 'peak-height': 'm' };
  for (const entry of REFERENCE_TABLES) {
    expect(
      entry.protocols.filter((id) => !known.has(id)),
      entry.id,
    ).toEqual([]);
    expect(entry.unit, entry.id).toBe(units[entry.measure]);
    expect(entry.value, entry.id).toBeGreaterThan(0);
    expect(entry.group.ageFrom, entry.id).toBeLessThan(entry.group.ageBelow);
  }
});

test('a value whose source was not read as a whole serves as context only', () => {
  const context = REFERENCE_TABLES.filter((entry) => entry.mark === 'from-memory');
  expect(context.map((entry) => [entry.id, entry.protocols])).toEqual([['reference.lunsford.repetitions', []]]);
});

test('25 repetitions, often quoted as a lower limit, lie near the middle of the sample they come from', () => {
  const { value, spread } = REFERENCE_TABLES.find(({ id }) => id === 'reference.lunsford.repetitions')!;
  // 27.9 and 11.1: a quarter of a standard deviation below the mean, where a lower limit would be 6.1
  expect(((25 - value) / spread!).toFixed(2)).toBe('-0.26');
  expect((value - 1.96 * spread!).toFixed(1)).toBe('6.1');
});

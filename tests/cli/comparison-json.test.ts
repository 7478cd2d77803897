import fc from 'fast-check';
import { expect, test } from 'vitest';
import { assessRows, type Cells, WHOLE_ROW } from '../support/compared-manifest.ts';
import { runs } from '../support/runs.ts';

type Line = Record<string, unknown> & {
  comparison?: string;
  kind?: string;
  blocks: { code: string; sentence: string; unblock?: string; since?: string }[];
};

async function linesOf(rows: readonly Cells[], options: readonly string[] = [], files = {}): Promise<Line[]> {
  const { memory } = await assessRows(rows, ['--json', ...options], files);
  return memory.out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);
}

const left: Cells = { ...WHOLE_ROW, person: 'P1', visit: '1', side: 'left', order: 'first', file: 'l-12.csv' };
const right: Cells = {
  ...WHOLE_ROW,
  person: 'P1',
  visit: '1',
  side: 'right',
  order: 'second',
  rest_s: 150,
  symptomatic: 'mild',
  file: 'r-8.csv',
};
const again: Cells = { ...right, visit: '2', date: '2026-03-29', file: 'again-12.csv' };

test('comparisons follow the files, one for the legs of each visit and one for each leg that has several', async () => {
  const lines = await linesOf([left, right, again]);
  expect(lines.map(({ file, comparison }) => file ?? comparison)).toEqual([
    'l-12.csv',
    'r-8.csv',
    'again-12.csv',
    'legs',
    'legs',
    'visits',
  ]);
  expect(lines[3]).toMatchObject({
    kind: 'ratio',
    over: 'right',
    under: 'left',
    ratio: { value: 0.666666667 },
    blocks: [],
    difference: { value: -4, unit: '1' },
    reliability: { kind: 'published', standard_error: 2.25 },
    legs: { left: { value: 12, effort: { good: 'yes', missing: null } }, right: { value: 8, side: 'right' } },
  });
  expect(lines[5]).toMatchObject({
    side: 'right',
    visits: [{ day: '2026-03-01' }, { day: '2026-03-29' }],
    changes: [{ since: 'visit-before', change: { value: 4 }, zone: 'cannot-tell', real: 'cannot_tell' }],
  });
});

test('a blocked comparison has every reason in words, what would lift it, and no key of a ratio', async () => {
  const [, , blocked] = await linesOf([left, { ...right, order: '', symptomatic: '' }]);
  expect(blocked.blocks.map(({ code }) => code)).toEqual(['soreness-not-asked']);
  expect(blocked.blocks[0]).toMatchObject({
    sentence: 'It was not recorded for both legs whether they are sore.',
    unblock: 'Record for each leg whether it is sore.',
  });
  for (const key of ['ratio', 'difference', 'probability_below', 'lower', 'line', 'over'])
    expect(blocked).not.toHaveProperty(key);
  expect(blocked['under_other_reliability']).toEqual([]);
});

test('the own error comes first, is named, and is said where it is not used', async () => {
  const own = { protocol: 'single-leg.incline10', pairs: 20, standard_error: 1, standard_error_upper_80: 1.2 };
  const files = { 'own.json': JSON.stringify(own), 'few.json': JSON.stringify({ ...own, pairs: 6 }) };
  const [, , used] = await linesOf([left, right], ['--reliability', 'own.json'], files);
  expect(used['reliability']).toMatchObject({ kind: 'own-clinic', standard_error: 1.2, people: 20 });
  expect((used['under_other_reliability'] as unknown[]).length).toBe(3);
  const [, , few] = await linesOf([left, right], ['--reliability', 'few.json'], files);
  expect(few['reliability']).toMatchObject({ kind: 'published' });
  expect(few['remarks']).toContainEqual(
    expect.objectContaining({
      code: 'own-reliability',
      sentence: expect.stringContaining('shown and not used') as string,
    }),
  );
});

test('a row with a word that is none is refused alone, by row and column', async () => {
  const { memory, code } = await assessRows([left, { ...right, flare: 'perhaps' }]);
  expect(code).toBe(1);
  expect(memory.error).toBe(
    'Refused, 1 of 2:\n  m.csv, row 3, column "flare": expected yes, no, or nothing, got "perhaps"\n',
  );
});

test('a row that denies its protocol is refused', async () => {
  const { memory } = await assessRows([left, { ...right, surface: 'floor' }]);
  expect(memory.error).toContain('r-8.csv: column "surface": the protocol single-leg.incline10 is done with incline10');
});

/** Columns without which nothing can be said against comparing; emptied one by one, each must stand against a ratio. */
const ASKED = [
  'date',
  'source',
  'end_reason',
  'exertion',
  'footwear',
  'symptomatic',
  'earlier_injury',
  'nerve_signs',
] as const;

test('no manifest whatever gives a ratio while something that it needs is empty or stands against it', async () => {
  const turned: readonly Cells[] = [
    { end_reason: 'pain' },
    { end_reason: 'cap' },
    { end_reason: 'safety' },
    { end_reason: 'fixed-count-done' },
    { nerve_signs: 'yes' },
    { footwear: 'shoe' },
    { protocol: 'single-leg.floor' },
    { date: '2026-03-02' },
    { source: 'replay' },
    { exertion: 3 },
    { file: 'l-4.csv' },
  ];
  const change = fc.oneof(
    fc.subarray([...ASKED], { minLength: 1 }).map((names) => Object.fromEntries(names.map((name) => [name, '']))),
    fc.constantFrom(...turned),
  );
  await fc.assert(
    fc.asyncProperty(change, async (changes) => {
      // a person is asked once: what is told on the row of the other leg counts for both, so that it is emptied there as well
      const ofPerson = 'nerve_signs' in changes ? { nerve_signs: changes['nerve_signs'] as string } : {};
      const lines = await linesOf([
        { ...left, ...changes },
        { ...right, ...ofPerson },
      ]);
      const found = lines.find(({ comparison }) => comparison === 'legs');
      expect(found?.kind, JSON.stringify(changes)).toBe('blocked');
      expect(found?.blocks.length).toBeGreaterThan(0);
      expect(found).not.toHaveProperty('ratio');
    }),
    runs(12, 200),
  );
}, 120_000);

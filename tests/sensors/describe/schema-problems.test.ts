import { expect, test } from 'vitest';
import { z } from 'zod';
import { schemaProblems } from '../../../packages/sensors/src/describe/schema-problems.ts';

const found = (schema: z.ZodType, value: unknown): unknown => {
  const result = schema.safeParse(value);
  return result.success
    ? []
    : schemaProblems(result.error.issues, value).map(({ path, expected, actual }) => [path, expected, actual]);
};

test('each problem says where, what was expected and what came', () => {
  const schema = z.strictObject({ a: z.array(z.strictObject({ b: z.number() })), c: z.email() });
  expect(found(schema, { a: [{ b: 1 }, { b: 'x' }], c: 'no' })).toEqual([
    ['a[1].b', 'a value of type number', '"x"'],
    ['c', expect.stringContaining('text that matches'), '"no"'],
  ]);
  expect(found(schema, { a: [], c: 'a@b.example', d: 1, e: 2 })).toEqual([
    ['d', 'only keys of the schema', '"d"'],
    ['e', 'only keys of the schema', '"e"'],
  ]);
  expect(found(schema, { a: {}, c: 'x'.repeat(60) })).toMatchObject([
    ['a', 'a value of type array', 'an object'],
    ['c', expect.anything(), `"${'x'.repeat(39)}...`],
  ]);
});

test('of several forms the one that was meant speaks', () => {
  const schema = z.union([z.literal('none'), z.array(z.strictObject({ n: z.int() }))]);
  expect(found(schema, [{ n: 1 }, { n: 'x' }])).toEqual([['[1].n', 'a value of type number', '"x"']]);
  expect(found(schema, 4)).toEqual([['', 'one of "none", or a value of type array', '4']]);
});

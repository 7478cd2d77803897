import { type BodyKind, readBodies, readBody } from '@surae/casebook';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { sampleDocument } from '../../support/sample-bodies.ts';

/** A kind that was changed twice: minutes became seconds, then got a name of their own. */
const walks: BodyKind = {
  kind: 'walk',
  about: 'person',
  amendable: true,
  versions: [
    z.strictObject({ minutes: z.number() }),
    z.strictObject({ seconds: z.number() }),
    z.strictObject({ durationS: z.number().max(10_000) }),
  ],
  migrations: [
    {
      id: 1,
      name: 'seconds',
      up: ({ body }) => ({ body: { seconds: 60 * (body as { minutes: number }).minutes } }),
    },
    {
      id: 2,
      name: 'a name with its unit',
      up: ({ body }) => ({ body: { durationS: (body as { seconds: number }).seconds } }),
    },
  ],
};

function walk(schema: number, body: object): ReturnType<typeof sampleDocument> {
  return sampleDocument('walk', 'p', body as never, { schema });
}

describe('a body on reading', () => {
  test('is brought to the present version, step by step, and the stored one stays as it was', () => {
    const old = walk(1, { minutes: 2.5 });
    const before = JSON.stringify(old);
    expect(readBody(old, walks)).toEqual({
      ok: true,
      document: { ...old, schema: 3, body: { durationS: 150 } },
    });
    expect(JSON.stringify(old)).toBe(before);
    expect(readBody(walk(2, { seconds: 7 }), walks)).toMatchObject({ document: { body: { durationS: 7 } } });
    const now = walk(3, { durationS: 9 });
    expect(readBody(now, walks)).toEqual({ ok: true, document: now });
  });

  test.each([
    ['newer-schema', walk(4, { wayM: 3 }), 'version 4, known to 3'],
    ['no-version', walk(0, { minutes: 1 }), 'version 0'],
    ['no-version', walk(1.5, { minutes: 1 }), 'version 1.5'],
    ['does-not-fit', walk(1, { seconds: 1 }), 'minutes: Invalid input: expected number, received undefined'],
    // what a step makes is checked as well: here a walk of three hours, which the present version does not take
    ['step-failed', walk(1, { minutes: 180 }), 'durationS: Too big: expected number to be <=10000'],
  ] as const)('that cannot be read is %s, with what was expected where', (code, document, detail) => {
    const read = readBody(document, walks);
    expect(read).toMatchObject({ ok: false, problem: { id: document.id, kind: 'walk', code } });
    expect(!read.ok && read.problem.detail).toContain(detail);
  });

  test('a step that throws is a problem and no crash', () => {
    const broken: BodyKind = {
      ...walks,
      migrations: [
        {
          id: 1,
          name: 'throws',
          up: () => {
            throw new Error('no');
          },
        },
        ...walks.migrations.slice(1),
      ],
    };
    expect(readBody(walk(1, { minutes: 1 }), broken)).toMatchObject({ problem: { code: 'step-failed' } });
  });

  test('of a kind of tomorrow is passed over with a word', () => {
    expect(readBody(sampleDocument('of-tomorrow', null, {}))).toMatchObject({ problem: { code: 'unknown-kind' } });
  });
});

test('one that does not fit never hides the rest', () => {
  const good = sampleDocument('run', 'p');
  const bad = sampleDocument('run', 'p', null);
  const also = sampleDocument('episode', 'p');
  const { documents, problems } = readBodies([good, bad, also]);
  expect(documents).toEqual([good, also]);
  expect(problems.map(({ id, code }) => [id, code])).toEqual([[bad.id, 'does-not-fit']]);
});

import { expect, test } from 'vitest';
import { EDGE_CASE_LISTS } from '../browser/support/edge-cases.ts';
import { filesUnder, projectText } from '../support/project.ts';

const cases = EDGE_CASE_LISTS.flatMap((list) => Object.entries(list));
const files = filesUnder('tests');

/** Titles of the tests of a file, as they are written there. */
function titlesOf(file: string): readonly string[] {
  // a title stands before a comma, or names a test in a list of them
  const quoted = /(?<![\w.])(?:'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)")\s*(?:,|:\s*(?:\n\s*)?async\b)/g;
  return [...projectText(file).matchAll(quoted)].map(([, single, double]) => single ?? double ?? '');
}

test('every case out of the ordinary is met by tests that are there', () => {
  const missing = cases.flatMap(([name, { metBy }]) =>
    metBy.flatMap(([file, title]) => {
      const path = `tests/${file}.test.ts`;
      if (!files.includes(path)) return [`${name}: no ${path}`];
      return titlesOf(path).includes(title) ? [] : [`${name}: ${path} has no '${title}'`];
    }),
  );
  expect(missing).toEqual([]);
});

test('a case that no test meets says why no screen shows it', () => {
  const open = cases.filter(([, { metBy }]) => metBy.length === 0);
  for (const [name, { noScreen }] of open) expect(noScreen?.length ?? 0, name).toBeGreaterThan(20);
  // where one is left, the page that it needs is not there
  expect(open.map(([name]) => name)).toEqual([]);
});

test('each case is another one, and tells what happens and what is seen', () => {
  expect(new Set(cases.map(([name]) => name)).size).toBe(cases.length);
  expect(new Set(cases.map(([, { happens }]) => happens)).size).toBe(cases.length);
  for (const [name, { happens, seen }] of cases) {
    expect(happens.length, name).toBeGreaterThan(10);
    expect(seen.length, name).toBeGreaterThan(8);
  }
});

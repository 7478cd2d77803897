import { expect, test } from 'vitest';
import { dealt, inEveryRun, SHARES, shareOf } from '../browser/support/shares.mjs';
import { filesUnder, projectText } from '../support/project.ts';

const names = filesUnder('tests/browser')
  .filter((path) => path.endsWith('.test.ts'))
  .map((path) => path.slice('tests/browser/'.length, -'.test.ts'.length));

test('every test in a browser is in one share, or in every run', () => {
  const shares = dealt(names);
  expect(shares).toHaveLength(SHARES);
  expect([...inEveryRun, ...shares.flat()].sort()).toEqual(names.toSorted());
});

test('no share has more than one file more than another one', () => {
  const sizes = dealt(names).map((share) => share.length);
  expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
});

test('what guards against a hazard in a browser is in every run', () => {
  const text = projectText('DEVELOPERS.md');
  const hazards = text.slice(text.indexOf('## Hazards'), text.indexOf('## The look'));
  const guards = [...hazards.matchAll(/`tests\/browser\/([\w-]+)\.test\.ts`: \*/g)].map(([, name]) => name);
  expect(guards.length).toBeGreaterThan(3);
  expect(guards.filter((name) => !inEveryRun.includes(name))).toEqual([]);
});

test('commits go through all shares, and one commit takes the same one each time', () => {
  const commits = Array.from({ length: SHARES }, (_, i) => (0xabcd_ef10 + i).toString(16).padEnd(40, '7'));
  const chosen = commits.map(shareOf);
  expect(chosen).toEqual(commits.map(shareOf));
  expect(chosen.toSorted((one, other) => one - other)).toEqual(Array.from({ length: SHARES }, (_, i) => i + 1));
});

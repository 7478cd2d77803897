import { expect, test } from 'vitest';
import { PAGE_FAULTS, type PageFault } from '../browser/support/page-faults.ts';
import { filesUnder, projectText } from '../support/project.ts';

const faults = Object.entries<PageFault>(PAGE_FAULTS);

test('every fault of the list is met on the page by a test in a browser, and no test meets one that is not there', () => {
  const texts = filesUnder('tests/browser')
    .filter((path) => path.endsWith('.test.ts'))
    .map(projectText);
  const met = texts.flatMap((text) => [...text.matchAll(/\breads\(\s*\w+,\s*'([\w-]+)'/g)].map(([, name]) => name));
  expect([...new Set(met)].sort()).toEqual(faults.map(([name]) => name).sort());
});

test('at least twenty different things go wrong, each with words of the catalogue, and what is kept is said', () => {
  expect(new Set(faults.map(([, { done }]) => done)).size).toBe(faults.length);
  expect(faults.length).toBeGreaterThanOrEqual(20);
  for (const [name, { reads, kept }] of faults) {
    expect(
      reads.map(({ id }) => id).every((id) => id.startsWith('sentence.')),
      name,
    ).toBe(true);
    expect(reads.length, name).toBeGreaterThan(0);
    expect(kept.length, name).toBeGreaterThan(10);
  }
});

test('nothing that a person reads of a fault is a name of an error or a number of a system', () => {
  for (const [name, { reads }] of faults) {
    for (const { text } of reads) {
      expect(text, name).not.toMatch(/Error\b|Exception|undefined|null|0x/);
    }
  }
});

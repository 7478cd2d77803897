import { expect, test } from 'vitest';
import { findChromium } from './support/chromium.mjs';
import { firstScripts, startBundleKib } from './support/start-weight.mjs';

// the built page is there wherever pages are tested
test.skipIf(findChromium() === undefined)('what has to arrive before the first page weighs less than 150 KiB', () => {
  const { kib, files } = startBundleKib();
  expect(files).toBeGreaterThan(3);
  expect(kib).toBeLessThan(150);
});

test.skipIf(findChromium() === undefined)('nothing that reads a word runs before the language is set', () => {
  // behind the name of a script stand eight signs of its content
  expect(firstScripts().map((name) => name.replace(/-.{8}\.js$/, ''))).toEqual(['index', 'language']);
});

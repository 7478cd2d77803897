import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { softwareName } from '../../apps/cli/src/software.ts';

test('the version is that of the package', () => {
  const { version } = JSON.parse(readFileSync('apps/cli/package.json', 'utf8')) as { version: string };
  expect(softwareName()).toBe(`surae ${version}`);
  expect(version).toMatch(/^\d+\.\d+\.\d+$/);
});

import { expect, test } from 'vitest';
import { softwareName } from '../../../apps/dashboard/src/result/software.ts';
import { projectText } from '../../support/project.ts';

test('name and version are those of the package', () => {
  const { version } = JSON.parse(projectText('apps/dashboard/package.json')) as { version: string };
  expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  expect(softwareName()).toBe(`surae ${version}`);
});

import { expect, test } from 'vitest';
import { filesUnder, projectText } from '../support/project.ts';

test('every fixture is named in fixtures/README.md', () => {
  const readme = projectText('fixtures/README.md');
  const unnamed = filesUnder('fixtures')
    .map((path) => path.slice('fixtures/'.length))
    .filter((path) => path !== 'README.md' && !readme.includes(path));
  expect(unnamed).toEqual([]);
});

test('every file of reference values says tool, version, call, script, units and tolerance', () => {
  const files = filesUnder('fixtures/reference');
  expect(files.length).toBeGreaterThan(5);
  for (const path of files) {
    const content = JSON.parse(projectText(path)) as Record<string, unknown>;
    const keys = ['tool', 'version', 'call', 'script', 'units', 'rtol', 'atol', 'input', 'expected'];
    expect([path, keys.filter((key) => !(key in content))]).toEqual([path, []]);
    // the script that made it is there, and writes this file
    const name = path.slice('fixtures/reference/'.length).replace(/\.json$/, '');
    expect(projectText(content['script'] as string)).toContain(`"${name}"`);
  }
});

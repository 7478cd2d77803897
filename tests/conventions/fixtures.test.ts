import { expect, test } from 'vitest';
import { filesUnder, projectText } from '../support/project.ts';

/** Whether the list names a fixture by its own path, or by a row for the whole folder of an open data set. */
function isNamed(path: string, readme: string): boolean {
  const folder = path.slice(0, path.lastIndexOf('/') + 1);
  return readme.includes(path) || readme.includes(`| \`${folder}\` |`);
}

test('every fixture is named in fixtures/README.md', () => {
  const readme = projectText('fixtures/README.md');
  const unnamed = filesUnder('fixtures')
    .map((path) => path.slice('fixtures/'.length))
    .filter((path) => path !== 'README.md' && !isNamed(path, readme));
  expect(unnamed).toEqual([]);
});

test('a file is named by its path or by the row of its folder, by nothing less', () => {
  const readme = 'made by `generators/a.py`\n| `recordings/b/` | what |\nsee `recordings/c/`';
  const named = ['generators/a.py', 'generators/b.py', 'recordings/b/1.csv', 'recordings/c/1.csv', '1.csv'];
  expect(named.map((path) => isNamed(path, readme))).toEqual([true, false, true, false, false]);
});

test('every open data set has its licence beside it and its source in the first line of each table', () => {
  const files = filesUnder('fixtures/recordings').filter((path) => !path.startsWith('fixtures/recordings/made/'));
  const folders = new Set(files.map((path) => path.slice(0, path.lastIndexOf('/'))));
  expect(folders.size).toBeGreaterThan(5);
  for (const folder of folders) expect(files).toContain(`${folder}/LICENSE.upstream.txt`);
  const without = files.filter((path) => path.endsWith('.csv') && !/^# .*github\.com/.test(projectText(path)));
  expect(without).toEqual([]);
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

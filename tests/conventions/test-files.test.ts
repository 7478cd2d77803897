import { expect, test } from 'vitest';
import { filesUnder, packageFolders, projectText } from '../support/project.ts';

/** Folders of tests that mirror no package: runs in a browser, over recordings, over simulated sets, over the rules of the project. */
const others = ['accuracy', 'bench', 'browser', 'conventions', 'open-recordings', 'reference', 'support'];

/** Folders whose files are scripts or read by tests, and are no tests themselves. */
const scripts = ['accuracy', 'bench', 'browser/support', 'guidance/courses', 'reference', 'support'];

/** Single files: the commands of the root, the compiler's settings, and what a convention reads. */
const single = [
  'tests/run.mjs',
  'tests/second-tries.mjs',
  'tests/start.mjs',
  'tests/tsconfig.json',
  'tests/browser/pictures.mjs',
  'tests/browser/soak.mjs',
  'tests/conventions/dependency-rules.ts',
  'tests/conventions/covered-by.json',
  'tests/conventions/licences.mjs',
  'tests/conventions/public-names.json',
  'tests/open-recordings/table.mjs',
];

test('every file under tests is a test, belongs to a folder of scripts, or is on the short list', () => {
  const scriptFolders = scripts.map((name) => `tests/${name}/`);
  const strangers = filesUnder('tests').filter(
    (path) =>
      !/\.test\.ts$/.test(path) && !single.includes(path) && !scriptFolders.some((folder) => path.startsWith(folder)),
  );
  expect(strangers).toEqual([]);
});

test('every folder under tests belongs to a package or is on the short list', () => {
  const names = [...packageFolders().map((folder) => folder.split('/').at(-1)!), ...others];
  const folders = new Set(
    filesUnder('tests').flatMap((path) => (path.split('/').length > 2 ? [path.split('/')[1]] : [])),
  );
  expect([...folders].filter((folder) => !names.includes(folder))).toEqual([]);
});

test('no test is left out, singled out, or waits for a clock', () => {
  const marks = [
    /\b(?:test|it|describe)\.(?:only|skip|todo|fails)\b/,
    /\bsetTimeout\(/,
    /\btoMatch(?:Inline)?Snapshot\b/,
  ];
  const offenders = filesUnder('tests')
    .filter((path) => path.endsWith('.test.ts') && !path.startsWith('tests/conventions/'))
    .filter((path) => marks.some((mark) => mark.test(projectText(path))));
  expect(offenders).toEqual([]);
});

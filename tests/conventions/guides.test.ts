import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inProject, projectText } from '../support/project.ts';

/** Paths that a guide names: code spans and links that look like a file or folder of the project. */
function pathsIn(text: string): string[] {
  const spans = [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1]);
  const links = [...text.matchAll(/\]\((?!https?:|#)([^)\s]+)\)/g)].map((match) => match[1]);
  const top = /^(?:packages|apps|shared|tests|fixtures|\.ci)\/[\w./-]*$|^[A-Z][A-Z]+\.md$|^[\w-]+\.(?:json|ts|js|mjs)$/;
  return [...spans.filter((span) => top.test(span)), ...links];
}

test.each(['DEVELOPERS.md', 'README.md', 'fixtures/README.md'])('%s names only files that exist', (guide) => {
  const relativeTo = guide.includes('/') ? guide.slice(0, guide.lastIndexOf('/') + 1) : '';
  const lost = pathsIn(projectText(guide)).filter(
    (path) => !existsSync(inProject(path)) && !existsSync(inProject(relativeTo + path)),
  );
  // files that a command writes for its user are no files of the project
  expect(lost.filter((path) => !/^[\w-]+\.(?:json|csv)$/.test(path))).toEqual([]);
});

test('a lost path is found', () => {
  expect(pathsIn('see `packages/analysis/src/gone.ts`, `force [N]`, `x.ts` and [the guide](docs/guide.md)')).toEqual([
    'packages/analysis/src/gone.ts',
    'x.ts',
    'docs/guide.md',
  ]);
});

test('every hazard names a test that there is, and a title of it', () => {
  const text = projectText('DEVELOPERS.md');
  const table = text.slice(text.indexOf('## Hazards'), text.indexOf('## The look'));
  const rows = table
    .split('\n')
    .filter((line) => line.startsWith('| ') && !line.startsWith('| use error') && !line.startsWith('| ---'));
  expect(rows.length).toBeGreaterThan(15);
  const without = rows.filter((row) => {
    const [, path, title] = /`(tests\/[\w./-]+\.test\.ts)`: \*([^*]+)\* \|$/.exec(row) ?? [];
    return (
      path === undefined || title === undefined || !existsSync(inProject(path)) || !projectText(path).includes(title)
    );
  });
  expect(without).toEqual([]);
});

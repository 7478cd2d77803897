import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { inProject, projectText, sourceFiles } from '../support/project.ts';

const sources = sourceFiles('apps/dashboard').map((path) => ({ path, text: projectText(path) }));

/** Lines of the page that match, as path:line. */
function linesWith(pattern: RegExp): string[] {
  return sources.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, i) => (pattern.test(line) ? [`${path}:${i + 1}`] : [])),
  );
}

test('nothing becomes markup or code that was text before: what a file holds is shown as text', () => {
  expect(sources.length).toBeGreaterThan(200);
  const markup =
    /\b(?:innerHTML|outerHTML|insertAdjacentHTML|setHTMLUnsafe|parseHTMLUnsafe|createContextualFragment|unsafeHTML|unsafeSVG|unsafeStatic|unsafeMathML|srcdoc|DOMParser)\b|document\.write/;
  expect(linesWith(markup)).toEqual([]);
  expect(linesWith(/\beval\(|new Function\(|setTimeout\(['"`]|javascript:/)).toEqual([]);
  // the sheet of the charts comes from a package and not from a file of somebody
  expect(linesWith(/\bunsafeCSS\(/).map((line) => line.split(':')[0])).toEqual([
    'apps/dashboard/src/charts/signal-chart.ts',
  ]);
});

test('a style stands in a sheet or is set as a property: the policy of the page refuses it in markup', () => {
  expect(linesWith(/(?<![.\w-])style=["'$]/)).toEqual([]);
});

test('the page names no address of another server', () => {
  expect(linesWith(/https?:\/\/(?!www\.w3\.org\/)|["'`]wss?:/)).toEqual([]);
});

test('the list of packages and their licences is the one of what is installed', () => {
  const args = [inProject('tests/conventions/licences.mjs'), '--print'];
  const made = execFileSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1e7 });
  expect(made).toContain('\nlit 3.');
  expect(made).not.toContain('Licence: not named');
  expect(projectText('apps/dashboard/public/licences.txt')).toBe(made);
});

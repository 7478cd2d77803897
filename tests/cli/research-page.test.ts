// The researcher's page of the README, gone through in its order by the built command.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { csvRows } from '../support/csv-rows.ts';
import { inProject, projectText } from '../support/project.ts';

/** The commands of the page, line by line; a line that is no command is what a person does between two of them. */
function steps(): string[] {
  const [, page] = /From a messy folder to a figure\.\*\*([\s\S]*?)\n\*\*/.exec(projectText('README.md'))!;
  return page
    .split('\n')
    .filter((line) => line.startsWith('    '))
    .map((line) => line.trim())
    .join('\n')
    .replaceAll('\\\n', '')
    .split('\n');
}

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'surae-page-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const text = (name: string): string => readFileSync(join(folder, name), 'utf8');

/** Words of a command as a shell parts them. */
function words(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);
}

function run(line: string): { status: number | null; out: string; error: string } {
  const [program, name, ...args] = words(line);
  expect([program, name]).toEqual(['npx', 'surae']);
  const done = spawnSync(process.execPath, [inProject('apps/cli/bin/surae.js'), ...args], {
    encoding: 'utf8',
    cwd: folder,
  });
  return { status: done.status, out: done.stdout, error: done.stderr };
}

/** Ada counts: every repetition that is shown, but in every sixth recording one fewer, and every ninth is none for her. */
function adaCounts(): void {
  const shown = csvRows(text('for-ada/verdicts.csv'));
  const counts = csvRows(text('for-ada/counts.csv')).map(({ item }, at) => {
    const all = shown.filter((row) => row['item'] === item).length;
    return `${item},${all - (at % 6 === 0 ? 1 : 0)}`;
  });
  const verdicts = shown.map(
    (row, at) => `${row['item']},${row['repetition']},${row['at_s']},${at % 9 === 0 ? 'no' : 'yes'}`,
  );
  writeFileSync(join(folder, 'for-ada/counts.csv'), `item,count\n${counts.join('\n')}\n`);
  writeFileSync(join(folder, 'for-ada/verdicts.csv'), `item,repetition,at_s,verdict\n${verdicts.join('\n')}\n`);
}

test('the page leads from a messy folder to a blinded re-count, a table of correlations, a figure and a bundle', () => {
  if (!existsSync(inProject('apps/cli/dist/main.js'))) throw new Error('the command is not built: npm run build');
  const page = steps();
  expect(page.filter((line) => line.startsWith('npx surae '))).toHaveLength(10);
  const told: string[] = [];
  for (const line of page) {
    if (line.startsWith('#')) {
      adaCounts();
      continue;
    }
    const { status, out, error } = run(line);
    // what lies about in the folder is refused and said; all else goes through
    const expected = /surae (look|export) /.test(line) ? 1 : 0;
    expect([line, status, expected === 0 ? error : '']).toEqual([line, expected, '']);
    told.push(out);
  }
  // each recording of a person was found with its true repetitions, whoever wrote it
  const truth = new Map(csvRows(text('messy/truth.csv')).map((row) => [row['file'], row['repetitions']]));
  const quality = csvRows(text('results/quality.csv'));
  expect(quality).toHaveLength(16);
  expect(quality.map((row) => row['status'])).toEqual(quality.map(() => 'include'));
  const outcomes = csvRows(text('results/outcomes.csv'));
  expect(new Set(outcomes.map((row) => row['file']))).toEqual(new Set(truth.keys()));
  // the count of the people once more, with its correlation and the interval of that
  const agreement = csvRows(text('results/agreement.csv'));
  expect(agreement.map((row) => row['kind'])).toEqual(['within-rater', 'with-automatic']);
  for (const { icc, icc_low: low, icc_high: high } of agreement) {
    expect(Number(low)).toBeLessThan(Number(icc));
    expect(Number(icc)).toBeLessThan(Number(high));
  }
  // a figure that says how it is made again, and everything as the record says
  expect(text('results/estimates.svg')).toContain('surae study messy/study.json');
  expect(existsSync(join(folder, 'messy-bundle.zip'))).toBe(true);
  expect(told.at(-1)).toContain('made with the study as it stands');
});

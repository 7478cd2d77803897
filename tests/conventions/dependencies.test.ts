import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { describe, expect, test } from 'vitest';
import { inProject, packageFolders, projectFolder, projectText, sourceFiles } from '../support/project.ts';
import { may, npmOfBrowser, npmOfCli, npmOfPure, options, resolution } from './dependency-rules.ts';

async function violations(baseDir: string): Promise<{ found: string[]; cruised: number }> {
  const { output } = await cruise(['packages', 'apps', 'shared'], { ...options, baseDir }, resolution);
  const { summary } = output as ICruiseResult;
  const found = summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
  return { found: [...new Set(found)].sort(), cruised: summary.totalCruised };
}

test('every import is on the list', async () => {
  const { found, cruised } = await violations(projectFolder);
  expect(cruised).toBeGreaterThan(100);
  expect(found).toEqual([]);
});

test('every package and app has its line in the list', () => {
  expect(packageFolders()).toEqual(Object.keys(may).sort());
});

test('every package declares what it may import, and nothing else', () => {
  for (const folder of packageFolders()) {
    const { dependencies = {} } = JSON.parse(projectText(`${folder}/package.json`)) as {
      dependencies?: Record<string, string>;
    };
    const allowed = [
      ...may[folder].map((one) => `@surae/${one.split('/').at(-1)}`),
      ...(npmOfPure[folder] ?? npmOfBrowser[folder] ?? (folder === 'apps/cli' ? npmOfCli : [])),
    ];
    expect(Object.keys(dependencies).filter((name) => !allowed.includes(name))).toEqual([]);
    // a version is exact, so that what was checked is what runs
    expect(Object.values(dependencies).filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  }
});

test('no page asks for a whole package at once, or everything in it would be sent', () => {
  const offenders = sourceFiles('apps/dashboard').filter((path) => projectText(path).includes("import('@surae/"));
  expect(sourceFiles('apps/dashboard').length).toBeGreaterThan(20);
  expect(offenders).toEqual([]);
});

describe('the list catches', () => {
  const files: Record<string, string> = {
    'packages/analysis/src/index.ts': 'export const one = 1;',
    'packages/analysis/src/inner.ts': "import { two } from './other.ts';\nexport const inner = two;",
    'packages/analysis/src/other.ts': "import { inner } from './inner.ts';\nexport const two = () => inner;",
    'packages/records/src/index.ts': "import { one } from '../../analysis/src/index.ts';\nexport const three = one;",
    'packages/simulation/src/index.ts': "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;",
    'packages/simulation/src/npm.ts': "import { all } from 'papaparse';\nexport const math = all;",
    'packages/simulation/src/lost.ts': "import { gone } from './gone.ts';\nexport const lost = gone;",
    'packages/simulation/src/up.ts': "import { main } from '../../../apps/cli/src/index.ts';\nexport const up = main;",
    'apps/cli/src/index.ts':
      "import type { inner } from '../../../packages/analysis/src/inner.ts';\nexport const main = (x: typeof inner) => x;",
    'apps/dashboard/src/page.ts': "import { plot } from 'uplot';\nexport const page = plot;",
    'shared/src/index.ts': 'export const table = [];',
    'node_modules/uplot/index.js': 'export const plot = 1;',
    'node_modules/uplot/package.json': '{"name": "uplot", "type": "module", "exports": "./index.js"}',
    'node_modules/papaparse/index.js': 'export const all = 1;',
    'node_modules/papaparse/package.json': '{"name": "papaparse", "type": "module", "exports": "./index.js"}',
  };

  test('a sibling, a Node module, a foreign npm package, an app, a side door, a chart without its wrapper, a cycle and a lost file', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'surae-rules-'));
    try {
      for (const [path, text] of Object.entries(files)) {
        mkdirSync(dirname(join(folder, path)), { recursive: true });
        writeFileSync(join(folder, path), text);
      }
      const { found } = await violations(folder);
      const rules = found.map((one) => one.replace(/ -> .*/, ''));
      expect(rules).toEqual(
        expect.arrayContaining([
          'packages/records imports only its list: packages/records/src/index.ts',
          'packages/simulation uses its npm packages only: packages/simulation/src/index.ts',
          'packages/simulation uses its npm packages only: packages/simulation/src/npm.ts',
          'nothing imports an app: packages/simulation/src/up.ts',
          'front door only: apps/cli/src/index.ts',
          'no cycles: packages/analysis/src/inner.ts',
          'one wrapper around the charts: apps/dashboard/src/page.ts',
          'everything can be found: packages/simulation/src/lost.ts',
        ]),
      );
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

/** Shapes of a published standard, and nothing of a platform. */
const shapesOf: Readonly<Record<string, readonly string[]>> = { 'packages/exchange': ['fhir/r4'] };

test('the configuration of the compiler keeps the platform out of the pure packages', () => {
  const root = JSON.parse(projectText('tsconfig.json')) as { compilerOptions: { lib: string[]; types: string[] } };
  expect(root.compilerOptions.types).toEqual([]);
  expect(root.compilerOptions.lib).toEqual(['ES2023']);
  for (const folder of Object.keys(npmOfPure)) {
    const own = JSON.parse(projectText(`${folder}/tsconfig.json`)) as { compilerOptions: Record<string, unknown> };
    expect([inProject(folder), own.compilerOptions['lib'], own.compilerOptions['types']]).toEqual([
      inProject(folder),
      undefined,
      shapesOf[folder],
    ]);
  }
});

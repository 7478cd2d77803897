import type { ICruiseOptions, IRegularForbiddenRuleType, IResolveOptions } from 'dependency-cruiser';

/** Who may import whom. What is not listed is forbidden: what a clinic writes down, what leaves and what a study comes to stand on the others. */
export const may: Readonly<Record<string, readonly string[]>> = {
  shared: [],
  'packages/analysis': ['shared'],
  'packages/simulation': ['shared'],
  'packages/records': ['shared'],
  'packages/sensors': ['shared'],
  'packages/storage': ['shared'],
  'packages/guidance': ['shared'],
  'packages/casebook': ['shared', 'packages/analysis', 'packages/records', 'packages/storage'],
  'packages/exchange': ['shared', 'packages/analysis', 'packages/records', 'packages/casebook'],
  'packages/study': ['shared', 'packages/analysis', 'packages/records', 'packages/exchange'],
  'apps/cli': [
    'shared',
    'packages/analysis',
    'packages/simulation',
    'packages/records',
    'packages/storage',
    'packages/casebook',
    'packages/exchange',
    'packages/study',
  ],
  'apps/dashboard': [
    'shared',
    'packages/analysis',
    'packages/records',
    'packages/simulation',
    'packages/sensors',
    'packages/storage',
    'packages/guidance',
    'packages/casebook',
    'packages/exchange',
    'packages/study',
  ],
};

/** Pure packages: no Node module, no browser, and of npm only these. */
export const npmOfPure: Readonly<Record<string, readonly string[]>> = {
  shared: [],
  'packages/analysis': [
    'ml-regression',
    'simple-statistics',
    '@stdlib/stats-base-dists-chisquare-quantile',
    '@stdlib/stats-base-dists-f-cdf',
    '@stdlib/stats-base-dists-f-quantile',
    '@stdlib/stats-base-dists-t-cdf',
    '@stdlib/stats-base-dists-t-quantile',
  ],
  'packages/simulation': [],
  'packages/records': ['papaparse', 'zod', '@noble/hashes'],
  'packages/sensors': ['zod'],
  'packages/guidance': [],
  'packages/casebook': ['zod'],
  'packages/exchange': ['fflate', 'hyparquet-writer'],
  'packages/study': ['zod'],
};

/** What runs in a browser: no Node module either, and of npm only these. */
export const npmOfBrowser: Readonly<Record<string, readonly string[]>> = {
  'packages/storage': ['idb', '@noble/hashes', 'hash-wasm', 'fflate'],
  'apps/dashboard': ['lit', '@lit/context', '@lit/localize', 'ical-generator', 'saxes', 'uplot', 'uqr'],
};

/** What the command line has of npm: threads, zips that are read where they lie, a queue and its database; some have their types apart. */
export const npmOfCli: readonly string[] = ['piscina', 'yauzl', '@types/yauzl', 'bullmq', 'fflate', 'pg', '@types/pg'];

/** The builds of the apps run under Node and are no part of them. */
const buildSettings = '^apps/(dashboard|cli)/vite\\.config\\.ts$';

/** The part of a package that runs under Node alone, with a front door of its own. */
const nodeFolder = '^packages/storage/src/node/';
const nodeDoor = `${nodeFolder}index\\.ts$`;

/** What help and the reading of options need of a study, with a front door of its own: the rest takes time to load. */
const wordsDoor = '^packages/study/src/words\\.ts$';

type Rule = IRegularForbiddenRuleType;

function forbid(name: string, from: Rule['from'], to: Rule['to']): Rule {
  return { name, severity: 'error', from, to };
}

const forbidden: Rule[] = [
  ...Object.entries(may).map(([from, to]) =>
    forbid(
      `${from} imports only its list`,
      { path: `^${from}/` },
      { path: '^(packages|apps|tests|fixtures|shared)/', pathNot: [from, ...to].map((one) => `^${one}/`) },
    ),
  ),
  ...Object.entries({ ...npmOfPure, ...npmOfBrowser }).map(([from, npm]) =>
    forbid(
      `${from} uses its npm packages only`,
      { path: `^${from}/`, pathNot: [buildSettings, nodeFolder] },
      { pathNot: ['^(packages|shared|apps|tests|fixtures)/', ...npm.map((one) => `^node_modules/${one}/`)] },
    ),
  ),
  forbid(
    'front door only',
    { path: '^((?:packages|apps)/[^/]+|shared)/' },
    { path: '^((packages|apps)/[^/]+|shared)/src/(?!index\\.ts$)', pathNot: ['^$1/', nodeDoor, wordsDoor] },
  ),
  forbid(
    'nothing of Node comes into a page',
    { path: ['^packages/', '^apps/dashboard/'], pathNot: [nodeFolder, buildSettings] },
    { path: nodeFolder },
  ),
  forbid(
    'the command line uses its npm packages only',
    { path: '^apps/cli/', pathNot: buildSettings },
    { path: '^node_modules/', pathNot: npmOfCli.map((one) => `^node_modules/${one}/`) },
  ),
  forbid(
    'one wrapper around the charts',
    { path: '^apps/dashboard/', pathNot: '^apps/dashboard/src/charts/signal-chart\\.ts$' },
    { path: '^node_modules/uplot/' },
  ),
  forbid('nothing imports an app', { pathNot: '^apps/' }, { path: '^apps/' }),
  forbid('no cycles', {}, { circular: true }),
  forbid('everything can be found', {}, { couldNotResolve: true }),
];

/**
 * Rules are on paths: a workspace link has no dependency type of its own. `dist` is left out, or a build would be
 * taken for a second source.
 */
export const options: ICruiseOptions = {
  validate: true,
  ruleSet: { forbidden },
  doNotFollow: { path: 'node_modules' },
  exclude: { path: '(^|/)dist/' },
  tsPreCompilationDeps: true,
};

/** The source condition of the workspace, as TypeScript and Vitest use it. */
export const resolution: Partial<IResolveOptions> = {
  exportsFields: ['exports'],
  conditionNames: ['surae-source', 'import', 'node', 'default'],
  extensions: ['.ts', '.mjs', '.js', '.d.ts'],
  mainFields: ['module', 'main'],
};

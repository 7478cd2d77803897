import lit from 'eslint-plugin-lit';
import litAccessibility from 'eslint-plugin-lit-a11y';
import webComponents from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';

const impure = [
  { object: 'Math', property: 'random', message: 'A pure package takes its randomness as a seeded argument.' },
  { object: 'Date', property: 'now', message: 'A pure package takes the time as an argument.' },
];

const dashboard = ['apps/dashboard/src/**/*.ts'];

export default tseslint.config(
  {
    ignores: ['**/dist/', '**/node_modules/', 'fixtures/', '**/*.js', '**/*.mjs', '**/*.cjs', '**/vite{,st}.config.ts'],
  },
  // what needs the types is asked in .oxlintrc.json, by a linter that reads them in a sixth of the time
  ...tseslint.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      'no-console': 'error',
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportAllDeclaration', message: 'Public names are listed one by one.' },
        { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
        { selector: 'TSEnumDeclaration', message: 'Use a string union.' },
      ],
    },
  },
  {
    files: [
      'packages/{analysis,simulation,records,sensors,guidance,casebook,exchange,study}/src/**/*.ts',
      'shared/src/**/*.ts',
    ],
    rules: { 'no-restricted-properties': ['error', ...impure] },
  },
  {
    // a front door is a list of names, and as long as there are names
    files: ['shared/src/index.ts', 'packages/*/src/index.ts'],
    rules: { 'max-lines': 'off' },
  },
  ...[
    lit.configs['flat/recommended'],
    webComponents.configs['flat/best-practice'],
    litAccessibility.configs.recommended,
  ].map((config) => ({ ...config, files: dashboard })),
  {
    files: dashboard,
    // the compiler knows that LitElement has these callbacks
    rules: { 'wc/guard-super-call': 'off' },
  },
  {
    files: dashboard,
    ignores: ['apps/dashboard/src/main.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          paths: [
            {
              name: '@surae/storage',
              importNames: ['IndexedDbStore', 'MemoryStore'],
              message: 'Only main.ts makes a store; ask the context for it.',
            },
          ],
        },
      ],
    },
  },
);

import tseslint from 'typescript-eslint';

const impure = [
  { object: 'Math', property: 'random', message: 'A pure package takes its randomness as a seeded argument.' },
  { object: 'Date', property: 'now', message: 'A pure package takes the time as an argument.' },
];

export default tseslint.config(
  { ignores: ['**/dist/', '**/node_modules/', 'fixtures/', '**/*.js', '**/*.mjs', '**/*.cjs', 'vitest.config.ts'] },
  ...tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
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
    files: ['packages/{analysis,simulation,records}/src/**/*.ts', 'shared/src/**/*.ts'],
    rules: { 'no-restricted-properties': ['error', ...impure] },
  },
);

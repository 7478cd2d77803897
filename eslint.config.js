import lit from 'eslint-plugin-lit';
import litAccessibility from 'eslint-plugin-lit-a11y';
import webComponents from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';

const dashboard = ['apps/dashboard/src/**/*.ts'];

// What is asked of elements and their templates. All else is asked in .oxlintrc.json, by a linter that reads in a tenth of the time.
export default tseslint.config(
  {
    ignores: ['**/dist/', '**/node_modules/', 'fixtures/', '**/*.js', '**/*.mjs', '**/*.cjs'],
  },
  { files: dashboard, languageOptions: { parser: tseslint.parser } },
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
);

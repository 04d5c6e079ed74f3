// For `npm run lint`, which runs in the repository's root: what is linted must lie below it.
import js from '@eslint/js';
import globals from 'globals';

const rules = {
  ...js.configs.recommended.rules,
  eqeqeq: 'error',
  'no-var': 'error',
  'prefer-const': 'error',
  'prefer-template': 'error',
  'no-shadow': 'error',
  curly: 'error',
};
const languageOptions = { ecmaVersion: 2023, sourceType: 'module' };

export default [
  {
    files: ['src/BracketGen.Web/Page/*.js'],
    languageOptions: { ...languageOptions, globals: globals.browser },
    rules: { ...rules, 'max-lines-per-function': ['error', { max: 60, skipComments: true, skipBlankLines: true }] },
  },
  // The report's scripts are put together into one: each uses functions of those before it.
  {
    files: ['src/BracketGen.Drawing/Report/Page/*.js'],
    languageOptions: {
      ecmaVersion: 2023, sourceType: 'script',
      globals: { ...globals.browser, surface: 'readonly', sweepMotion: 'readonly', solidPicture: 'readonly', sweepPicture: 'readonly', chartReaders: 'readonly' },
    },
    rules: { ...rules, 'no-unused-vars': ['error', { vars: 'local' }], 'no-redeclare': ['error', { builtinGlobals: false }], 'no-shadow': ['error', { builtinGlobals: false }] },
  },
  { files: ['tests/browser/*.{js,mjs}'], languageOptions: { ...languageOptions, globals: { ...globals.node, ...globals.browser } }, rules },
];

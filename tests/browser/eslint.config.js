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
  { files: ['tests/browser/*.{js,mjs}'], languageOptions: { ...languageOptions, globals: { ...globals.node, ...globals.browser } }, rules },
];

import svelte from 'eslint-plugin-svelte';
import tseslint from 'typescript-eslint';

/** core/ gets the time, chance and the outside world handed in; these would reach for them. */
const impure = [
  'console',
  'crypto',
  'document',
  'fetch',
  'global',
  'globalThis',
  'localStorage',
  'navigator',
  'performance',
  'process',
  'requestAnimationFrame',
  'setImmediate',
  'setInterval',
  'setTimeout',
  'window',
];

export default tseslint.config(
  { ignores: ['out/', 'dist/', 'test-results/', 'node_modules/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  ...tseslint.configs.recommended,
  ...svelte.configs.recommended,
  {
    rules: {
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'max-lines': ['error', { max: 400 }],
      'no-constant-condition': 'error',
      'no-empty': ['error', { allowEmptyCatch: false }],
      'no-eval': 'error',
      'no-var': 'error',
      'prefer-const': ['error', { destructuring: 'all' }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'separate-type-imports' }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: tseslint.parser, extraFileExtensions: ['.svelte'] } },
    rules: {
      'prefer-const': 'off',
      'svelte/prefer-const': ['error', { destructuring: 'all' }],
      'svelte/no-at-html-tags': 'error',
      'no-restricted-syntax': [
        'error',
        {
          selector: 'SvelteAttribute[key.name="style"]',
          message: 'The content security policy blocks inline style attributes: use style: directives.',
        },
      ],
    },
  },
  {
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...impure],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: 'core/ has no clock: take the instant as an argument.' },
        { object: 'Math', property: 'random', message: 'core/ has no chance: take a seeded generator.' },
        {
          object: 'Temporal',
          property: 'Now',
          message: 'core/ has no clock: take the instant as an argument.',
        },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'core/ has no clock: take the instant as an argument.',
        },
      ],
    },
  },
  {
    // A promise nobody waits for loses its error; needs types, which core/ (no promises) can do without.
    files: ['electron/**/*.ts', 'test/**/*.ts'],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
    },
  },
  { files: ['**/*.cjs'], languageOptions: { sourceType: 'commonjs' } },
);

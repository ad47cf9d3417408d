import js from '@eslint/js';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'out/', 'coverage/'] },
  js.configs.recommended,
  {
    files: ['**/*.ts', '**/*.tsx'],
    extends: [...tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      'no-console': 'error',
      '@typescript-eslint/max-params': ['error', { max: 4 }],
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.mjs'],
    languageOptions: {
      globals: Object.fromEntries(
        [
          'process',
          'console',
          'URL',
          'Buffer',
          'performance',
          'setTimeout',
          'document',
          'location',
          'requestAnimationFrame',
          'InputEvent',
          'Event',
          'dispatchEvent',
          'innerWidth',
          'getComputedStyle',
          'Image',
          'Worker',
          'DOMPoint',
          'navigator',
          'DataTransfer',
          'File',
          'DragEvent',
          'WebSocket',
          'clearTimeout',
          'localStorage',
        ].map((name) => [name, 'readonly']),
      ),
    },
  },
);

import jsdoc from 'eslint-plugin-jsdoc';
import tseslint from 'typescript-eslint';

const outside = [
  'window',
  'document',
  'fetch',
  'Office',
  'Excel',
  'console',
  'process',
  'Date',
  'performance',
];

/** What is public has a comment with its parameters and its result. */
const documented = (files, methods) => ({
  files,
  plugins: { jsdoc },
  rules: {
    'jsdoc/require-jsdoc': [
      'error',
      {
        publicOnly: true,
        contexts: [
          'TSInterfaceDeclaration',
          'TSTypeAliasDeclaration',
          'ExportNamedDeclaration > VariableDeclaration',
        ],
        require: { ClassDeclaration: true, FunctionDeclaration: true, MethodDefinition: methods },
      },
    ],
    'jsdoc/require-description': 'error',
    'jsdoc/require-param': [
      'error',
      { contexts: ['ExportNamedDeclaration > FunctionDeclaration'], checkDestructured: false },
    ],
    'jsdoc/require-param-description': 'error',
    'jsdoc/require-returns': ['error', { contexts: ['ExportNamedDeclaration > FunctionDeclaration'] }],
    'jsdoc/require-returns-description': 'error',
    'jsdoc/check-param-names': ['error', { checkDestructured: false }],
  },
});

export default tseslint.config(
  {
    ignores: ['dist/', 'out/', 'node_modules/', 'reports/', '.stryker-tmp/', '**/*.cjs', 'eslint.config.js'],
  },
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  documented(['src/**/*.ts', 'functions/**/*.ts'], true),
  // What adapters of the workbook do is said at the port.
  documented(['taskpane/**/*.ts', 'taskpane/**/*.tsx', 'workbench/**/*.ts'], false),
  {
    // The core has no clock, no chance, no host.
    files: ['src/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...outside],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random' }],
    },
  },
  {
    // Only the workbook's adapter may know which host the pane runs in.
    files: ['taskpane/**/*.ts', 'taskpane/**/*.tsx'],
    ignores: ['taskpane/workbook/**'],
    rules: { 'no-restricted-globals': ['error', 'Office', 'Excel', 'OfficeRuntime'] },
  },
  {
    files: ['tests/**', 'workbench/**', 'scripts/**', '**/*.js', '**/*.mjs'],
    rules: {
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      // The spreadsheet's packages declare the same enums more than once.
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/no-unsafe-enum-comparison': 'off',
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
    },
  },
  { files: ['**/*.js', '**/*.mjs'], extends: [tseslint.configs.disableTypeChecked] },
);

import { defineConfig } from 'vitest/config';

const mirrored = [
  'govern',
  'estimate',
  'walls',
  'rules',
  'functions',
  'decisions',
  'review',
  'reference',
  'published',
  'trace',
  'properties',
];

export default defineConfig({
  test: {
    include: mirrored.map((folder) => `tests/${folder}/**/*.test.ts`),
    // Random ranges and long jobs find nothing here that shorter tests do not, and would run for every mutant. Readings
    // are counted by replacing a module, which takes tests that do not share what is loaded.
    exclude: ['tests/properties/fuzz-ranges.test.ts', 'tests/review/audit/**'],
    testNamePattern:
      /^(?!.*(demo workbook|long zone|table of the docs|every number of the wall rows|rows are read once|from one to the next)).*$/,
    setupFiles: ['tests/one-seed.ts'],
    env: { PROPERTY_RUNS: '25' },
    // The libraries are loaded once for all files.
    isolate: false,
    testTimeout: 60_000,
  },
});

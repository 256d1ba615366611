import { defineConfig } from 'vitest/config';

const IN_BROWSER = 'tests/browser/**/*.test.ts';

// Two cores: the browsers of two files at a time, and no other test beside them.
const WORKERS = 2;

export default defineConfig({
  test: {
    reporters: ['default', './tests/slowest.ts', './tests/closing-line.ts'],
    maxWorkers: WORKERS,
    // A busy machine is slow, not wrong.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // `npm run coverage`: what of the core the unit tests reach.
    coverage: {
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'text'],
      reportsDirectory: 'reports/coverage',
    },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          setupFiles: ['tests/one-seed.ts'],
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [IN_BROWSER],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: [IN_BROWSER],
          sequence: { groupOrder: 1 },
          // What a person would see may take its time to show.
          expect: { poll: { timeout: 60_000 } },
        },
      },
    ],
  },
});

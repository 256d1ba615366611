import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    reporters: ['default', './tests/closing-line.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});

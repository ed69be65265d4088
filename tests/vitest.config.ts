import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: '..',
  test: {
    include: ['packages/*/src/**/*.test.ts', 'app/src/**/*.test.ts', 'tests/**/*.test.ts'],
    environment: 'node',
    passWithNoTests: false,
  },
});

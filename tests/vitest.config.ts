import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['packages/*/src/**/*.test.ts', 'app/src/**/*.test.ts', 'tests/**/*.test.ts'],
    setupFiles: ['tests/withProjection.ts'],
    environment: 'node',
    passWithNoTests: false,
    maxWorkers: '100%',
    // a busy machine is no fault: this only ends what hangs
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});

import { defineConfig } from '@playwright/test';
import journeys from './playwright.config';

const touch = { hasTouch: true, isMobile: true } as const;

/** Whole jobs walked through and counted, each at the sizes that people do it in. Prints a table; keeps a picture of every step. */
export default defineConfig({
  ...journeys,
  testDir: 'counted',
  outputDir: 'node_modules/.counted',
  workers: 1,
  timeout: 240_000,
  reporter: './src/countedTable.ts',
  projects: [
    { name: 'desk', testIgnore: /crewAway/, use: { viewport: { width: 1440, height: 900 } } },
    { name: 'tablet', testIgnore: /crewAway/, use: { viewport: { width: 820, height: 1180 }, ...touch } },
    { name: 'phone', use: { viewport: { width: 390, height: 844 }, ...touch } },
  ],
});

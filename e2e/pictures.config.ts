import { defineConfig } from '@playwright/test';
import journeys from './playwright.config';

/** Makes the pictures that the documents show, from the running app. Not part of the checks. */
export default defineConfig({
  ...journeys,
  testDir: 'pictures',
  projects: [{ name: 'desk', use: { viewport: { width: 1440, height: 900 } } }],
});

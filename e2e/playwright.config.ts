import { defineConfig } from '@playwright/test';
import { quietBrowser } from './src/quietBrowser';

/** A port that neither `vite dev` nor `vite preview` takes by itself; another for two runs on one machine. */
const PORT = Number(process.env.FOOTMARK_E2E_PORT ?? 4391);
const ORIGIN = `http://127.0.0.1:${PORT}`;

const touch = { hasTouch: true, isMobile: true } as const;

/** Journeys through the built app, in the three sizes that a crew holds. The reporter is the caller's choice. */
export default defineConfig({
  testDir: 'journeys',
  outputDir: 'node_modules/.results',
  workers: 2,
  fullyParallel: true,
  retries: 0,
  // a busy machine is no fault: these only end what hangs
  timeout: 150_000,
  expect: { timeout: 15_000 },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${PORT} --strictPort`,
    cwd: '../app',
    url: ORIGIN,
    reuseExistingServer: false,
    timeout: 20_000,
  },
  use: {
    baseURL: ORIGIN,
    locale: 'en-US',
    timezoneId: 'America/Chicago',
    actionTimeout: 30_000,
    navigationTimeout: 10_000,
    screenshot: 'only-on-failure',
    trace: 'off',
    launchOptions: quietBrowser,
  },
  projects: [
    {
      name: 'desk',
      testIgnore: /fingers\.spec\.ts$/,
      use: { viewport: { width: 1440, height: 900 } },
    },
    {
      name: 'phone',
      testMatch:
        /(newcomer|sample|crew|crew-set-out|crewSpanish|dig|fit|fit-of-runs|reroute|set-out|yard|fingers|accessible|elsewhereAccessible|large)\.spec\.ts$/,
      use: { viewport: { width: 390, height: 844 }, ...touch },
    },
    {
      name: 'tablet',
      testMatch: /(sample|crew|fit)\.spec\.ts$/,
      use: { viewport: { width: 820, height: 1180 }, ...touch },
    },
  ],
});

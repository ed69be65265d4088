import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { test } from '@playwright/test';

const inApp = (file: string) => fileURLToPath(new URL(`../../app/public/${file}`, import.meta.url));

/** What devices ask for; a maskable one is cut to the device's own shape, so its paper goes to the edge and the mark keeps to the middle. */
const ICONS = [
  { file: 'icon-180.png', px: 180, toTheEdge: true, share: 1 },
  { file: 'icon-192.png', px: 192, toTheEdge: false, share: 1 },
  { file: 'icon-512.png', px: 512, toTheEdge: false, share: 1 },
  { file: 'icon-maskable-512.png', px: 512, toTheEdge: true, share: 0.86 },
] as const;

const PAPER = '#f6f2e8';

test('icons from the mark', async ({ page }) => {
  const svg = await readFile(inApp('icon.svg'), 'utf8');
  for (const { file, px, toTheEdge, share } of ICONS) {
    await page.setViewportSize({ width: px, height: px });
    await page.setContent(
      `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${toTheEdge ? PAPER : 'transparent'}">
        <img style="width:${share * 100}%" src="data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}">`,
    );
    await page.screenshot({ path: inApp(file), omitBackground: true });
  }
});

import { readFile } from 'node:fs/promises';
import type { Download } from '@playwright/test';
import { Crew } from '../src/Crew';
import { expect, test } from '../src/counted';
import { downloadSite } from '../src/HandOff';
import { pointerHand } from '../src/hand';
import { openSample } from '../src/openSample';
import { pictureFiles } from '../src/pictureFiles';

test.use({ locale: 'es-MX' });

test('a crew without a network, in Spanish, from link to as-built', async ({ page, hand, walk, browser }) => {
  const desk = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-US',
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  const office = await desk.newPage();
  const officeHand = walk.counting(office, pointerHand(office, 'mouse'));
  const screen = await openSample(office, officeHand);
  walk.start();
  await screen.goTo('Hand-off');
  await walk.picture(office, 'office-hand-off');
  await screen.press('Copy the link');
  await expect(screen.notice).toContainText('on the clipboard');
  const link = await office.evaluate(() => navigator.clipboard.readText());

  const crew = new Crew(page, hand);
  await page.goto(link);
  const show = page.getByRole('button', { name: /^(Show the marks|Mostrar las marcas|Ver las marcas)$/ });
  await expect(show).toBeVisible();
  await walk.picture(page, 'plan-came');
  await walk.aside(() => page.evaluate(async () => void (await navigator.serviceWorker.ready)));
  await hand.press(show);
  await expect(crew.sheet.getByText('…', { exact: true })).toHaveCount(0);
  await page.context().setOffline(true);
  await walk.picture(page, 'first-mark');
  for (let n = 0; n < 2; n++) {
    await crew.press('Pintada');
    await crew.press('Marca siguiente');
  }
  await crew.press('Pintada');
  await walk.picture(page, 'painted');
  await crew.press('Lo que encontramos');
  await crew.step('Con el flujo 1 ft', 1);
  await crew.step('Izquierda 0.1 ft', 2);
  await crew.step('Más 0.1 ft', 1);
  await walk.picture(page, 'where-found');
  await hand.choose(crew.button(/Qué era$/), 'Raíces');
  const picture = page.waitForEvent('filechooser');
  await crew.press('Tomar una foto');
  await (await picture).setFiles({
    name: 'hoyo.png',
    mimeType: 'image/png',
    buffer: pictureFiles.png(64, 48),
  });
  await expect(crew.button('Quitar esta foto')).toBeVisible();
  await walk.picture(page, 'found');
  await crew.press('Listo');
  await walk.picture(page, 'done');
  await crew.press('Devolver a la oficina');
  const dialog = page.getByRole('dialog');
  await expect(dialog).toContainText('1 foto');
  await walk.picture(page, 'send-back');
  const downloads: Download[] = [];
  page.on('download', (d) => downloads.push(d));
  await hand.press(dialog.getByRole('button', { name: 'Enviar como archivo' }));
  await expect.poll(() => downloads.length).toBe(2);
  const files = await Promise.all(
    downloads.map(async (d) => ({
      name: d.suggestedFilename(),
      mimeType: d.suggestedFilename().endsWith('.png') ? 'image/png' : 'application/json',
      buffer: await readFile(await d.path()),
    })),
  );

  const chooser = office.waitForEvent('filechooser');
  await screen.press('Open a crew’s answer');
  await (await chooser).setFiles(files);
  const found = screen.card.getByRole('region', { name: 'What the crew found' });
  await expect(found.getByRole('region', { name: 'Answer' })).toContainText('3 marks, 1 record, 1 photo');
  await walk.picture(office, 'office-answer');
  await screen.press('Take it over');
  await expect(found.getByRole('img', { name: /^Found at/ })).toBeVisible();
  await walk.picture(office, 'office-taken');
  await screen.press('Draw it as built');
  await expect(screen.card).toContainText('As built');
  await walk.picture(office, 'office-as-built');
  await walk.aside(async () => {
    const { site } = await downloadSite(screen);
    expect(site.asFound).toHaveLength(1);
    expect(site.paths.filter((p) => p.state === 'as-built')).toHaveLength(1);
  });
  await desk.close();
});

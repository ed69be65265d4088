import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { Crew } from '../src/Crew';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';
import { smallTargets } from '../src/readable';
import { shownTexts } from '../src/shownTexts';
import { derivedOf } from '../src/siteFile';

const FOOT_M = 0.3048;
const GLOVE_PX = 56;

/** Of every English sentence some, and of no Spanish one. */
const ENGLISH =
  /\b(?:the|of|from|with|is|are|and|this|that|what|where|not|dismiss|close|choose|clock|feet|pipe)\b/iu;

test.use({ locale: 'es-MX' });

/** What is shown or told to a screen reader and has an English word; what people named or noted keeps its language. */
async function englishIn(page: Page, named: readonly string[]): Promise<readonly string[]> {
  const texts = await shownTexts(page);
  const own = named.toSorted((a, b) => b.length - a.length);
  return texts.filter((text) => {
    const said = own.reduce((rest, name) => rest.replaceAll(name, ''), text);
    return said !== 'English' && ENGLISH.test(said);
  });
}

/** Every text that a file holds. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return value.length > 2 ? [value] : [];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

test('a crew that reads Spanish works, puts down and sends back in Spanish, by the same numbers', async ({
  page,
  hand,
}) => {
  test.setTimeout(120_000);
  const screen = await openSample(page, hand);
  const { site } = await downloadSite(screen);
  const marks = derivedOf(site).marks.filter((m) => m.place !== null);
  const a4 = marks.find((m) => m.label === 'A4')?.place;
  if (!a4?.ties) throw new Error('the sample’s A4 has tapes');
  const named = textsIn(site);
  const html = page.locator('html');
  const crew = new Crew(page, hand);

  await test.step('the device’s language is spoken at once, and told to screen readers', async () => {
    await expect(html).toHaveAttribute('lang', 'en');
    await hand.press(page.getByRole('button', { name: 'All sites', exact: true }));
    await crew.press(`Crew view of ${site.name}`);
    await expect(html).toHaveAttribute('lang', 'es');
    await expect(page.getByText(`1 de ${marks.length}`)).toBeVisible();
    await expect(crew.sheet.getByText('…', { exact: true })).toHaveCount(0);
  });

  await test.step('a mark has its tapes, its cautions and what not to hit', async () => {
    await crew.goTo('A4', 'Marca siguiente');
    for (const { from } of a4.ties?.pair ?? []) {
      // a tape is the straight line on the plan, told in hundredths of a foot
      const feet = Math.hypot(from.at.x - a4.at.x, from.at.y - a4.at.y) / FOOT_M;
      await expect(crew.sheet).toContainText(`${feet.toFixed(2)} ft`);
    }
    await expect(crew.sheet).toContainText('Primera cinta');
    await expect(crew.sheet).toContainText(
      'Gas service: en el hoyo, su parte superior a unos 2.0 ft de profundidad. Excave a mano.',
    );
    await expect(crew.sheet).toContainText('Hundimiento, a las 6 del reloj');
    await expect(crew.sheet).toContainText('Llame primero al 811.');
    expect(await englishIn(page, named)).toEqual([]);
    await keepPicture(page, 'crew-spanish');
  });

  await test.step('the longer words leave targets large, and nothing to scroll to', async () => {
    expect(await smallTargets(page, GLOVE_PX)).toEqual([]);
    expect(await crew.sheet.evaluate((e) => e.scrollHeight - e.clientHeight)).toBeLessThanOrEqual(0);
    await expect(crew.button('Marca siguiente')).toBeInViewport({ ratio: 1 });
    // which mark of how many and that it is saved, in one line of the header
    const line = page.getByRole('banner').locator('p', { has: page.getByRole('status') });
    await expect(line).toHaveText(`4 de ${marks.length} · Guardado`);
    expect(await line.evaluate((e) => e.scrollWidth - e.clientWidth)).toBeLessThanOrEqual(0);
  });

  await test.step('all cautions are there', async () => {
    await crew.press(/^Llame primero al 811/);
    const dialog = page.getByRole('dialog');
    await expect(dialog).toContainText('Antes de excavar');
    await expect(dialog).toContainText('Desde 5 ft (1.5 m) de profundidad');
    await expect(dialog).toContainText('No es una localización de servicios');
    expect(await englishIn(page, named)).toEqual([]);
    await hand.press(dialog.getByRole('button', { name: 'Listo' }));
  });

  await test.step('what was found is put down', async () => {
    await crew.press('Pintada');
    await crew.press('Lo que encontramos');
    await crew.step('Con el flujo 1 ft', 1);
    await crew.step('Izquierda 0.1 ft', 2);
    await crew.step('Más 0.1 ft', 1);
    await hand.choose(crew.button(/Qué era$/), 'Raíces');
    await expect(crew.sheet).toContainText('1.0 ft con el flujo');
    await expect(crew.sheet).toContainText('0.2 ft a la izquierda');
    await hand.press(crew.button('Más'));
    expect(await englishIn(page, named)).toEqual([]);
    expect(await smallTargets(page, GLOVE_PX)).toEqual([]);
    await keepPicture(page, 'crew-spanish-found');
  });

  await test.step('another language is a tap away, and loses neither place nor numbers', async () => {
    await hand.mark(page.getByRole('radio', { name: 'English' }));
    await expect(html).toHaveAttribute('lang', 'en');
    await expect(crew.sheet).toContainText('1.0 ft with the flow');
    // so English would have been noticed
    expect(await englishIn(page, named)).toContain('What we found');
    await crew.press('Done');
    await expect(crew.sheet).toHaveAccessibleName('A4');
    const english = await numbersIn(crew);
    await hand.mark(page.getByRole('radio', { name: 'Español' }));
    await expect(html).toHaveAttribute('lang', 'es');
    await expect(crew.sheet).toContainText('Hoyo');
    await expect(crew.sheet).toHaveAccessibleName('A4');
    expect(english.length).toBeGreaterThan(8);
    expect(await numbersIn(crew)).toEqual(english);
    expect(await crew.isTicked('Encontrada')).toBe('true');
    await page.reload();
    await expect(html).toHaveAttribute('lang', 'es');
  });

  await test.step('the answer goes back with its language, and the same for the office as any other', async () => {
    await crew.press('Devolver a la oficina');
    const dialog = page.getByRole('dialog');
    await expect(dialog).toContainText('1 marca, 1 anotación, 0 fotos');
    expect(await englishIn(page, named)).toEqual([]);
    const coming = page.waitForEvent('download');
    await hand.press(dialog.getByRole('button', { name: 'Enviar como archivo' }));
    const answer = JSON.parse(await readFile(await (await coming).path(), 'utf8'));
    expect(answer).toMatchObject({ format: 'footmark-answer', site: site.id, language: 'es' });
    expect(answer.found[0]).toMatchObject({
      state: 'found',
      seen: 'roots',
      given: { label: 'A4' },
      where: {
        by: 'paint',
        along: expect.closeTo(FOOT_M, 9),
        right: expect.closeTo(-0.2 * FOOT_M, 9),
      },
    });
    await hand.press(dialog.getByRole('button', { name: 'Listo' }));
  });

  await test.step('outside of the crew view the program speaks English as before', async () => {
    await crew.press('Todos los sitios');
    await expect(page.getByRole('button', { name: 'Open a site file' })).toBeVisible();
    await expect(html).toHaveAttribute('lang', 'en');
  });
});

/** The numbers of the sheet in hand, in order of size, as each language has its own order of words. */
async function numbersIn(crew: Crew): Promise<readonly string[]> {
  return ((await crew.sheet.textContent())?.match(/\d+(?:\.\d+)?/g) ?? []).toSorted();
}

import { expect, type Page } from '@playwright/test';
import { Crew } from '../Crew';
import type { Pointer } from '../hand';
import type { Look } from './look';

/** What the crew view says for what is pressed on the way, in each of its languages. */
const SAID = {
  English: {
    tag: 'en',
    caution: /^Call 811 first/,
    done: 'Done',
    next: 'Next mark',
    found: 'What we found',
    byTapes: 'By two tapes',
    more: 'More',
    sendBack: 'Send back',
    code: 'Show as a QR code',
    elsewhere: 'Go on in this tab',
    sites: 'All sites',
  },
  Español: {
    tag: 'es',
    caution: /^Llame primero al 811/,
    done: 'Listo',
    next: 'Marca siguiente',
    found: 'Lo que encontramos',
    byTapes: 'Por dos cintas',
    more: 'Más',
    sendBack: 'Devolver a la oficina',
    code: 'Mostrar como código QR',
    elsewhere: 'Seguir en esta pestaña',
    sites: 'Todos los sitios',
  },
} as const;

export type CrewLanguage = keyof typeof SAID;

/**
 * Goes through every screen of the crew view in one language, from the first screen where the site is listed: a mark, its cautions, what was
 * found there from the paint and by tapes, the ways back, the code, and what stands there for another tab and a site that is gone.
 */
export async function walkCrew(
  page: Page,
  hand: Pointer,
  site: string,
  language: CrewLanguage,
  look: Look,
): Promise<void> {
  const said = SAID[language];
  const crew = new Crew(page, hand);
  const dialog = page.getByRole('dialog');
  await crew.press(`Crew view of ${site}`);
  await hand.mark(page.getByRole('radio', { name: language }));
  await expect(page.locator('html')).toHaveAttribute('lang', said.tag);
  // the hole comes from a worker
  await expect(crew.sheet.getByText('…', { exact: true })).toHaveCount(0);
  await look('first mark');
  await crew.goTo('A4', said.next);
  await look('mark with its dangers');

  await crew.press(said.caution);
  await expect(dialog).toBeVisible();
  await look('cautions');
  await hand.press(dialog.getByRole('button', { name: said.done }));

  await crew.press(said.sendBack);
  await expect(dialog).toBeVisible();
  await look('nothing to send back');
  await hand.press(dialog.getByRole('button', { name: said.done }));

  await crew.press(said.found);
  await hand.press(crew.button(said.more));
  await look('what was found, from the paint');
  await hand.mark(page.getByRole('radio', { name: said.byTapes }));
  await look('what was found, by tapes');
  // the last step up or down is that of the depth
  await hand.press(page.getByRole('button', { name: /1 ft$/ }).last());
  await look('what was found, with a record');
  await hand.press(crew.button(said.done));
  await look('mark that was found');

  await crew.press(said.sendBack);
  await expect(dialog).toBeVisible();
  await look('ways back');
  await hand.press(dialog.getByRole('button', { name: said.code }));
  await expect(page.getByRole('img', { name: /1/ })).toBeVisible();
  await look('answer as a code');
  await hand.press(page.getByRole('dialog').last().getByRole('button', { name: said.done }));
  await hand.press(dialog.getByRole('button', { name: said.done }));

  const other = await page.context().newPage();
  await other.goto(page.url());
  await other.getByRole('button', { name: said.elsewhere }).click();
  await expect(crew.button(said.elsewhere)).toBeVisible();
  await look('open in another tab');
  await other.close();
  await page.goto('./#/crew/gone');
  await expect(crew.button(said.sites)).toBeVisible();
  await look('a site that is not here');
  await crew.press(said.sites);
  await expect(page.getByRole('heading', { name: 'Footmark', level: 1 })).toBeVisible();
}

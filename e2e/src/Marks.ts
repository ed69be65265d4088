import type { Locator } from '@playwright/test';
import { feetOf } from './feetInches';

/** A tape as the card says it: decimal feet, and the point that it is pulled from. */
export type TapeOnCard = { readonly feet: number; readonly use: string; readonly from: string };

/** The tapes of a mark's card in their order; lengths in feet and inches. */
export async function tapesOn(mark: Locator): Promise<readonly TapeOnCard[]> {
  // biome-ignore lint/performance/useDomNodeTextContent: lines are read as they are seen
  const text = await mark.innerText();
  const rows = text.matchAll(/^(\d+′[^\n]*″)\s+(First tape|Second tape|To check)\s+from ([^\n]+)$/gmu);
  return [...rows].map(([, length = '', use = '', from = '']) => ({ feet: feetOf(length), use, from }));
}

/** How far a mark is from something near it, in decimal feet, to the inch in which that is said. */
export async function nearOn(card: Locator, thing: string): Promise<number> {
  const row = card.getByRole('button', { name: new RegExp(`^${thing} `) });
  return feetOf(/(?:\d+′\s*)?\d+″/u.exec((await row.textContent()) ?? '')?.[0] ?? '');
}

/** The length that the text beside a term begins with, in decimal feet. */
export async function feetOn(card: Locator, term: string): Promise<number> {
  const text = (await factOn(card, term).textContent()) ?? '';
  return feetOf(/^[^″]*″/u.exec(text)?.[0] ?? text);
}

/** The text beside a term of the card's tables. */
export function factOn(card: Locator, term: string): Locator {
  return card.locator('dt', { hasText: new RegExp(`^${term}$`) }).locator('xpath=following-sibling::dd[1]');
}

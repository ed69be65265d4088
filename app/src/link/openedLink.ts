import { collectParts, type HeldParts, type OpenedLink, openLink, openLinkBytes } from '@footmark/link';
import { recallJson, remember } from '../session/onDevice';

/** The texts of the codes of one set that were scanned so far: each scan loads the page anew. */
const KEY = 'footmark-codes';

/** What a link came to: what it holds, or how many codes of its set are there of how many. */
export type LinkCame =
  | Exclude<OpenedLink, { is: 'part' }>
  | { readonly ok: true; readonly is: 'waiting'; readonly have: number; readonly of: number };

/** Opens a link; one of several is put to those that came before, and a code of another set begins anew. */
export function openedLink(text: string): LinkCame {
  const opened = openLink(text);
  if (!opened.ok || opened.is !== 'part') return opened;
  const before = kept();
  let collected = collectParts(heldOf(before), opened.part);
  const isOther = collected.is === 'other-set';
  if (isOther) collected = collectParts(null, opened.part);
  if (collected.is === 'other-set') throw new Error('the first part of a set is of that set');
  if (collected.is === 'waiting') {
    remember(KEY, JSON.stringify([...(isOther ? [] : before), text]));
    return { ok: true, is: 'waiting', have: collected.held.parts.length, of: collected.held.of };
  }
  remember(KEY, '[]');
  const whole = openLinkBytes(collected.bytes);
  return whole.ok && whole.is === 'part' ? { ok: false, failure: { code: 'damaged' } } : whole;
}

function heldOf(texts: readonly string[]): HeldParts | null {
  return texts.reduce<HeldParts | null>((held, text) => {
    const opened = openLink(text);
    return opened.ok && opened.is === 'part' ? collectParts(held, opened.part).held : held;
  }, null);
}

/** Another hand may have written what is there. */
function kept(): readonly string[] {
  const texts = recallJson(KEY);
  return Array.isArray(texts) ? texts.filter((text): text is string => typeof text === 'string') : [];
}

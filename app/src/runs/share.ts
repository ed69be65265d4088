import type { Parsed } from '@footmark/site';

/** Reads a share of a whole in hundredths: `30`, `30 %`; a share from 0 to 1. */
export function parseShare(text: string): Parsed {
  const typed = text.trim();
  const hundredths = /^(\d+(?:[.,]\d+)?) ?%?$/.exec(typed)?.[1];
  if (hundredths === undefined) return { ok: false, code: 'not-a-number', values: { text: typed } };
  const share = Number(hundredths.replace(',', '.')) / 100;
  return share <= 1 ? { ok: true, value: share } : { ok: false, code: 'too-large', values: { limit: 1 } };
}

export function shareText(share: number): string {
  return `${Number((100 * share).toFixed(1))} %`;
}

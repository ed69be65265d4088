import type { Parsed } from '@footmark/site';

/** A number above 0 with or without its unit `mark`, of which one is `per` in SI: `1`, `1.5 %`, `,5`. */
export function parseNumber(text: string, mark: string, per: number): Parsed {
  const typed = text.trim();
  const number = /^(\d+(?:[.,]\d+)?|[.,]\d+)\s*(\D*)$/.exec(typed);
  if (number === null || !['', mark].includes((number[2] ?? '').trim())) {
    return { ok: false, code: 'not-a-number', values: { text: typed } };
  }
  const value = Number((number[1] ?? '').replace(',', '.')) * per;
  return value > 0 ? { ok: true, value } : { ok: false, code: 'not-positive', values: { text: typed } };
}

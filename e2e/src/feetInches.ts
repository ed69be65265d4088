const QUARTERS: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '¾': 0.75 };

/** Reads feet and inches as the app prints them, `16′ 1¾″`, as decimal feet; throws on anything else. */
export function feetOf(text: string): number {
  const parts = /^(?:(\d+)′)?\s*(?:(\d+)?([¼½¾])?″)?$/u.exec(text.trim());
  const [, feet = '0', inches = '0', quarter = ''] = parts ?? [];
  if (parts === null || text.trim() === '') throw new Error(`"${text}" is not feet and inches`);
  return Number(feet) + (Number(inches) + (QUARTERS[quarter] ?? 0)) / 12;
}

/** Half of the quarter inch that lengths are printed to, in feet, and a little for the last digit. */
export const PRINTED_TO_FT = 0.125 / 12 + 1e-3;

import type { Reading } from '@footmark/site';

/** `a las 6 del reloj`, `de las 4 a las 8 del reloj`; one o'clock is singular. */
export function clockText({ from, to = from }: NonNullable<Reading['clock']>): string {
  return to === from ? `a ${hourText(from)} del reloj` : `de ${hourText(from)} a ${hourText(to)} del reloj`;
}

function hourText(hour: number): string {
  return hour === 1 ? 'la 1' : `las ${hour}`;
}

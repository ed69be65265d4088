import { INCH_M } from '@footmark/site';

export const paperNames = ['letter', 'tabloid', 'a4', 'a3'] as const;
export type PaperName = (typeof paperNames)[number];

/** Upright. `turned`: on its long side. */
export type Paper = Readonly<{ name: PaperName; turned: boolean }>;

const INCH_MM = 1000 * INCH_M;

/** Width and height upright, mm: ANSI A and B (ASME Y14.1, from memory), ISO 216 A4 and A3. */
const upright: Readonly<Record<PaperName, readonly [number, number]>> = {
  letter: [8.5 * INCH_MM, 11 * INCH_MM],
  tabloid: [11 * INCH_MM, 17 * INCH_MM],
  a4: [210, 297],
  a3: [297, 420],
};

export function paperSize({ name, turned }: Paper): Readonly<{ width: number; height: number }> {
  const [short, long] = upright[name];
  return turned ? { width: long, height: short } : { width: short, height: long };
}

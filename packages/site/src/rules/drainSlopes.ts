import type { SettingRow } from './settings';

const INCH_M = 0.0254;

/** The least slope of a drain of a size. */
export type DrainSlopeRow = {
  /** The row holds for inside diameters below this (m); the last for all above the one before. */
  readonly below: number;
  /** Fall over run. */
  readonly least: SettingRow;
};

/**
 * Least slopes by size. The codes speak of nominal sizes, from which inside diameters stray to both sides: a row holds to half way to
 * the next size that the code names.
 */
export const drainSlopes = [
  {
    below: 2.75 * INCH_M,
    least: {
      value: 1 / 48,
      unit: '1',
      title: 'IRC and IPC',
      edition: 'IRC 2006; IPC as adopted by Chicago, 18-29-704.1',
      clause: 'P3005.3 and Table 704.1, 1/4 inch per foot for 2 1/2 inches and less',
      basis: 'read',
    },
  },
  {
    below: 7 * INCH_M,
    least: {
      value: 1 / 96,
      unit: '1',
      title: 'IRC and IPC',
      edition: 'IRC 2006; IPC as adopted by Chicago, 18-29-704.1',
      clause: 'P3005.3 and Table 704.1, 1/8 inch per foot for 3 to 6 inches',
      basis: 'read',
    },
  },
  {
    below: Infinity,
    least: {
      value: 1 / 192,
      unit: '1',
      title: 'IPC',
      edition: 'as adopted by Chicago, 18-29-704.1',
      clause: 'Table 704.1, 1/16 inch per foot for 8 inches and more',
      basis: 'read',
    },
  },
] as const satisfies readonly DrainSlopeRow[];

/** The least slope (fall over run) of a drain with an inside diameter (m). */
export function leastDrainSlope(diameter: number): SettingRow {
  const [, , widest] = drainSlopes;
  return (drainSlopes.find((row) => diameter < row.below) ?? widest).least;
}

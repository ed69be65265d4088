import type { Ink } from '@footmark/drawing';

/** AutoCAD colour index; 7 is black on white paper and white on a black screen. */
export const INK_COLOUR: Readonly<Record<Ink, number>> = {
  ink: 7,
  faint: 9,
  assumed: 8,
  land: 34,
  plant: 94,
  pavement: 9,
  sewer: 3,
  proposed: 7,
  'proposed-dash': 8,
  survey: 221,
  water: 5,
  gas: 2,
  electric: 1,
  communication: 30,
  'reclaimed-water': 200,
  storm: 96,
  warning: 1,
  paper: 7,
};

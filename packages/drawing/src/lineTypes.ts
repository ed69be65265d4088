import type { Fill, PatternName, Stroke } from './primitive';

/** Line weights on paper, mm: each about √2 of the one before, as pens are graded (ISO 128-2, from memory). */
export const PEN = { hair: 0.13, thin: 0.18, fine: 0.25, medium: 0.35, broad: 0.5, heavy: 0.7 } as const;

/** A line that stands for a kind of thing: one pen for legs that were measured, another for legs put there by eye. */
export type LineType = Readonly<{
  measured: Stroke;
  assumed: Stroke;
  /** Inside an area. */
  fills?: readonly Fill[];
  pattern?: Readonly<{ name: PatternName; spacing: number }>;
  /** Letters that stand on the line again and again. */
  letters?: string;
  /** What is written along each leg. */
  dimension?: 'length' | 'course';
}>;

/** Dashes (mm) of what is not sure; everything put there by eye has them where its own line has none. */
const BY_EYE: readonly number[] = [2.2, 1.1];

/**
 * Line types by the names that the kinds table uses. Boundary: a long dash and two dots, easement: dashes, right-of-way: long
 * and short dashes, as general drafting practice has them (common practice, no source).
 */
export const lineTypes: Readonly<Record<string, LineType>> = {
  wall: {
    measured: { ink: 'ink', weight: PEN.heavy },
    assumed: { ink: 'assumed', weight: PEN.broad, dash: BY_EYE },
    fills: [
      { ink: 'ink', opacity: 0.05 },
      { ink: 'faint', opacity: 0.6, hatch: 'diagonal' },
    ],
    dimension: 'length',
  },
  outline: {
    measured: { ink: 'ink', weight: PEN.medium },
    assumed: { ink: 'assumed', weight: PEN.medium, dash: BY_EYE },
    fills: [{ ink: 'ink', opacity: 0.035 }],
    dimension: 'length',
  },
  main: {
    measured: { ink: 'sewer', weight: 1 },
    assumed: { ink: 'sewer', weight: 1, dash: [5, 1.8] },
    pattern: { name: 'flow', spacing: 55 },
    letters: 'SS',
  },
  hedge: {
    measured: { ink: 'plant', weight: PEN.fine },
    assumed: { ink: 'plant', weight: PEN.fine, dash: [1.6, 0.8] },
    pattern: { name: 'hedge', spacing: 2.6 },
  },
  boundary: {
    measured: { ink: 'land', weight: PEN.broad, dash: [10, 1.4, 0.7, 1.4, 0.7, 1.4] },
    assumed: { ink: 'land', weight: PEN.fine, dash: [4, 1.4, 0.5, 1.4, 0.5, 1.4] },
    dimension: 'course',
  },
  easement: {
    measured: { ink: 'land', weight: PEN.fine, dash: [4, 1.6] },
    assumed: { ink: 'land', weight: PEN.thin, dash: [1.6, 1.6] },
    fills: [{ ink: 'land', opacity: 0.06 }],
  },
  'right-of-way': {
    measured: { ink: 'land', weight: PEN.medium, dash: [10, 1.6, 2.4, 1.6] },
    assumed: { ink: 'land', weight: PEN.fine, dash: [4, 1.6, 1.2, 1.6] },
    letters: 'R/W',
  },
  pavement: {
    measured: { ink: 'pavement', weight: PEN.fine },
    assumed: { ink: 'pavement', weight: PEN.fine, dash: BY_EYE },
    // paper first, so that the tint is no stronger where a driveway crosses a sidewalk
    fills: [
      { ink: 'paper', opacity: 1 },
      { ink: 'pavement', opacity: 0.13 },
    ],
  },
  curb: {
    measured: { ink: 'ink', weight: PEN.fine },
    assumed: { ink: 'assumed', weight: PEN.fine, dash: BY_EYE },
    pattern: { name: 'curb', spacing: 0.9 },
  },
  fence: {
    measured: { ink: 'ink', weight: PEN.thin },
    assumed: { ink: 'assumed', weight: PEN.thin, dash: BY_EYE },
    pattern: { name: 'fence', spacing: 9 },
  },
  'retaining-wall': {
    measured: { ink: 'ink', weight: PEN.broad },
    assumed: { ink: 'assumed', weight: PEN.medium, dash: BY_EYE },
    pattern: { name: 'retaining-wall', spacing: 2.6 },
    dimension: 'length',
  },
  service: {
    measured: { ink: 'ink', weight: PEN.medium },
    assumed: { ink: 'assumed', weight: PEN.medium, dash: BY_EYE },
  },
};

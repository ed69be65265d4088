import type { Stroke } from './primitive';

/**
 * Paint for what is proposed is white (uniform colour code, APWA / ANSI Z535.1). Dark dashes along its middle show it on white
 * paper too; they stay dark where the paper is.
 */
export function proposedPaint(
  weight: number,
  dashes: Readonly<{ weight: number; dash: readonly number[] }>,
): readonly Stroke[] {
  return [
    { ink: 'proposed', weight },
    { ink: 'proposed-dash', ...dashes },
  ];
}

import { type LegSpot, type Parsed, parseAzimuth, parseTurn } from '@footmark/site';

/** A direction as typed for the next leg: by compass, or as a turn from the leg before. */
export type LegDirection = { readonly as: 'azimuth' | 'turn'; readonly value: number };

export type ParsedDirection =
  | { readonly ok: true; readonly value: LegDirection }
  | Extract<Parsed, { ok: false }>;

/** Reads `R 90`, `L 45`, `straight` as turns (where a leg lies before), anything else as a bearing or an azimuth. */
export function parseLegDirection(text: string, hasLegBefore: boolean): ParsedDirection {
  if (hasLegBefore) {
    const turned = parseTurn(text);
    if (turned.ok) return { ok: true, value: { as: 'turn', value: turned.value } };
  }
  const compass = parseAzimuth(text);
  return compass.ok ? { ok: true, value: { as: 'azimuth', value: compass.value } } : compass;
}

/** The spot of the point at the end of a leg. */
export function legSpot(direction: LegDirection, distance: number): LegSpot {
  return direction.as === 'turn'
    ? { by: 'turn', turn: direction.value, distance }
    : { by: 'course', azimuth: direction.value, distance };
}

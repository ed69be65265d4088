import { type North, type Ref, refKey } from '@footmark/site';

/** How north can be given, in the order in which a crew can do it. */
export const northWays = ['assumed', 'compass', 'line', 'typed', 'control'] as const;
export type NorthWay = North['by'];

/** North as a form holds it: any part may still be missing. Radians. */
export type NorthDraft = {
  readonly by: NorthWay;
  readonly from: Ref | null;
  readonly to: Ref | null;
  readonly azimuth: number | undefined;
  readonly declination: number | undefined;
};

export function draftOfNorth(north: North): NorthDraft {
  const empty = { by: north.by, from: null, to: null, azimuth: undefined, declination: undefined };
  switch (north.by) {
    case 'assumed':
    case 'control':
      return empty;
    case 'typed':
      return { ...empty, azimuth: north.azimuth };
    case 'line':
      return { ...empty, from: north.from, to: north.to, azimuth: north.azimuth };
    case 'compass':
      return {
        ...empty,
        from: north.from,
        to: north.to,
        azimuth: north.reading,
        declination: north.declination,
      };
  }
}

/** The draft as a record of the site; null while a part is missing or its line starts where it ends. */
export function northOfDraft({ by, from, to, azimuth, declination }: NorthDraft): North | null {
  switch (by) {
    case 'assumed':
    case 'control':
      return { by };
    case 'typed':
      return azimuth === undefined ? null : { by, azimuth };
    case 'line':
      if (from === null || to === null || azimuth === undefined || isSamePoint(from, to)) return null;
      return { by, from, to, azimuth };
    case 'compass':
      if (from === null || to === null || isSamePoint(from, to)) return null;
      if (azimuth === undefined || declination === undefined) return null;
      return { by, from, to, reading: azimuth, declination };
  }
}

export function isSamePoint(a: Ref, b: Ref): boolean {
  return refKey(a) === refKey(b);
}

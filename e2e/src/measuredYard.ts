/** A length as a notebook has it, and in decimal feet. */
export type Length = { readonly text: string; readonly feet: number };

/** A direction as a notebook has it, and in degrees: an azimuth clockwise from north, or a turn from straight on, right positive. */
export type Direction = {
  readonly text: string;
  readonly degrees: number;
  readonly as: 'azimuth' | 'turn';
};

export type Side = 'Left' | 'Right';

export type Leg = { readonly by: 'leg'; readonly direction: Direction; readonly length: Length };

/** How one point was measured. Points of other things go by the names that people call them, `House corner A`. */
export type Measured =
  | Leg
  | { readonly by: 'coordinates'; readonly east: Length; readonly north: Length }
  | {
      readonly by: 'bearing';
      readonly from: string;
      readonly direction: Direction;
      readonly distance: Length;
    }
  | {
      readonly by: 'offset';
      readonly from: string;
      readonly to: string;
      readonly along: Length;
      readonly out: Length;
      readonly side: Side;
    }
  | {
      readonly by: 'tapes';
      readonly tapes: readonly { readonly from: string; readonly length: Length }[];
      /** Looking from the first point to the second. */
      readonly side: Side;
    }
  | {
      readonly by: 'between';
      readonly from: string;
      readonly to: string;
      readonly share: '¼' | 'Middle' | '¾';
    }
  | { readonly by: 'at'; readonly point: string }
  /** A curve that goes on from the leg before without a corner. */
  | { readonly by: 'arc'; readonly turn: Side; readonly radius: Length; readonly angle: Direction };

export type MeasuredThing = {
  /** As the app calls it; `Pipe` is what lies in the ground. */
  readonly kind: string;
  readonly name: string;
  readonly shape: 'point' | 'line' | 'area';
  readonly points: readonly Measured[];
  /** The course from the last point back to the first. */
  readonly closing?: Leg;
  readonly balanced?: true;
};

/** Feet and inches, `18' 3 1/2"`; inches in halves. */
export function ft(feet: number, inches = 0): Length {
  const half = inches % 1 === 0.5 ? ' 1/2' : '';
  const text = inches === 0 ? `${feet}'` : `${feet}' ${Math.floor(inches)}${half}"`;
  return { text, feet: feet + inches / 12 };
}

/** Decimal feet as a plat has them. */
export function dec(text: string): Length {
  return { text, feet: Number(text) };
}

/** A quadrant bearing in degrees and minutes, `N 87°15' E`. */
export function bearing(from: 'N' | 'S', degrees: number, minutes: number, to: 'E' | 'W'): Direction {
  const angle = degrees + minutes / 60;
  const azimuth = from === 'N' ? (to === 'E' ? angle : 360 - angle) : to === 'E' ? 180 - angle : 180 + angle;
  return { text: `${from} ${degrees}°${minutes}' ${to}`, degrees: azimuth, as: 'azimuth' };
}

/** A turn from straight on. */
export function turn(side: 'L' | 'R', degrees: number): Direction {
  return { text: `${side} ${degrees}`, degrees: side === 'R' ? degrees : -degrees, as: 'turn' };
}

export function leg(direction: Direction, length: Length): Leg {
  return { by: 'leg', direction, length };
}

const FOOT_M = 0.3048;
const INCH_M = 0.0254;
const TURN_RAD = 2 * Math.PI;

/** One way in which a number may have come about: a whole count, and the number that is made of it. */
export type NumberUnit = {
  /** The number of a count. */
  readonly of: (count: number) => number;
  /** How many counts there are to one. */
  readonly perOne: number;
};

/** Counts of 1/`parts` of a unit of so many metres, multiplied as people's typing is when it is read. */
const typed = (metres: number, parts: number): NumberUnit => ({
  of: (count) => (count / parts) * metres,
  perOne: parts / metres,
});

/** Counts of `over`/`under`, rounded once: how a file has a length that was worked out in decimals. */
const ratio = (over: number, under: number): NumberUnit => ({
  of: (count) => (count * over) / under,
  perOne: under / over,
});

/** Counts of 1/`perDegree` of a degree, as an angle that was typed is read. */
const degrees = (perDegree: number): NumberUnit => ({
  of: (count) => ((count / perDegree) * Math.PI) / 180,
  perOne: (perDegree * 180) / Math.PI,
});

/** As `degrees`, brought into a whole turn by a sum and a remainder, which can change the last bit. */
const azimuth = (perDegree: number): NumberUnit => ({
  of: (count) => {
    const radians = ((count / perDegree) * Math.PI) / 180;
    return ((radians % TURN_RAD) + TURN_RAD) % TURN_RAD;
  },
  perOne: (perDegree * 180) / Math.PI,
});

/**
 * The units that counts may be in. Their places in the list are part of the coding and frozen with it; a new one goes to the end. The feet and inches are international, exact (Federal Register 85 No. 193, 62698).
 */
export const numberUnits: readonly NumberUnit[] = [
  ratio(1, 1),
  ratio(1, 10),
  ratio(1, 100),
  ratio(1, 1000),
  ratio(1, 1e4),
  ratio(1, 1e5),
  ratio(1, 1e6),
  ratio(1, 1e7),
  ratio(1, 1e8),
  ratio(1, 1e9),
  typed(FOOT_M, 1),
  typed(FOOT_M, 10),
  typed(FOOT_M, 100),
  typed(FOOT_M, 1000),
  typed(INCH_M, 1),
  typed(INCH_M, 16),
  typed(INCH_M, 10),
  typed(0.001, 1),
  typed(0.01, 1),
  ratio(3048, 1e4),
  ratio(3048, 1e5),
  ratio(3048, 1e6),
  ratio(254, 1e4),
  ratio(127, 8e4),
  ratio(254, 1e5),
  degrees(1),
  degrees(3600),
  degrees(1000),
  azimuth(1),
  azimuth(3600),
  azimuth(1000),
  ratio(1, 192), // slopes in sixteenths of an inch per foot
];

/** Bits of a unit's place in the list; the last place is for numbers that no unit makes. */
export const UNIT_BITS = 6;
export const NO_UNIT = 2 ** UNIT_BITS - 1;

/** Counts beyond this take as much room as the number itself. */
const MOST_COUNT = 2 ** 48;

/** The count of a unit that makes exactly this number, or null. */
export function countIn(unit: NumberUnit, value: number): number | null {
  const count = Math.round(value * unit.perOne);
  if (!(Math.abs(count) <= MOST_COUNT) || Object.is(count, -0)) return null; // NaN; a count has no negative zero
  return Object.is(unit.of(count), value) ? count : null;
}

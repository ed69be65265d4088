/** Why a typed measurement was refused. The app has the sentence for each; `values` carries what the sentence needs. */
export type ParseProblem =
  // any measurement
  | 'empty' // {}
  | 'not-a-number' // { text }
  | 'two-signs' // { text }
  | 'negative' // { text }
  | 'unknown-unit' // { unit }
  | 'mixed-units' // { text }: two amounts that do not belong together, as `5 m 20 cm`
  | 'zero-denominator' // { text }
  | 'improper-fraction' // { text }: a whole number with a fraction of one or more, as `6 3/2`
  | 'ambiguous-comma' // { text, asDecimal, asThousands }
  | 'too-large' // { limit }
  // lengths and diameters
  | 'inches-too-large' // { inches, limit }: 12 or more beside feet
  | 'feet-not-whole' // { feet }: a fraction of a foot beside inches
  | 'ambiguous-dash' // { text }: `6-1/2` is six and a half, or six feet and a half inch
  | 'not-positive' // { text }
  // angles
  | 'part-not-whole' // { part }: only the last of degrees, minutes and seconds may have decimals
  | 'minutes-too-large' // { minutes, limit }
  | 'seconds-too-large' // { seconds, limit }
  | 'azimuth-out-of-range' // { degrees }
  | 'not-a-quadrant' // { text }
  | 'quadrant-over-90' // { degrees, limit }
  | 'side-missing' // { text }: a turn that is neither left nor right
  | 'turn-over-180' // { degrees, limit }
  // places on the earth
  | 'not-a-position' // { text }
  | 'sign-and-hemisphere' // { text }: `-40 N` may be north or south
  | 'east-or-west-missing' // { text }: a declination to neither side
  | 'declination-over-180' // { degrees, limit }
  | 'latitude-out-of-range' // { degrees, limit }
  | 'longitude-out-of-range' // { degrees, limit }
  // slopes
  | 'slope-needs-unit' // { text }
  // clock positions
  | 'clock-not-whole-hour' // { text }
  | 'clock-out-of-range'; // { hour }

export type ParseFailure = Readonly<{
  ok: false;
  code: ParseProblem;
  values: Readonly<Record<string, number | string>>;
}>;

/** What a parser of typed text returns. Wrong text is data, so it never throws. */
export type Parsed<T = number> = Readonly<{ ok: true; value: T }> | ParseFailure;

export function parsed<T>(value: T): Parsed<T> {
  return { ok: true, value };
}

export function refused(
  code: ParseProblem,
  values: Readonly<Record<string, number | string>> = {},
): ParseFailure {
  return { ok: false, code, values };
}

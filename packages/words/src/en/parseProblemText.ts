import type { ParseFailure, ParseProblem } from '@footmark/site';

type Values = Readonly<Record<string, number | string>>;

const quoted = (value: number | string | undefined) => `“${value ?? ''}”`;

const sentences: Record<ParseProblem, (values: Values) => string> = {
  empty: () => 'Nothing is typed here.',
  'not-a-number': ({ text }) => `${quoted(text)} is not a number that can be read.`,
  'two-signs': ({ text }) => `${quoted(text)} has two signs; leave one out.`,
  negative: ({ text }) => `${quoted(text)} is below zero, which this cannot be.`,
  'unknown-unit': ({ unit }) => `${quoted(unit)} is not a unit that is known here; try ft, in, m, cm or mm.`,
  'mixed-units': ({ text }) => `${quoted(text)} mixes units that do not go together; give it in one unit.`,
  'zero-denominator': ({ text }) => `${quoted(text)} divides by zero.`,
  'improper-fraction': ({ text }) =>
    `The fraction in ${quoted(text)} is one or more; carry it into the whole number.`,
  'ambiguous-comma': ({ text, asDecimal, asThousands }) =>
    `${quoted(text)} may mean ${asDecimal} or ${asThousands}; type it without the comma.`,
  'too-large': () => 'That is too large to be a measurement.',
  'inches-too-large': ({ inches, limit }) =>
    `${inches} in beside feet is too much; inches stay below ${limit} in.`,
  'feet-not-whole': ({ feet }) => `${feet} ft is not a whole number of feet, so no inches can follow it.`,
  'ambiguous-dash': ({ text }) =>
    `${quoted(text)} may mean feet and inches or a fraction; type the ft or in marks.`,
  'not-positive': ({ text }) => `${quoted(text)} must be more than zero.`,
  'part-not-whole': ({ part }) => `${part} must be whole: only the last part of an angle can have decimals.`,
  'minutes-too-large': ({ minutes, limit }) => `${minutes}′ is too much; minutes stay below ${limit}′.`,
  'seconds-too-large': ({ seconds, limit }) => `${seconds}″ is too much; seconds stay below ${limit}″.`,
  'azimuth-out-of-range': ({ degrees }) => `${degrees}° is not a direction; directions go from 0° to 360°.`,
  'not-a-quadrant': ({ text }) => `${quoted(text)} is not a bearing; type it like N 45°30′ E.`,
  'quadrant-over-90': ({ degrees, limit }) =>
    `${degrees}° is too much for a bearing; its angle goes up to ${limit}°.`,
  'side-missing': ({ text }) => `${quoted(text)} does not say which way it turns; put L or R before it.`,
  'turn-over-180': ({ degrees, limit }) =>
    `${degrees}° is too much for a turn; turns go up to ${limit}° each way.`,
  'not-a-position': ({ text }) =>
    `${quoted(text)} is not a place on the earth; type it like 40.446195, -79.948862 or 40°26′46″ N 79°56′55″ W.`,
  'sign-and-hemisphere': ({ text }) =>
    `${quoted(text)} has a sign and a letter for its hemisphere; leave one out.`,
  'east-or-west-missing': ({ text }) =>
    `${quoted(text)} does not say to which side; put E or W behind it, as the declination's chart does.`,
  'declination-over-180': ({ degrees, limit }) =>
    `${degrees}° is too much for a declination; they go up to ${limit}° each way.`,
  'latitude-out-of-range': ({ degrees, limit }) =>
    `A latitude goes up to ${limit}° each way, and it comes first; ${degrees}° is too much.`,
  'longitude-out-of-range': ({ degrees, limit }) =>
    `A longitude goes up to ${limit}° each way; ${degrees}° is too much.`,
  'slope-needs-unit': ({ text }) => `${quoted(text)} needs a unit; type it like 1/4 in/ft, 2 % or 1:48.`,
  'clock-not-whole-hour': ({ text }) => `${quoted(text)} is not a whole hour.`,
  'clock-out-of-range': ({ hour }) => `${hour} is not on a clock face; hours go from 1 to 12.`,
};

/** Why what was typed cannot be taken as a measurement, and how to type it. */
export function parseProblemText({ code, values }: ParseFailure): string {
  return sentences[code](values);
}

export { type AzimuthFormat, formatAzimuth, formatBearing, parseAzimuth } from './azimuth';
export { type ClockHour, type ClockRange, formatClock, parseClockHour, parseClockRange } from './clock';
export { type DiameterFormat, type DiameterStyle, formatDiameter, parseDiameter } from './diameter';
export { FOOT_M, INCH_M, US_SURVEY_FOOT_M } from './foot';
export {
  formatLength,
  LENGTH_LIMIT_M,
  type LengthFormat,
  type LengthStyle,
  lengthInputText,
  parseLength,
} from './length';
export type { Denominator } from './number-text';
export type { Parsed, ParseFailure, ParseProblem } from './parsed';
export { formatSlope, parseSlope, type SlopeFormat, type SlopeStyle } from './slope';
export { formatTurn, parseTurn } from './turn';

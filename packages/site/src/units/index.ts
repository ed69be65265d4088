export { formatAzimuth, formatBearing, parseAzimuth } from './azimuth';
export { type ClockRange, formatClock, parseClockRange } from './clock';
export { formatDeclination, parseDeclination } from './declination';
export { formatDiameter, parseDiameter } from './diameter';
export { FOOT_M, INCH_M, US_SURVEY_FOOT_M } from './foot';
export { formatLatLon, type LatLon, parseLatLon } from './latLon';
export {
  formatLength,
  type LengthFormat,
  type LengthStyle,
  lengthInputText,
  parseLength,
} from './length';
export { parseNumber } from './number';
export type { Parsed, ParseFailure, ParseProblem } from './parsed';
export { formatSlope, parseSlope } from './slope';
export { formatTurn, parseBend, parseTurn } from './turn';
export { formatVideoTime, parseVideoTime } from './videoTime';

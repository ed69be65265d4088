export { type Bundle, type BundlePicture, picturesOfSite } from './bundle/bundle';
export { type PictureKind, pictureKind } from './bundle/pictureKind';
export { type BundleRead, readBundle } from './bundle/readBundle';
export { writeBundle } from './bundle/writeBundle';
export { type DxfOptions, siteDxf } from './dxf/siteDxf';
export { siteGeoJson } from './geojson/siteGeoJson';
export { marksGpx } from './gpx/marksGpx';
export { harmlessName } from './harmless';
export { finishSteps } from './incoming/finishSteps';
export type {
  Incoming,
  IncomingFailure,
  IncomingOrder,
  IncomingPoint,
  IncomingResult,
  IncomingSteps,
  IncomingThing,
} from './incoming/incoming';
export { incomingText } from './incoming/incomingText';
export { type IncomingAnswers, openQuestions } from './incoming/place/incomingAnswers';
export {
  type IncomingGroup,
  type IncomingLoose,
  type IncomingTaking,
  incomingGroups,
  incomingLoose,
} from './incoming/place/incomingLoose';
export { type IncomingSite, incomingSite } from './incoming/place/incomingSite';
export type { PlacedIncoming, PlacedThing } from './incoming/place/placedIncoming';
export { placeIncoming } from './incoming/place/placeIncoming';
export { readIncoming } from './incoming/readIncoming';
export { siteKml } from './kml/siteKml';
export { marksCsv } from './marksCsv';
export { POINTS_ORDER, sitePoints } from './points/sitePoints';
export { parseReadingTable } from './readingTable/parseReadingTable';
export type {
  ReadingRow,
  ReadingTable,
  TableColumn,
  TableProblem,
} from './readingTable/readingTable';
export { type DerivedReport, derivedReport } from './report/derivedReport';
export { setOutCsv } from './setOutCsv';
export { siteFileName } from './siteFileName';
export type { Coordinates } from './things/coordinates';
export type { EarthProblem } from './things/onEarth';

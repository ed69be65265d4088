export type { BundleFailure, BundleNote } from './bundle';
export { type CautionCode, cautionCodes } from './caution';
export type { ChoiceValue, FieldName, RunDirection, SpotKind, ZeroKind } from './codes';
export type { CrewLabel, CrewWords, PositionProblem } from './crewWords';
export { en } from './en/en';
export { es } from './es/es';
export { filePathText } from './filePath';
export type {
  IncomingFinding,
  IncomingNote,
  IncomingProblemCode,
  IncomingProblemFacts,
  IncomingQuestion,
  PlacingProblem,
} from './incoming';
export { languages } from './languages';
export type { ArcProblem, SpotProblem } from './measureProblem';
export { angleText, counterText, directionText, lengthText, slopeText } from './measureText';
export type { PairProblem } from './pairProblem';
export type { CardThing, Said, SaidOfFile, WayRow } from './said';
export {
  type OwnerGap,
  type OwnerPlace,
  type SheetColumn,
  type SheetFact,
  type SheetHeading,
  type SheetKind,
  type SheetLegend,
  type SheetWords,
  sheetKinds,
} from './sheetWords';
export { holeSizeText } from './sureText';
export type { TableProblemCode, TableProblemFacts } from './tableProblem';
export type { TraceStep, TraceStepCode } from './traceStep';
export type { Words } from './words';

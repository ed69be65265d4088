export { type CautionCode, cautionCodes } from './caution';
export type { ChoiceValue, FieldName, RunDirection, SpotKind, ZeroKind } from './codes';
export { en } from './en/en';
export { filePathText } from './filePath';
export type { ArcProblem, SpotProblem } from './measureProblem';
export { angleText, counterText, directionText, lengthText, slopeText } from './measureText';
export type { PairProblem } from './pairProblem';
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
export { giveOrTakeText, holeSizeText, sureText } from './sureText';
export type { TableProblemCode, TableProblemFacts } from './tableProblem';
export type { TraceStep, TraceStepCode } from './traceStep';
export type { CardThing, Said, SaidOfFile, WayRow, Words } from './words';

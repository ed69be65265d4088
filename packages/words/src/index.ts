export { type CautionCode, cautionCodes } from './caution';
export type { ChoiceValue, FieldName, RunDirection, SpotKind, ZeroKind } from './codes';
export { en } from './en/en';
export { filePathText } from './filePath';
export { angleText, counterText, directionText, lengthText, slopeText } from './measureText';
export type { PairProblem } from './pairProblem';
export { giveOrTakeText, holeSizeText, sureText } from './sureText';
export type { TraceStep, TraceStepCode } from './traceStep';
export type { Said, SaidOfFile, Words } from './words';

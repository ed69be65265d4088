export { changedLabels, changedPrimitives } from './changes';
export type { DigDrawing } from './dig/digDrawing';
export { drawInTheWay } from './dig/drawDigs';
export { drawMoved } from './dig/drawMoved';
export { draw } from './draw';
export {
  type Bounds,
  boundsOf,
  type Drawing,
  type DrawingLayer,
  type LayerName,
  layerNames,
} from './drawing';
export type { DrawingWords, DrawOptions, Highlight } from './drawOptions';
export { HATCH, hatchLines } from './hatchLines';
export { joinDrawings } from './joinDrawings';
export type { Label, LabelSeat } from './label';
export { LONGEST_LEADER_MM } from './labels/candidates';
export { labelObstacles } from './labels/labelObstacles';
export type { LabelSetting, MeasureText, Obstacle, PlacedLabel } from './labels/placedLabel';
export { placeLabels } from './labels/placeLabels';
export { expandPattern } from './pattern';
export { stationText } from './pipe/stationText';
export {
  type CirclePrimitive,
  type Fill,
  type Ink,
  inks,
  type LinePrimitive,
  type PatternName,
  type PatternPrimitive,
  type Primitive,
  type Stroke,
  type SymbolPrimitive,
} from './primitive';
export { primitivePoints } from './primitivePoints';
export { drawProfile, type ProfileDrawing } from './profile/drawProfile';
export { services } from './services';
export { type SymbolName, type SymbolPart, type SymbolShape, symbolNames } from './symbols/symbolShape';
export { symbols } from './symbols/symbols';

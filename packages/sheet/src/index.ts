export type { SheetFonts } from './font/sheetFonts';
export { type InkSet, inkSets } from './page/inks';
export type { Box, Item, Page, Picture, Sheet } from './page/page';
export { type Paper, type PaperName, paperNames, paperSize } from './page/paper';
export type { AskedScale } from './plan/planFrame';
export { sheetPdf } from './render/sheetPdf';
export { type SvgOptions, sheetSvg } from './render/sheetSvg';
export type { QrCode, SheetFacts, SheetOptions, SheetSource } from './setting';
export { sheetOf } from './sheetOf';

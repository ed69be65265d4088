import { jsPDF } from 'jspdf';
import type { SheetFonts } from '../font/sheetFonts';
import { letteringOf } from '../font/sheetFonts';
import type { Item, Sheet, Weight } from '../page/page';
import { type PdfPen, pdfPen, shapeStyle } from './pdfPen';

const FAMILY = 'sheet';
const STYLES: Readonly<Record<Weight, string>> = { regular: 'normal', bold: 'bold' };

/** Points to a millimetre: a PDF counts in 1/72 in (ISO 32000). */
const POINTS = 72 / 25.4;

/** A file is told apart by its contents alone, so that the same sheet is the same file. */
const FILE_ID = '0'.repeat(32);

/** A sheet as a PDF: vectors true to scale, text with the letters that it uses embedded. The same sheet gives the same bytes. */
export function sheetPdf(sheet: Sheet, fonts: SheetFonts): Uint8Array {
  const [first] = sheet.pages;
  if (first === undefined) throw new RangeError('a sheet without a page');
  const format = ({ width, height }: { width: number; height: number }) => ({
    size: [width * POINTS, height * POINTS],
    orientation: width > height ? ('l' as const) : ('p' as const),
  });
  const opening = format(first);
  const doc = new jsPDF({
    unit: 'pt',
    format: opening.size,
    orientation: opening.orientation,
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 4,
  });
  for (const weight of ['regular', 'bold'] as const) {
    doc.addFileToVFS(weight, binaryOf(fonts[weight]));
    doc.addFont(weight, FAMILY, STYLES[weight], undefined, 'Identity-H');
  }
  const day = sheet.date.replaceAll('-', '');
  doc.setCreationDate(`D:${day}120000+00'00'`);
  doc.setFileId(FILE_ID);
  doc.setProperties({ title: sheet.title, creator: 'Footmark' });
  // passes over a language that it does not know
  doc.setLanguage(sheet.language as Parameters<jsPDF['setLanguage']>[0]);
  doc.viewerPreferences({ PrintScaling: 'None' });
  const pen = pdfPen(doc);
  const lettering = letteringOf(fonts);
  for (const [i, page] of sheet.pages.entries()) {
    if (i > 0) doc.addPage(format(page).size, format(page).orientation);
    pen.fresh();
    for (const item of page.items) paintItem(item, { doc, pen, sheet, widthOf: lettering.widthOf });
  }
  return new Uint8Array(doc.output('arraybuffer'));
}

type Setting = Readonly<{
  doc: jsPDF;
  pen: PdfPen;
  sheet: Sheet;
  widthOf: ReturnType<typeof letteringOf>['widthOf'];
}>;

function paintItem(item: Item, setting: Setting): void {
  const { doc, pen, sheet, widthOf } = setting;
  switch (item.is) {
    case 'lines': {
      if (item.lines.every((line) => line.length < 2)) return;
      pen.set(item.pen, item.tint);
      for (const line of item.lines) {
        for (const [i, p] of line.entries()) {
          if (i === 0) doc.moveTo(p.x * POINTS, p.y * POINTS);
          else doc.lineTo(p.x * POINTS, p.y * POINTS);
        }
        if (item.closed) doc.close();
      }
      pen.paint(item.pen, item.tint);
      return;
    }
    case 'circle': {
      pen.set(item.pen, item.tint);
      doc.circle(
        item.centre.x * POINTS,
        item.centre.y * POINTS,
        item.radius * POINTS,
        shapeStyle(item.pen, item.tint),
      );
      return;
    }
    case 'text': {
      const { at, text, size, weight, colour, anchor, turn } = item;
      if (text === '') return;
      const share = { start: 0, middle: 0.5, end: 1 }[anchor];
      const back = widthOf(text, size, weight) * share;
      pen.opaque();
      doc.setFont(FAMILY, STYLES[weight]);
      doc.setFontSize(size * POINTS);
      doc.setTextColor(colour);
      doc.text(text, (at.x - back * Math.cos(turn)) * POINTS, (at.y - back * Math.sin(turn)) * POINTS, {
        angle: (-turn * 180) / Math.PI,
      });
      return;
    }
    case 'image': {
      const picture = sheet.pictures.get(item.picture);
      if (picture === undefined) return;
      const { x, y, width, height } = item.box;
      const kind = picture.mediaType === 'image/png' ? 'PNG' : 'JPEG';
      pen.opaque();
      doc.addImage(
        picture.bytes,
        kind,
        x * POINTS,
        y * POINTS,
        width * POINTS,
        height * POINTS,
        item.picture,
        'FAST',
      );
      return;
    }
    case 'window': {
      const { x, y, width, height } = item.box;
      doc.saveGraphicsState();
      doc.rect(x * POINTS, y * POINTS, width * POINTS, height * POINTS, null);
      doc.clip();
      doc.discardPath();
      pen.fresh();
      for (const inner of item.items) paintItem(inner, setting);
      doc.restoreGraphicsState();
      pen.fresh();
    }
  }
}

const CHUNK = 8192;

/** The library takes a font as a string with a character for each byte. */
function binaryOf(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += CHUNK) text += String.fromCharCode(...bytes.subarray(i, i + CHUNK));
  return text;
}

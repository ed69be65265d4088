import { GState, type jsPDF } from 'jspdf';
import type { Pen, Tint } from '../page/page';

/** Sets pens and tints of a PDF, each only where it differs from what is set already. */
export type PdfPen = Readonly<{
  /** Before a path is begun: a PDF knows no change of pen within one. */
  set: (pen: Pen | undefined, tint: Tint | undefined) => void;
  /** Paints the path that was begun. */
  paint: (pen: Pen | undefined, tint: Tint | undefined) => void;
  opaque: () => void;
  /** What was set is not known any more: a page or a window begins or ends. */
  fresh: () => void;
}>;

const POINTS = 72 / 25.4;

/** `style` of a shape that the library paints by itself. */
export function shapeStyle(pen: Pen | undefined, tint: Tint | undefined): 'F' | 'S' | 'FD' {
  if (tint === undefined) return 'S';
  return pen === undefined ? 'F' : 'FD';
}

export function pdfPen(doc: jsPDF): PdfPen {
  let known = new Map<string, string>();
  const once = (what: string, value: string, change: () => void) => {
    if (known.get(what) === value) return;
    known.set(what, value);
    change();
  };
  const opacity = (fill: number, stroke: number) =>
    once('opacity', `${fill}/${stroke}`, () => {
      doc.setGState(new GState({ opacity: fill, 'stroke-opacity': stroke }));
    });
  return {
    set: (pen, tint) => {
      opacity(tint?.opacity ?? 1, pen?.opacity ?? 1);
      if (tint !== undefined) once('fill', tint.colour, () => doc.setFillColor(tint.colour));
      if (pen === undefined) return;
      const { colour, width, dash = [] } = pen;
      once('stroke', colour, () => doc.setDrawColor(colour));
      once('width', String(width), () => doc.setLineWidth(width * POINTS));
      once('dash', dash.join(), () => {
        doc.setLineDashPattern(
          dash.map((mm) => mm * POINTS),
          0,
        );
        doc.setLineCap(dash.length === 0 ? 'round' : 'butt');
      });
      once('join', 'round', () => doc.setLineJoin('round'));
    },
    paint: (pen, tint) => {
      if (tint === undefined) doc.stroke();
      else if (pen === undefined) doc.fillEvenOdd();
      else doc.fillStrokeEvenOdd();
    },
    opaque: () => opacity(1, 1),
    fresh: () => {
      known = new Map();
    },
  };
}

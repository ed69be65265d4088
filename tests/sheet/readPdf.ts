import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

// PDF files as a reader that is not ours (pdfjs-dist) finds them. Everything in points from the lower left corner of a page.

export type PdfText = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
};

export type PdfSegment = { readonly from: readonly [number, number]; readonly to: readonly [number, number] };

export type PdfPage = {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PdfText[];
  /** Straight pieces of all paths, closing ones too. */
  readonly segments: readonly PdfSegment[];
  readonly images: number;
};

export async function readPdf(bytes: Uint8Array): Promise<readonly PdfPage[]> {
  // the reader takes the bytes away, and says on its own what it misses for painting
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const pdf = await task.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [left = 0, low = 0, right = 0, high = 0] = page.view;
    const content = await page.getTextContent();
    const operators = await page.getOperatorList();
    const painted = operators.fnArray.filter((fn) => fn === OPS.paintImageXObject);
    pages.push({
      width: right - left,
      height: high - low,
      texts: content.items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [textOf(item)] : [])),
      segments: operators.fnArray.flatMap((fn, i) =>
        fn === OPS.constructPath ? segmentsOf(operators.argsArray[i]) : [],
      ),
      images: painted.length,
    });
  }
  await task.destroy();
  return pages;
}

function textOf(item: { str: string; width: number; transform: readonly number[] }): PdfText {
  const [a = 0, b = 0, , , x = 0, y = 0] = item.transform;
  return { text: item.str, x, y, width: item.width, size: Math.hypot(a, b) };
}

/** A path as the reader gives it: its operators, and all their numbers in one list. */
function segmentsOf([operators, numbers]: readonly [
  readonly number[],
  readonly number[],
]): readonly PdfSegment[] {
  const segments: PdfSegment[] = [];
  let start: [number, number] = [0, 0];
  let at: [number, number] = [0, 0];
  let k = 0;
  const next = (): [number, number] => [numbers[k++] ?? 0, numbers[k++] ?? 0];
  for (const operator of operators) {
    switch (operator) {
      case OPS.moveTo:
        at = next();
        start = at;
        break;
      case OPS.lineTo: {
        const to = next();
        segments.push({ from: at, to });
        at = to;
        break;
      }
      case OPS.curveTo:
        k += 4;
        at = next();
        break;
      case OPS.rectangle:
        k += 4;
        break;
      case OPS.closePath:
        segments.push({ from: at, to: start });
        at = start;
        break;
      default:
        throw new Error(`a path with operator ${operator}`);
    }
  }
  return segments;
}

export function lengthOf({ from, to }: PdfSegment): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

export function textOn({ texts }: PdfPage): string {
  return texts
    .map((t) => t.text)
    .join(' ')
    .replace(/\s+/g, ' ');
}

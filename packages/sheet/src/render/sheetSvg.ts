import type { Item, Page, PaperPoint, Pen, Tint } from '../page/page';

/** Family by which a browser knows the sheet's lettering, and the weights of its two cuts. */
const FAMILY = "'Barlow Semi Condensed', 'Arial Narrow', sans-serif";
const WEIGHTS = { regular: 500, bold: 600 } as const;

/** `hrefOf`: where a picture is to be had; without it its frame stays bare. */
export type SvgOptions = Readonly<{ hrefOf?: (picture: string) => string }>;

/**
 * A page as an SVG document of its true size, a unit to the millimetre. Texts were measured without kerning and ligatures: whoever shows it turns
 * both off, by a rule of their own, as pages that allow no styles in attributes would not take it from here.
 */
export function sheetSvg(page: Page, options: SvgOptions = {}): string {
  const { width, height, items } = page;
  const windows = { count: 0 };
  const size = `width="${round(width)}mm" height="${round(height)}mm" viewBox="0 0 ${round(width)} ${round(height)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} font-family="${FAMILY}"><rect width="100%" height="100%" fill="#ffffff"/>${items
    .map((item) => itemSvg(item, options, windows))
    .join('')}</svg>`;
}

function itemSvg(item: Item, options: SvgOptions, windows: { count: number }): string {
  switch (item.is) {
    case 'lines': {
      const d = item.lines.map((line) => trace(line, item.closed)).join('');
      return d === '' ? '' : `<path d="${d}"${paint(item.pen, item.tint)}/>`;
    }
    case 'circle': {
      const { centre, radius, pen, tint } = item;
      return `<circle cx="${round(centre.x)}" cy="${round(centre.y)}" r="${round(radius)}"${paint(pen, tint)}/>`;
    }
    case 'text': {
      const { at, text, size, weight, colour, anchor, turn } = item;
      const place = `x="${round(at.x)}" y="${round(at.y)}"`;
      const turned =
        turn === 0
          ? ''
          : ` transform="rotate(${round((turn * 180) / Math.PI)} ${round(at.x)} ${round(at.y)})"`;
      return `<text ${place}${turned} font-size="${round(size)}" font-weight="${WEIGHTS[weight]}" fill="${colour}" text-anchor="${anchor}" xml:space="preserve">${escaped(text)}</text>`;
    }
    case 'image': {
      const { picture, box } = item;
      const href = options.hrefOf?.(picture);
      if (href === undefined) return '';
      return `<image x="${round(box.x)}" y="${round(box.y)}" width="${round(box.width)}" height="${round(box.height)}" preserveAspectRatio="none" href="${escaped(href)}"/>`;
    }
    case 'window': {
      const { x, y, width, height } = item.box;
      windows.count += 1;
      // a preview of several pages is one document: the name is made of the place too
      const id = `w${windows.count}-${[x, y, width, height].map((n) => Math.round(n * 100)).join('-')}`;
      const inside = item.items.map((i) => itemSvg(i, options, windows)).join('');
      return `<clipPath id="${id}"><rect x="${round(x)}" y="${round(y)}" width="${round(width)}" height="${round(height)}"/></clipPath><g clip-path="url(#${id})">${inside}</g>`;
    }
  }
}

function trace(line: readonly PaperPoint[], closed: boolean): string {
  const d = line.map((p, i) => `${i === 0 ? 'M' : 'L'}${round(p.x)} ${round(p.y)}`).join('');
  return closed && d !== '' ? `${d}Z` : d;
}

function paint(pen: Pen | undefined, tint: Tint | undefined): string {
  const fill =
    tint === undefined
      ? ' fill="none"'
      : ` fill="${tint.colour}" fill-rule="evenodd"${tint.opacity === undefined ? '' : ` fill-opacity="${tint.opacity}"`}`;
  if (pen === undefined) return fill;
  const { colour, width, dash, opacity } = pen;
  return [
    fill,
    ` stroke="${colour}" stroke-width="${round(width)}" stroke-linejoin="round"`,
    dash === undefined ? ' stroke-linecap="round"' : ` stroke-dasharray="${dash.join(' ')}"`,
    opacity === undefined ? '' : ` stroke-opacity="${opacity}"`,
  ].join('');
}

/** A micrometre is finer than any printer. */
function round(value: number): string {
  return String(Number(value.toFixed(3)));
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c);
}

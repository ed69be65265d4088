/** Advance widths of a font by character, in ems; null for a character that it has no glyph for. */
export type FontFace = Readonly<{ advance: (codePoint: number) => number | null }>;

const SIGNATURES: ReadonlySet<number> = new Set([0x00010000, 0x74727565]);

/**
 * Reads character map and advance widths of a TrueType file: tables head, hhea, hmtx and cmap in format 4 or 12 (ISO/IEC 14496-22).
 * Kerning is not read, as it is not set either. Throws a RangeError for bytes that are no such file.
 */
export function readFontFace(bytes: Uint8Array): FontFace {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.byteLength < 12 || !SIGNATURES.has(view.getUint32(0)))
    throw new RangeError('not a TrueType font');
  const tables = tablesOf(view);
  const at = (tag: string): number => {
    const offset = tables.get(tag);
    if (offset === undefined) throw new RangeError(`a font without ${tag}`);
    return offset;
  };
  const em = view.getUint16(at('head') + 18);
  const count = view.getUint16(at('hhea') + 34);
  const hmtx = at('hmtx');
  const glyphOf = characterMap(view, at('cmap'));
  return {
    advance: (codePoint) => {
      const glyph = glyphOf(codePoint);
      return glyph === 0 ? null : view.getUint16(hmtx + 4 * Math.min(glyph, count - 1)) / em;
    },
  };
}

function tablesOf(view: DataView): ReadonlyMap<string, number> {
  const tables = new Map<string, number>();
  for (let i = 0; i < view.getUint16(4); i += 1) {
    const record = 12 + 16 * i;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(record + k)));
    tables.set(tag, view.getUint32(record + 8));
  }
  return tables;
}

/** The glyph of a character, 0 for none. */
function characterMap(view: DataView, cmap: number): (codePoint: number) => number {
  let best: { format: number; offset: number } | null = null;
  for (let i = 0; i < view.getUint16(cmap + 2); i += 1) {
    const offset = cmap + view.getUint32(cmap + 8 + 8 * i);
    const format = view.getUint16(offset);
    if ((format === 4 || format === 12) && format > (best?.format ?? 0)) best = { format, offset };
  }
  if (best === null) throw new RangeError('a font without a character map of Unicode');
  const { format, offset } = best;
  return format === 12 ? (c) => glyphIn12(view, offset, c) : (c) => glyphIn4(view, offset, c);
}

function glyphIn12(view: DataView, offset: number, codePoint: number): number {
  for (let i = 0; i < view.getUint32(offset + 12); i += 1) {
    const group = offset + 16 + 12 * i;
    if (codePoint < view.getUint32(group)) return 0;
    if (codePoint <= view.getUint32(group + 4)) {
      return view.getUint32(group + 8) + codePoint - view.getUint32(group);
    }
  }
  return 0;
}

function glyphIn4(view: DataView, offset: number, codePoint: number): number {
  if (codePoint > 0xffff) return 0;
  const twice = view.getUint16(offset + 6);
  const [ends, starts] = [offset + 14, offset + 16 + twice];
  const [deltas, ranges] = [starts + twice, starts + 2 * twice];
  for (let i = 0; i < twice; i += 2) {
    if (codePoint > view.getUint16(ends + i)) continue;
    const start = view.getUint16(starts + i);
    if (codePoint < start) return 0;
    const range = view.getUint16(ranges + i);
    const delta = view.getUint16(deltas + i);
    if (range === 0) return (codePoint + delta) & 0xffff;
    const glyph = view.getUint16(ranges + i + range + 2 * (codePoint - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}

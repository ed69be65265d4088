import { GAP } from '../page/measures';
import type { Box, Item } from '../page/page';
import type { SheetSetting } from '../setting';
import { headingPiece } from './heading';
import type { Piece, Section } from './section';

/** Between columns, mm. */
export const GUTTER_MM = 6;
/** A section that is no higher than this (mm) is not parted; no other begins where there is less than the second under its heading. */
const KEPT_MM = 70;
const LEAST_MM = 30;

/** A page's room for sections, and what was painted into it. */
type Filled = { readonly box: Box; readonly items: Item[]; down: number };

/**
 * Lays sections out one after the other, through `first` (what is left of a page) and as many boxes like `next` as it takes. Nothing is
 * cut: what does not fit goes on in the next box under its heading. Gives the items of each box, that of `first` too.
 */
export function flowSections(
  sections: readonly Section[],
  first: Box,
  next: Box,
  setting: SheetSetting,
): readonly (readonly Item[])[] {
  const pages: Filled[] = [{ box: first, items: [], down: 0 }];
  const last = () => pages[pages.length - 1] ?? turnOver();
  const turnOver = () => {
    const page: Filled = { box: next, items: [], down: 0 };
    pages.push(page);
    return page;
  };
  for (const section of sections) flowSection(section, { last, turnOver, whole: next }, setting);
  return pages.map((p) => p.items);
}

/** `whole`: the room of a page that nothing stands on yet. */
type Pages = Readonly<{ last: () => Filled; turnOver: () => Filled; whole: Box }>;

function flowSection(section: Section, pages: Pages, setting: SheetSetting): void {
  let left: readonly Piece[] | null = null;
  let begun = false;
  for (let turns = false; left === null || left.length > 0; turns = true) {
    const page: Filled = turns ? pages.turnOver() : pages.last();
    const { width } = page.box;
    const column = (width - (section.columns - 1) * GUTTER_MM) / section.columns;
    const { repeat, pieces } = section.make(column);
    if (pieces.length === 0) return;
    const text = begun ? setting.words.sheet.continued(section.heading) : section.heading;
    const heading = headingPiece(text, width, setting);
    const air = page.down === 0 ? 0 : GAP.large;
    const over = heading.height + (repeat?.height ?? 0);
    const room = page.box.height - page.down - air - over;
    const waiting: readonly Piece[] = left ?? pieces;
    const isFresh = page.down === 0 && page.box === pages.whole;
    if (!isFresh && room < leastRoom(waiting, section)) {
      left = waiting;
      continue;
    }
    const top = page.box.y + page.down + air;
    page.items.push(...heading.paint({ x: page.box.x, y: top }));
    const { columns, rest } = intoColumns(waiting, section, room);
    let deepest = 0;
    for (const [i, own] of columns.entries()) {
      const x = page.box.x + i * (column + GUTTER_MM);
      let y = top + heading.height;
      if (repeat !== undefined && own.length > 0) {
        page.items.push(...repeat.paint({ x, y }));
        y += repeat.height;
      }
      for (const piece of own) {
        page.items.push(...piece.paint({ x, y }));
        y += piece.height + section.gap;
      }
      deepest = Math.max(deepest, y - section.gap);
    }
    page.down = deepest - page.box.y;
    begun = true;
    left = rest;
  }
}

/** Room enough for the whole of a short section, and for a beginning that is worth it of a longer one. */
function leastRoom(pieces: readonly Piece[], { gap, columns }: Section): number {
  const [first] = pieces;
  const whole = Math.max(heightOf(pieces, gap) / columns, first?.height ?? 0);
  return whole <= KEPT_MM ? whole : Math.max(LEAST_MM, first?.height ?? 0);
}

function heightOf(pieces: readonly Piece[], gap: number): number {
  return pieces.reduce((sum, p) => sum + p.height, 0) + gap * Math.max(0, pieces.length - 1);
}

/** Down one column after the other, all about as deep, none deeper than the room; `rest` is for the next page. */
function intoColumns(
  pieces: readonly Piece[],
  { columns: count, gap }: Section,
  room: number,
): { readonly columns: readonly (readonly Piece[])[]; readonly rest: readonly Piece[] } {
  const filled = (depth: number) => {
    const columns: Piece[][] = [[]];
    let down = 0;
    for (const [i, piece] of pieces.entries()) {
      const own = columns[columns.length - 1] ?? [];
      // one piece that is taller than a page still has to stand somewhere
      if (own.length > 0 && down + piece.height > depth) {
        if (columns.length === count) return { columns, rest: pieces.slice(i) };
        columns.push([piece]);
        down = piece.height + gap;
      } else {
        own.push(piece);
        down += piece.height + gap;
      }
    }
    return { columns, rest: [] };
  };
  if (count === 1) return filled(room);
  const whole = heightOf(pieces, gap);
  for (let depth = whole / count; depth < room; depth += 1) {
    const tried = filled(depth);
    if (tried.rest.length === 0) return tried;
  }
  return filled(room);
}

import type { Ink, PlacedLabel } from '@footmark/drawing';
import type { Lettering } from '../font/sheetFonts';
import type { Inks } from '../page/inks';
import { EM_PER_CAPITAL, LINE } from '../page/measures';
import type { Item } from '../page/page';
import { type PlanView, toPaper } from './planView';

/** Of a text's mask, mm beyond its ends. */
const MASK_MM = 0.35;
/** Of a mask, to the height of capitals. */
const MASK_HEIGHT = 1.5;
/** On its line a text covers that; elsewhere what lies below shines through a little. */
const MASK_OPACITY = 0.82;

/** What is drawn pale, but is to be read. */
const READ: Partial<Record<Ink, Ink>> = { pavement: 'assumed', faint: 'assumed' };

/** Texts in their places, each over a mask that lifts it off what lies below. */
export function paintLabels(
  placed: readonly PlacedLabel[],
  view: PlanView,
  inks: Inks,
  lettering: Lettering,
): readonly Item[] {
  return [
    ...placed.flatMap(({ label, leader }) => {
      if (leader === undefined) return [];
      const lines = [leader.map((p) => toPaper(view, p))];
      return [
        { is: 'lines', lines, closed: false, pen: { colour: inks[label.ink], width: LINE.thin } } as const,
      ];
    }),
    ...placed.map((p) => maskOf(p, view, inks, lettering)),
    ...placed.map((p) => textOf(p, view, inks)),
  ];
}

/** From the reading direction to a turn on the page, clockwise. */
function turnOf({ azimuth }: PlacedLabel): number {
  return azimuth - Math.PI / 2;
}

function maskOf(placed: PlacedLabel, view: PlanView, inks: Inks, { widthOf }: Lettering): Item {
  const { label, text } = placed;
  const centre = toPaper(view, placed.at);
  const half = {
    x: widthOf(text, label.height * EM_PER_CAPITAL, label.weight) / 2 + MASK_MM,
    y: (label.height * MASK_HEIGHT) / 2,
  };
  const [cos, sin] = [Math.cos(turnOf(placed)), Math.sin(turnOf(placed))];
  const corner = (x: number, y: number) => ({
    x: centre.x + x * cos - y * sin,
    y: centre.y + x * sin + y * cos,
  });
  const ring = [
    corner(-half.x, -half.y),
    corner(half.x, -half.y),
    corner(half.x, half.y),
    corner(-half.x, half.y),
  ];
  const opacity = label.seat === 'on-line' ? {} : { opacity: MASK_OPACITY };
  return { is: 'lines', lines: [ring], closed: true, tint: { colour: inks.paper, ...opacity } };
}

function textOf(placed: PlacedLabel, view: PlanView, inks: Inks): Item {
  const { label, text } = placed;
  const turn = turnOf(placed);
  const centre = toPaper(view, placed.at);
  // from the middle of the capitals down to the base line
  const down = label.height / 2;
  return {
    is: 'text',
    at: { x: centre.x - down * Math.sin(turn), y: centre.y + down * Math.cos(turn) },
    text,
    size: label.height * EM_PER_CAPITAL,
    weight: label.weight,
    colour: inks[READ[label.ink] ?? label.ink],
    anchor: 'middle',
    turn,
  };
}

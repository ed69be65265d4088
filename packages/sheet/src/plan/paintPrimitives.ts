import {
  boundsOf,
  expandPattern,
  type Fill,
  HATCH,
  hatchLines,
  type Primitive,
  primitivePoints,
  type Stroke,
} from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import type { Inks } from '../page/inks';
import type { Item, Pen, Tint } from '../page/page';
import { paintSymbol } from './paintSymbol';
import { type PlanView, shownBounds, toPaper } from './planView';

/** A line's weight and a symbol's reach beyond its own points, mm: generous. */
const REACH_MM = 12;

/** Primitives of the plan as items of a page, in order; what lies outside of the view is passed over. */
export function paintPrimitives(
  primitives: readonly Primitive[],
  view: PlanView,
  inks: Inks,
): readonly Item[] {
  const shown = shownBounds(view);
  const reach = REACH_MM / view.mmPerMetre;
  return primitives.flatMap((primitive) => {
    const box = boundsOf(primitivePoints(primitive));
    if (box === null) return [];
    const inView =
      box.minX <= shown.maxX + reach &&
      box.maxX >= shown.minX - reach &&
      box.minY <= shown.maxY + reach &&
      box.maxY >= shown.minY - reach;
    return inView ? paintPrimitive(primitive, view, inks) : [];
  });
}

function paintPrimitive(primitive: Primitive, view: PlanView, inks: Inks): readonly Item[] {
  switch (primitive.kind) {
    case 'line': {
      const { points, closed, fill, stroke } = primitive;
      const lines = [points.map((p) => toPaper(view, p))];
      return [
        ...(fill === undefined ? [] : [fillItem(fill, points, view, inks)]),
        ...(stroke === undefined ? [] : [{ is: 'lines', lines, closed, pen: penOf(stroke, inks) } as const]),
      ];
    }
    case 'circle': {
      const { centre, radius, fill, stroke } = primitive;
      return [
        {
          is: 'circle',
          centre: toPaper(view, centre),
          radius: radius * view.mmPerMetre,
          ...(stroke === undefined ? {} : { pen: penOf(stroke, inks) }),
          ...(fill === undefined ? {} : { tint: tintOf(fill, inks) }),
        },
      ];
    }
    case 'pattern':
      return joined(expandPattern(primitive, view.mmPerMetre).flatMap((p) => paintPrimitive(p, view, inks)));
    case 'symbol':
      return paintSymbol(primitive, view, inks);
  }
}

function fillItem(fill: Fill, ring: readonly Point[], view: PlanView, inks: Inks): Item {
  if (fill.hatch === undefined) {
    return {
      is: 'lines',
      lines: [ring.map((p) => toPaper(view, p))],
      closed: true,
      tint: tintOf(fill, inks),
    };
  }
  return {
    is: 'lines',
    lines: hatchLines(ring, view.mmPerMetre).map((segment) => segment.map((p) => toPaper(view, p))),
    closed: false,
    pen: { colour: inks[fill.ink], width: HATCH.weight, ...opacityOf(fill.opacity) },
  };
}

/** Ornaments of one pen as one item. */
function joined(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const last = out.at(-1);
    if (
      item.is === 'lines' &&
      last?.is === 'lines' &&
      item.tint === undefined &&
      last.tint === undefined &&
      item.closed === last.closed &&
      JSON.stringify(item.pen) === JSON.stringify(last.pen)
    ) {
      out[out.length - 1] = { ...last, lines: [...last.lines, ...item.lines] };
    } else out.push(item);
  }
  return out;
}

export function penOf({ ink, weight, dash, opacity }: Stroke, inks: Inks): Pen {
  return {
    colour: inks[ink],
    width: weight,
    ...(dash === undefined ? {} : { dash }),
    ...opacityOf(opacity ?? 1),
  };
}

export function tintOf({ ink, opacity }: Fill, inks: Inks): Tint {
  return { colour: inks[ink], ...opacityOf(opacity) };
}

function opacityOf(opacity: number): Readonly<{ opacity?: number }> {
  return opacity < 1 ? { opacity } : {};
}

import type { Stroke } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { INK_COLOUR } from './dxfColour';
import { type DxfPair, dxfPoint, dxfReal } from './dxfPairs';
import { dxfString } from './dxfString';
import type { DxfLineTypes } from './dxfTables';

/** What an entity is drawn with: its layer, and the stroke of the plan. */
type Pen = { readonly layer: string; readonly stroke: Pick<Stroke, 'ink' | 'dash'> };

/** Puts entities down in the file's own coordinates, and remembers what line types they took and how far they go. */
export type DxfPen = {
  line(points: readonly Point[], closed: boolean, pen: Pen): void;
  circle(centre: Point, radius: number, pen: Pen): void;
  point(at: Point, layer: string): void;
  /** Centred on `at`; `turn` (rad) counterclockwise from level. */
  text(text: string, at: Point, height: number, turn: number, pen: Pen): void;
  readonly entities: readonly DxfPair[];
  readonly lineTypes: DxfLineTypes;
  readonly least: Point;
  readonly most: Point;
};

export function dxfPen(): DxfPen {
  const entities: DxfPair[] = [];
  const lineTypes = new Map<string, readonly number[]>();
  let least = { x: Infinity, y: Infinity };
  let most = { x: -Infinity, y: -Infinity };

  const reach = (p: Point): Point => {
    least = { x: Math.min(least.x, p.x), y: Math.min(least.y, p.y) };
    most = { x: Math.max(most.x, p.x), y: Math.max(most.y, p.y) };
    return p;
  };
  const begin = (type: string, { layer, stroke }: Pen): readonly DxfPair[] => [
    [0, type],
    [8, layer],
    ...lineTypeOf(stroke.dash),
    [62, INK_COLOUR[stroke.ink]],
  ];
  const lineTypeOf = (dash: readonly number[] | undefined): readonly DxfPair[] => {
    if (dash === undefined) return [];
    const name = `DASH-${dash.map((mm) => Math.round(mm * 10)).join('-')}`;
    lineTypes.set(name, dash);
    return [[6, name]];
  };

  return {
    line(points, closed, pen) {
      const [a, b] = points;
      if (a === undefined || b === undefined) return;
      if (points.length === 2) {
        entities.push(...begin('LINE', pen), ...dxfPoint(10, reach(a)), ...dxfPoint(11, reach(b)));
        return;
      }
      entities.push(...begin('POLYLINE', pen), [66, 1], ...dxfPoint(10, { x: 0, y: 0 }), [
        70,
        closed ? 1 : 0,
      ]);
      for (const p of points) entities.push([0, 'VERTEX'], [8, pen.layer], ...dxfPoint(10, reach(p)));
      entities.push([0, 'SEQEND'], [8, pen.layer]);
    },
    circle(centre, radius, pen) {
      reach({ x: centre.x - radius, y: centre.y - radius });
      reach({ x: centre.x + radius, y: centre.y + radius });
      entities.push(...begin('CIRCLE', pen), ...dxfPoint(10, centre), [40, dxfReal(radius)]);
    },
    point(at, layer) {
      entities.push([0, 'POINT'], [8, layer], ...dxfPoint(10, reach(at)));
    },
    text(text, at, height, turn, { layer, stroke }) {
      const said = dxfString(text);
      if (said === '') return;
      entities.push(
        ...begin('TEXT', { layer, stroke: { ink: stroke.ink } }),
        ...dxfPoint(10, reach(at)),
        [40, dxfReal(height)],
        [1, said],
        [50, dxfReal((turn * 180) / Math.PI)],
        [72, 1], // centred
        ...dxfPoint(11, at),
        [73, 2], // on its middle
      );
    },
    entities,
    lineTypes,
    get least() {
      return Number.isFinite(least.x) ? least : { x: 0, y: 0 };
    },
    get most() {
      return Number.isFinite(most.x) ? most : { x: 0, y: 0 };
    },
  };
}

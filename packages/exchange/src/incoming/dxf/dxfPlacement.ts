import { type DxfEntity, numberIn } from './dxfEntity';

type XY = { readonly x: number; readonly y: number };

/** Where a block's coordinates come to lie: x' = a·x + b·y + tx, y' = c·x + d·y + ty. */
export type DxfPlacement = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly tx: number;
  readonly ty: number;
  /** What things on layer 0 of a block take over; null outside of blocks. */
  readonly layer: string | null;
};

export const AS_IT_STANDS: DxfPlacement = { a: 1, b: 0, c: 0, d: 1, tx: 0, ty: 0, layer: null };

export function placed({ a, b, c, d, tx, ty }: DxfPlacement, { x, y }: XY): XY {
  return { x: a * x + b * y + tx, y: c * x + d * y + ty };
}

/** Whether an entity is drawn on the back of the plane (its extrusion points down), where x runs the other way. */
export function isMirrored(entity: DxfEntity): boolean {
  return numberIn(entity, 230, 1) < 0;
}

/** Where an INSERT puts its block: scaled and turned about the base point, moved, and by what the INSERT itself lies in. */
export function insertPlacement(
  insert: DxfEntity,
  base: XY,
  outer: DxfPlacement,
  layer: string,
): DxfPlacement {
  const mirror = isMirrored(insert) ? -1 : 1;
  const turn = (numberIn(insert, 50, 0) * Math.PI) / 180;
  const [sx, sy] = [numberIn(insert, 41, 1), numberIn(insert, 42, 1)];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const own = {
    a: mirror * cos * sx,
    b: mirror * -sin * sy,
    c: sin * sx,
    d: cos * sy,
    x: mirror * numberIn(insert, 10, 0),
    y: numberIn(insert, 20, 0),
  };
  const tx = own.x - own.a * base.x - own.b * base.y;
  const ty = own.y - own.c * base.x - own.d * base.y;
  return {
    a: outer.a * own.a + outer.b * own.c,
    b: outer.a * own.b + outer.b * own.d,
    c: outer.c * own.a + outer.d * own.c,
    d: outer.c * own.b + outer.d * own.d,
    tx: outer.a * tx + outer.b * ty + outer.tx,
    ty: outer.c * tx + outer.d * ty + outer.ty,
    layer,
  };
}

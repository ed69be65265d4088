import { fail } from '@footmark/geometry';
import type { Collector } from '../collector';
import type { IncomingFailure, IncomingThing } from '../incoming';
import { MOST_DEPTH, MOST_THINGS } from '../incomingLimits';
import { arcPoints, bulgePoints, circlePoints } from './dxfCurves';
import { type DxfBlock, type DxfEntity, dxfNumber, numberIn, textIn } from './dxfEntity';
import { type DxfPlacement, insertPlacement, isMirrored, placed } from './dxfPlacement';

type XY = { readonly x: number; readonly y: number };

/** What entities are drawn with: the file's blocks by name, where they go, and how many more may be looked at; large ones in blocks count more. */
export type DxfShapes = {
  readonly blocks: ReadonlyMap<string, DxfBlock>;
  readonly found: Collector;
  left: number;
};

/** So many groups of a copy are looked at as quickly as an entity. */
const GROUPS_AT_ONCE = 20;

/** On a sheet of paper, not in the model. */
const PAPER_SPACE = 67;

/** Of a POLYLINE: closed; a mesh of one kind or the other. */
const CLOSED = 1;
const MESH = 16 | 64;

const TEXTS = new Set(['TEXT', 'MTEXT', 'ATTDEF', 'ATTRIB', 'DIMENSION', 'LEADER']);

/** Adds what an entity is in the plan; a failure once a limit is passed, as by blocks that hold themselves. */
export function addEntity(
  entity: DxfEntity,
  at: DxfPlacement,
  depth: number,
  shapes: DxfShapes,
): IncomingFailure | null {
  const { found } = shapes;
  shapes.left -= depth === 0 ? 1 : 1 + groupsIn(entity) / GROUPS_AT_ONCE;
  if (shapes.left < 0) return fail('too-many-things', { most: MOST_THINGS });
  if (entity.type === 'SEQEND') return null; // the end of an INSERT's attributes, and no thing
  if (numberIn(entity, PAPER_SPACE, 0) === 1) {
    found.leaveOut('paper-left-out');
    return null;
  }
  const layer = layerOf(entity, at);
  const add = (shape: IncomingThing['shape'], points: readonly XY[]): IncomingFailure | null => {
    found.add({
      name: '',
      layer,
      shape,
      points: points.map((p) => {
        const { x, y } = placed(at, p);
        return { first: x, second: y, height: null };
      }),
    });
    return found.failure;
  };
  /** Entities of the plane have their own axes, which may be those of its back. */
  const flat = (points: readonly XY[]): readonly XY[] =>
    isMirrored(entity) ? points.map(({ x, y }) => ({ x: -x, y })) : points;
  const centre = { x: numberIn(entity, 10), y: numberIn(entity, 20) };

  switch (entity.type) {
    case 'POINT':
      return add('point', [centre]);
    case 'LINE':
      return add('line', [centre, { x: numberIn(entity, 11), y: numberIn(entity, 21) }]);
    case 'CIRCLE':
      found.leaveOut('curves-as-chords');
      return add('area', flat(circlePoints(centre, numberIn(entity, 40))));
    case 'ARC': {
      found.leaveOut('curves-as-chords');
      const [from, to] = [50, 51].map((code) => (numberIn(entity, code) * Math.PI) / 180);
      return add('line', flat(arcPoints(centre, numberIn(entity, 40), from ?? 0, to ?? 0)));
    }
    case 'LWPOLYLINE':
    case 'POLYLINE': {
      const flags = numberIn(entity, 70, 0);
      if (entity.type === 'POLYLINE' && (flags & MESH) !== 0) {
        found.leaveOut('kinds-left-out');
        return null;
      }
      const closed = (flags & CLOSED) !== 0;
      const corners = entity.type === 'POLYLINE' ? polylineCorners(entity) : lightCorners(entity);
      if (corners.some((c) => c.bulge !== 0)) found.leaveOut('curves-as-chords');
      return add(closed && corners.length > 2 ? 'area' : 'line', flat(withBulges(corners, closed)));
    }
    case 'INSERT':
      return addInsert(entity, at, layer, depth, shapes);
    default:
      found.leaveOut(TEXTS.has(entity.type) ? 'texts-left-out' : 'kinds-left-out');
      return null;
  }
}

function groupsIn({ groups, vertices }: DxfEntity): number {
  return vertices.reduce((sum, vertex) => sum + vertex.groups.length, groups.length);
}

function addInsert(
  insert: DxfEntity,
  at: DxfPlacement,
  layer: string,
  depth: number,
  shapes: DxfShapes,
): IncomingFailure | null {
  if (depth >= MOST_DEPTH) return fail('too-deep', { most: MOST_DEPTH });
  const block = shapes.blocks.get(textIn(insert, 2));
  const copies = numberIn(insert, 70, 1) * numberIn(insert, 71, 1);
  if (block === undefined || copies !== 1) {
    shapes.found.leaveOut('kinds-left-out'); // rows and columns of copies are none of a plan's
    return null;
  }
  const inside = insertPlacement(insert, block, at, layer);
  for (const entity of block.entities) {
    const failure = addEntity(entity, inside, depth + 1, shapes);
    if (failure !== null) return failure;
  }
  return null;
}

function layerOf(entity: DxfEntity, { layer }: DxfPlacement): string {
  const own = textIn(entity, 8);
  return own === '0' && layer !== null ? layer : own;
}

type Corner = XY & { readonly bulge: number };

function polylineCorners({ vertices }: DxfEntity): readonly Corner[] {
  return vertices.map((v) => ({ x: numberIn(v, 10), y: numberIn(v, 20), bulge: numberIn(v, 42, 0) }));
}

/** An LWPOLYLINE has its corners in one run of groups: x, y, and the bulge of the leg that follows. */
function lightCorners({ groups }: DxfEntity): readonly Corner[] {
  const corners: { x: number; y: number; bulge: number }[] = [];
  for (const { code, value } of groups) {
    if (code === 10) corners.push({ x: dxfNumber(value), y: Number.NaN, bulge: 0 });
    const last = corners.at(-1);
    if (last === undefined) continue;
    if (code === 20) last.y = dxfNumber(value);
    if (code === 42) last.bulge = dxfNumber(value);
  }
  return corners;
}

function withBulges(corners: readonly Corner[], closed: boolean): readonly XY[] {
  const [first] = corners;
  if (first === undefined) return [];
  const points: XY[] = [{ x: first.x, y: first.y }];
  for (const [i, from] of corners.entries()) {
    const to = corners[i + 1] ?? (closed ? first : undefined);
    if (to !== undefined) points.push(...bulgePoints(from, { x: to.x, y: to.y }, from.bulge));
  }
  return points;
}

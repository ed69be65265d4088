import { degrees, distance, nearestOnSegment, type Point } from '@footmark/geometry';
import { type Derived, drainBends, type Ref } from '@footmark/site';
import type { Landing } from '../tools/tool';

/** How near (CSS px) a press must come to be drawn onto something. */
export const SNAP_PX = { touch: 22, mouse: 12 };

/** Directions that a hand is drawn to: every so many degrees from the leg before, or from the sheet's edges. */
const ANGLE_STEP_DEG = 45;

/** A pipe turns as its bends do: straight on, by the sixteenth, eighth, sixth and quarter of a circle. */
const PIPE_TURNS_DEG = [0, ...drainBends.map((bend) => degrees(bend.turn))];

/** How far (degrees) from such a direction it still pulls. */
const ANGLE_PULL_DEG = 3;

/** Lines pull beyond their ends only this far (m). */
const EXTENSION_REACH_M = 15;

export type SnapSetting = {
  readonly derived: Derived;
  /** Plan metres within which a thing pulls. */
  readonly reach: number;
  /** A pipe is drawn: legs of pipes pull, to be joined there, and of the yard only what belongs to the drain. */
  readonly drawsPipe: boolean;
  /** Places of the draft so far; a press on the first, of three and more, closes the outline. */
  readonly draft: readonly Point[];
  readonly closes: boolean;
  /** Without pull: only known points and pipes. */
  readonly plain: boolean;
};

type Leg = { readonly a: Point; readonly b: Point; readonly from: Ref; readonly to: Ref };

/**
 * What a press at `p` means, the strongest first: a known point, the start of the outline in hand, the middle of a leg, a pipe to
 * join, the foot of a square from the last point, a line, a line's extension, a common angle, bare ground.
 */
export function landingAt(p: Point, setting: SnapSetting): Landing {
  return (
    onPoint(p, setting) ??
    onStart(p, setting) ??
    (setting.drawsPipe ? onPipe(p, setting) : null) ??
    (setting.plain || setting.drawsPipe ? null : onLegs(p, setting)) ??
    (setting.plain ? null : atAngle(p, setting)) ?? { on: 'ground', at: p }
  );
}

/** What a pipe can be tied to: a stray house corner near it is not. */
function isOfDrain(derived: Derived, key: string): boolean {
  const feature = derived.features.get(key.slice(0, key.indexOf('/')));
  return feature === undefined || feature.spec.layer === 'drain' || feature.spec.layer === 'survey';
}

function onPoint(p: Point, { derived, reach, drawsPipe }: SnapSetting): Landing | null {
  let best: { key: string; at: Point; gap: number } | null = null;
  for (const [key, { at }] of derived.points) {
    if (Math.abs(at.x - p.x) > reach || Math.abs(at.y - p.y) > reach) continue;
    const gap = distance(at, p);
    if (gap > reach || (best !== null && gap >= best.gap)) continue;
    if (!drawsPipe || isOfDrain(derived, key)) best = { key, at, gap };
  }
  if (best === null) return null;
  const cut = best.key.indexOf('/');
  return { on: 'point', ref: { of: best.key.slice(0, cut), at: best.key.slice(cut + 1) }, at: best.at };
}

function onStart(p: Point, { draft, closes, reach }: SnapSetting): Landing | null {
  const [first] = draft;
  if (!closes || first === undefined || draft.length < 3 || distance(first, p) > reach) return null;
  return { on: 'start', at: first };
}

function onPipe(p: Point, { derived, reach }: SnapSetting): Landing | null {
  for (const { path, points } of derived.paths.values()) {
    for (const [i, a] of points.entries()) {
      const [b, after] = [points[i + 1], path.vertices[i]];
      if (b === undefined || after === undefined) continue;
      const near = nearestOnSegment(p, a, b);
      if (near.distance <= reach) {
        const junction = { path: path.id, after: after.id, at: near.point };
        return { on: 'pipe', junction, at: near.point };
      }
    }
  }
  return null;
}

/** Everything that a feature's leg pulls to. */
function onLegs(p: Point, { derived, reach, draft }: SnapSetting): Landing | null {
  const last = draft.at(-1);
  let middle: Landing | null = null;
  let square: Landing | null = null;
  let line: Landing | null = null;
  let extension: Landing | null = null;
  for (const leg of legsNear(p, derived, reach)) {
    const { a, b, from, to } = leg;
    const length = distance(a, b);
    const t = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / (length * length);
    const foot = { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
    if (distance(foot, p) > reach) continue;
    const within = t >= 0 && t <= 1;
    const mid = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    if (distance(mid, p) <= reach) middle ??= { on: 'middle', from, to, at: mid };
    if (last !== undefined && within) {
      const s = ((last.x - a.x) * (b.x - a.x) + (last.y - a.y) * (b.y - a.y)) / (length * length);
      const squareFoot = { x: a.x + s * (b.x - a.x), y: a.y + s * (b.y - a.y) };
      if (s >= 0 && s <= 1 && distance(squareFoot, p) <= reach && distance(squareFoot, last) > reach) {
        square ??= { on: 'square', from, to, at: squareFoot };
      }
    }
    if (within) line ??= { on: 'line', from, to, at: foot };
    else extension ??= { on: 'extension', from, to, at: foot };
  }
  return middle ?? square ?? line ?? extension;
}

function* legsNear(p: Point, derived: Derived, reach: number): Generator<Leg> {
  const wide = reach + EXTENSION_REACH_M;
  for (const { feature, spec, points, bounds } of derived.features.values()) {
    if (spec.shape === 'point') continue;
    if (
      p.x < bounds.minX - wide ||
      p.x > bounds.maxX + wide ||
      p.y < bounds.minY - wide ||
      p.y > bounds.maxY + wide
    ) {
      continue;
    }
    for (const [i, a] of points.entries()) {
      const next = spec.shape === 'area' ? (i + 1) % points.length : i + 1;
      const [b, v, w] = [points[next], feature.vertices[i], feature.vertices[next]];
      if (b === undefined || v === undefined || w === undefined || distance(a, b) < reach) continue;
      yield { a, b, from: { of: feature.id, at: v.id }, to: { of: feature.id, at: w.id } };
    }
  }
}

function atAngle(p: Point, { draft, reach, drawsPipe }: SnapSetting): Landing | null {
  const [last, before] = [draft.at(-1), draft.at(-2)];
  if (last === undefined || distance(last, p) < reach) return null;
  const base = before === undefined ? 0 : Math.atan2(last.y - before.y, last.x - before.x);
  const direction = Math.atan2(p.y - last.y, p.x - last.x);
  const off = ((direction - base) * 180) / Math.PI;
  const near =
    drawsPipe && before !== undefined
      ? nearestPipeTurn(off)
      : Math.round(off / ANGLE_STEP_DEG) * ANGLE_STEP_DEG;
  if (Math.abs(off - near) > ANGLE_PULL_DEG) return null;
  const to = base + (near * Math.PI) / 180;
  const along = (p.x - last.x) * Math.cos(to) + (p.y - last.y) * Math.sin(to);
  const at = { x: last.x + along * Math.cos(to), y: last.y + along * Math.sin(to) };
  return { on: 'angle', degrees: before === undefined ? null : rightTurn(near), at };
}

/** The turn of a standard bend that is nearest to one (degrees, to either side). */
function nearestPipeTurn(off: number): number {
  const turn = rightTurn(off);
  const size = Math.abs(turn);
  const [nearest = 0] = PIPE_TURNS_DEG.toSorted((a, b) => Math.abs(a - size) - Math.abs(b - size));
  // to the left is positive here; the same whole circles as before
  return off + turn - Math.sign(turn) * nearest;
}

/** A turn counted to the left in degrees, told as turns are: right positive, in (−180, 180]. */
function rightTurn(left: number): number {
  const right = -left % 360;
  return right > 180 ? right - 360 : right <= -180 ? right + 360 : right;
}

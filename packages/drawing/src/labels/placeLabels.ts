import Flatbush from 'flatbush';
import type { Label, LabelSeat } from '../label';
import { type Box, boxesOverlap, discMeetsBox, segmentMeetsBox } from './box';
import { type Candidate, type Fit, farCandidates, LONGEST_LEADER_MM, nearCandidates } from './candidates';
import { type Hull, hullOfBox, paperGrid } from './paperGrid';
import type { LabelSetting, Obstacle, PlacedLabel } from './placedLabel';

/** Margin (mm) about a text, and what its line takes, with tails, to the height of its capitals. */
const MARGIN_MM = 0.4;
const LINE_HEIGHT = 1.4;

/** What a text costs over each line that it crosses, and the most that lines count. */
const CROSSING_COST = 1;
const MOST_CROSSINGS = 4;
/** A text that may be left out is, rather than stand on more lines than this. The line that it is written on counts too. */
const CROSSINGS_LEFT_OUT: Readonly<Record<LabelSeat, number>> = {
  around: 0,
  centre: 0,
  along: 1,
  'on-line': 2,
};
/** A place beside the anchor that costs this much is bad enough to look at those with a leader too. */
const WORTH_A_LEADER = 1;
/** Costs that differ by less are equal, so that rounding decides nothing. */
const COST_EQUAL = 1e-6;

type Segment = Readonly<{ ax: number; ay: number; bx: number; by: number }>;
type Disc = Readonly<{ x: number; y: number; radius: number }>;
type Settled = Readonly<{ kind: 'box'; box: Box } | { kind: 'leader'; leader: Segment }>;
type Surroundings = Readonly<{
  settled: readonly Settled[];
  discs: readonly Disc[];
  strokes: readonly Segment[];
}>;

/**
 * Gives every label a place where it overlaps no other label, no disc and no leader. Greedy: in order of priority (then of id),
 * each takes the cheapest free place near its anchor: a preferred side, close by, off the lines. A label without one goes
 * further away with a leader of at most `LONGEST_LEADER_MM`, or is left out if it says so, or if it finds nothing there either.
 * The answer depends on the scale and on nothing of the view, so it is steady while panning. Texts along a line read
 * upright.
 */
export function placeLabels(
  labels: readonly Label[],
  obstacles: readonly Obstacle[],
  { mmPerMetre, measureText }: LabelSetting,
): readonly PlacedLabel[] {
  const ordered = [...labels].sort((a, b) => b.priority - a.priority || compareText(a.id, b.id));
  const fixed = fixedObstacles(obstacles, mmPerMetre);
  const settled = paperGrid<Settled>();
  const groups = new Map<string, Fit[]>();
  const placed: PlacedLabel[] = [];
  for (const label of ordered) {
    const fit: Fit = {
      x: label.at.x * mmPerMetre,
      y: label.at.y * mmPerMetre,
      halfW: measureText(label.text, label.height, label.weight) / 2 + MARGIN_MM,
      halfH: (label.height * LINE_HEIGHT) / 2 + MARGIN_MM,
      mmPerMetre,
    };
    if (saidNearby(label, fit, groups)) continue;
    const found = findPlace(label, fit, (hull) => ({ settled: settled.near(hull), ...fixed(hull) }));
    if (found === null) continue;
    const { box, leader } = found;
    settled.add({ kind: 'box', box }, hullOfBox(box));
    if (leader !== undefined) settled.add({ kind: 'leader', leader }, hullOfSegment(leader));
    if (label.repeat !== undefined) pushTo(groups, label.repeat.group, fit);
    placed.push(placedLabel(label, box, leader, mmPerMetre));
  }
  return placed;
}

type Found = Readonly<{ box: Box; leader?: Segment }>;

function findPlace(label: Label, fit: Fit, surroundings: (hull: Hull) => Surroundings): Found | null {
  const near = nearCandidates(label, fit);
  // a line can be long: what lies about each place on it is asked for place by place
  const onLine = label.seat === 'along' || label.seat === 'on-line';
  const about = onLine ? null : surroundings(hullOfAll(near));
  const close = cheapest(near, (box) => about ?? surroundings(hullOfBox(box)), label);
  const beside = close === null ? null : { box: close.candidate.box };
  if (label.whenCrowded === 'leave-out') return beside;
  if (close !== null && close.cost < WORTH_A_LEADER) return beside;
  const far = farCandidates(label, fit);
  const around = surroundings(hullOfAll(far));
  const found = cheapest(
    far,
    () => around,
    label,
    (candidate) => {
      const leader = leaderTo(candidate.box, label, fit);
      return (
        Math.hypot(leader.bx - leader.ax, leader.by - leader.ay) <= LONGEST_LEADER_MM &&
        isClear(leader, around)
      );
    },
  );
  if (found === null || (close !== null && found.cost >= close.cost)) return beside;
  return { box: found.candidate.box, leader: leaderTo(found.candidate.box, label, fit) };
}

/** The free candidate that costs least, the earlier of equals. */
function cheapest(
  candidates: readonly Candidate[],
  surroundings: (box: Box) => Surroundings,
  label: Label,
  accept: (candidate: Candidate) => boolean = () => true,
): Readonly<{ candidate: Candidate; cost: number }> | null {
  let best: Candidate | null = null;
  let least = Infinity;
  for (const candidate of candidates) {
    if (candidate.cost >= least - COST_EQUAL) continue;
    const around = surroundings(candidate.box);
    if (!isFree(candidate.box, around)) continue;
    const crossings = crossingsOf(candidate.box, around.strokes);
    if (label.whenCrowded === 'leave-out' && crossings > CROSSINGS_LEFT_OUT[label.seat]) continue;
    const cost = candidate.cost + CROSSING_COST * crossings;
    if (cost >= least - COST_EQUAL || !accept(candidate)) continue;
    least = cost;
    best = candidate;
  }
  return best === null ? null : { candidate: best, cost: least };
}

function isFree(box: Box, { settled, discs }: Surroundings): boolean {
  return (
    !settled.some((s) =>
      s.kind === 'box'
        ? boxesOverlap(box, s.box)
        : segmentMeetsBox(s.leader.ax, s.leader.ay, s.leader.bx, s.leader.by, box),
    ) && !discs.some((d) => discMeetsBox(d.x, d.y, d.radius, box))
  );
}

/** Whether a leader runs through no text. */
function isClear(leader: Segment, { settled }: Surroundings): boolean {
  return !settled.some(
    (s) => s.kind === 'box' && segmentMeetsBox(leader.ax, leader.ay, leader.bx, leader.by, s.box),
  );
}

function crossingsOf(box: Box, strokes: readonly Segment[]): number {
  let count = 0;
  for (const s of strokes) {
    if (segmentMeetsBox(s.ax, s.ay, s.bx, s.by, box)) count += 1;
    if (count === MOST_CROSSINGS) break;
  }
  return count;
}

/** From the rim of the anchor's symbol to the nearest place of the level box. */
function leaderTo(box: Box, label: Label, fit: Fit): Segment {
  const bx = Math.min(box.x + box.halfW, Math.max(box.x - box.halfW, fit.x));
  const by = Math.min(box.y + box.halfH, Math.max(box.y - box.halfH, fit.y));
  const length = Math.hypot(bx - fit.x, by - fit.y);
  const t = length > 0 ? Math.min(1, label.clear / length) : 0;
  return { ax: fit.x + (bx - fit.x) * t, ay: fit.y + (by - fit.y) * t, bx, by };
}

function placedLabel(label: Label, box: Box, leader: Segment | undefined, mmPerMetre: number): PlacedLabel {
  const metres = (x: number, y: number) => ({ x: x / mmPerMetre, y: y / mmPerMetre });
  return {
    label,
    at: metres(box.x, box.y),
    azimuth: Math.atan2(box.ux, box.uy),
    widthMm: 2 * box.halfW,
    heightMm: 2 * box.halfH,
    ...(leader === undefined
      ? {}
      : { leader: [metres(leader.ax, leader.ay), metres(leader.bx, leader.by)] as const }),
  };
}

/** Discs and strokes in a hull. They do not change, so an index is built once. */
function fixedObstacles(
  obstacles: readonly Obstacle[],
  mmPerMetre: number,
): (hull: Hull) => Omit<Surroundings, 'settled'> {
  if (obstacles.length === 0) return () => ({ discs: [], strokes: [] });
  const index = new Flatbush(obstacles.length);
  const things = obstacles.map((o) => {
    if (o.kind === 'disc') {
      const disc = { x: o.at.x * mmPerMetre, y: o.at.y * mmPerMetre, radius: o.radiusMm };
      index.add(disc.x - disc.radius, disc.y - disc.radius, disc.x + disc.radius, disc.y + disc.radius);
      return { kind: 'disc', disc } as const;
    }
    const stroke = {
      ax: o.from.x * mmPerMetre,
      ay: o.from.y * mmPerMetre,
      bx: o.to.x * mmPerMetre,
      by: o.to.y * mmPerMetre,
    };
    const hull = hullOfSegment(stroke);
    index.add(hull.minX, hull.minY, hull.maxX, hull.maxY);
    return { kind: 'stroke', stroke } as const;
  });
  index.finish();
  return ({ minX, minY, maxX, maxY }) => {
    const discs: Disc[] = [];
    const strokes: Segment[] = [];
    for (const i of index.search(minX, minY, maxX, maxY)) {
      const thing = things[i];
      if (thing?.kind === 'disc') discs.push(thing.disc);
      else if (thing !== undefined) strokes.push(thing.stroke);
    }
    return { discs, strokes };
  };
}

function saidNearby({ repeat }: Label, fit: Fit, groups: ReadonlyMap<string, readonly Fit[]>): boolean {
  if (repeat === undefined) return false;
  return (groups.get(repeat.group) ?? []).some(
    (other) => Math.hypot(other.x - fit.x, other.y - fit.y) < repeat.apartMm,
  );
}

function pushTo<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}

function hullOfSegment({ ax, ay, bx, by }: Segment): Hull {
  return { minX: Math.min(ax, bx), minY: Math.min(ay, by), maxX: Math.max(ax, bx), maxY: Math.max(ay, by) };
}

function hullOfAll(candidates: readonly Candidate[]): Hull {
  let hull: Hull = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const { box } of candidates) {
    const own = hullOfBox(box);
    hull = {
      minX: Math.min(hull.minX, own.minX),
      minY: Math.min(hull.minY, own.minY),
      maxX: Math.max(hull.maxX, own.maxX),
      maxY: Math.max(hull.maxY, own.maxY),
    };
  }
  return hull;
}

/** By code units, the same in every language. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

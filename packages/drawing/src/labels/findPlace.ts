import type { Label, LabelSeat } from '../label';
import {
  type Box,
  boxesOverlap,
  discMeetsBox,
  type Segment,
  segmentMeetsBox,
  segmentMeetsDisc,
  segmentsCross,
} from './box';
import {
  type Candidate,
  type Fit,
  farCandidates,
  farHull,
  LONGEST_LEADER_MM,
  nearCandidates,
} from './candidates';
import type { Clutter, Surroundings } from './clutter';
import { type Hull, hullOfBox } from './paperGrid';

/** What a text costs over each plain line that it crosses, and the most that plain lines count. */
const CROSSING_COST = 1;
const MOST_CROSSINGS = 4;
/** What a leader costs over a symbol, over another leader, and over a line for each plain line that it counts more than. */
const OVER_SYMBOL_COST = 2;
const OVER_LEADER_COST = 1.5;
const OVER_HEAVY_COST = 0.7;
/** The short text instead of the full one. */
const BRIEF_COST = 0.6;
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

/** A text that the label may have, with its size. */
export type Wording = Readonly<{ text: string; fit: Fit }>;
export type Found = Readonly<{ wording: Wording; box: Box; leader?: Segment }>;
type Priced = Found & Readonly<{ cost: number }>;

/**
 * The place of one label, null for none. `wordings`: the text, then a shorter one. Beside the anchor first, with the text and
 * then with the shorter one; then, where the label may and `mayLead`, further off with the shorter one on a leader.
 */
export function findPlace(
  label: Label,
  wordings: readonly Wording[],
  mayLead: boolean,
  clutter: Clutter,
): Found | null {
  let close: Priced | null = null;
  for (const [i, wording] of wordings.entries()) {
    const found = besides(label, wording, clutter, BRIEF_COST * i, true);
    if (found !== null && (close === null || found.cost < close.cost - COST_EQUAL)) close = found;
    if (close !== null && close.cost < WORTH_A_LEADER) return close;
  }
  const inLine = label.seat === 'along' || label.seat === 'on-line';
  if (label.whenCrowded === 'leave-out' || (close !== null && inLine)) return close;
  const always = label.whenCrowded === 'always';
  if (!mayLead && !always) return close;
  const [first] = wordings;
  const brief = wordings.at(-1) ?? first;
  if (first === undefined || brief === undefined) return close;
  const led = further(label, brief, clutter, close?.cost ?? Infinity, true);
  if (led !== null || close !== null || !always) return led ?? close;
  return besides(label, first, clutter, 0, false) ?? further(label, brief, clutter, Infinity, false);
}

/** The cheapest place that needs no leader; the earlier of equals. */
function besides(
  label: Label,
  wording: Wording,
  clutter: Clutter,
  extra: number,
  offDiscs: boolean,
): Priced | null {
  const candidates = nearCandidates(label, wording.fit);
  // a line can be long, and other places far: what lies about each is asked for place by place
  const about = label.seat === 'around' ? clutter.about(hullOfAll(candidates)) : null;
  let best: Candidate | null = null;
  let least = Infinity;
  for (const candidate of candidates) {
    if (candidate.cost >= least - COST_EQUAL) continue;
    const around = about ?? clutter.about(hullOfBox(candidate.box));
    if (!isFree(candidate.box, around, offDiscs)) continue;
    const crossings = crossingsOf(candidate.box, around);
    if (label.whenCrowded === 'leave-out' && crossings > CROSSINGS_LEFT_OUT[label.seat]) continue;
    const cost = candidate.cost + CROSSING_COST * crossings;
    if (cost >= least - COST_EQUAL) continue;
    least = cost;
    best = candidate;
  }
  return best === null ? null : { wording, box: best.box, cost: least + extra };
}

/** The cheapest place on a leader that costs less than `limit`. */
function further(
  label: Label,
  wording: Wording,
  clutter: Clutter,
  limit: number,
  offDiscs: boolean,
): Priced | null {
  const around = clutter.about(farHull(label, wording.fit));
  let best: Priced | null = null;
  let least = limit;
  for (const { box, cost: own } of farCandidates(label, wording.fit)) {
    if (own >= least - COST_EQUAL) break;
    if (!isFree(box, around, offDiscs)) continue;
    let cost = own + CROSSING_COST * crossingsOf(box, around);
    if (cost >= least - COST_EQUAL) continue;
    const leader = leaderTo(box, label, wording.fit);
    cost += leaderCost(leader, wording.fit, around);
    if (cost >= least - COST_EQUAL) continue;
    least = cost;
    best = { wording, box, leader, cost };
  }
  return best;
}

function isFree(box: Box, { boxes, leaders, discs }: Surroundings, offDiscs: boolean): boolean {
  for (const other of boxes) if (boxesOverlap(box, other)) return false;
  for (const l of leaders) if (segmentMeetsBox(l.ax, l.ay, l.bx, l.by, box)) return false;
  if (offDiscs) for (const d of discs) if (discMeetsBox(d.x, d.y, d.radius, box)) return false;
  return true;
}

/** Lines that a box stands on, each as often as it counts; plain ones up to a number. */
function crossingsOf(box: Box, { lines }: Surroundings): number {
  let plain = 0;
  let heavy = 0;
  for (const s of lines) {
    if (s.weight <= 1 && plain >= MOST_CROSSINGS) continue;
    if (!segmentMeetsBox(s.ax, s.ay, s.bx, s.by, box)) continue;
    if (s.weight > 1) heavy += s.weight;
    else plain += s.weight;
  }
  return Math.min(MOST_CROSSINGS, plain) + heavy;
}

/** What a leader runs over. Infinite when it is too long or runs through a text. Symbols that hide the anchor do not count. */
function leaderCost(leader: Segment, fit: Fit, { boxes, leaders, discs, lines }: Surroundings): number {
  if (Math.hypot(leader.bx - leader.ax, leader.by - leader.ay) > LONGEST_LEADER_MM) return Infinity;
  for (const box of boxes) {
    if (segmentMeetsBox(leader.ax, leader.ay, leader.bx, leader.by, box)) return Infinity;
  }
  let cost = 0;
  for (const other of leaders) if (segmentsCross(leader, other)) cost += OVER_LEADER_COST;
  for (const d of discs) {
    if (Math.hypot(d.x - fit.x, d.y - fit.y) < d.radius) continue;
    if (segmentMeetsDisc(leader, d.x, d.y, d.radius)) cost += OVER_SYMBOL_COST;
  }
  for (const s of lines) {
    if (s.weight > 1 && segmentsCross(leader, s)) cost += OVER_HEAVY_COST * (s.weight - 1);
  }
  return cost;
}

/** From the rim of the anchor's symbol to the nearest place of the level box. */
function leaderTo(box: Box, label: Label, fit: Fit): Segment {
  const bx = Math.min(box.x + box.halfW, Math.max(box.x - box.halfW, fit.x));
  const by = Math.min(box.y + box.halfH, Math.max(box.y - box.halfH, fit.y));
  const length = Math.hypot(bx - fit.x, by - fit.y);
  const t = length > 0 ? Math.min(1, label.clear / length) : 0;
  return { ax: fit.x + (bx - fit.x) * t, ay: fit.y + (by - fit.y) * t, bx, by };
}

function hullOfAll(candidates: readonly Candidate[]): Hull {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { box } of candidates) {
    const own = hullOfBox(box);
    minX = Math.min(minX, own.minX);
    minY = Math.min(minY, own.minY);
    maxX = Math.max(maxX, own.maxX);
    maxY = Math.max(maxY, own.maxY);
  }
  return { minX, minY, maxX, maxY };
}

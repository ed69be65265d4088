import type { Label } from '../label';
import type { Segment } from './box';
import type { Fit } from './candidates';
import { clutterOf } from './clutter';
import { type Found, findPlace, type Wording } from './findPlace';
import { hullAbout, paperGrid } from './paperGrid';
import type { LabelSetting, Obstacle, PlacedLabel } from './placedLabel';

/** Margin (mm) about a text, and what its line takes, with tails, to the height of its capitals. */
const MARGIN_MM = 0.4;
const LINE_HEIGHT = 1.4;
/** A symbol nearer than this (mm) to one that is named before it is taken to lie under it: no leader goes to it. */
export const HIDDEN_MM = 3;

type Spot = Readonly<{ x: number; y: number }>;

/**
 * Gives every label a place where it overlaps no other label, no disc and no leader. Greedy: in order of priority (then of id),
 * each takes the cheapest free place near its anchor: a preferred side, close by, off the lines; with its brief text where the
 * full one finds none. A label without one goes further away with a leader of at most `LONGEST_LEADER_MM`, or is left out:
 * when it says so, when its symbol lies under another at this scale, or when it finds nothing there either. Only a label
 * that is `always` written may, at the last, stand on a disc. The answer depends on the scale and on nothing of the view, so it
 * is steady while panning. Texts along a line read upright.
 */
export function placeLabels(
  labels: readonly Label[],
  obstacles: readonly Obstacle[],
  setting: LabelSetting,
): readonly PlacedLabel[] {
  const { mmPerMetre } = setting;
  const ordered = [...labels].sort((a, b) => b.priority - a.priority || compareText(a.id, b.id));
  const clutter = clutterOf(obstacles, mmPerMetre);
  const crowded = crowdedLabels(ordered, mmPerMetre);
  const symbols = paperGrid<Spot>();
  const groups = new Map<string, Spot[]>();
  const placed: PlacedLabel[] = [];
  for (const label of ordered) {
    const spot: Spot = { x: label.at.x * mmPerMetre, y: label.at.y * mmPerMetre };
    if (saidNearby(label, spot, groups)) continue;
    const hidden =
      label.seat === 'around' && nearAny(symbols.near(hullAbout(spot.x, spot.y, HIDDEN_MM)), spot);
    if (label.seat === 'around') symbols.add(spot, hullAbout(spot.x, spot.y, 0));
    const found = findPlace(label, wordingsOf(label, spot, crowded.has(label), setting), !hidden, clutter);
    if (found === null) continue;
    clutter.settle(found.box, found.leader);
    if (label.repeat !== undefined) pushTo(groups, label.repeat.group, spot);
    placed.push(placedLabel(label, found, mmPerMetre));
  }
  return placed;
}

/** The text and, where the label has one, its brief text: that alone where things of its group crowd. */
function wordingsOf(
  label: Label,
  { x, y }: Spot,
  crowded: boolean,
  { mmPerMetre, measureText }: LabelSetting,
): readonly Wording[] {
  const texts =
    label.brief === undefined ? [label.text] : crowded ? [label.brief] : [label.text, label.brief];
  return texts.map((text) => ({
    text,
    fit: {
      x,
      y,
      halfW: measureText(text, label.height, label.weight) / 2 + MARGIN_MM,
      halfH: (label.height * LINE_HEIGHT) / 2 + MARGIN_MM,
      mmPerMetre,
    } satisfies Fit,
  }));
}

/** Labels whose anchors lie nearer to another of their group than they say. */
function crowdedLabels(labels: readonly Label[], mmPerMetre: number): ReadonlySet<Label> {
  const groups = new Map<string, Label[]>();
  for (const label of labels) if (label.crowd !== undefined) pushTo(groups, label.crowd.group, label);
  const crowded = new Set<Label>();
  for (const members of groups.values()) {
    const byX = members.sort((a, b) => a.at.x - b.at.x);
    for (const [i, a] of byX.entries()) {
      for (let k = i + 1; k < byX.length; k += 1) {
        const b = byX[k];
        const apart = Math.max(a.crowd?.apartMm ?? 0, b?.crowd?.apartMm ?? 0) / mmPerMetre;
        if (b === undefined || b.at.x - a.at.x >= apart) break;
        if (Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y) < apart) crowded.add(a).add(b);
      }
    }
  }
  return crowded;
}

function nearAny(others: readonly Spot[], { x, y }: Spot): boolean {
  return others.some((o) => Math.hypot(o.x - x, o.y - y) < HIDDEN_MM);
}

function placedLabel(label: Label, { wording, box, leader }: Found, mmPerMetre: number): PlacedLabel {
  const metres = (x: number, y: number) => ({ x: x / mmPerMetre, y: y / mmPerMetre });
  const line = (l: Segment) => [metres(l.ax, l.ay), metres(l.bx, l.by)] as const;
  return {
    label,
    text: wording.text,
    at: metres(box.x, box.y),
    azimuth: Math.atan2(box.ux, box.uy),
    widthMm: 2 * box.halfW,
    heightMm: 2 * box.halfH,
    ...(leader === undefined ? {} : { leader: line(leader) }),
  };
}

function saidNearby({ repeat }: Label, spot: Spot, groups: ReadonlyMap<string, readonly Spot[]>): boolean {
  if (repeat === undefined) return false;
  return (groups.get(repeat.group) ?? []).some(
    (other) => Math.hypot(other.x - spot.x, other.y - spot.y) < repeat.apartMm,
  );
}

function pushTo<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}

/** By code units, the same in every language. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

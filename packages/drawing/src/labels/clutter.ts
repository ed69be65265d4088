import Flatbush from 'flatbush';
import type { Box, Segment } from './box';
import { type Hull, hullAbout, hullOfBox, hullOfSegment, paperGrid } from './paperGrid';
import type { Obstacle } from './placedLabel';

export type Disc = Readonly<{ x: number; y: number; radius: number }>;
/** A drawn line and how many plain lines it counts for. */
export type Line = Segment & Readonly<{ weight: number }>;

/** What lies about a place, paper mm. */
export type Surroundings = Readonly<{
  boxes: readonly Box[];
  leaders: readonly Segment[];
  discs: readonly Disc[];
  lines: readonly Line[];
}>;

/** All that labels keep off: the drawing, which is fixed, and the labels that have found their place. */
export type Clutter = Readonly<{
  about: (hull: Hull) => Surroundings;
  settle: (box: Box, leader: Segment | undefined) => void;
}>;

export function clutterOf(obstacles: readonly Obstacle[], mmPerMetre: number): Clutter {
  const boxes = paperGrid<Box>();
  const leaders = paperGrid<Segment>();
  const drawn = drawnThings(obstacles, mmPerMetre);
  return {
    about: (hull) => ({ boxes: boxes.near(hull), leaders: leaders.near(hull), ...drawn(hull) }),
    settle: (box, leader) => {
      boxes.add(box, hullOfBox(box));
      if (leader !== undefined) leaders.add(leader, hullOfSegment(leader));
    },
  };
}

type Drawn = Pick<Surroundings, 'discs' | 'lines'>;

/** Discs and lines in a hull. They do not change, so an index is built once. */
function drawnThings(obstacles: readonly Obstacle[], mmPerMetre: number): (hull: Hull) => Drawn {
  if (obstacles.length === 0) return () => ({ discs: [], lines: [] });
  const index = new Flatbush(obstacles.length);
  const things = obstacles.map((o): Disc | Line => {
    const thing: Disc | Line =
      o.kind === 'disc'
        ? { x: o.at.x * mmPerMetre, y: o.at.y * mmPerMetre, radius: o.radiusMm }
        : {
            ax: o.from.x * mmPerMetre,
            ay: o.from.y * mmPerMetre,
            bx: o.to.x * mmPerMetre,
            by: o.to.y * mmPerMetre,
            weight: o.weight ?? 1,
          };
    const hull = 'radius' in thing ? hullAbout(thing.x, thing.y, thing.radius) : hullOfSegment(thing);
    index.add(hull.minX, hull.minY, hull.maxX, hull.maxY);
    return thing;
  });
  index.finish();
  return ({ minX, minY, maxX, maxY }) => {
    const discs: Disc[] = [];
    const lines: Line[] = [];
    for (const i of index.search(minX, minY, maxX, maxY)) {
      const thing = things[i];
      if (thing === undefined) continue;
      if ('radius' in thing) discs.push(thing);
      else lines.push(thing);
    }
    return { discs, lines };
  };
}

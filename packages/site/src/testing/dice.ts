import type { Point } from '@footmark/geometry';
import { isPath, type PointOwner, pointOwners } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { LegSpot, Ref, Spot, Vertex } from '../document/spot';
import type { Places } from '../edits/holdPlaces';
import { kindSpec } from '../kinds/featureKinds';

/** One in this many numbers is at a limit of the file's, past it or none at all. */
const EXTREME_ONE_IN = 12;

/** Uniform in [0, 1), the same for a seed everywhere (Park and Miller's generator). */
export function seeded(seed: number): () => number {
  let state = seed * 7919 + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** What a random edit draws from: one point of the site in hand, others to measure from, and numbers. */
export class Dice {
  readonly owner: PointOwner;
  readonly vertex: Vertex;
  readonly ref: Ref;

  constructor(
    readonly site: Site,
    readonly places: Places,
    readonly random: () => number,
    readonly newId: () => string,
  ) {
    this.owner = this.pick(pointOwners(site));
    this.vertex = this.pick<Vertex>(this.owner.vertices);
    this.ref = { of: this.owner.id, at: this.vertex.id };
  }

  pick<Item>(from: readonly Item[]): Item {
    const item = from[Math.floor(this.random() * from.length)];
    if (item === undefined) throw new RangeError('nothing to pick from');
    return item;
  }

  chance(share: number): boolean {
    return this.random() < share;
  }

  /** A number up to `usual`; now and then one at or past what the file takes, which is `most`. */
  upTo(usual: number, most: number): number {
    return this.chance(1 / EXTREME_ONE_IN)
      ? this.pick([0, -1, most, most * 1.0001, 1e8, Number.NaN, Number.POSITIVE_INFINITY])
      : this.random() * usual;
  }

  azimuth(): number {
    return this.random() * 2 * Math.PI * 0.9999;
  }

  place(): Point {
    return { x: this.upTo(30, 1e6), y: this.upTo(30, 1e6) };
  }

  point(): Ref {
    const owner = this.pick(pointOwners(this.site));
    return { of: owner.id, at: this.pick<{ id: string }>(owner.vertices).id };
  }

  leg(): LegSpot {
    const kind = this.random();
    const length = 0.1 + this.upTo(20, 1e6);
    if (kind < 0.3) return { by: 'course', azimuth: this.azimuth(), distance: length };
    if (kind < 0.5) return { by: 'turn', turn: (this.random() - 0.5) * 2 * Math.PI, distance: length };
    return {
      by: 'arc',
      radius: 1 + this.random() * 10,
      sweep: (this.random() - 0.5) * 12,
      chord: this.chance(0.7) ? null : this.azimuth(),
    };
  }

  spot(): Spot {
    const [from, to] = [this.point(), this.point()];
    const distance = 0.1 + this.upTo(20, 1e6);
    return this.pick<Spot>([
      { by: 'finger', ...this.place() },
      { by: 'coordinates', ...this.place() },
      { by: 'bearing', from, azimuth: this.azimuth(), distance },
      { by: 'offset', from, to, along: this.upTo(10, 1e6), out: -this.upTo(5, 1e6) },
      { by: 'between', from, to, fraction: this.upTo(1, 10) },
      { by: 'at', point: from },
      {
        by: 'tapes',
        tapes: [
          { from, distance },
          { from: to, distance: 0.1 + this.random() * 20 },
        ],
        side: this.pick(['left', 'right']),
      },
    ]);
  }

  isArea(): boolean {
    return !isPath(this.owner) && kindSpec(this.owner.kind).shape === 'area';
  }

  isPoint(): boolean {
    return !isPath(this.owner) && kindSpec(this.owner.kind).shape === 'point';
  }
}

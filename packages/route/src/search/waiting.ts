import FlatQueue from 'flatqueue';
import type { RouteEnd } from '../request';
import { type Place, placeAfter, placeAtEnd } from './place';
import type { Tables } from './tables';
import type { TurnStep } from './turns';

/** Legs that wait to be looked at. There are many times more than are ever looked at, and only for those a place is made. */
export class Waiting {
  private readonly queue = new FlatQueue<number>();
  private readonly from: Place[] = [];
  private readonly into: (TurnStep | RouteEnd)[] = [];
  private readonly along: number[] = [];
  private readonly cost: number[] = [];

  constructor(private readonly tables: Pick<Tables, 'turned'>) {}

  /** A leg of a place, so far along (m) to a turn or an end, and its cost in all. The least `priority` comes first. */
  push(from: Place, into: TurnStep | RouteEnd, along: number, cost: number, priority: number): void {
    this.queue.push(this.from.length, priority);
    this.from.push(from);
    this.into.push(into);
    this.along.push(along);
    this.cost.push(cost);
  }

  /** Where the next leg leads; null when none waits. */
  pop(): Place | null {
    const next = this.queue.pop() ?? -1;
    const [from, into, along, cost] = [this.from[next], this.into[next], this.along[next], this.cost[next]];
    if (from === undefined || into === undefined || along === undefined || cost === undefined) return null;
    const reached = { from, along, cost };
    return 'turn' in into
      ? placeAfter(reached, into, this.tables.turned(from.direction, into.turn))
      : placeAtEnd(reached, into);
  }
}

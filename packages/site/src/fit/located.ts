import type { Derived } from '../derive/derive';
import { sondePlace } from '../derive/sondePlace';
import type { Site } from '../document/site';
import type { Net } from './net';
import { observationName } from './observationTag';
import type { LegPlace, Located, Looked } from './placed';
import { netReading, placeOfReading } from './readingPlace';
import { placeOf } from './way';

/** Locates that count, with their places as drawn. */
export function locatedAsDrawn(site: Site, drawn: Derived, aside: ReadonlySet<string>): Located {
  const locates = new Map<string, string[]>();
  for (const f of site.features) {
    if (f.kind !== 'locate' || f.fields.reading === undefined) continue;
    if (aside.has(observationName({ is: 'locate', feature: f.id, part: 'along' }))) continue;
    const { reading } = f.fields.reading;
    locates.set(reading, [...(locates.get(reading) ?? []), f.id]);
  }
  return new Map(
    drawn.marks.flatMap((mark) => {
      const own = locates.get(mark.reading.id);
      const place = own === undefined ? null : sondePlace(drawn, mark);
      const on = place === null ? undefined : drawn.paths.get(place.path);
      if (own === undefined || place === null || on === undefined) return [];
      const at = legPlace(place.path, placeOf(on, place.station), on.points.length - 2);
      return [[mark.reading.id, { locates: own, at }] as const];
    }),
  );
}

/** Where the lens was at readings, as drawn. */
export function lookedAsDrawn(drawn: Derived, readings: ReadonlySet<string>): Looked {
  return new Map(
    drawn.marks.flatMap(({ reading, place }) => {
      const on = place === null ? undefined : drawn.paths.get(place.path);
      if (!readings.has(reading.id) || place === null || on === undefined) return [];
      return [[reading.id, legPlace(place.path, placeOf(on, place.station), on.points.length - 2)] as const];
    }),
  );
}

/** Where a solution has located and looked at readings; null when none is on another leg than before. */
export function placedAgain(
  net: Net,
  { located, looked }: { readonly located: Located; readonly looked: Looked },
  x: Float64Array,
): { readonly located: Located; readonly looked: Looked } | null {
  let moved = false;
  const again = (id: string, before: LegPlace, behindLens: boolean): LegPlace => {
    const reading = netReading(net, id);
    const behind = behindLens ? (reading?.mark.trace.tail ?? 0) : 0;
    const place = reading === null ? null : placeOfReading(reading, x, behind);
    const piece = place === null ? undefined : reading?.on.way[place.piece];
    if (place === null || piece === undefined || place.length === 0) return before;
    const into = Math.min(1, Math.max(0, place.into / place.length));
    const legs = (net.derived.paths.get(piece.path)?.points.length ?? 2) - 1;
    const middle = Math.floor((piece.start + piece.end) / 2);
    const at = legPlace(piece.path, piece.start + into * (piece.end - piece.start), legs - 1, middle);
    if (at.path !== before.path || at.leg !== before.leg) moved = true;
    return at;
  };
  const both = {
    located: new Map([...located].map(([id, was]) => [id, { ...was, at: again(id, was.at, true) }])),
    looked: new Map([...looked].map(([id, was]) => [id, again(id, was, false)])),
  };
  return moved ? both : null;
}

/** `leg` when it is known: the end of one leg is the start of the next. */
function legPlace(path: string, place: number, lastLeg: number, leg = Math.floor(place)): LegPlace {
  const on = Math.min(lastLeg, Math.max(0, leg));
  return { path, leg: on, share: Math.min(1, Math.max(0, place - on)) };
}

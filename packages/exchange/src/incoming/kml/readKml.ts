import { fail, ok } from '@footmark/geometry';
import type { IncomingNote } from '@footmark/words';
import { SaxesParser } from 'saxes';
import { collector } from '../collector';
import { decimalNumber } from '../decimalNumber';
import type { IncomingFailure, IncomingPoint, IncomingSteps, IncomingThing } from '../incoming';
import { MOST_CHARACTERS, MOST_DEPTH, MOST_POINTS } from '../incomingLimits';

/** Characters that are read between two reports. */
const CHUNK = 250_000;

/** Elements whose text is kept, by the element around them. */
const NAMED = new Set(['Placemark', 'Folder', 'Document']);

const SHAPES: Readonly<Record<string, IncomingThing['shape']>> = {
  Point: 'point',
  LineString: 'line',
  LinearRing: 'area',
};

/** KML that links to other files, or is a picture or a model: nothing to draw here. */
const LEFT_OUT = new Set(['NetworkLink', 'GroundOverlay', 'PhotoOverlay', 'ScreenOverlay']);
const KINDS_LEFT_OUT = new Set(['Model', 'Track', 'MultiTrack']);

/**
 * Reads KML (OGC 12-007): the points, lines and outlines of its placemarks, the folder as their layer. What else has coordinates, and a placemark
 * with nothing in it, is counted as left out. A document type or an entity of its own is
 * refused before anything else is read; nothing is ever fetched. Streamed, so that a large file is read in steps.
 */
export function* readKml(text: string): IncomingSteps {
  if (text.length > MOST_CHARACTERS)
    return fail('too-large', { characters: text.length, most: MOST_CHARACTERS });
  const reader = kmlReader();
  for (let at = 0; at < text.length; at += CHUNK) {
    yield at / text.length;
    const failure = reader.write(text.slice(at, at + CHUNK));
    if (failure !== null) return failure;
  }
  return reader.close();
}

/** Thrown through the parser to stop it, and caught where it was started. */
class Stop extends Error {
  constructor(readonly failure: IncomingFailure) {
    super(failure.code);
  }
}

/** An element that is open: its own text where that is wanted, whether no element is in it, and whether coordinates stand directly in it. */
type Element = { readonly name: string; text: string | null; isPlain: boolean; hasPlaces: boolean };

function kmlReader() {
  const found = collector();
  const open: Element[] = [];
  const folders: string[] = [];
  const placemarks: { name: string; isEmpty: boolean }[] = [];
  let holes = 0;

  const parser = new SaxesParser({ xmlns: false });
  const stop = (failure: IncomingFailure): never => {
    throw new Stop(failure);
  };
  /** What is found in a placemark fills all that it lies in. */
  const fill = () => {
    for (const placemark of placemarks) placemark.isEmpty = false;
  };
  const leaveOut = (code: IncomingNote['code']) => {
    found.leaveOut(code);
    fill();
  };
  parser.on('doctype', () => stop(fail('has-doctype')));
  parser.on('error', () => stop(fail('not-xml', { line: parser.line })));
  parser.on('opentag', ({ name: tag }) => {
    const name = local(tag);
    if (open.length === 0 && name !== 'kml') stop(fail('not-kml'));
    if (open.length >= 4 * MOST_DEPTH || folders.length > MOST_DEPTH)
      stop(fail('too-deep', { most: MOST_DEPTH }));
    if (name === 'Folder' || name === 'Document') folders.push('');
    if (name === 'Placemark') placemarks.push({ name: '', isEmpty: true });
    if (name === 'innerBoundaryIs') {
      holes += 1;
      leaveOut('holes-left-out');
    }
    if (LEFT_OUT.has(name)) leaveOut('links-left-out');
    if (KINDS_LEFT_OUT.has(name)) leaveOut('kinds-left-out');
    const parent = open.at(-1);
    if (parent !== undefined) {
      parent.isPlain = false;
      parent.hasPlaces ||= name === 'coordinates';
    }
    const keeps = name === 'coordinates' || (name === 'name' && NAMED.has(parent?.name ?? ''));
    open.push({ name, text: keeps ? '' : null, isPlain: true, hasPlaces: false });
  });
  const onText = (more: string) => {
    const last = open.at(-1);
    if (last !== undefined && last.text !== null) last.text += more;
  };
  parser.on('text', onText);
  parser.on('cdata', onText);
  parser.on('closetag', () => {
    const closed = open.pop();
    if (closed === undefined) return; // the parser refuses an end without a beginning
    const { name, text, isPlain, hasPlaces } = closed;
    const parent = open.at(-1)?.name ?? '';
    const placemark = placemarks.at(-1);
    if (name === 'name' && text !== null) {
      if (parent === 'Placemark' && placemark !== undefined) placemark.name = text;
      else if (folders.length > 0) folders[folders.length - 1] = text;
    }
    if (name === 'coordinates' && text !== null && holes === 0) {
      const shape = Object.hasOwn(SHAPES, parent) ? SHAPES[parent] : undefined;
      if (shape === undefined || placemark === undefined) leaveOut('kinds-left-out');
      else if (!isPlain) leaveOut('no-number');
      else {
        const layer = folders.findLast((f) => f !== '') ?? '';
        found.add({ name: placemark.name, layer, shape, points: tuplesOf(text) });
        fill();
        if (found.failure !== null) stop(found.failure);
      }
    }
    if (Object.hasOwn(SHAPES, name) && !hasPlaces && holes === 0) leaveOut('too-few-points');
    if (name === 'innerBoundaryIs') holes -= 1;
    if (name === 'Folder' || name === 'Document') folders.pop();
    if (name === 'Placemark' && placemarks.pop()?.isEmpty === true) leaveOut('kinds-left-out');
  });

  const guarded = (run: () => void): IncomingFailure | null => {
    try {
      run();
      return null;
    } catch (error) {
      if (error instanceof Stop) return error.failure;
      throw error;
    }
  };
  return {
    write: (chunk: string) => guarded(() => parser.write(chunk)),
    close() {
      const failure = guarded(() => parser.close());
      if (failure !== null) return failure;
      if (found.things.length === 0) return fail('nothing-in-it');
      const { things, notes } = found;
      const says = { coordinates: { is: 'earth' }, unit: null, order: 'EN' } as const;
      return ok({ format: 'kml', says, things, rows: [], notes } as const);
    },
  };
}

/** `longitude,latitude[,height]`, parted by blanks. What is no number becomes NaN, which the collector counts. */
function tuplesOf(text: string): readonly IncomingPoint[] {
  const tuples = text.trim().split(/\s+/, MOST_POINTS + 1);
  return tuples.map((tuple) => {
    const [first = '', second = '', height = ''] = tuple.split(',');
    const z = decimalNumber(height);
    return {
      first: decimalNumber(first),
      second: decimalNumber(second),
      height: Number.isFinite(z) ? z : null,
    };
  });
}

/** The name of an element without its prefix. */
function local(tag: string): string {
  return tag.slice(tag.indexOf(':') + 1);
}

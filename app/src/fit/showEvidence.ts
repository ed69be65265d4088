import { boundsOf } from '@footmark/drawing';
import { distance, type Point } from '@footmark/geometry';
import { type ObservationTag, refKey, type Target } from '@footmark/site';
import { bringIntoView, keepInView } from '../canvas/planView';
import { showPlace } from '../cards/showPlace';
import { currentSite, derivedFrom } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';

/** A box smaller than this (m) is a place. */
const PLACE_M = 1;

/** What an observation is about, and where that is. */
type Evidenced = {
  readonly target: Target;
  readonly vertex: string | null;
  readonly places: readonly (Point | undefined)[];
};

/** Brings out on the plan what an observation is about; the card that tells of it stays. */
export function showEvidence(tag: ObservationTag): void {
  showBeside(evidenced(tag));
}

/** Opens the card on which what was observed can be looked at and put right. */
export function openEvidence(tag: ObservationTag): void {
  showPlace(evidenced(tag).target);
}

/** Brings out on the plan two readings that may be one thing. */
export function showReadings(run: string, ids: readonly string[]): void {
  const [id = ''] = ids;
  showBeside({ target: { kind: 'reading', run, id }, vertex: null, places: ids.map(markPlace) });
}

function showBeside({ target, vertex, places }: Evidenced): void {
  useWorkbench.setState({ selected: target, group: [], vertex, leg: null });
  const known = places.filter((p) => p !== undefined);
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined) return;
  const box = boundsOf(known);
  if (box === null || distance(first, last) < PLACE_M) bringIntoView(first);
  else keepInView(box);
}

function evidenced(tag: ObservationTag): Evidenced {
  const site = currentSite();
  const derived = derivedFrom(site);
  const point = (of: string, at: string) => derived.points.get(refKey({ of, at }))?.at;
  switch (tag.is) {
    case 'locate':
      return {
        target: { kind: 'feature', id: tag.feature },
        vertex: null,
        places: [derived.features.get(tag.feature)?.points[0]],
      };
    case 'pair': {
      const pair = site.pairs.find((p) => p.id === tag.pair);
      return {
        target: { kind: 'reading', run: pair?.a.run ?? '', id: pair?.a.reading ?? '' },
        vertex: null,
        places: [pair?.a.reading, pair?.b.reading].map((id) => markPlace(id ?? '')),
      };
    }
    case 'seen':
    case 'counter':
      return {
        target: { kind: 'reading', run: tag.run, id: tag.reading },
        vertex: null,
        places: [markPlace(tag.reading)],
      };
    case 'scale':
    case 'zero':
    case 'riser': {
      const entry = site.runs.find((r) => r.id === tag.run)?.entry ?? '';
      return {
        target: { kind: 'run', id: tag.run },
        vertex: null,
        places: [derived.features.get(entry)?.points[0]],
      };
    }
    case 'length': {
      const path = site.paths.find((p) => p.id === tag.path);
      const known = path?.knownLengths?.find((k) => k.id === tag.length);
      return {
        target: { kind: 'path', id: tag.path },
        vertex: known?.from ?? null,
        places: [point(tag.path, known?.from ?? ''), point(tag.path, known?.to ?? '')],
      };
    }
    case 'point':
    case 'leg':
    case 'stray':
    case 'bend': {
      const kind = site.paths.some((p) => p.id === tag.path) ? 'path' : 'feature';
      return {
        target: { kind, id: tag.path },
        vertex: tag.vertex,
        places: [point(tag.path, tag.vertex)],
      };
    }
  }
}

function markPlace(reading: string): Point | undefined {
  return derivedFrom(currentSite()).marks.find((m) => m.reading.id === reading)?.place?.at;
}

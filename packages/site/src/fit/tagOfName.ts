import type { Site } from '../document/site';
import type { ObservationTag } from './observationTag';

/** The observation (its first part) that a name stands for, see `observationName`; null when the site has no such thing any more. */
export function tagOfName(site: Site, name: string): ObservationTag | null {
  const [is, a = '', b = ''] = name.split('/');
  const run = () => site.runs.find((r) => r.id === a);
  const path = () => site.paths.find((p) => p.id === a);
  switch (is) {
    case 'point':
    case 'leg':
    case 'stray':
    case 'bend': {
      if (path()?.vertices.some((v) => v.id === b) !== true) return null;
      const about = { path: a, vertex: b };
      if (is === 'point') return { is, ...about, axis: 'x' };
      if (is === 'leg') return { is, ...about, part: 'length' };
      return is === 'bend' ? { is, ...about } : { is, ...about, piece: 0 };
    }
    case 'scale':
    case 'zero':
    case 'riser':
      return run() === undefined ? null : { is, run: a };
    case 'counter':
    case 'seen':
      return run()?.readings.some((r) => r.id === b) === true ? { is, run: a, reading: b } : null;
    case 'locate':
      return site.features.some((f) => f.id === a) ? { is, feature: a, part: 'along' } : null;
    case 'pair':
      return site.pairs.some((p) => p.id === a) ? { is, pair: a } : null;
    case 'length':
      return path()?.knownLengths?.some((l) => l.id === b) === true ? { is, path: a, length: b } : null;
    default:
      return null;
  }
}

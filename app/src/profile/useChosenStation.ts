import { stationOfVertex } from '@footmark/geometry';
import type { PathProfile } from '@footmark/site';
import { useDerived } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';

/** The station of what is chosen, when that is on the pipe of the profile: a mark, or a point of the pipe. */
export function useChosenStation({
  path,
}: PathProfile): { readonly of: 'mark' | 'point'; readonly station: number } | null {
  const { marks, paths } = useDerived();
  const { selected, vertex } = useWorkbench();
  if (selected?.kind === 'reading') {
    const place = marks.find((m) => m.reading.id === selected.id)?.place;
    return place?.path === path ? { of: 'mark', station: place.station } : null;
  }
  if (selected?.kind !== 'path' || selected.id !== path || vertex === null) return null;
  const on = paths.get(path);
  const index = on?.path.vertices.findIndex((v) => v.id === vertex) ?? -1;
  return on === undefined || index < 0 ? null : { of: 'point', station: stationOfVertex(on.line, index) };
}

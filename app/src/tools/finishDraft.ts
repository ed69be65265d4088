import {
  addFeature,
  addPath,
  type Derived,
  derive,
  type Feature,
  type FeatureKind,
  freeVertexId,
  insertVertex,
  isPath,
  type LegSpot,
  leastFall,
  letters,
  type Path,
  type PathVertex,
  pointOwners,
  reversePath,
  type Site,
  settings,
} from '@footmark/site';
import type { DraftPoint, DrawTool } from './tool';

/** Ids of a draft's points: a, b, c … */
function vertexId(index: number): string {
  return letters(index).toLowerCase();
}

/**
 * Puts a finished draft into the site as a feature of its kind. `name` is what people call it, or empty; `closing` is the course
 * back to the first corner, which then is the draft's last leg.
 */
export function finishFeature(
  site: Site,
  kind: FeatureKind,
  tool: DrawTool,
  id: string,
  name: string,
  closing?: LegSpot,
): Site {
  const corners = closing === undefined ? tool.points : tool.points.slice(0, -1);
  const feature = {
    id,
    kind,
    name,
    vertices: corners.map((p, i) => ({ id: vertexId(i), spot: p.spot })),
    fields: tool.subject.what === 'feature' ? { ...tool.subject.fields } : {},
    ...(closing === undefined ? {} : { closing }),
  } as Feature; // who begins the draft gives fields of the kind, or none
  return addFeature(site, { feature });
}

/**
 * Puts a finished draft into the site as a pipe. An end that lies on another pipe's leg gets a junction there. A pipe that
 * was drawn from its junction towards the house is turned round, so that its points run with the flow.
 */
export function finishPath(site: Site, tool: DrawTool, id: string, name: string, derived: Derived): Site {
  let current = site;
  const spots = tool.points.map((point) => {
    if (point.junction === undefined) return point.spot;
    const made = withJunction(current, point.junction, derived);
    current = made.site;
    return made.spot;
  });
  const vertices: PathVertex[] = spots.map((spot, i) => ({ id: vertexId(i), spot }));
  const like = site.paths[0];
  const diameter = like?.stretches[0]?.diameter ?? settings.drainDiameter.value;
  const path: Path = {
    id,
    name,
    state: 'existing',
    vertices,
    bendRadius: like?.bendRadius ?? settings.bendRadius.value,
    stretches: [
      {
        from: 0,
        material: like?.stretches[0]?.material ?? 'unknown',
        diameter,
        slope: like?.stretches[0]?.slope ?? leastFall(site, diameter).value,
      },
    ],
  };
  const drawn = addPath(current, { path });
  if (!comesFromJunction(current, spots)) return drawn;
  const { points, paths } = derive(drawn);
  return reversePath(drawn, { id, length: paths.get(id)?.length ?? 0, places: points });
}

function withJunction(
  site: Site,
  { path: id, after, at }: NonNullable<DraftPoint['junction']>,
  derived: Derived,
) {
  const main = site.paths.find((p) => p.id === id);
  const vertex = {
    id: freeVertexId(main?.vertices ?? []),
    spot: { by: 'finger', x: at.x, y: at.y },
  } as const;
  return {
    site: insertVertex(site, { ref: { of: id, at: after }, vertex, places: derived.points }),
    spot: { by: 'at', point: { of: id, at: vertex.id } } as const,
  };
}

function comesFromJunction(site: Site, spots: readonly DraftPoint['spot'][]): boolean {
  const paths = new Set(
    pointOwners(site)
      .filter(isPath)
      .map((p) => p.id),
  );
  const joins = (spot: DraftPoint['spot'] | undefined) => spot?.by === 'at' && paths.has(spot.point.of);
  return joins(spots[0]) && !joins(spots.at(-1));
}

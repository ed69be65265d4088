import type { Point } from '@footmark/geometry';
import { refKey, resolvePoints, type Site } from '@footmark/site';
import type { DraftPoint, Tool } from './tool';

/** An id that no site holds: new ids are made of letters and digits. */
const DRAFT_ID = 'draft_in_hand';

/** Places of a draft's points, worked out within the site that it is drawn in. */
export function draftPlaces(site: Site, points: readonly DraftPoint[]): readonly Point[] {
  if (points.length === 0) return [];
  const vertices = points.map((p, i) => ({ id: `p${i}`, spot: p.spot }));
  const withDraft: Site = {
    ...site,
    features: [...site.features, { id: DRAFT_ID, kind: 'fence', name: '', vertices, fields: {} }],
  };
  const resolved = resolvePoints(withDraft).points;
  return vertices.flatMap((v) => resolved.get(refKey({ of: DRAFT_ID, at: v.id }))?.at ?? []);
}

/** Places of the points that the tool in hand has put down. */
export function placesInHand(site: Site, tool: Tool | null): readonly Point[] {
  if (tool === null) return [];
  return tool.is === 'measure' ? tool.points : draftPlaces(site, tool.points);
}

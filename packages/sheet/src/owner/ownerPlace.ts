import { type FeatureLayer, kindSpec, type Mark } from '@footmark/site';
import type { OwnerPlace } from '@footmark/words';
import { depthAt } from '../blocks/depthAt';
import type { SheetSetting } from '../setting';

/** Things further than this (m) help nobody find a place. */
const NEAR_M = 3;

/** What lies in the ground shows nobody where something is. */
const UNSEEN: ReadonlySet<FeatureLayer> = new Set(['services']);

/** Where a mark is, in what an owner knows: how far from where the camera went in, how deep, what stands by. */
export function ownerPlace({ run, trace, place }: Mark, { site, derived, words }: SheetSetting): OwnerPlace {
  const entry = run.entry === null ? null : words.targetName({ kind: 'feature', id: run.entry }, site);
  const [near] = (place?.clearances ?? []).filter(
    (c) => c.distance < NEAR_M && !UNSEEN.has(kindSpec(c.kind).layer) && isNamed(c.feature, site),
  );
  return {
    along: trace.along,
    entry,
    depth: place === null ? null : (depthAt(derived, place.path, place.station)?.depth ?? null),
    near:
      near === undefined
        ? null
        : { thing: words.targetName({ kind: 'feature', id: near.feature }, site), distance: near.distance },
  };
}

function isNamed(id: string, site: SheetSetting['site']): boolean {
  return site.features.some((f) => f.id === id && f.name !== '');
}

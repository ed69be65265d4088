import { boredLength, type Way, type WayFacts } from '@footmark/reroute';
import type { PipeMaterial } from '@footmark/site';

/** The pipe that a way takes; of a material that a way does not tell, null. */
export type WayPipe =
  | { readonly is: 'anew' | 'in-place' }
  | { readonly is: 'laid'; readonly diameter: number; readonly material: PipeMaterial | null }
  | { readonly is: 'not-said' };

/** What has to be brought for a way: its pipe, how much (m) of it fit to be pulled, its bends and cleanouts. */
export type WayMaterials = {
  readonly pipe: WayPipe;
  readonly pulled: number | null;
  readonly bends: WayFacts['bends'];
  readonly cleanouts: number;
};

export function wayMaterials({ is, facts, path, bored }: Way): WayMaterials {
  const cleanouts = facts.cleanouts.missing.length;
  // the material of an old pipe says nothing of the new one
  if (is === 'repair') return { pipe: { is: 'anew' }, pulled: null, bends: [], cleanouts };
  if (is === 'in-place') return { pipe: { is: 'in-place' }, pulled: null, bends: [], cleanouts };
  const [laid] = path.stretches;
  return {
    pipe: laid === undefined ? { is: 'not-said' } : { is: 'laid', ...laid, material: told(laid.material) },
    pulled: bored.length === 0 ? null : boredLength(bored),
    bends: facts.bends,
    cleanouts,
  };
}

function told(material: PipeMaterial): PipeMaterial | null {
  return material === 'unknown' || material === 'other' ? null : material;
}

/** How much cover (m) is asked where a way has less, by a rule or by the frost; each said once. */
export function coverAsked({ findings }: WayFacts): readonly CoverAsked[] {
  const asked = findings.flatMap((f): readonly CoverAsked[] => {
    if (f.code === 'cover-too-thin') return [{ by: 'rule', metres: f.values.asked }];
    return f.code === 'cover-above-frost' ? [{ by: 'frost', metres: f.values.asked }] : [];
  });
  return asked.filter(
    (one, i) => asked.findIndex((other) => other.by === one.by && other.metres === one.metres) === i,
  );
}

export type CoverAsked = { readonly by: 'rule' | 'frost'; readonly metres: number };

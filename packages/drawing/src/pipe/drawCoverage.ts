import { slicePath } from '@footmark/geometry';
import type { Derived } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { SAGITTA_M } from './drawPath';

/** A broad pale band under the pipe; where two runs have been it is twice as strong. */
const BAND = { ink: 'sewer', weight: 4, opacity: 0.16 } as const;

/** Draws where a camera has been. */
export function drawCoverage(derived: Derived, into: LayerBuilder): void {
  for (const seen of derived.coverage) {
    const on = derived.paths.get(seen.path);
    if (on === undefined) continue;
    into.add('coverage', {
      kind: 'line',
      points: slicePath(on.line, seen.from, seen.to, SAGITTA_M),
      closed: false,
      stroke: BAND,
      target: { kind: 'run', id: seen.run },
    });
  }
}

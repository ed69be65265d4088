import { locate, pointAtAzimuth, slicePath } from '@footmark/geometry';
import { type Derived, farEnd, observationKinds } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { SAGITTA_M } from '../pipe/drawPath';
import type { Stroke } from '../primitive';

/** Half of the bar (m, true size) that ends what goes on: about a pipe and its trench. */
const HALF_BAR_M = 0.25;
/** A thick soft line over the pipe: what goes on is seen before what stands at its ends. */
const RUN: Stroke = { ink: 'sewer', weight: 2.2, opacity: 0.45 };
const BAR: Stroke = { ink: 'sewer', weight: PEN.medium };

/** Draws what goes on along the pipe, from its reading to its far end on the same pipe, with a bar at both. */
export function drawContinuous(derived: Derived, into: LayerBuilder): void {
  for (const mark of derived.marks) {
    const { place, reading, run } = mark;
    if (place === null || reading.to === undefined) continue;
    const on = derived.paths.get(place.path);
    const far = farEnd(derived, mark);
    if (on === undefined || far === null) continue;
    // over a junction it goes on to the end of this pipe
    const end = far.path === place.path ? far.station : run.direction === 'with-flow' ? on.length : 0;
    if (Math.abs(end - place.station) < HALF_BAR_M) continue;
    const target = { kind: 'reading', run: run.id, id: reading.id } as const;
    const points = slicePath(on.line, place.station, end, SAGITTA_M);
    const stroke = observationKinds[reading.seen].group === 'defect' ? RUN : { ...RUN, weight: PEN.broad };
    into.add('marks', { kind: 'line', points, closed: false, stroke, target });
    for (const station of [place.station, end]) {
      const { point, azimuth } = locate(on.line, station);
      const bar = [1, -1].map((side) => pointAtAzimuth(point, azimuth + Math.PI / 2, side * HALF_BAR_M));
      into.add('marks', { kind: 'line', points: bar, closed: false, stroke: BAR, target });
    }
  }
}

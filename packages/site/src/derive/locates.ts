import { distance, dot, type Point, subtract } from '@footmark/geometry';
import type { FeatureOf } from '../document/feature';
import type { TakenFit } from '../document/fit';
import type { Site } from '../document/site';
import { observationName } from '../fit/observationTag';
import type { DerivedFeature } from './deriveFeatures';
import { type Finding, finding } from './finding';
import type { Mark } from './marks';
import { planAt } from './runRoute';
import { sondePlace, type Ways } from './sondePlace';

/** Where a receiver found the sonde at a reading, beside where the computation has it. Lengths in metres. */
export type Locate = {
  /** Id of the feature. */
  readonly feature: string;
  readonly mark: Mark;
  readonly method: FeatureOf<'locate'>['fields']['method'] | null;
  /** As the receiver showed it; null when nobody wrote it down. */
  readonly depth: number | null;
  /** Where the receiver found the sonde. */
  readonly found: Point;
  /** Where the computation has the sonde: the lens is a head's length ahead of it. */
  readonly computed: Point;
  /** From computed to found. */
  readonly distance: number;
  /** The same with the flow in the pipe there, and to the right of it. */
  readonly along: number;
  readonly across: number;
  /** The lines and runs were fitted to it: then the computation is no second opinion of it. */
  readonly weighed: boolean;
};

/** What locates are computed from. `fit`: the one that stands. */
type LocateSetting = Ways & {
  readonly features: ReadonlyMap<string, DerivedFeature>;
  readonly marks: readonly Mark[];
  readonly fit: TakenFit | null;
};

/** The locates whose reading has a place, in the order of the site; of each other one a finding says what it lacks. */
export function locatesOf(site: Site, setting: LocateSetting, findings: Finding[]): readonly Locate[] {
  const features = site.features.filter((f): f is FeatureOf<'locate'> => f.kind === 'locate');
  if (features.length === 0) return [];
  const marks = new Map(setting.marks.map((mark) => [mark.reading.id, mark]));
  const weighed = new Set(setting.fit?.evidence.map((e) => e.observation));
  return features.flatMap((feature) => {
    const at = { kind: 'feature', id: feature.id } as const;
    const { reading, method, depth } = feature.fields;
    const mark = reading === undefined ? undefined : marks.get(reading.reading);
    const found = setting.features.get(feature.id)?.points[0];
    if (method === 'rough' && depth !== undefined)
      findings.push(finding('locate-depth-rough', 'note', at, {}));
    if (mark === undefined) {
      findings.push(finding('locate-has-no-reading', 'note', at, {}));
      return [];
    }
    const place = sondePlace(setting, mark);
    const plan = place === null ? null : planAt(setting.paths, place);
    if (plan === null) {
      findings.push(finding('locate-reading-has-no-place', 'note', at, { reading: mark.label }));
      return [];
    }
    if (found === undefined) return [];
    const off = subtract(found, plan.point);
    const flow = { x: Math.sin(plan.azimuth), y: Math.cos(plan.azimuth) };
    return {
      feature: feature.id,
      mark,
      method: method ?? null,
      depth: depth ?? null,
      found,
      computed: plan.point,
      distance: distance(found, plan.point),
      along: dot(off, flow),
      across: dot(off, { x: flow.y, y: -flow.x }),
      weighed: weighed.has(observationName({ is: 'locate', feature: feature.id, part: 'along' })),
    };
  });
}

import type { Change } from '@footmark/route';
import type { Site } from '@footmark/site';
import type { Otherwise, RerouteAsk } from './ask';
import { mustStand } from './mustStand';
import type { Treatment } from './treatment';

/** An ask with one requirement less; null for a thing that must not be gone through. */
export function allowing(ask: RerouteAsk, change: Change, site: Site): RerouteAsk | null {
  const otherwise = (asked: Otherwise): RerouteAsk => ({
    ...ask,
    otherwise: { ...ask.otherwise, ...asked },
  });
  const treating = (id: string, treatment: Treatment): RerouteAsk => ({
    ...ask,
    treat: { ...ask.treat, [id]: treatment },
  });
  switch (change.is) {
    case 'less-clearance':
      return treating(change.obstacle, { as: 'clear', clearance: change.to });
    case 'through':
      return mustStand(change.obstacle, site) ? null : treating(change.obstacle, { as: 'free' });
    case 'less-fall':
      return otherwise({ leastFall: change.to });
    case 'any-heading':
      return otherwise({ anyHeading: true });
    case 'more-bends':
      return otherwise({ mostBends: change.to });
    case 'no-straight':
      return otherwise({ leastStraight: 0 });
  }
}

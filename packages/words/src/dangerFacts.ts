import type { Danger } from '@footmark/dig';

/** How what a hole may hit lies to it. */
export type DangerPlace =
  | 'roots-reach-in'
  | 'trunk-not-measured' // how far its roots reach is not known
  | 'reaches-into-footing'
  | 'in-the-hole'
  | 'beside-the-hole';

/** What a crew is asked to mind. */
export type DangerCare = 'dig-by-hand' | 'ask-before-roots' | 'do-not-undermine';

/** What is to be said of a danger, and how deep (m) its top is where that matters and is known. */
export type DangerFacts = {
  readonly place: DangerPlace;
  readonly depth: number | null;
  readonly care: DangerCare | null;
};

export function dangerFacts({ is, distance, depth, byHand }: Danger): DangerFacts {
  switch (is) {
    case 'service':
      return {
        place: distance <= 0 ? 'in-the-hole' : 'beside-the-hole',
        depth,
        care: byHand ? 'dig-by-hand' : null,
      };
    case 'roots':
      return {
        place: distance < 0 ? 'roots-reach-in' : 'trunk-not-measured',
        depth: null,
        care: 'ask-before-roots',
      };
    case 'footing':
      return distance <= 0
        ? { place: 'reaches-into-footing', depth: null, care: 'do-not-undermine' }
        : { place: 'beside-the-hole', depth, care: 'do-not-undermine' };
  }
}

/**
 * Whose land a place is. `public`: a street, a sidewalk, or beyond a right-of-way line seen from the house; `shared`: in an easement;
 * `private`: on the lot; `neighbour`: in another lot, or outside this one and on the house's side of the right of way; `outside`: outside the
 * lot, where nothing says whose; `unknown`: no boundary tells.
 */
export type Whose = 'private' | 'shared' | 'neighbour' | 'public' | 'outside' | 'unknown';

/** With the features that it was told by, for none an empty list. */
export type WhoseAt = { readonly whose: Whose; readonly features: readonly string[] };

export function isSameLand(a: WhoseAt, b: WhoseAt): boolean {
  return a.whose === b.whose && a.features.join() === b.features.join();
}

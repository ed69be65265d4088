import type { Site } from '@footmark/site';

/**
 * What a part of a site is to a merge. `fixed`: told by the site's identity, never merged; `whole`: one thing; `fields`: an object whose
 * fields are parts; `record`: an object whose every entry is a thing; `list`: things by the value of their field `by`, each with a list
 * `inside` whose items are things of their own; `names`: a set of texts.
 */
export type Part =
  | { readonly is: 'fixed' }
  | { readonly is: 'whole' }
  | { readonly is: 'record' }
  | { readonly is: 'names' }
  | { readonly is: 'fields'; readonly of: Readonly<Record<string, Part>> }
  | { readonly is: 'list'; readonly by: string; readonly inside?: string };

const fixed: Part = { is: 'fixed' };
const whole: Part = { is: 'whole' };
const things: Part = { is: 'list', by: 'id' };

const rows: { readonly [Name in keyof Site]-?: Part } = {
  format: fixed,
  version: fixed,
  id: fixed,
  createdAt: fixed,
  name: whole,
  address: whole,
  note: whole,
  units: whole,
  frame: { is: 'fields', of: { north: whole, control: things } },
  tape: whole,
  entryReach: whole,
  sigmas: { is: 'record' },
  underlays: things,
  features: things,
  paths: things,
  visits: things,
  runs: { is: 'list', by: 'id', inside: 'readings' },
  pairs: things,
  different: things,
  rules: { is: 'fields', of: { set: whole, trees: whole, changed: { is: 'list', by: 'rule' } } },
  digging: {
    is: 'fields',
    of: { soil: whole, disturbed: whole, protection: whole, digs: things, oneCall: whole, notes: things },
  },
  asFound: things,
  setAside: { is: 'names' },
  fit: whole,
};

/** The whole site as one part. A field of the site that has no row does not compile. */
export const sitePart: Part = { is: 'fields', of: rows };

/** The list inside each item of a list. */
export const INSIDE: Part = { is: 'list', by: 'id' };

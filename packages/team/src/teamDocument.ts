import { canonicalText, type Stamped, type StampedSite, type StampedThing, viewSite } from '@footmark/merge';

/** A site as the team's database keeps it. */
export type TeamDocument = { readonly _id: string; readonly is: 'site' } & StampedSite;

/** CouchDB takes documents of 8,000,000 bytes as it is set up (its configuration, couchdb/max_document_size): this leaves room for signs of more than one byte. */
export const MOST_TEAM_CHARACTERS = 4_000_000;
/** More of them come from no person. */
const MOST_THINGS = 200_000;
const MOST_VALUES = 1000;
const MOST_WRITERS = 10_000;
const MOST_STEPS = 4;

const PREFIX = 'site:';

export function documentIdOf(site: string): string {
  return `${PREFIX}${site}`;
}

/** The site whose document that is; null for any other document. */
export function siteOfDocument(id: string): string | null {
  return id.startsWith(PREFIX) ? id.slice(PREFIX.length) : null;
}

/** The document of a site, its fields in one order, so that the same state is the same text, and the same revision, on every device. */
export function documentOf({ fixed, seen, things }: StampedSite): TeamDocument {
  const made: TeamDocument = { _id: documentIdOf(fixed.id), is: 'site', fixed, seen, things };
  return JSON.parse(canonicalText(made)) as TeamDocument; // what was written is read
}

/** Reads a document; null when it is none of a site that can be opened here by the rules by which files are opened. */
export function stampedOf(document: Readonly<Record<string, unknown>>): StampedSite | null {
  const id = siteOfDocument(String(document._id));
  const { is, fixed, seen, things } = document;
  if (id === null || is !== 'site' || !isFixed(fixed) || fixed.id !== id) return null;
  if (!isSeen(seen) || !Array.isArray(things) || things.length > MOST_THINGS || !things.every(isThing))
    return null;
  const stamped: StampedSite = { fixed, seen, things };
  return viewSite(stamped) === null ? null : stamped;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isFixed(value: unknown): value is StampedSite['fixed'] {
  return (
    isRecord(value) &&
    ['format', 'id', 'createdAt'].every((name) => typeof value[name] === 'string') &&
    Number.isSafeInteger(value.version)
  );
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && Number(value) > 0;
}

function isSeen(value: unknown): value is StampedSite['seen'] {
  return isRecord(value) && Object.keys(value).length <= MOST_WRITERS && Object.values(value).every(isCount);
}

function isThing(value: unknown): value is StampedThing {
  if (!isRecord(value) || (value.is !== 'thing' && value.is !== 'order')) return false;
  const { place, values } = value;
  return (
    Array.isArray(place) &&
    place.length <= MOST_STEPS &&
    place.every((step) => typeof step === 'string') &&
    Array.isArray(values) &&
    values.length > 0 &&
    values.length <= MOST_VALUES &&
    values.every(isStamped)
  );
}

function isStamped(value: unknown): value is Stamped {
  return (
    isRecord(value) &&
    typeof value.by === 'string' &&
    isCount(value.n) &&
    (value.beside === undefined || value.beside === true) &&
    value.is !== null &&
    value.was !== null
  );
}

import { canonicalText, type OtherVersion, type SiteState } from '@footmark/merge';
import { openSiteValue } from '@footmark/site';

/** A site as the team's database keeps it. */
export type TeamDocument = {
  readonly _id: string;
  readonly is: 'site';
  readonly site: unknown;
  readonly others: readonly OtherVersion[];
  readonly binnedAt: number | null;
};

/** CouchDB takes documents of 8,000,000 bytes as it is set up (its configuration, couchdb/max_document_size): this leaves room for signs of more than one byte. */
export const MOST_TEAM_CHARACTERS = 4_000_000;
/** So many versions may wait for a choice in one site; more come from no person. */
const MOST_OTHERS = 20_000;

const PREFIX = 'site:';

export function documentIdOf(site: string): string {
  return `${PREFIX}${site}`;
}

/** The site whose document that is; null for any other document. */
export function siteOfDocument(id: string): string | null {
  return id.startsWith(PREFIX) ? id.slice(PREFIX.length) : null;
}

/** The document of a site, its fields in one order, so that the same state is the same text on every device. */
export function documentOf({ site, others, binnedAt }: SiteState): TeamDocument {
  const made: TeamDocument = { _id: documentIdOf(site.id), is: 'site', site, others, binnedAt };
  return JSON.parse(canonicalText(made)) as TeamDocument; // what was written is read
}

/** Opens a document by the rules by which files are opened; null when it is none of a site that can be opened here. */
export function stateOfDocument(document: Readonly<Record<string, unknown>>): SiteState | null {
  const id = siteOfDocument(String(document._id));
  if (id === null || document.is !== 'site') return null;
  const { binnedAt, others } = document;
  const opened = openSiteValue(document.site);
  if (!opened.ok || opened.site.id !== id) return null;
  if (binnedAt !== null && !(typeof binnedAt === 'number' && Number.isFinite(binnedAt))) return null;
  if (!Array.isArray(others) || others.length > MOST_OTHERS || !others.every(isOtherVersion)) return null;
  return { site: opened.site, others, binnedAt };
}

function isOtherVersion(value: unknown): value is OtherVersion {
  if (typeof value !== 'object' || value === null || !('place' in value) || !('other' in value)) return false;
  const { place } = value;
  return Array.isArray(place) && place.length <= 4 && place.every((step) => typeof step === 'string');
}

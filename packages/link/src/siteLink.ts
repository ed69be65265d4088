import type { Site } from '@footmark/site';
import { forLink, type LinkChoice } from './forLink';
import { linkText } from './frame/linkText';
import { type Encoded, encode } from './linkKind';
import { siteKind } from './siteKind';

/** The bytes of a link to a site, for `linkText` or QR symbols. */
export function linkBytes(site: Site, choice: LinkChoice): Encoded {
  return encode(siteKind, forLink(site, choice));
}

/** What goes behind the `#` of a link to a site. */
export function linkFragment(
  site: Site,
  choice: LinkChoice,
): { readonly ok: true; readonly fragment: string } | Extract<Encoded, { ok: false }> {
  const encoded = linkBytes(site, choice);
  return encoded.ok ? { ok: true, fragment: linkText(encoded.bytes) } : encoded;
}

import { forLink } from '@footmark/link';
import type { Site } from '@footmark/site';
import { siteHash } from '../siteHash';

const YES_NO = [false, true] as const;

/** Whether a crew had this very state of a site: as a file, or as a link with whatever went along. */
export async function isSameState(site: Site, hash: string): Promise<boolean> {
  const choices = YES_NO.flatMap((address) =>
    YES_NO.flatMap((notes) => YES_NO.map((coordinates) => ({ address, notes, coordinates }))),
  );
  const states = [site, ...choices.map((choice) => forLink(site, choice))];
  const hashes = await Promise.all(states.map(siteHash));
  return hashes.includes(hash);
}

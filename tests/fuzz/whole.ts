import { isDeepStrictEqual } from 'node:util';
import { openSite, type Site, writeSite } from '@footmark/site';

/** A site that was accepted, as it comes back from what is written of it. */
export type SiteBack = {
  readonly site: Site;
  readonly again: ReturnType<typeof openSite>;
};

export function siteBack(site: Site): SiteBack {
  return { site, again: openSite(writeSite(site)) };
}

/** What is not whole in a site that was accepted: what is read of what was written is the same, in whatever order its keys stand, and no number is none. */
export function siteWrong({ site, again }: SiteBack): string | null {
  if (!again.ok) return `accepted, and its own file is refused: ${JSON.stringify(again.failure)}`;
  if (again.migratedFrom !== null) return 'written as an older version';
  if (!isSameData(site, again.site)) return 'another site in its own file';
  return noNumberIn(site);
}

/** The way to a number that is none; null where every one is finite. */
export function noNumberIn(value: unknown): string | null {
  const ahead: (readonly [string, unknown])[] = [['', value]];
  for (let one = ahead.pop(); one !== undefined; one = ahead.pop()) {
    const [path, inner] = one;
    if (typeof inner === 'number' && !Number.isFinite(inner)) return `${path} is ${inner}`;
    if (typeof inner === 'object' && inner !== null)
      for (const [key, v] of Object.entries(inner)) ahead.push([`${path}.${key}`, v]);
  }
  return null;
}

/** Whether what was read is what the file has, field for field: nothing dropped, nothing put in. Negative zero is zero in JSON. */
export function isSameData(file: unknown, read: unknown): boolean {
  return isDeepStrictEqual(JSON.parse(JSON.stringify(file)), JSON.parse(JSON.stringify(read)));
}

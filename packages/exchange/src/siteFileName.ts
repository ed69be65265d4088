import type { Site } from '@footmark/site';

/** Longer names are cut: every file system takes 255 bytes, and four are the most that one character has. */
const MOST_CHARACTERS = 60;

/** Names that Windows keeps for devices, with any extension. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A file name for something of a site, such as `Rear-alley-lateral.csv`: letters and digits of any script, the rest dashes. A
 * site without a usable name is `site`. `extension` comes without its dot.
 */
export function siteFileName(site: Site, extension: string): string {
  const words = site.name.normalize('NFC').match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
  const name = [...words.join('-')].slice(0, MOST_CHARACTERS).join('').replace(/-+$/, '');
  const usable = name === '' || DEVICE.test(name) ? ['site', name].filter(Boolean).join('-') : name;
  return `${usable}.${extension}`;
}

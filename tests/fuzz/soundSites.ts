import { readdirSync, readFileSync } from 'node:fs';
import { openSite, type Site } from '@footmark/site';

const SAMPLES = new URL('../../packages/site/samples/', import.meta.url);
const FROZEN = new URL('../../packages/site/src/document/frozen/', import.meta.url);

/** Site files: the samples, and those of every version that there ever was, which are small but for three. */
export function siteTexts(): readonly string[] {
  return [SAMPLES, FROZEN].flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .sort()
      .map((name) => readFileSync(new URL(name, folder), 'utf8')),
  );
}

/** The same as sites. */
export function soundSites(): readonly Site[] {
  return siteTexts().map((text) => {
    const opened = openSite(text);
    if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
    return opened.site;
  });
}

/** The invented yard with two control points. */
export function yardOnTheEarth(): Site {
  const found = soundSites().find((site) => site.id === 'front-terrace');
  if (found === undefined) throw new Error('the sample is gone');
  return found;
}

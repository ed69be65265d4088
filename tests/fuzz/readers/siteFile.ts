import { openSite, SITE_VERSION } from '@footmark/site';
import { en, es } from '@footmark/words';
import { jsonMutators } from '../mutate/json';
import { bytesOf, type FuzzReader, inWords, textOf } from '../reader';
import { siteTexts } from '../soundSites';
import { isSameData, type SiteBack, siteBack, siteWrong } from '../whole';

type Read = { readonly accepted: boolean; readonly back: SiteBack | null; readonly migrated: boolean };

/** The site file. Partial: what was accepted is not all that the file of this version says, or does not come back from its own file. */
export const reader: FuzzReader<Read> = {
  name: 'site file',
  seeds: () => siteTexts().map(bytesOf),
  mutators: jsonMutators,
  read(input) {
    const opened = openSite(textOf(input));
    if (opened.ok)
      return { accepted: true, back: siteBack(opened.site), migrated: opened.migratedFrom !== null };
    for (const words of [en, es]) inWords(words.fileProblemText(opened.failure));
    return { accepted: false, back: null, migrated: false };
  },
  judge(input, { back, migrated }) {
    if (back === null) return 'accepted without a site';
    const wrong = siteWrong(back);
    if (wrong !== null || migrated) return wrong;
    const file: unknown = JSON.parse(textOf(input));
    if (back.site.version !== SITE_VERSION) return 'of another version';
    return isSameData(file, back.site) ? null : 'not all that the file says';
  },
};

import { isDeepStrictEqual } from 'node:util';
import { collectParts, encode, linkText, type OpenedLink, openLink, openLinkBytes } from '@footmark/link';
import { en, es } from '@footmark/words';
import { answerKind } from '../../../packages/link/src/answerKind';
import { partFrames } from '../../../packages/link/src/parts';
import { siteKind } from '../../../packages/link/src/siteKind';
import { linkMutators, soundLinks } from '../mutate/links';
import { type FuzzReader, inWords, textOf } from '../reader';
import { noNumberIn, type SiteBack, siteBack, siteWrong } from '../whole';

type Read = {
  readonly accepted: boolean;
  readonly opened: OpenedLink;
  /** What comes back from the link that is made of it; null where none can be. */
  readonly again: OpenedLink | null;
  readonly file: SiteBack | null;
};

/**
 * A link, and what is scanned from a symbol. Partial: what came out is no sound document, or does not come back from a link of its own bit for bit. A
 * part of several is whole when it is one of a set.
 */
export const reader: FuzzReader<Read> = {
  name: 'link',
  seeds: soundLinks,
  mutators: linkMutators,
  read(input) {
    const opened = openLink(textOf(input));
    if (!opened.ok) {
      for (const words of [en, es]) inWords(words.linkProblemText(opened.failure));
      return { accepted: false, opened, again: null, file: null };
    }
    if (opened.is === 'part') {
      const collected = collectParts(null, opened.part);
      if (collected.is === 'whole') openLinkBytes(collected.bytes);
      return { accepted: true, opened, again: null, file: null };
    }
    const made = opened.is === 'site' ? encode(siteKind, opened.site) : encode(answerKind, opened.answer);
    return {
      accepted: true,
      opened,
      again: made.ok ? openLink(linkText(made.bytes)) : null,
      file: opened.is === 'site' ? siteBack(opened.site) : null,
    };
  },
  judge(_, { opened, again, file }) {
    if (!opened.ok) return 'accepted and refused';
    if (opened.is === 'part') {
      const { of, index, set } = opened.part;
      const frames = partFrames(opened.part.bytes, 1);
      return index < of && of <= 16 && set < 65_536 && frames.length === 1 ? null : 'a part of no set';
    }
    if (again === null) return 'accepted, and no link can be made of it';
    if (!again.ok || again.is !== opened.is) return 'accepted, and its own link is not';
    const [was, is] = [documentOf(opened), documentOf(again)];
    if (!isDeepStrictEqual(is, was)) return 'another document in its own link';
    return noNumberIn(was) ?? (file === null ? null : siteWrong(file));
  },
};

function documentOf(opened: Extract<OpenedLink, { ok: true }>): unknown {
  return opened.is === 'site' ? opened.site : opened.is === 'answer' ? opened.answer : opened.part;
}

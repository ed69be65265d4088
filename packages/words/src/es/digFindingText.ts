import { type AnyDigFinding, findingSubject } from '@footmark/dig';
import type { Site } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { atStart } from '../named';
import type { CardThing, Said } from '../said';
import { type DigFindingTable, sayFinding } from '../sayFinding';
import { clearanceSentences } from './digClearanceSentences';
import { cutSentences } from './digCutText';
import { drainSentences } from './digDrainText';
import { landSentences } from './digLandText';
import { serviceSentences } from './digServiceText';
import { digSpeech } from './digSpeech';
import { digTitles } from './digTitles';
import { treeSentences } from './digTreeText';
import { markTitle } from './thingName';

const sentences: DigFindingTable<DigSpeech, Said> = {
  ...clearanceSentences,
  ...cutSentences,
  ...drainSentences,
  ...landSentences,
  ...serviceSentences,
  ...treeSentences,
};

/** What stands in the way, where and how much; and what would cure it. `here`: the thing on whose card it is said. */
export function digFindingText(finding: AnyDigFinding, site: Site, here?: CardThing): Said {
  const { text, cure } = sayFinding(sentences, finding, digSpeech(site, here));
  return { text: atStart(text), cure: atStart(cure) };
}

/** The same in a few words, without what it is said of. */
export function digFindingTitle(finding: AnyDigFinding, site: Site, here?: CardThing): string {
  return atStart(sayFinding(digTitles, finding, digSpeech(site, here)));
}

/** What it is said of, by its name; empty for the site itself. */
export function digFindingSubject(finding: AnyDigFinding, site: Site): string {
  const subject = findingSubject(finding);
  return subject.kind === 'site' ? '' : markTitle(subject, site);
}

import type {
  AnyDigFinding,
  ClearanceFindingValues,
  DrainFindingValues,
  ExcavationFindingValues,
  LandFindingValues,
  ServiceFindingValues,
  TreeFindingValues,
} from '@footmark/dig';
import type { Site } from '@footmark/site';
import { atStart } from '../named';
import type { Said } from '../words';
import { clearanceSentences } from './digClearanceSentences';
import { cutSentences } from './digCutText';
import { drainSentences } from './digDrainText';
import { landSentences } from './digLandText';
import { serviceSentences } from './digServiceText';
import { type DigSpeech, digSpeech } from './digSpeech';
import { treeSentences } from './digTreeText';

type Values = ClearanceFindingValues &
  DrainFindingValues &
  ExcavationFindingValues &
  LandFindingValues &
  ServiceFindingValues &
  TreeFindingValues;

const sentences: { readonly [Code in keyof Values]: (values: Values[Code], speech: DigSpeech) => Said } = {
  ...clearanceSentences,
  ...cutSentences,
  ...drainSentences,
  ...landSentences,
  ...serviceSentences,
  ...treeSentences,
};

/** What stands in the way, where and how much; and what would cure it. */
export function digFindingText(finding: AnyDigFinding, site: Site): Said {
  const say = sentences[finding.code] as (values: AnyDigFinding['values'], speech: DigSpeech) => Said; // its own code's
  const { text, cure } = say(finding.values, digSpeech(site));
  return { text: atStart(text), cure: atStart(cure) };
}

import type { Site } from '@footmark/site';
import { type DigSpeech, digSpeechIn } from '../digSpeech';
import { inSentence } from '../named';
import type { CardThing } from '../said';
import { thingOf } from '../thing';
import { feminine, masculine, withThis } from './article';
import { areaText } from './digMeasure';
import { kinds } from './kindNames';
import { andList } from './listText';
import { sureText } from './sureText';
import { markInText, targetInText } from './thingName';

/** How things are spoken of, with their articles, in sentences about digs; `here`, on its own card, a thing is not named again. */
export function digSpeech(site: Site, here?: CardThing): DigSpeech {
  const tongue = {
    target: targetInText,
    mark: markInText,
    dig: digInText,
    andList,
    sureText,
    areaText,
    thisOne,
  };
  return digSpeechIn(tongue, site, here);
}

function digInText(id: string, site: Site): string {
  return targetInText({ kind: 'dig', id }, site);
}

const digNouns = { pit: masculine('foso'), trench: feminine('zanja') } as const;

function thisOne(here: CardThing, site: Site): string {
  const thing = thingOf(here, site);
  switch (here.kind) {
    case 'dig':
      return withThis(thing.is === 'dig' ? digNouns[thing.dig.is] : feminine('excavación'));
    case 'path':
      return withThis(feminine('tubería'));
    case 'feature': {
      if (thing.is !== 'feature') return 'esto';
      const { name, gender } = kinds[thing.feature.kind];
      return withThis({ name: inSentence(name), gender });
    }
    case 'reading':
      return withThis(feminine('marca'));
  }
}

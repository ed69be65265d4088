import type { Site } from '@footmark/site';
import { inSentence } from '../named';
import { thingOf } from '../thing';
import type { CardThing } from '../words';
import { feminine, masculine, withThis } from './article';
import { type DigSpeech, digSpeech } from './digSpeech';
import { kinds } from './kindNames';
import { andList } from './listText';

/** How things are spoken of on the card of one of them, which its own sentences need not name again. */
export function digSpeechHere(site: Site, here: CardThing): DigSpeech {
  const speech = digSpeech(site);
  const own = thisOne(here, site);
  const unlessHere = (kind: CardThing['kind'], name: (id: string) => string) => (id: string) =>
    here.kind === kind && here.id === id ? own : name(id);
  const feature = unlessHere('feature', speech.feature);
  return {
    ...speech,
    dig: unlessHere('dig', speech.dig),
    mark: (run, reading) =>
      here.kind === 'reading' && here.id === reading ? own : speech.mark(run, reading),
    path: unlessHere('path', speech.path),
    feature,
    features: (ids) => andList(ids.map(feature)),
  };
}

function thisOne(here: CardThing, site: Site): string {
  const thing = thingOf(here, site);
  switch (here.kind) {
    case 'dig':
      if (thing.is !== 'dig') return withThis(feminine('excavación'));
      return withThis(digNouns[thing.dig.is]);
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

const digNouns = { pit: masculine('foso'), trench: feminine('zanja') } as const;

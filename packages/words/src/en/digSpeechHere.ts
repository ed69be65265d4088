import type { Site } from '@footmark/site';
import { inSentence } from '../named';
import type { CardThing } from '../words';
import { type DigSpeech, digSpeech } from './digSpeech';
import { kindNames } from './kindNames';
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
  switch (here.kind) {
    case 'dig':
      return `this ${site.digging.digs.find((d) => d.id === here.id)?.is ?? 'dig'}`;
    case 'path':
      return 'this pipe';
    case 'feature': {
      const kind = site.features.find((f) => f.id === here.id)?.kind;
      return kind === undefined ? 'this' : `this ${inSentence(kindNames[kind])}`;
    }
    case 'reading':
      return 'this mark';
  }
}

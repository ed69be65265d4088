import type { Site } from '@footmark/site';
import { type DigSpeech, digSpeechIn } from '../digSpeech';
import { lengthText } from '../measureText';
import { inSentence } from '../named';
import type { CardThing } from '../said';
import { thingOf } from '../thing';
import { areaText } from './digMeasure';
import { kindNames } from './kindNames';
import { andList } from './listText';
import { sureText } from './sureText';
import { markInText, targetInText } from './thingName';

/** How things are spoken of in sentences about digs; `here`, on its own card, a thing is not named again. */
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

/** A trench without commas, which a sentence needs for itself. */
function digInText(id: string, site: Site): string {
  const thing = thingOf({ kind: 'dig', id }, site);
  if (thing.is !== 'dig') return id;
  const { dig } = thing;
  if (dig.name !== '') return dig.name;
  if (dig.is === 'pit') return `the ${targetInText({ kind: 'dig', id }, site)}`;
  const [from, to] = [dig.from, dig.to].map((station) => lengthText(station, site.units));
  return `the trench on ${targetInText({ kind: 'path', id: dig.path }, site)} from ${from} to ${to}`;
}

function thisOne(here: CardThing, site: Site): string {
  const thing = thingOf(here, site);
  switch (here.kind) {
    case 'dig':
      return `this ${thing.is === 'dig' ? thing.dig.is : 'dig'}`;
    case 'path':
      return 'this pipe';
    case 'feature':
      return thing.is === 'feature' ? `this ${inSentence(kindNames[thing.feature.kind])}` : 'this';
    case 'reading':
      return 'this mark';
  }
}

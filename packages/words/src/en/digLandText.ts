import type { LandCrossing, LandFindingValues, LandStretch, Whose, WhoseAt } from '@footmark/dig';
import type { Site, Units } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { holderOf, landLengths } from '../landFacts';
import { atStart, inSentence } from '../named';
import type { Said } from '../said';
import { sureText } from './sureText';
import { targetInText } from './thingName';

type Sentences = {
  readonly [Code in keyof LandFindingValues]: (values: LandFindingValues[Code], speech: DigSpeech) => Said;
};

export const whoseNames: Record<Whose, string> = {
  private: 'On the lot',
  shared: 'In an easement',
  neighbour: 'A neighbour’s',
  public: 'Public',
  outside: 'Outside of the lot',
  unknown: 'Not known',
};

/** On what land that is not the owner's own. */
export const owners = {
  shared: 'in an easement',
  neighbour: 'on a neighbour’s land',
  public: 'on public land',
  outside: 'outside of the lot',
} as const;

/** What is said of whose land it is: it decides who pays and who must be asked. */
export const landSentences: Sentences = {
  'no-boundary': () => ({
    text: 'Whose land anything is on is not known: no boundary is drawn.',
    cure: 'Draw the boundary from the plat or from its markers; where it is in doubt, ask a surveyor.',
  }),
  'boundary-crosses-itself': ({ feature }, speech) => ({
    text: `${atStart(speech.feature(feature))} crosses itself, so nothing is judged by it.`,
    cure: 'Put its points in the order in which one walks round the lot.',
  }),
  'boundary-not-closed': ({ feature, gap }, speech) => ({
    text: `${atStart(speech.feature(feature))} does not close, by ${speech.size(gap)}, so nothing is judged by it.`,
    cure: 'Add the missing course, or join its ends.',
  }),
  'lot-not-told': ({ lots }) => ({
    text: `${lots} closed boundaries are drawn, and none of them holds the building.`,
    cure: 'Draw the building, or take the other lots away.',
  }),
  'right-of-way-without-house': ({ feature }, speech) => ({
    text: `On which side of ${speech.feature(feature)} the public land lies cannot be told.`,
    cure: 'Draw the house or the lot.',
  }),
  'path-on-neighbour': (v, speech) => ({
    text: `${onPath(v, speech)} lies on a neighbour’s land.`,
    cure: 'Do not dig there without the owner’s leave in writing; where the line is disputed, ask a surveyor.',
  }),
  'path-on-public': (v, speech) => ({
    text: `${onPath(v, speech)} lies on public land.`,
    cure: 'Ask the city or the road authority: a permit is usual, and it may pay for that part.',
  }),
  'path-in-easement': (v, speech) => ({
    text: `${onPath(v, speech)} lies in ${speech.features(v.features)}.`,
    cure: 'Ask its holder before digging, and what may be put there.',
  }),
  'path-outside': (v, speech) => ({
    text: `${onPath(v, speech)} lies outside of the lot, and nothing says whose land that is.`,
    cure: 'Draw the street, the neighbour’s boundary or the right of way, or ask.',
  }),
  'path-along-boundary': (v, speech) => ({
    text: `${onPath(v, speech)} runs along ${speech.features(v.features)}.`,
    cure: 'A trench there touches both sides: tell the neighbour, and know where the line is.',
  }),
  'path-crosses-open-boundary': ({ path, station, feature }, speech) => ({
    text: `${atStart(speech.path(path))} crosses ${speech.feature(feature)} at ${speech.size(station)}; nothing else tells whose land lies on either side.`,
    cure: 'Draw the whole lot, closed; until then ask whoever may own the land beyond the line.',
  }),
  'mark-not-private': (v, speech) => ({
    text: `${atStart(speech.mark(v.run, v.reading))} is ${owners[v.whose]}.`,
    cure: 'Ask whose land it is before painting or digging there.',
  }),
};

function onPath(
  { path, from, to }: { readonly path: string; readonly from: number; readonly to: number },
  speech: DigSpeech,
): string {
  return `${atStart(speech.path(path))} from ${speech.size(from)} to ${speech.size(to)}`;
}

/** On how much of a site's pipes somebody else is to be asked, the longest first. */
export function landText(stretches: readonly LandStretch[], units: Units): string {
  const longest = landLengths(stretches);
  if (longest.length === 0) return 'all on the lot';
  return longest.map(([whose, m]) => `${sureText(m, units)} ${inSentence(whoseNames[whose])}`).join(', ');
}

/** What tells of the land by its name, and who holds it. */
export function landName(id: string, site: Site): string {
  const holder = holderOf(id, site);
  const name = atStart(targetInText({ kind: 'feature', id }, site));
  return holder === undefined ? name : `${name}, held by ${holder}`;
}

/** Beside the plan's tick where a pipe crosses from one land to another. */
export function landCrossingText({ feature, station }: LandCrossing, site: Site): string {
  return `${atStart(targetInText({ kind: 'feature', id: feature }, site))} at ${sureText(station, site.units)}`;
}

/** On whose land a place is, by what tells of it; empty on the lot and where nothing tells. */
export function whoseAtText({ whose, features }: WhoseAt, said: 'full' | 'brief', site: Site): string {
  if (whose === 'private' || whose === 'unknown') return '';
  const names = said === 'full' ? features.map((id) => landName(id, site)).join(', ') : '';
  return names === '' ? atStart(owners[whose]) : `${atStart(owners[whose])}: ${names}`;
}

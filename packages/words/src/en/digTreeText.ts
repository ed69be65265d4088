import type { TreeAssumption, TreeFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { atStart } from '../named';
import type { Said } from '../said';
import type { Words } from '../words';
import { leastText, shareText } from './digMeasure';
import { zoneOfRule } from './digZone';
import { andList } from './listText';
import { sureText } from './sureText';

type Sentences = {
  readonly [Code in keyof TreeFindingValues]: (values: TreeFindingValues[Code], speech: DigSpeech) => Said;
};

const arborist = 'Ask an arborist';

const missing: Record<TreeAssumption['fact'], string> = {
  tolerance: 'how well it stands root loss',
  age: 'how old it is',
  condition: 'how healthy it is',
  'base-diameter': 'how thick it is above the root flare',
};

const taken: Readonly<Record<string, string>> = {
  poor: 'one that stands root loss poorly',
  moderate: 'one that stands root loss moderately',
  good: 'healthy',
  mature: 'grown up',
  overmature: 'old',
  'trunk-diameter': 'thick as its trunk',
};

const heldWithin = {
  'structural-root-zone': 'its structural root zone',
  stability: 'the diameters that are quoted for stability',
} as const;

/** What is said of trees beside pipes and digs. */
export const treeSentences: Sentences = {
  'tree-without-diameter': ({ tree }, speech) => ({
    text: `${atStart(speech.feature(tree))} has no trunk diameter, so how far its roots matter cannot be told.`,
    cure: 'Measure the trunk at chest height and give its diameter.',
  }),
  'tree-facts-assumed': ({ tree, assumed }, speech) => ({
    text: `Nobody has said of ${speech.feature(tree)} ${andList(assumed.map(({ fact }) => missing[fact]))}; it is taken as ${takenAs(assumed)}.`,
    cure: 'Say so on the tree’s card.',
  }),
  'pipe-in-root-zone': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} runs ${speech.size(v.length)} in the ${zoneOfRule[v.zone]} of ${guarded(v, speech)}, ${
      v.distance < 0 ? 'under its trunk' : `${speech.size(v.distance)} from the face of its trunk`
    }; the tree stands to the ${v.side} of the flow.`,
    cure:
      v.state === 'proposed'
        ? `Move the line out of it, or bore under at ${speech.length(v.boreDepth)} or deeper${v.cover === null ? '' : `, where ${speech.size(v.cover)} of cover is planned, ${v.enough ? 'enough' : 'too little'}`}; ask an arborist.`
        : `To replace it, boring under at ${speech.length(v.boreDepth)} or deeper spares the roots${v.cover === null ? '; its cover is not known' : `; the pipe has ${speech.size(v.cover)} of cover, ${v.enough ? 'enough for that' : 'too little for that'}`}.`,
  }),
  'dig-in-root-zone': (v, speech) => ({
    text: `${speech.dig(v.dig)} takes ${leastText(v.atLeast)}${shareText(v.share)} of the ${zoneOfRule[v.zone]} of ${guarded(v, speech)}.`,
    cure: `Make it smaller with a shield, put the spoil elsewhere, or bore. ${arborist}${v.protected ? ' and whoever protects the tree' : ''} before roots are cut.`,
  }),
  'spoil-in-root-zone': (v, speech) => ({
    text: `Spoil from ${speech.dig(v.dig)} lies on ${shareText(v.share)} of the ${zoneOfRule[v.zone]} of ${guarded(v, speech)}.`,
    cure: 'Put it on the other side or on a truck: weight on roots harms them.',
  }),
  'dig-in-structural-roots': (v, speech) => ({
    text: `${speech.dig(v.dig)} cuts roots that hold up ${guarded(v, speech)}, within ${speech.size(v.radius)} of its trunk’s middle, ${heldWithin[v.is]}${v.fromTrunk ? ' by the thickness of its trunk' : ''}: it may fall.`,
    cure: `Do not trench there: bore, or go round. ${arborist}${v.protected ? ' and whoever protects the tree' : ''} first.`,
  }),
  'minor-encroachment': (v, speech) => ({
    text: `All digs together take ${shareText(v.share)} of the ${zoneOfRule[v.zone]} of ${guarded(v, speech)}, not more than ${shareText(v.limit)}.`,
    cure: 'As much ground is to be protected elsewhere beside the zone.',
  }),
  'major-encroachment': (v, speech) => ({
    text: `All digs together take ${shareText(v.share)} of the ${zoneOfRule[v.zone]} of ${guarded(v, speech)}${
      v.structural ? ', and cut roots that hold it up' : `, more than ${shareText(v.limit)}`
    }.`,
    cure: 'Make them smaller or bore; an arborist has to show that the tree stays sound.',
  }),
};

function takenAs(assumed: readonly TreeAssumption[]): string {
  return andList(assumed.map(({ as }) => taken[as] ?? as));
}

/** Of a zone: what nobody gave, and what the tree was taken as for it. */
export const treeTakenText: Words['treeTakenText'] = (assumed) => `Taken as ${takenAs(assumed)}.`;

export const boreText: Words['boreText'] = ({ asked, cover, enough }, units) => {
  const deep = `Boring under is asked to be ${sureText(asked, units)} deep`;
  if (cover === null || enough === null) return `${deep}; the pipe’s cover is not known.`;
  const has = `the pipe has ${sureText(cover, units)} of cover`;
  return `${deep}; ${has}, which ${enough ? 'is enough' : 'is too little'}.`;
};

function guarded({ tree, protected: isProtected }: { tree: string; protected: boolean }, speech: DigSpeech) {
  return isProtected ? `${speech.feature(tree)}, which is protected` : speech.feature(tree);
}

import type { ExcavationFindingValues } from '@footmark/dig';
import { WITHIN_95 } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { inSentence } from '../named';
import type { Said } from '../said';
import { acrossText, leastText } from './digMeasure';
import { soilNames } from './ruleNames';

type Sentences = {
  readonly [Code in keyof ExcavationFindingValues]: (
    values: ExcavationFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

const sideNames = { left: 'to the left of the flow', right: 'to the right of the flow' } as const;

const depthMissing = {
  'no-pipe-level': {
    text: 'no level of the pipe is known there',
    cure: 'Give a level or a depth of the pipe, or say how deep the dig is.',
  },
  'no-ground': {
    text: 'no level of the ground is known there',
    cure: 'Give a spot level near by, or say how deep the dig is.',
  },
  indoors: {
    text: 'the pipe runs under a building there',
    cure: 'End the trench at the wall, or say how deep the dig is.',
  },
} as const;

/** What is said of planned digs. */
export const cutSentences: Sentences = {
  'dig-without-place': ({ dig }, speech) => ({
    text: `${speech.dig(dig)} has no place: what it is at cannot be placed on the plan.`,
    cure: 'Put right its mark or its pipe, or delete the dig.',
  }),
  'trench-without-length': ({ dig, from, to }, speech) => ({
    text: `${speech.dig(dig)} has no length: it runs from ${speech.length(from)} to ${speech.length(to)}.`,
    cure: 'Choose two places of the pipe that are apart.',
  }),
  'trench-past-end': ({ dig, beyond, length }, speech) => ({
    text: `${speech.dig(dig)} goes ${speech.length(beyond)} past the end of the pipe, which is ${speech.length(length)} long, so it is taken to end there.`,
    cure: 'End it within the pipe, or draw the pipe further.',
  }),
  'pit-without-size': ({ dig }, speech) => ({
    text: `How large ${speech.dig(dig)} is cannot be told: its mark has no search zone yet.`,
    cure: 'Wait until the runs are weighed, or give the length and width of the pit.',
  }),

  'depth-not-known': ({ dig, because, station }, speech) => ({
    text: `How deep ${speech.dig(dig)} is cannot be told at ${speech.size(station)}: ${depthMissing[because].text}. What it meets is told of its bottom and of what is known of its sides, so it is the least.`,
    cure: depthMissing[because].cure,
  }),
  'depth-carried-on': ({ dig, sigma }, speech) => ({
    text: `The depth of ${speech.dig(dig)} goes by a level carried on along the slope that was said, give or take ${speech.size(WITHIN_95 * sigma)}.`,
    cure: 'Find the pipe’s depth near by before the dig.',
  }),
  'depth-not-positive': ({ dig, depth, station }, speech) => ({
    text: `The bottom of ${speech.dig(dig)} comes out ${speech.length(Math.abs(depth))} ${depth < 0 ? 'above' : 'from'} the ground at ${speech.size(station)}.`,
    cure: 'Check the levels of the ground and the pipe, or the depth that was said.',
  }),

  'soil-not-chosen': ({ dig, slope }, speech) => ({
    text: `Nobody has said what the soil is, so the sides of ${speech.dig(dig)} are taken at the gentlest slope, ${acrossText(slope)}.`,
    cure: 'Let a competent person judge the soil and say what it is, or use a shield.',
  }),
  'disturbed-soil-is-not': ({ dig, chosen, as, slope }, speech) => ({
    text: `Ground that was dug before is never ${inText(chosen)}: ${speech.dig(dig)} is taken as ${inText(as)}, ${acrossText(slope)}.`,
    cure: 'Let a competent person judge the soil, or use a shield.',
  }),
  'protective-system-needed': ({ dig, depth, atLeast, limit, planned }, speech) => ({
    text: `${speech.dig(dig)} is ${leastText(atLeast)}${speech.size(depth)} deep; from ${speech.length(limit)} on nobody goes in before its sides are cut back or held.`,
    cure: held[planned],
  }),
  'short-term-may-be-steeper': ({ dig, slope, limit, width }, speech) => ({
    text: `${speech.dig(dig)} is shown cut back as soil A is for longer; down to ${speech.length(limit)} and open for no more than 24 hours ${acrossText(slope)} is allowed, ${speech.size(width)} across at the top.`,
    cure: 'Only a competent person who has found the soil to be Type A may choose it, and it is filled again within the day.',
  }),
  'competent-person-decides': ({ dig, depth, limit }, speech) => ({
    text: `${speech.dig(dig)} is ${speech.size(depth)} deep, less than ${speech.length(limit)}, and its sides may still cave in.`,
    cure: 'A competent person looks at the ground before anyone goes in, and decides.',
  }),
  'depth-may-pass-limit': ({ dig, depth, sigma, limit }, speech) => ({
    text: `${speech.dig(dig)} comes out ${speech.size(depth)} deep, give or take ${speech.size(WITHIN_95 * sigma)}, so it may pass ${speech.length(limit)}.`,
    cure: 'Bring what holds the sides, or find the depth first.',
  }),
  'rock-must-be-stable': ({ dig, depth, atLeast }, speech) => ({
    text: `${speech.dig(dig)} stands straight, with nothing to hold it, for ${leastText(atLeast)}${speech.size(depth)} in what is said to be stable rock.`,
    cure: 'A competent person has to find it stable all the way down; else cut it back or hold it.',
  }),
  'engineer-designs': ({ dig, depth, atLeast, limit }, speech) => ({
    text: `${speech.dig(dig)} is ${leastText(atLeast)}${speech.size(depth)} deep, more than ${speech.length(limit)}: what holds its sides is an engineer’s work.`,
    cure: 'Have a registered professional engineer design it.',
  }),
  'shield-stands-above': ({ dig, above, upright, slope }, speech) => ({
    text: `The sides of ${speech.dig(dig)} stand straight for ${speech.size(upright)} behind the shield, which stands ${speech.length(above)} above them; from there on they ${slope === 0 ? 'are not cut back' : `are cut back ${acrossText(slope)}`}.`,
    cure: 'Set the shield as its maker says, and keep its top that far above the straight side.',
  }),
  'shield-reaches-ground': ({ dig, depth, atLeast }, speech) => ({
    text: `The sides of ${speech.dig(dig)} are taken to stand straight all the way up, so its shield has to reach the ground, ${leastText(atLeast)}${speech.size(depth)} high.`,
    cure: 'Order one that is so high, or say how high it is: then the ground above it is cut back.',
  }),
  'egress-needed': ({ dig, depth, atLeast, limit, places, travel }, speech) => ({
    text: `${speech.dig(dig)} is ${leastText(atLeast)}${speech.size(depth)} deep; from ${speech.length(limit)} on a ladder or ramp stands within ${speech.length(travel)} of everyone in it.`,
    cure:
      places === 1
        ? 'Set a ladder at the place shown.'
        : `Set ladders at the places shown: ${places} of them.`,
  }),

  'spoil-kept-back': ({ dig, setback, width, height, volume, side }, speech) => ({
    text: `Spoil from ${speech.dig(dig)} is about ${speech.volume(volume)} loose: a heap ${speech.size(width)} wide and ${speech.size(height)} high ${sideNames[side]}.`,
    cure: `Keep it and all equipment ${speech.length(setback)} back from the edge.`,
  }),
  'spoil-without-room': ({ dig, side, suggested, features }, speech) => ({
    text: `Spoil from ${speech.dig(dig)} has no room ${side === null ? 'on either side' : sideNames[side]}${features.length === 0 ? '' : `: ${speech.features(features)} ${features.length === 1 ? 'is' : 'are'} in the way`}.`,
    cure:
      side === null || suggested === 'away'
        ? 'Load it on a truck, or make the dig smaller with a shield.'
        : `Put it ${sideNames[suggested]}, where there is room.`,
  }),

  'dig-crosses-boundary': ({ dig, feature, length, atLeast }, speech) => ({
    text: `${speech.dig(dig)} runs over ${speech.feature(feature)} for ${leastText(atLeast)}${speech.size(length)}.`,
    cure: 'Ask whoever owns the other side, in writing, or keep the dig on this side with a shield.',
  }),
  'dig-in-easement': ({ dig, feature, area, atLeast }, speech) => ({
    text: `${speech.dig(dig)} takes ${leastText(atLeast)}${speech.area(area)} of ${speech.feature(feature)}.`,
    cure: 'Ask whoever holds the easement before the dig.',
  }),
  'dig-reaches-building': ({ dig, feature, area, atLeast }, speech) => ({
    text: `The top of ${speech.dig(dig)} reaches ${leastText(atLeast)}${speech.area(area)} under ${speech.feature(feature)}.`,
    cure: 'Use a shield, end the dig short of it, or have an engineer say how the building is held.',
  }),
  'dig-takes-pavement': ({ dig, feature, area, atLeast }, speech) => ({
    text: `${speech.dig(dig)} takes up ${leastText(atLeast)}${speech.area(area)} of ${speech.feature(feature)}.`,
    cure: 'Plan to saw-cut it and put it back; ask for a permit where it is public.',
  }),
  'dig-crosses-service': ({ dig, feature, length, atLeast, unknown }, speech) => ({
    text:
      unknown === null
        ? `${speech.dig(dig)} lays bare ${leastText(atLeast)}${speech.size(length)} of ${speech.feature(feature)}.`
        : `${speech.dig(dig)} runs over ${speech.feature(feature)} for ${leastText(atLeast)}${speech.size(length)} and may lay it bare: how deep ${unknown === 'service' ? 'that lies' : 'the dig is'} is not known.`,
    cure: `Have it located${unknown === null ? '' : ' and its depth found'}, dig by hand or with vacuum beside it, and hold it up while it hangs.`,
  }),
  'dig-takes-thing': ({ dig, feature }, speech) => ({
    text: `The top of ${speech.dig(dig)} takes ${speech.feature(feature)}.`,
    cure: 'Make the dig smaller with a shield, move it, or agree what becomes of the thing.',
  }),
  'dig-takes-trunk': ({ dig, feature }, speech) => ({
    text: `The trunk of ${speech.feature(feature)} stands in the cut of ${speech.dig(dig)}: the tree would fall.`,
    cure: 'Go round it or bore under it. Ask an arborist before any root is cut, and whether the tree may be felled at all.',
  }),
  'dig-under-footing': ({ dig, feature, depth, atLeast, footing, distance, reach, assumed }, speech) => ({
    text: `${speech.dig(dig)}, ${leastText(atLeast)}${speech.size(depth)} deep and ${speech.size(Math.max(0, distance))} from ${speech.feature(feature)}, goes below what bears on the ground from its footing, ${footingText(footing, assumed, speech)}.`,
    cure: `Stay ${leastText(atLeast)}${speech.size(reach)} away, or have an engineer say how the building is held${assumed === null ? '' : '; find out how deep the footing is'}.`,
  }),
  'footing-taken': ({ dig, feature, depth, footing, distance, reach, shallowest, assumed }, speech) => ({
    text: `${speech.dig(dig)}, ${speech.size(depth)} deep and ${speech.size(Math.max(0, distance))} from ${speech.feature(feature)}, spares its footing only if that is ${footingText(footing, assumed, speech)}; one ${speech.length(shallowest)} deep would be undermined.`,
    cure: `Find out how deep the footing is and say it on the building’s card; until then stay ${speech.size(reach)} away.`,
  }),
  'footing-not-judged': ({ dig, feature, footing, distance, deepest, assumed }, speech) => ({
    text: `Whether ${speech.dig(dig)} undermines ${speech.feature(feature)}, ${distance > 0 ? `${speech.size(distance)} away` : 'which it reaches'}, cannot be told, as its depth is not known: deeper than ${speech.size(deepest)} it goes below what bears on the ground from the footing, ${footingText(footing, assumed, speech)}.`,
    cure: `Say how deep the dig is, and go no deeper before an engineer says how the building is held${assumed === null ? '' : '; find out how deep the footing is'}.`,
  }),
};

const held = {
  slope:
    'Cut the sides back to the slope shown, or set a shield; a competent person looks each day and after rain.',
  shield:
    'Set the shield before anyone goes in, and stay inside it; a competent person looks each day and after rain.',
  engineer:
    'Nobody goes in before what an engineer designed for it stands: no slope of the table holds for a dig so deep, and the slope shown only tells how much room it would take.',
} as const;

function footingText(
  footing: number,
  assumed: ExcavationFindingValues['dig-under-footing']['assumed'],
  speech: DigSpeech,
): string {
  const deep = `${speech.length(footing)} deep`;
  if (assumed === null) return deep;
  return `taken to be ${deep}${assumed === 'nothing' ? ' as nothing is known of it' : ' from its kind of foundation'}`;
}

function inText(soil: keyof typeof soilNames): string {
  const [name = ''] = inSentence(soilNames[soil]).split(',');
  return name;
}

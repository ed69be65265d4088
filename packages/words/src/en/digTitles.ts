import { WITHIN_95 } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { atStart } from '../named';
import type { DigFindingTable } from '../sayFinding';
import { owners } from './digLandText';
import { leastText, shareText } from './digMeasure';
import { soilNames } from './ruleNames';
import { dateText } from './visitText';

/** What is found and how much of it, in a line that is read at a glance; what it is said of stands beside it. */
export const digTitles: DigFindingTable<DigSpeech, string> = {
  'dig-without-place': () => 'No place on the plan',
  'trench-without-length': () => 'No length',
  'trench-past-end': ({ beyond }, say) => `${say.length(beyond)} past the end of the pipe`,
  'pit-without-size': () => 'Size not known yet',
  'depth-not-known': ({ station }, say) => `Depth not known at ${say.size(station)}`,
  'depth-carried-on': ({ sigma }, say) => `Depth carried on, give or take ${say.size(WITHIN_95 * sigma)}`,
  'depth-not-positive': ({ station }, say) => `Bottom not below the ground at ${say.size(station)}`,
  'soil-not-chosen': () => 'Nobody has judged the soil',
  'disturbed-soil-is-not': ({ as }) => `Dug before: taken as ${soilNames[as].split(',')[0]}`,
  'protective-system-needed': ({ depth, atLeast, planned }, say) =>
    `${leastText(atLeast)}${say.size(depth)} deep: ${held[planned]}`,
  'short-term-may-be-steeper': ({ width }, say) => `Open for a day: ${say.size(width)} across at the top`,
  'competent-person-decides': ({ depth }, say) => `${say.size(depth)} deep: it may still cave in`,
  'depth-may-pass-limit': ({ limit }, say) => `May be deeper than ${say.length(limit)}`,
  'rock-must-be-stable': ({ depth, atLeast }, say) =>
    `Straight sides for ${leastText(atLeast)}${say.size(depth)} in rock`,
  'engineer-designs': ({ depth, atLeast }, say) =>
    `${leastText(atLeast)}${say.size(depth)} deep: an engineer’s work`,
  'shield-stands-above': ({ above, upright }, say) =>
    `Straight for ${say.size(upright)}, shield ${say.length(above)} higher`,
  'shield-reaches-ground': ({ depth, atLeast }, say) =>
    `Shield to the ground, ${leastText(atLeast)}${say.size(depth)}`,
  'egress-needed': ({ places, travel }, say) =>
    `${places === 1 ? 'A ladder' : `${places} ladders`} within ${say.length(travel)}`,
  'spoil-kept-back': ({ setback, volume }, say) =>
    `Spoil ${say.length(setback)} back, ${say.volume(volume)} loose`,
  'spoil-without-room': () => 'No room for the spoil',
  'dig-crosses-boundary': ({ feature, length, atLeast }, say) =>
    `Over ${say.feature(feature)} for ${leastText(atLeast)}${say.size(length)}`,
  'dig-in-easement': ({ feature, area, atLeast }, say) =>
    `${leastText(atLeast)}${say.area(area)} of ${say.feature(feature)}`,
  'dig-reaches-building': ({ feature, area, atLeast }, say) =>
    `${leastText(atLeast)}${say.area(area)} under ${say.feature(feature)}`,
  'dig-takes-pavement': ({ feature, area, atLeast }, say) =>
    `${leastText(atLeast)}${say.area(area)} of ${say.feature(feature)} to put back`,
  'dig-crosses-service': ({ feature, length, atLeast, unknown }, say) =>
    unknown === null
      ? `${leastText(atLeast)}${say.size(length)} of ${say.feature(feature)} laid bare`
      : `May lay bare ${say.feature(feature)}: a depth is not known`,
  'dig-takes-thing': ({ feature }, say) => `Takes ${say.feature(feature)}`,
  'dig-takes-trunk': ({ feature }, say) => `The trunk of ${say.feature(feature)} stands in the cut`,
  'footing-taken': ({ feature, footing }, say) =>
    `Spares ${say.feature(feature)} only if its footing is ${say.length(footing)} deep`,
  'footing-not-judged': ({ feature, deepest }, say) =>
    `Deeper than ${say.size(deepest)} undermines ${say.feature(feature)}`,
  'dig-under-footing': ({ feature, reach, atLeast }, say) =>
    `Below the footing of ${say.feature(feature)}: stay ${leastText(atLeast)}${say.size(reach)} off`,

  'tree-without-diameter': () => 'No trunk diameter',
  'tree-facts-assumed': ({ assumed }) =>
    assumed.length === 1 ? 'One fact is assumed' : `${assumed.length} facts are assumed`,
  'pipe-in-root-zone': ({ tree, length }, say) => `${say.size(length)} in the roots of ${say.feature(tree)}`,
  'dig-in-root-zone': ({ tree, share, atLeast }, say) =>
    `Takes ${leastText(atLeast)}${shareText(share)} of the root zone of ${say.feature(tree)}`,
  'spoil-in-root-zone': ({ tree, share }, say) =>
    `Spoil on ${shareText(share)} of the root zone of ${say.feature(tree)}`,
  'dig-in-structural-roots': ({ tree }, say) => `Cuts roots that hold ${say.feature(tree)} up`,
  'minor-encroachment': ({ share }) => `All digs take ${shareText(share)} of its zone`,
  'major-encroachment': ({ share }) => `All digs take ${shareText(share)} of its zone`,

  'pipe-too-near': ({ feature, distance, required }, say) =>
    `${say.size(distance)} ${distance < 0 ? 'into' : 'from'} ${say.feature(feature)}, ${say.length(required)} asked`,
  'service-nearer-than-elsewhere': ({ feature, distance }, say) =>
    `${say.size(distance)} from ${say.feature(feature)}, enough here`,
  'mark-in-tolerance-zone': ({ feature, distance }, say) =>
    `Dig by hand: ${distance > 0 ? `${say.size(distance)} from` : 'over'} ${say.feature(feature)}`,
  'pipe-along-wall': ({ feature, distance }, say) =>
    `Along ${say.feature(feature)}, ${say.size(distance)} from it`,
  'outline-doubtful': () => 'Outline crosses itself',

  'no-boundary': () => 'No boundary is drawn',
  'boundary-crosses-itself': () => 'Outline crosses itself',
  'boundary-not-closed': ({ gap }, say) => `Does not close, by ${say.size(gap)}`,
  'lot-not-told': ({ lots }) => `${lots} lots, and none holds the building`,
  'right-of-way-without-house': () => 'Which side is public is not told',
  'path-on-neighbour': ({ from, to }, say) => `${say.size(to - from)} ${owners.neighbour}`,
  'path-on-public': ({ from, to }, say) => `${say.size(to - from)} ${owners.public}`,
  'path-in-easement': ({ from, to, features }, say) => `${say.size(to - from)} in ${say.features(features)}`,
  'path-outside': ({ from, to }, say) => `${say.size(to - from)} ${owners.outside}`,
  'path-along-boundary': ({ from, to, features }, say) =>
    `${say.size(to - from)} along ${say.features(features)}`,
  'path-crosses-open-boundary': ({ feature, station }, say) =>
    `Crosses ${say.feature(feature)} at ${say.size(station)}`,
  'mark-not-private': ({ whose }) => atStart(owners[whose]),

  'service-crossed': ({ feature, station }, say) => `Crosses ${say.feature(feature)} at ${say.size(station)}`,
  'dig-in-tolerance-zone': ({ feature, handDig, atLeast }, say) =>
    `${handDig === null ? 'Dig' : `${leastText(atLeast)}${say.size(handDig)}`} by hand near ${say.feature(feature)}`,
  'tolerance-under-floor': ({ floor }, say) => `Tolerance zone under the least, ${say.length(floor)}`,
  'service-without-diameter': () => 'No diameter',
  'one-call-missing': () => 'No one-call ticket',
  'one-call-not-called': () => 'One-call centre not called yet',
  'one-call-waiting': ({ from }) =>
    from === null ? 'One-call marks not made yet' : `One-call marks from ${dateText(from)} on`,
  'one-call-expired': ({ until }) =>
    until === null ? 'One-call marks ran out' : `One-call marks ran out on ${dateText(until)}`,
  'one-call-dates-clash': () => 'Days of the one-call ticket clash',
  'one-call-without-end': () => 'One-call ticket without a last day',

  'fall-too-little': ({ slope, least }, say) => `Falls ${say.slope(slope)}, ${say.slope(least)} is the least`,
  'fall-against-flow': ({ slope }, say) => `Rises with the flow, by ${say.slope(-slope)}`,
  'fall-not-sure': ({ least }, say) => `Whether it falls ${say.slope(least)} is not sure`,
  'fall-said-too-little': ({ slope, least }, say) =>
    `Planned to fall ${say.slope(slope)}, ${say.slope(least)} is the least`,
  'fall-less-than-elsewhere': ({ slope, elsewhere }, say) =>
    `Falls ${say.slope(slope)}, some codes ask ${say.slope(elsewhere)}`,
  'fall-not-known': () => 'Whether it falls enough is not known',
  'end-below-tap': ({ by }, say) => `Comes out ${say.size(by)} below the tap`,
  'cover-too-thin': ({ cover, station }, say) => `${coverText(cover, say)} at ${say.size(station)}`,
  'cover-above-frost': ({ cover, station }, say) =>
    `${coverText(cover, say)} at ${say.size(station)}, above frost`,
  'cover-not-known': ({ length }, say) => `Cover not known on ${say.size(length)}`,
  'cleanout-at-head': () => 'No cleanout at the upper end',
  'cleanout-at-junction': ({ station }, say) => `No cleanout outside the wall, at ${say.size(station)}`,
  'manhole-along': ({ station }, say) => `No manhole by ${say.size(station)}`,
  'cleanout-too-small': ({ feature }, say) => `${say.feature(feature)} is too narrow`,
  'cleanout-at-turn': ({ station }, say) => `No cleanout at the turn at ${say.size(station)}`,
  'cleanout-after-turns': ({ station }, say) => `No cleanout after its turns, at ${say.size(station)}`,
  'cleanout-along': ({ spacing }, say) => `No cleanout within ${say.length(spacing)}`,
  'turn-needs-sweep': ({ station }, say) => `Too sharp a turn at ${say.size(station)}`,
  'water-too-near': ({ service, crosses, distance, main }, say) =>
    `${say.feature(service)} ${crosses ? 'crosses' : `${say.size(distance)} off`}, ${
      main && crosses ? 'too little between them' : 'not high enough above it'
    }`,
  'water-depth-not-known': ({ service, crosses, distance }, say) =>
    `${say.feature(service)} ${crosses ? 'crosses' : `${say.size(distance)} off`}, not known whether it may`,
  'water-allowed': ({ service, crosses, distance, by }, say) =>
    `${say.feature(service)} ${crosses ? 'crosses' : `${say.size(distance)} off`}, allowed by ${by === 'height' ? 'its height' : 'what the sewer is of'}`,
  'water-nearer-than-elsewhere': ({ service, distance }, say) =>
    `${say.size(distance)} from ${say.feature(service)}, enough here`,
};

const held = {
  slope: 'cut back or hold the sides',
  shield: 'set the shield first',
  engineer: 'no slope of the table holds',
} as const;

function coverText(cover: number, say: DigSpeech): string {
  return cover < 0 ? `${say.size(-cover)} out of the ground` : `${say.size(cover)} of cover`;
}

import {
  type Finding,
  type FindingCode,
  type FindingOf,
  type Site,
  settings,
  type Target,
  WITHIN_95,
} from '@footmark/site';
import type { Sentences, Speech } from '../findingSpeech';
import { angleText, counterText, lengthText, slopeText } from '../measureText';
import { atStart } from '../named';
import { percentText } from '../percentText';
import { ratioText } from '../ratioText';
import type { Said } from '../said';
import { isPaintBeside, targetOfKey } from '../thing';
import { foundSentences } from './foundSentences';
import { markInText, spokenName, targetInText } from './thingName';

const goodCut = `${angleText(settings.weakCutBelow.value)} to ${angleText(settings.weakCutAbove.value)}`;

const sentences: Sentences = {
  'tapes-too-short': ({ gap, a, b }, { thing, name, length }) => ({
    text: `The tapes from ${name(a)} and ${name(b)} to ${thing} do not meet: they are ${length(gap)} short.`,
    cure: 'Check which points they were taken from, and tape both again.',
  }),
  'tapes-too-long': ({ gap, a, b }, { thing, name, length }) => ({
    text: `The tapes from ${name(a)} and ${name(b)} to ${thing} do not meet: one is ${length(gap)} too long for the other.`,
    cure: 'Check which points they were taken from, and tape both again.',
  }),
  'tapes-same-place': ({ a, b }, { thing, name }) => ({
    text: `${thing} is taped from ${name(a)} and ${name(b)}, which are in the same place.`,
    cure: 'Tape it from a second point that stands somewhere else.',
  }),
  'tapes-not-converged': ({ a }, { thing, name }) => ({
    text: `No place fits the tapes to ${thing}, the first of which is from ${name(a)}.`,
    cure: 'Check which points they were taken from, and each tape.',
  }),
  'tapes-one-way': ({ axis }, { thing, length }) => ({
    text:
      axis === null
        ? `The tapes to ${thing} all run one way, so they do not tell how far it lies to the side.`
        : `The tapes to ${thing} all run nearly one way, so they leave it unsure by ${length(axis)} to the side.`,
    cure: `Tape it from one more point, so that two tapes cross at ${goodCut}.`,
  }),
  'tapes-disagree': ({ worst, by }, { thing, name, length }) => ({
    text: `The tapes to ${thing} disagree: the one from ${name(worst)} is ${length(Math.abs(by))} ${by < 0 ? 'shorter' : 'longer'} than the place that fits them all best.`,
    cure: `Tape from ${name(worst)} again, or take that tape out.`,
  }),
  'weak-cut': ({ cut }, { thing }) => ({
    text: `The two tapes to ${thing} cross at ${angleText(cut)}, so a small slip moves it far.`,
    cure: `Tape it from two points whose tapes cross at ${goodCut}, or add a third tape.`,
  }),
  'line-has-no-length': ({ a, b }, { thing, name }) => ({
    text: `${thing} is measured along the line from ${name(a)} to ${name(b)}, which has no length.`,
    cure: 'Choose two points that stand apart.',
  }),
  'tree-has-no-diameter': (_, { thing }) => ({
    text: `${thing} has no trunk diameter, so distances to it run to its centre.`,
    cure: 'Measure the trunk and give its diameter.',
  }),
  'outline-crosses-itself': (_, { thing }) => ({
    text: `The outline of ${thing} crosses itself.`,
    cure: 'Move the corner that is out of place, or check how it was measured.',
  }),
  'boundary-misclosure': ({ misclosure, ratio, balanced }, { thing, length }) => ({
    text: `The sides of ${thing} come out ${length(misclosure)} from where they began, ${ratioText(ratio)} of their length${balanced ? '; it is shared out among them by the compass rule' : ''}.`,
    cure:
      ratio < 1 / settings.misclosure.value
        ? `Check each side against the plat: more than ${ratioText(1 / settings.misclosure.value)} is mostly a slip in one of them.`
        : balanced
          ? 'Check each side against the plat, or leave it as it is.'
          : 'Check each side against the plat, or share it out by the compass rule.',
  }),
  'cannot-balance': ({ because }, { thing }) =>
    because === 'no-closing'
      ? {
          text: `The sides of ${thing} cannot be balanced: its last side, back to the first corner, was not measured.`,
          cure: 'Give the last side as a course, or take the balance off.',
        }
      : {
          text: `The outline cannot be balanced: ${thing} has a place of its own and does not follow from the side before it.`,
          cure: 'Give every corner but the first by a course from the one before it, or take the balance off.',
        },

  'north-line-has-no-length': ({ a, b }, { name }) => ({
    text: `North is told by the line from ${name(a)} to ${name(b)}, which has no length.`,
    cure: 'Choose two points that stand well apart.',
  }),
  'north-needs-two-control-points': ({ points }) => ({
    text:
      points === 0
        ? 'North is to come from control points, and none has a place.'
        : 'North is to come from control points, and one alone gives no direction.',
    cure: 'Add a second control point far from the first, or tell north by a line or a compass.',
  }),
  'control-points-coincide': () => ({
    text: 'The control points are all in one place, in the sketch or on the earth, so they give no direction.',
    cure: 'Check their latitudes and longitudes, and choose points that stand well apart.',
  }),
  'control-too-close': ({ sigma, apart }, { length }) => ({
    text: `North from the control points is sure to ${angleText(sigma)} only: they are ${length(apart)} apart at the most, which is little for their accuracy.`,
    cure: 'Choose points further apart, take more accurate ones, or tell north by a line or a compass.',
  }),
  'control-scale-differs': ({ scale }) => ({
    text: `The control points are ${percentText(Math.abs(scale - 1))} ${scale > 1 ? 'further apart' : 'closer together'} on the earth than in the sketch.`,
    cure: 'Check their latitudes and longitudes, and the lengths in the sketch and their unit.',
  }),
  'control-inaccurate': ({ accuracy, limit }, { thing, length }) => ({
    text: `The control point at ${thing} is sure to ${length(accuracy)} only; more than ${length(limit)} is no help on a yard.`,
    cure: 'Wait under open sky until the device is surer, or type coordinates from a map.',
  }),
  'control-disagrees': ({ residual, accuracy }, { thing, length }) => ({
    text: `The control point at ${thing} lies ${length(residual)} from where it should be, and is said to be sure to ${length(accuracy)}.`,
    cure: 'Check its latitude and longitude, and that it is this point.',
  }),
  'control-too-far': ({ reach }, { thing, length }) => ({
    text: `The control point at ${thing} is more than ${length(reach)} from the middle of the control points, so it is left out.`,
    cure: 'Check its latitude and longitude: one of them is mistyped.',
  }),

  'underlay-span-is-nothing': ({ underlay }) => ({
    text: `The picture ${underlay} has no scale: the two ends of its known length are the same place.`,
    cure: 'Mark two places in the picture that are well apart.',
  }),
  'underlay-pairs-coincide': ({ underlay }) => ({
    text: `The picture ${underlay} cannot be fitted: its points are all the same place, in the picture or in the plan.`,
    cure: 'Choose two points or more that are well apart.',
  }),
  'underlay-pair-disagrees': ({ underlay, pair, by }, { length }) => ({
    text: `Point ${pair} of the picture ${underlay} is ${length(by)} off from where the others put it.`,
    cure: 'Mark it again in the picture, or check the point of the plan that it is said to be.',
  }),

  'path-too-few-points': (_, { thing }) => ({
    text: `${thing} has fewer than two points with a place, so it leads nowhere.`,
    cure: 'Put right the points that have no place, or add one.',
  }),
  'path-arc-taken-straight': (_, { thing }) => ({
    text: `${thing} is the end of a curve, which a pipe does not follow: the leg to it is taken as straight.`,
    cure: 'Put the point where the straight pipes on both sides would meet, and give the bend there its radius.',
  }),
  'path-leg-has-no-length': ({ leg }, { thing }) => ({
    text: `Leg ${leg} of ${thing} has no length: both of its ends are in the same place.`,
    cure: 'Move one of the two points, or remove it.',
  }),
  'bend-does-not-fit': ({ vertices }, { thing }) => ({
    text:
      vertices === 1
        ? `${thing} has a bend without room for its radius, so it is taken tighter.`
        : `${thing} has ${vertices} bends without room for their radius, so they are taken tighter.`,
    cure: 'Check the points there, or give the bend a smaller radius.',
  }),
  'branch-apart-from-path': ({ distance }, { thing, length }) => ({
    text: `${thing} ends ${length(distance)} away from the point where it joins the other pipe.`,
    cure: 'Put its last point at the point that it joins.',
  }),

  'slope-too-flat': ({ from, to, slope: falls, sigma, least }, { thing, length, slope }) => ({
    text: `${thing} falls ${slope(falls)}, give or take ${slope(WITHIN_95 * sigma)} (95 %), between ${length(from)} and ${length(to)} from its start; ${slope(least)} is the least for its size.`,
    cure: 'Check the two levels. If they hold, dirt will settle there: ask what the local code says before it is relaid.',
  }),
  'slope-against-flow': ({ from, to, slope: falls, sigma }, { thing, length, slope }) => ({
    text: `${thing} rises with the flow between ${length(from)} and ${length(to)} from its start: by ${slope(-falls)}, give or take ${slope(WITHIN_95 * sigma)} (95 %).`,
    cure: 'Check the two levels, and which way the pipe flows. If they hold, water stands there.',
  }),
  'slope-unsure': ({ from, to, slope: falls, sigma, least, others, whole }, { thing, length, slope }) => ({
    text: `Between ${length(from)} and ${length(to)} from its start ${thing} falls ${slope(falls)}, give or take ${slope(WITHIN_95 * sigma)} (95 %): the levels cannot tell whether that is the least for its size, ${slope(least)}.${
      others > 0 ? ' Further stretches are no surer.' : ''
    }${whole ? ' From the first level to the last it does fall enough.' : ''}`,
    cure: 'Take surer levels there, or levels further apart, if it matters.',
  }),
  'levels-disagree': ({ by, allowed, a, b }, { name, length }) => ({
    text: `The levels of the pipe by ${name(a)} and by ${name(b)} are ${length(by)} apart; up to ${length(allowed)} would be no wonder.`,
    cure: 'Measure both again, or take out the one that is wrong.',
  }),
  'invert-above-ground': ({ by, station }, { thing, length }) => ({
    text: `By ${thing} the invert of the pipe lies ${length(by)} above the ground, ${length(station)} from the start of the pipe.`,
    cure: 'Check that level and those of the ground nearby, and that they are counted from the same benchmark.',
  }),

  'run-has-no-entry': (_, { thing }) => ({
    text: `${thing} has no entry with a place, so none of its readings lead to a mark.`,
    cure: 'Choose where the camera went in, and give that a place.',
  }),
  'run-has-no-path': (_, { thing }) => ({
    text: `${thing} has no pipe to follow, so none of its readings lead to a mark.`,
    cure: 'Choose the pipe that the camera came into.',
  }),
  'path-cannot-be-computed': ({ path }, { thing, name }) => ({
    text: `${thing} follows ${name(path)}, which cannot be computed.`,
    cure: `First put right what is said of ${name(path)}.`,
  }),
  'entry-not-on-path': ({ entry, path, distance, reach }, { thing, name, length }) => ({
    text: `${name(entry)}, where ${thing} goes in, is ${length(distance)} from ${name(path)}; more than ${length(reach)} counts as not on it.`,
    cure: 'Draw the path through the entry, or put the entry where it stands.',
  }),
  'entry-beside-path': ({ entry, path, distance }, { thing, name, length }) => ({
    text: `${name(entry)}, where ${thing} goes in, is ${length(distance)} beside ${name(path)}, so readings count from the nearest place on it.`,
    cure: 'If the entry stands on the pipe, put a point of the path at it.',
  }),
  'branch-not-on-run': ({ branch }, { thing, name }) => ({
    text: `${thing} cannot turn into ${name(branch)}, which does not join the pipe ahead of the camera.`,
    cure: 'Check which branches it took and in which order, and where that one joins.',
  }),
  'zero-point-not-on-run': (_, { thing }) => ({
    text: `The point at which ${thing} was zeroed is not on its way through the pipes, so its readings count from the entry.`,
    cure: 'Choose a point of a pipe that the camera came through, or say where else it was zeroed.',
  }),
  'sweep-does-not-fit': ({ riser, sweepRadius }, { thing, length }) => ({
    text: `The riser of ${thing} is given as ${length(riser)}, shorter than the ${length(sweepRadius)} radius of the sweep at its foot.`,
    cure: 'Measure the riser from the rim down to the pipe, or give its sweep a smaller radius.',
  }),

  'reading-before-zero': ({ reading, zero }, { thing, counter }) => ({
    text: `${thing} is before the zero: the count is ${counter(reading)} and the zero is ${counter(zero)}.`,
    cure: 'Check the reading, and what the counter showed when it was zeroed.',
  }),
  'reading-in-riser': ({ short }, { thing, length }) => ({
    text: `${thing} is still in the riser, ${length(short)} short of the pipe.`,
    cure: 'Check the length of the riser, or leave it as it is: it has no mark.',
  }),
  'reading-off-known-way': ({ beyond, length: known }, { thing, length }) => ({
    text: `${thing} lies ${length(beyond)} beyond the part of the way that is known, ${length(known)} of cable from the entry.`,
    cure: 'First put right which branches the run took.',
  }),
  'reading-past-end': ({ beyond, length: whole, path }, { thing, name, length }) => ({
    text: `${thing} lies ${length(beyond)} past the end of ${name(path)}, which is ${length(whole)} of cable from the entry.`,
    cure: 'Check the reading, or draw the path on to where it ends.',
  }),
  'counter-went-back': ({ before, beforeReading }, { thing, counter }) => ({
    text: `The counter went back: ${thing} comes after ${before} (${counter(beforeReading)}).`,
    cure: `If the counter was set anew at ${before}, say so there; else check both readings.`,
  }),
  'reading-in-drop': (_, { thing }) => ({
    text: `${thing} lies in a vertical drop, where the place stays the same and the depth changes.`,
    cure: 'Look at the depth of the drop before you dig there.',
  }),
  'mark-under-building': ({ building }, { mark, name }) => ({
    text: `${mark} lies under ${name(building)}, so it has no ties.`,
    cure: 'Check the path and the outline, or reach it from inside.',
  }),
  'paint-under-building': ({ building }, { mark, name }) => ({
    text: `${mark} is to stand under ${name(building)}, so it has no ties.`,
    cure: 'Choose another direction or distance from the mark, so that the paint stands in the open.',
  }),
  'no-ties': ({ within }, { mark, length }) => ({
    text: `${mark} has no two reference points in sight within a tape of ${length(within)}.`,
    cure: 'Measure in points near it that can be found again, such as corners, poles or hydrants.',
  }),
  'no-check-tie': (_, { mark }) => ({
    text: `${mark} has two ties and no third one to check them by.`,
    cure: 'Measure in one more point near it that can be found again.',
  }),
  'ties-weak': ({ cut }, { mark }) => ({
    text: `The two ties of ${mark} cross at ${angleText(cut)}, so a small slip moves it far.`,
    cure: `Measure in a point near it from which a tape crosses at ${goodCut}.`,
  }),
  'tie-from-assumed': ({ from }, { mark, point }) => ({
    text: `A tie of ${mark} starts at ${point(from)}, whose place to the pipe was not measured.`,
    cure: `Measure in ${point(from)} from what the pipe was measured from.`,
  }),

  'seen-point-not-on-run': (_, { thing }) => ({
    text: `The point that ${thing} saw is not on its way through the pipes, so it says nothing of where that is.`,
    cure: 'Choose a point of a pipe that the camera came through, or take it off the reading.',
  }),
  'locate-has-no-reading': (_, { thing }) => ({
    text: `${thing} is tied to no reading, so it is compared with nothing.`,
    cure: 'Choose the reading at which the receiver found the sonde there.',
  }),
  'locate-depth-rough': (_, { thing }) => ({
    text: `${thing} was found in passing, which tells no depth: the depth that is written down is not used.`,
    cure: 'Stand still over the peak and read the depth again, then say how it was located.',
  }),
  'locate-reading-has-no-place': ({ reading }, { thing }) => ({
    text: `${thing} was found at reading ${reading}, which has no place, so it is compared with nothing.`,
    cure: `First put right what is said of reading ${reading}.`,
  }),

  'pair-of-one-run': ({ a, b }) => ({
    text: `${a} and ${b} are said to be one thing, and both are readings of one run.`,
    cure: 'Take the pair apart, and pair each with a reading of another run.',
  }),
  'pair-on-two-paths': ({ a, b, pathA, pathB }, { name }) => ({
    text: `${a} and ${b} are said to be one thing, and lie on two pipes: ${name(pathA)} and ${name(pathB)}.`,
    cure: 'Check which branches the two runs took, or take the pair apart.',
  }),
  'cables-too-short': ({ a, b, pointA, pointB, gap }, { point, length }) => ({
    text: `${a} and ${b} are said to be one thing, but the cables to them from ${point(pointA)} and ${point(pointB)} are together ${length(gap)} shorter than the straight line between the two.`,
    cure: `Check both readings and zeros, the places of ${point(pointA)} and ${point(pointB)}, or take the pair apart.`,
  }),

  ...foundSentences,
};

/** One sentence that names the thing, and one for the way out. */
export function findingText(finding: Finding, site: Site): Said {
  const said = say(finding, {
    thing: targetInText(finding.at, site),
    mark: paintedInText(finding.at, site),
    name: (carried) => spokenName(carried, site),
    point: (key) => targetInText(targetOfKey(key, site), site),
    length: (metres) => lengthText(metres, site.units),
    counter: (metres) => counterText(metres, site.units),
    slope: slopeText,
  });
  return { text: atStart(said.text), cure: atStart(said.cure) };
}

/** What is taped for a reading: its mark, or the paint that stands beside it. */
function paintedInText(at: Target, site: Site): string {
  const mark = markInText(at, site);
  return isPaintBeside(at, site) ? `the paint beside ${mark}` : mark;
}

function say<Code extends FindingCode>({ code, values }: FindingOf<Code>, speech: Speech): Said {
  return sentences[code](values, speech);
}

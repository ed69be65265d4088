import type { Blocked, Change, Relaxation, RequestProblem, RouteFault } from '@footmark/route';
import type { Site } from '@footmark/site';
import { angleText, slopeText } from '../measureText';
import type { Said } from '../said';
import { standStraight } from '../trenchSides';
import { acrossText } from './digMeasure';
import { andList } from './listText';
import { sureText } from './sureText';
import { mindedName } from './wayText';

/** An obstacle of a request, which is a thing of the site or its roots. */
function obstacleName(id: string, site: Site): string {
  return mindedName(id, id.replace(/^roots\//, ''), site);
}

/** What keeps a route from being one. */
export function blockedText(blocked: Blocked, site: Site): string {
  const names = 'obstacles' in blocked ? andList(blocked.obstacles.map((id) => obstacleName(id, site))) : '';
  switch (blocked.code) {
    case 'ground':
      return `No ground leads through: ${names} close it off.`;
    case 'obstacles':
      return `In the way: ${names}.`;
    case 'together':
      return names === '' ? 'What is asked leaves no way.' : `In the way, all together: ${names}.`;
    case 'fall':
      return 'There is too little fall for the way around.';
    case 'headings':
      return 'It cannot come in as a wye would have it.';
    case 'bends':
      return 'It would take more bends than are allowed.';
    case 'straight':
      return 'There is no room for the straight pipe between fittings.';
  }
}

/** The smallest change that opens a way, and how long that way is. */
export function relaxationText({ change, route }: Relaxation, site: Site): string {
  return `${changeText(change, site)}: ${sureText(route.cost.length, site.units)} of pipe.`;
}

function changeText(change: Change, site: Site): string {
  const size = (metres: number) => sureText(metres, site.units);
  switch (change.is) {
    case 'less-clearance': {
      const name = obstacleName(change.obstacle, site);
      return `Keep ${size(change.to)} from ${name} (${size(change.from)} asked)`;
    }
    case 'through':
      return `Through ${obstacleName(change.obstacle, site)}`;
    case 'less-fall':
      return `With a fall of ${slopeText(change.to)} where ${slopeText(change.from)} is asked`;
    case 'any-heading':
      return 'Coming in from another side';
    case 'more-bends':
      return `With ${change.to} bends, not ${change.from}`;
    case 'no-straight':
      return 'With fittings close up to each other';
  }
}

/** How the sides of a trench have to be kept where it comes so near. */
export function sidesText(slope: number): string {
  return standStraight(slope)
    ? 'The sides of its trench then stand straight: shore them, or use a shield.'
    : `The sides of its trench are then cut back ${acrossText(slope)} at the most; where the ground does not stand so, shore them or use a shield.`;
}

/** What is wrong with what is asked for, and what to change. */
export function routeProblemText({ code, values }: RequestProblem, site: Site): Said {
  const size = (metres: number) => sureText(metres, site.units);
  const obstacle = 'obstacle' in values ? obstacleName(values.obstacle, site) : '';
  switch (code) {
    case 'start-inside':
      return {
        text: `It would begin ${size(values.depth)} inside ${obstacle}.`,
        cure: 'Let it leave the old pipe further down, past that.',
      };
    case 'end-inside':
      return {
        text: `It would come back ${size(values.depth)} inside ${obstacle}.`,
        cure: 'Let it come back at another station, clear of that.',
      };
    case 'start-is-end':
      return { text: 'It would begin where it ends.', cure: 'Give it two stations that are apart.' };
    case 'end-not-lower':
      return {
        text:
          values.rise > 0
            ? `Its end lies ${size(values.rise)} higher than its start.`
            : 'It has no fall: its end lies level with its start.',
        cure: 'Check the levels of the pipe at both stations.',
      };
    case 'too-little-fall':
      return {
        text: `Even straight on it needs a fall of ${size(values.needed)}, and there are ${size(values.available)}.`,
        cure: 'Check the levels, or let routes in that cannot fall enough and ask the code officer.',
      };
    case 'no-ground':
      return {
        text: `${size(values.clearance)} clear of ${obstacle} leaves no ground to lay it in.`,
        cure:
          values.most > 0 ? `Only whoever may allow less can: ${size(values.most)} would leave room.` : '',
      };
    case 'no-bends':
      return { text: 'There is no bend to turn with.', cure: 'Give the rules a sharper turn for fittings.' };
    case 'bend-turn':
      return { text: `A bend of ${angleText(values.turn)} is none.`, cure: 'Look at the rules for bends.' };
    case 'bend-laying':
      return { text: 'A fitting is shorter than its arc.', cure: 'Look at the rules for bends.' };
    case 'too-few-points':
    case 'bad-number':
    case 'no-end':
      return {
        text: 'Something that is asked for is no number or no shape.',
        cure: 'Look at what it minds.',
      };
  }
}

/** What is wrong with a drawn pipe as a route, and what would cure it. `letters`: the names of its points. */
export function routeFaultText({ code, values }: RouteFault, letters: readonly string[], site: Site): Said {
  const size = (metres: number) => sureText(metres, site.units);
  const point = (vertex: number) => letters[vertex] ?? '';
  switch (code) {
    case 'wrong-turn':
    case 'unknown-bend':
      return {
        text:
          code === 'wrong-turn'
            ? `At ${point(values.vertex)} it turns ${angleText(Math.abs(values.turn))}, which no standard bend does.`
            : `At ${point(values.vertex)} there is no bend.`,
        cure: 'Move the point until it turns as a bend does, or set two bends.',
      };
    case 'short-leg':
      return {
        text: `From ${point(values.leg)} to ${point(values.leg + 1)} are ${size(values.length)}; its fittings need ${size(values.least)}.`,
        cure: 'Move the bends apart, or turn with one.',
      };
    case 'too-near': {
      const name = obstacleName(values.obstacle, site);
      return {
        text:
          values.clearance < 0
            ? `It runs through ${name}.`
            : `It comes within ${size(values.clearance)} of ${name}; ${size(values.asked)} are asked.`,
        cure: 'Draw it further off, or ask whoever may allow less.',
      };
    }
    case 'too-little-fall':
      return {
        text: `It needs a fall of ${size(values.needed)}, and there are ${size(values.available)}.`,
        cure: 'Make it shorter, or check the levels at both ends.',
      };
    case 'too-many-bends':
      return {
        text: `It has ${values.bends} bends; ${values.most} are usual at the most.`,
        cure: 'Draw it straighter.',
      };
    case 'no-line':
    case 'bend-count':
    case 'start-elsewhere':
    case 'start-heading':
    case 'end-elsewhere':
    case 'end-heading':
    case 'unknown-end':
      return { text: 'It cannot be judged as a route.', cure: 'Look at its points.' };
  }
}

import { type BlunderGroup, factorOf, type Site } from '@footmark/site';
import { angleText, counterText, directionText, lengthText } from './measureText';
import { countedText, knownLengthOf, readingOf, scaleText } from './sightings';

/** A way that something would have to move, and the other way; `left` and `right` looking with the flow. */
export type BlunderWay =
  | (typeof POINT_WAYS)[keyof typeof POINT_WAYS][number]
  | 'upstream'
  | 'downstream'
  | 'left'
  | 'right';

/** What the only wrong one would have to be; values as they are printed, lengths (m) as numbers. */
export type Blunder =
  | { readonly is: 'elsewhere'; readonly by: number; readonly way: BlunderWay }
  | { readonly is: 'two-things' | 'off'; readonly by: number }
  | { readonly is: 'seen'; readonly by: number; readonly reading: string; readonly short: boolean }
  | {
      readonly is: 'counter' | 'zero' | 'given' | 'scale' | 'turn';
      readonly said: string;
      readonly wouldBe: string;
    }
  | { readonly is: 'riser'; readonly by: number; readonly more: boolean }
  | { readonly is: 'stray'; readonly by: number; readonly way: 'left' | 'right' }
  /** A length or a scale would have to be nothing or less. */
  | { readonly is: 'unexplained' };

/** Where a point would have to be that is said to be too far that way, or the other way. */
const POINT_WAYS = {
  x: ['plan-left', 'plan-right'],
  y: ['plan-down', 'plan-up'],
  along: ['line-back', 'line-on'],
  across: ['line-left', 'line-right'],
} as const;

/** What a suspect would have to be, were it the only wrong one. */
export function blunderOf({ tag, blunder, observed }: BlunderGroup[number], site: Site): Blunder {
  const { units } = site;
  const by = blunder;
  const side = blunder > 0 ? 'left' : 'right';
  switch (tag.is) {
    case 'locate':
      return {
        is: 'elsewhere',
        by,
        way: tag.part === 'across' ? side : blunder > 0 ? 'upstream' : 'downstream',
      };
    case 'pair':
      return { is: 'two-things', by };
    case 'seen':
      return { is: 'seen', by, reading: tag.reading, short: blunder > 0 };
    case 'counter': {
      const said = readingOf(tag.reading, site)?.reading.counter;
      return said === undefined
        ? { is: 'off', by }
        : { is: 'counter', said: counterText(said, units), wouldBe: countedText(said - blunder, units) };
    }
    case 'length': {
      const known = knownLengthOf(tag, site)?.length;
      return known === undefined ? { is: 'off', by } : ofLength(known, blunder, site);
    }
    case 'bend':
      return ofTurn(observed, blunder);
    case 'scale': {
      const run = site.runs.find((r) => r.id === tag.run);
      const said = run === undefined ? observed : factorOf(run.scale);
      return said - blunder > 0
        ? { is: 'scale', said: scaleText(said), wouldBe: scaleText(said - blunder) }
        : { is: 'unexplained' };
    }
    case 'zero': {
      const said = site.runs.find((r) => r.id === tag.run)?.zero.counter ?? observed;
      return { is: 'zero', said: counterText(said, units), wouldBe: countedText(said - blunder, units) };
    }
    case 'riser':
      return { is: 'riser', by, more: blunder <= 0 };
    case 'point':
      return { is: 'elsewhere', by, way: POINT_WAYS[tag.axis][blunder > 0 ? 0 : 1] };
    case 'leg':
      if (tag.part === 'length') return ofLength(observed, blunder, site);
      if (tag.part === 'turn') return ofTurn(observed, blunder);
      return {
        is: 'given',
        said: directionText(observed, units),
        wouldBe: directionText(observed - blunder, units),
      };
    case 'stray':
      return { is: 'stray', by, way: side };
  }
}

/** `observed`: the angle from the leg before, turned about, to this one. */
function ofTurn(observed: number, blunder: number): Blunder {
  const turn = (angle: number) => angleText(angle - Math.PI);
  return { is: 'turn', said: turn(observed), wouldBe: turn(observed - blunder) };
}

function ofLength(said: number, blunder: number, { units }: Site): Blunder {
  return said - blunder > 0
    ? { is: 'given', said: lengthText(said, units), wouldBe: lengthText(said - blunder, units) }
    : { is: 'unexplained' };
}

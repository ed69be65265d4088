import { type Parsed, parsed, refused } from './parsed';
import { readNumber } from './typed-text';

export const DEGREES_PER_TURN = 360;

export function degreesToRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

export function radiansToDegrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

const MARKED =
  /^([\d.,/ ]*[\d.,/]) ?(?:°|deg|degrees?|d) ?(?:([\d.,]+) ?(?:['m] ?|$))?(?:([\d.,]+) ?(?:["s]|$))?$/;
const SEPARATED = /^([\d.,]+)(?:[-: ]([\d.,]+))(?:[-: ]([\d.,]+))?$/;

/**
 * Reads an unsigned angle from normalised text, degrees: `45.504`, `45.504°`, `45,504`, `22 1/2`, `22-1/2`, `45°30'15.5"`, `45°30.5'`,
 * `45-30-15`, `45 30 15`, `45d30m15s`. Only the last part may have decimals; minutes and seconds are below 60. The size of
 * the whole is the caller's business.
 */
export function readDegrees(text: string): Parsed {
  return readAngle(text.replace(/^(\d+) ?- ?(\d+\/)/, '$1 $2')); // 22-1/2 is a mixed number
}

function readAngle(text: string): Parsed {
  const bare = readNumber(text, 'decimal');
  // Where the text is a number that is wrong in itself (1/0), that is the better answer.
  if (bare.ok || bare.code !== 'not-a-number') return bare;
  const match = MARKED.exec(text) ?? SEPARATED.exec(text);
  if (!match) return refused('not-a-number', { text });
  const parts: number[] = [];
  for (const partText of [match[1] ?? '', match[2], match[3]]) {
    if (partText === undefined) continue;
    const part = readNumber(partText.trim(), 'decimal');
    if (!part.ok) return part;
    parts.push(part.value);
  }
  const [degrees = 0, minutesOrSeconds = 0, last = 0] = parts;
  const secondsOnly = match[2] === undefined && match[3] !== undefined;
  const minutes = secondsOnly ? 0 : minutesOrSeconds;
  const seconds = secondsOnly ? minutesOrSeconds : last;
  const broken = parts.slice(0, -1).find((part) => !Number.isInteger(part));
  if (broken !== undefined) return refused('part-not-whole', { part: broken });
  if (minutes >= 60) return refused('minutes-too-large', { minutes, limit: 60 });
  if (seconds >= 60) return refused('seconds-too-large', { seconds, limit: 60 });
  return parsed((degrees * 3600 + minutes * 60 + seconds) / 3600);
}

/** A whole count ≥ 0 of 10^-`decimals` seconds as `45°30′15″`, minutes and seconds with two digits; plain `45°30'15"`. */
export function degreesMinutesSecondsText(count: number, decimals: number, plain: boolean): string {
  const perSecond = 10 ** decimals;
  const degrees = Math.floor(count / (3600 * perSecond));
  const minutes = Math.floor(count / (60 * perSecond)) - degrees * 60;
  const seconds = (count - (degrees * 60 + minutes) * 60 * perSecond) / perSecond;
  const secondsText = seconds.toFixed(decimals).padStart(decimals === 0 ? 2 : 3 + decimals, '0');
  const [minuteMark, secondMark] = plain ? ["'", '"'] : ['′', '″'];
  return `${degrees}°${String(minutes).padStart(2, '0')}${minuteMark}${secondsText}${secondMark}`;
}

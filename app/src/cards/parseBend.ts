import { type Parsed, parseTurn } from '@footmark/site';

/** Reads by how much a fitting turns the pipe, radians from 0 to π; its side, which the drawing tells, may be typed with it or not. */
export function parseBend(text: string): Parsed {
  const turn = parseTurn(text);
  const bend = !turn.ok && turn.code === 'side-missing' ? parseTurn(`R ${text}`) : turn;
  return bend.ok ? { ok: true, value: Math.abs(bend.value) } : bend;
}

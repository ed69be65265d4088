import { type DerivedPath, ruleValue, type Site } from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import type { CleanoutAsked } from './cleanouts';
import type { CoverCheck, CoverVerdict } from './coverCheck';
import type { DrainCheck } from './drainCheck';
import { type DrainFinding, type DrainFindingValues, ruleBehind, type SayOfDrain } from './drainFinding';
import { sayOfFall } from './sayOfFall';
import { sayOfWater } from './sayOfWater';

/** What is to be said of a path. */
export function sayOfDrain(site: Site, on: DerivedPath, check: DrainCheck): readonly DrainFinding[] {
  const { path, state } = check;
  const findings: DrainFinding[] = [];
  const say: SayOfDrain = (code, severity, values, { place, rule }) => {
    const found = { code, severity, at: { kind: 'path', id: path }, place, rule };
    // a generic code cannot be seen by the compiler as one member of the union, though it always is
    findings.push({ ...found, values: { ...values, path, state } } as unknown as DrainFinding);
  };
  // a pipe that lies is as it was laid: what is planned can be put right
  const pressing = state === 'proposed' ? 'must' : 'should';
  sayOfFall(site, on, check, pressing, say);
  sayOfCover(check.cover, pressing, say);
  for (const asked of check.cleanouts)
    if (asked.by === null) sayOfCleanout(site, asked, state === 'proposed' ? 'should' : 'note', say);
  for (const { place, ...narrow } of check.narrowCleanouts) {
    const rule = ruleBehind['cleanout-too-small'];
    say('cleanout-too-small', state === 'proposed' ? 'should' : 'note', narrow, { place, rule });
  }
  for (const { station, turn, place } of check.sharpTurns) {
    const rule = ruleBehind['turn-needs-sweep'];
    say('turn-needs-sweep', 'note', { station, turn, limit: ruleValue(site, rule) }, { place, rule });
  }
  for (const water of check.water) sayOfWater(site, water, state, pressing, say);
  return findings;
}

function sayOfCover(
  { least, leastCover, frost, gaps, head, end }: CoverCheck,
  pressing: DigSeverity,
  say: SayOfDrain,
): void {
  const thin = (code: 'cover-too-thin' | 'cover-above-frost', verdict: CoverVerdict | null) => {
    if (least === null || verdict?.verdict !== 'misses') return;
    const { cover, station, place } = least;
    const { asked, sure } = verdict;
    say(code, pressing, { cover, asked, station, sure }, { place, rule: ruleBehind[code] });
  };
  thin('cover-too-thin', leastCover);
  thin('cover-above-frost', frost);
  const [gap] = gaps;
  if (gap === undefined) return;
  const length = gaps.reduce((sum, { from, to }) => sum + to - from, 0);
  const known = [head, end].find((e) => 'place' in e);
  const place = least?.place ?? (known !== undefined && 'place' in known ? known.place : null);
  const whole = least === null;
  say('cover-not-known', 'note', { because: gap.because, length, whole }, { place, rule: 'leastCover' });
}

const cleanoutCodes = {
  head: 'cleanout-at-head',
  junction: 'cleanout-at-junction',
  manhole: 'manhole-along',
  turn: 'cleanout-at-turn',
  turns: 'cleanout-after-turns',
  spacing: 'cleanout-along',
} as const satisfies Record<CleanoutAsked['reason'], keyof DrainFindingValues>;

function sayOfCleanout(
  site: Site,
  { station, place, reason, turn }: CleanoutAsked,
  severity: DigSeverity,
  say: SayOfDrain,
): void {
  const code = cleanoutCodes[reason];
  const rule = ruleBehind[code];
  const limit = ruleValue(site, rule);
  const where = { place, rule };
  if (code === 'cleanout-at-head') say(code, severity, { station }, where);
  else if (code === 'cleanout-at-junction') say(code, severity, { station, limit }, where);
  else if (code === 'cleanout-along' || code === 'manhole-along')
    say(code, severity, { station, spacing: limit }, where);
  else say(code, severity, { station, turn: turn ?? 0, limit }, where);
}

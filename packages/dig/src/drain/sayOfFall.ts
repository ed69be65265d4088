import { locate } from '@footmark/geometry';
import {
  type DerivedPath,
  type DoubtfulSlopes,
  type ProfileSlope,
  ruleValue,
  type Site,
  WITHIN_95,
} from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import type { DrainCheck } from './drainCheck';
import type { SayOfDrain } from './drainFinding';
import { type FallCheck, ROUNDED_SHARE } from './fallCheck';
import { SAME_M } from './openings';

/** Whether a path falls as it is asked to, and whether it comes out where it can flow into the main. */
export function sayOfFall(
  site: Site,
  on: DerivedPath,
  check: DrainCheck,
  pressing: DigSeverity,
  say: SayOfDrain,
): void {
  const { fall, tap, state } = check;
  const { missed, open } = fall.doubtful;
  for (const slope of missed) sayOfMissed(on, slope, pressing, say);
  sayOfOpen(on, open, state === 'proposed' ? 'should' : 'note', say);
  // what is said of a pipe that lies is a guess, of a planned one it is the plan
  if (state === 'proposed') {
    sayOfPlan(on, fall, say);
    sayOfElsewhere(site, on, fall.slopes, say);
  }
  if (tap?.below == null || tap.below.by <= SAME_M) return;
  const { by, sigma } = tap.below;
  const sure = by >= WITHIN_95 * sigma;
  say(
    'end-below-tap',
    sure ? pressing : 'should',
    { tap: tap.tap, by, sigma, sure },
    { place: on.points.at(-1) ?? null, rule: null },
  );
}

function sayOfMissed(
  on: DerivedPath,
  { from, to, slope, sigma, least, verdict }: DoubtfulSlopes['missed'][number],
  pressing: DigSeverity,
  say: SayOfDrain,
): void {
  const code = verdict === 'too-flat' ? 'fall-too-little' : 'fall-against-flow';
  const short = (least.value - slope) * (to - from);
  const values = { from, to, slope, sigma, least: least.value, short };
  say(code, pressing, values, { place: middle(on, from, to), rule: least.name });
}

/** One for all pieces whose slope the levels leave open: about the surest of them. */
function sayOfOpen(
  on: DerivedPath,
  open: DoubtfulSlopes['open'],
  severity: DigSeverity,
  say: SayOfDrain,
): void {
  if (open === null) return;
  const { others, whole } = open;
  const { from, to, slope, sigma, least } = open.surest;
  const values = { from, to, slope, sigma, least: least.value, others, whole };
  say('fall-not-sure', severity, values, { place: middle(on, from, to), rule: least.name });
}

function sayOfPlan(on: DerivedPath, { said, slopes, asked, required }: FallCheck, say: SayOfDrain): void {
  for (const { from, to, slope, least } of said) {
    const short = (least.value - slope) * (to - from);
    const values = { from, to, slope, least: least.value, short };
    say('fall-said-too-little', 'must', values, { place: middle(on, from, to), rule: least.name });
  }
  if (slopes.length > 0) return;
  const rule = asked[0]?.least.name ?? null;
  say('fall-not-known', 'note', { length: on.length, required }, { place: middle(on, 0, on.length), rule });
}

function sayOfElsewhere(site: Site, on: DerivedPath, slopes: readonly ProfileSlope[], say: SayOfDrain): void {
  const elsewhere = ruleValue(site, 'fallLocal');
  const less = slopes.find((s) => s.verdict === 'enough' && s.slope < (1 - ROUNDED_SHARE) * elsewhere);
  if (less === undefined) return;
  const { from, to, slope } = less;
  const where = { place: middle(on, from, to), rule: 'fallLocal' } as const;
  say('fall-less-than-elsewhere', 'note', { from, to, slope, elsewhere }, where);
}

function middle({ line }: DerivedPath, from: number, to: number) {
  return locate(line, (from + to) / 2).point;
}

import { distance } from '@footmark/geometry';
import { aboutKey } from '../document/asFound';
import { settings } from '../rules/settings';
import { type Finding, finding, type Target } from './finding';
import type { FoundPlace } from './foundPlaces';

/** What is to be said of what crews found: what is gone or was moved since, what has no place, and what contradicts each other. */
export function sayOfFinds(found: readonly FoundPlace[], findings: Finding[]): void {
  const together = new Map<string, FoundPlace[]>();
  for (const one of found) {
    sayOfOne(one, findings);
    const key = aboutKey(one.record.about);
    if (key !== null) together.set(key, [...(together.get(key) ?? []), one]);
  }
  for (const about of together.values()) sayOfSeveral(about, findings);
}

/** Where a find is shown: at its mark, or at the point that sets a pipe out, while the site has that. */
export function targetOfFind({ record: { about }, sought }: FoundPlace): Target {
  if (sought === null || about.is === 'place') return { kind: 'site' };
  return about.is === 'mark'
    ? { kind: 'reading', run: about.run, id: about.reading }
    : { kind: 'set-out', path: about.path, number: about.number };
}

function sayOfOne(one: FoundPlace, findings: Finding[]): void {
  const { record, label, at, sought, moved } = one;
  const target = targetOfFind(one);
  const who = { label, by: record.by };
  if (record.about.is !== 'place' && sought === null)
    findings.push(finding('as-found-mark-gone', 'warning', target, who));
  if (moved !== null && moved > settings.givenMoved.value)
    findings.push(finding('as-found-mark-moved', 'warning', target, { ...who, moved }));
  if (record.where !== undefined && at === null)
    findings.push(finding('as-found-no-place', 'warning', target, who));
}

function sayOfSeveral(about: readonly FoundPlace[], findings: Finding[]): void {
  const last = about.at(-1);
  if (last === undefined) return;
  const target = targetOfFind(last);
  const finds = about.filter(({ record }) => record.state === 'found');
  const apart = farthest(finds, (a, b) => (a.at === null || b.at === null ? 0 : distance(a.at, b.at)));
  if (apart !== null && apart.by > settings.findsApart.value)
    findings.push(finding('as-found-disagree', 'warning', target, { ...namesOf(apart), apart: apart.by }));
  const deep = farthest(finds, ({ record: { depth: a } }, { record: { depth: b } }) =>
    a === undefined || b === undefined || a.to !== b.to ? 0 : Math.abs(a.depth - b.depth),
  );
  if (deep !== null && deep.by > settings.findsApart.value)
    findings.push(
      finding('as-found-depths-disagree', 'warning', target, { ...namesOf(deep), apart: deep.by }),
    );
  const missed = about.findLast(({ record }) => record.state === 'not-found');
  const hit = finds.at(-1);
  if (missed !== undefined && hit !== undefined)
    findings.push(
      finding('as-found-and-not-found', 'note', target, {
        label: hit.label,
        a: hit.record.by,
        b: missed.record.by,
      }),
    );
}

type Apart = { readonly a: FoundPlace; readonly b: FoundPlace; readonly by: number };

/** The two that are furthest apart by a measure; null with fewer than two. */
function farthest(
  finds: readonly FoundPlace[],
  apart: (a: FoundPlace, b: FoundPlace) => number,
): Apart | null {
  let worst: Apart | null = null;
  for (const [i, a] of finds.entries()) {
    for (const b of finds.slice(i + 1)) {
      const by = apart(a, b);
      if (worst === null || by > worst.by) worst = { a, b, by };
    }
  }
  return worst;
}

function namesOf({ a, b }: Apart): { readonly label: string; readonly a: string; readonly b: string } {
  return { label: b.label, a: a.record.by, b: b.record.by };
}

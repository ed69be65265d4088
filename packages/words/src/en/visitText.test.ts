import type { SeverityWord, Units, VisitThing } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { en } from './en';

describe('visits', () => {
  it('are called by their day and what they were for', () => {
    expect(en.visitName({ id: 'v1', date: '2025-03-09', purpose: 'after-cleaning', note: '' })).toBe(
      'Mar 9, 2025, after cleaning',
    );
    expect(en.visitName({ id: 'v1', purpose: 'first-look', note: '' })).toBe('First look, day not known');
  });

  it.each(['2024-01-01', '2024-02-29', '2024-12-31'])('keep the day %s wherever they are read', (date) => {
    const [, month, dayOfMonth] = date.split('-').map(Number);
    const text = en.dateText(date);
    expect(text).toContain(` ${dayOfMonth}, 2024`);
    expect(text.startsWith(['Jan', 'Feb', 'Dec'][[1, 2, 12].indexOf(month ?? 0)] ?? '-')).toBe(true);
  });

  it('have a heading of its own for each fate of a thing', () => {
    const fates = ['gone', 'stillThere', 'appeared', 'notLookedAtAgain', 'firstLookedAt'] as const;
    const said = fates.map((fate) => en.comparedText(fate));
    expect(new Set(said.map((s) => s.title)).size).toBe(fates.length);
    for (const { title, text } of said) {
      expect(title).toMatch(/^\p{Lu}[^.]*$/u);
      expect(text).toMatch(/^\p{Lu}.*\.$/u);
    }
  });

  it('tell of a thing how it fared, and whether the counters explain what lies between', () => {
    const metric: Units = { length: 'm', diameter: 'mm', direction: 'azimuth' };
    const seen = (severity?: SeverityWord) =>
      ({ marks: [{ reading: severity === undefined ? {} : { severity } }] }) as unknown as VisitThing; // all that is told of it
    const fared = (was: SeverityWord | undefined, is: SeverityWord | undefined, moved: number) =>
      en.faredText({ before: seen(was), after: seen(is), moved, sigma: 0.1 }, metric);
    expect(fared('slight', 'severe', 0.05)).toBe(
      'slight before, severe after; 0.05 m apart by the counters, within their errors',
    );
    expect(fared('slight', undefined, -0.5)).toBe(
      'slight before, not said after; 0.5 m apart by the counters, more than their errors explain',
    );
    expect(fared('severe', 'severe', 0)).toMatch(/^severe as before; /);
    expect(fared(undefined, undefined, 0)).toMatch(/^0(\.0+)? m apart/);
  });
});

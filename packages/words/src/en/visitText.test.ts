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
});

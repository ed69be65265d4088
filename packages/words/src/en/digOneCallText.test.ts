import { oneCallState, servicesOf } from '@footmark/dig';
import { changeOneCall, derive, newSite, type OneCall } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { en } from './en';

const good = { ticket: '26-0417', validFrom: '2026-05-04', validUntil: '2026-05-18' };

/** What is said of a ticket on a day; null where nothing is. */
function oneCallText(oneCall: OneCall | undefined, today: string) {
  const bare = newSite({
    id: 's',
    name: '',
    createdAt: '2026-01-01T00:00:00Z',
    units: { length: 'ft', diameter: 'in', direction: 'bearing' },
  });
  const site = changeOneCall(bare, { facts: oneCall ?? {} });
  const [found] = servicesOf(site, derive(site), [], today).findings;
  return found === undefined ? null : en.digFindingText(found, site);
}

describe('a one-call ticket', () => {
  it.each([
    ['before its first day', '2026-05-03', /^The ticket is good from .*4/],
    ['after its last day', '2026-05-19', /^The marks ran out on .*18/],
    ['in another year', '2027-01-01', /^The marks ran out/],
  ])('warns %s', (_, today, said) => {
    expect(oneCallText(good, today)?.text).toMatch(said);
  });

  it.each(['2026-05-04', '2026-05-10', '2026-05-18'])(
    'is good on %s, its first and last day included',
    (today) => {
      expect(oneCallText(good, today)).toBeNull();
    },
  );

  it('is missed where there is none, or none with a number', () => {
    expect(oneCallText(undefined, '2026-05-04')?.cure).toContain('Call the one-call centre');
    expect(oneCallText({ ...good, ticket: '' }, '2026-05-10')?.text).toContain('No one-call ticket');
  });

  it('is asked about when nobody said until when it holds', () => {
    expect(oneCallText({ ticket: '26-0417' }, '2026-05-10')?.text).toContain('not known');
  });
});

it.each([
  [undefined, '2026-05-10', 'none kept'],
  [{ ticket: '26-0417' }, '2026-05-10', 'not called yet'],
  [good, '2026-05-01', 'good from May 4, 2026'],
  [good, '2026-05-10', 'good until May 18, 2026'],
  [good, '2026-05-19', 'ran out on May 18, 2026'],
  [{ ticket: '26-0417', validFrom: '2026-05-04' }, '2026-05-10', 'good, last day not known'],
  [{ ...good, called: '2026-05-06' }, '2026-05-10', 'its days contradict each other'],
] as const)('in a few words %o on %s is %s', (ticket, today, text) => {
  expect(en.oneCallText(oneCallState(ticket, today), ticket ?? { ticket: '' })).toBe(text);
});

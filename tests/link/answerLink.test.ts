// What a crew sends back, as a link. Invented.
import { answerBytes, linkText, openLink, qrSymbols } from '@footmark/link';
import { ANSWER_FORMAT, ANSWER_VERSION, type Answer, type FoundReport } from '@footmark/site';
import { describe, expect, it } from 'vitest';

const at = '2026-06-01T14:05:00-05:00';

function report(n: number): FoundReport {
  return {
    id: `w${n}`,
    about: { is: 'mark', run: 'r1', reading: `q${n}` },
    state: 'found',
    by: 'Crew one',
    at,
    given: {
      label: `A${n}`,
      at: { x: 3.25 * n, y: 11.5 },
      flow: 0.1,
      ties: [
        { from: { of: 'f1', at: 'a' }, distance: 7.3152 },
        { from: { of: 'f1', at: 'b' }, distance: 4.1148 },
      ],
      side: 'left',
    },
    where: { by: 'paint', along: 0.1524, right: -0.0762 },
    depth: { to: 'top', depth: 1.3716 },
    seen: 'roots',
    material: 'clay',
    diameter: 0.1016,
    note: 'raíces hasta la unión',
    photos: [],
  };
}

const answer = (count: number): Answer => ({
  format: ANSWER_FORMAT,
  version: ANSWER_VERSION,
  id: 'a1',
  site: 's1',
  madeFrom: { version: 3, hash: '0123456789abcdef' },
  by: 'Crew one',
  language: 'es',
  sentAt: at,
  ticks: Array.from({ length: count }, (_, i) => ({
    about: { is: 'mark', run: 'r1', reading: `q${i + 1}` } as const,
    state: 'dug' as const,
    at,
  })),
  found: Array.from({ length: count }, (_, i) => report(i + 1)),
});

describe('an answer', () => {
  it('comes back from a link as it was sent, bit for bit', () => {
    for (const count of [0, 1, 12]) {
      const encoded = answerBytes(answer(count));
      if (!encoded.ok) throw new Error(encoded.failure.code);
      expect(openLink(linkText(encoded.bytes))).toEqual({ ok: true, is: 'answer', answer: answer(count) });
    }
  });

  it('of three marks fits into one symbol beside an address', () => {
    const encoded = answerBytes(answer(3));
    if (!encoded.ok) throw new Error(encoded.failure.code);
    const drawn = qrSymbols(`https://${'x'.repeat(26)}/#/link/`, encoded.bytes);
    expect(drawn.ok && drawn.symbols.length).toBe(1);
  });

  it('that is not sound is refused whole, and says why', () => {
    const twice = { ...answer(2), found: [report(1), report(1)] };
    const encoded = answerBytes(twice);
    if (!encoded.ok) throw new Error(encoded.failure.code);
    expect(openLink(linkText(encoded.bytes))).toEqual({
      ok: false,
      failure: { code: 'not-an-answer', because: { code: 'same-id', id: 'w1' } },
    });
  });

  it('cut anywhere, or changed in one place, opens nothing', () => {
    const encoded = answerBytes(answer(1));
    if (!encoded.ok) throw new Error(encoded.failure.code);
    const text = linkText(encoded.bytes);
    for (let n = 0; n < text.length; n++) expect(openLink(text.slice(0, n)).ok).toBe(false);
    for (let n = 0; n < encoded.bytes.length; n++) {
      const changed = encoded.bytes.slice();
      changed[n] = (changed[n] ?? 0) ^ 0x10;
      expect(openLink(linkText(changed)).ok).toBe(false);
    }
  });
});

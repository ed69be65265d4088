// What a crew sends back, as a link. Invented.
import { answerBytes, linkText, openLink, qrSymbols } from '@footmark/link';
import { describe, expect, it } from 'vitest';
import { crewAnswer, crewReport } from './crewAnswer';

describe('an answer', () => {
  it('comes back from a link as it was sent, bit for bit', () => {
    for (const count of [0, 1, 12]) {
      const encoded = answerBytes(crewAnswer(count));
      if (!encoded.ok) throw new Error(encoded.failure.code);
      expect(openLink(linkText(encoded.bytes))).toEqual({
        ok: true,
        is: 'answer',
        answer: crewAnswer(count),
      });
    }
  });

  it('of three marks fits into one symbol beside an address', () => {
    const encoded = answerBytes(crewAnswer(3));
    if (!encoded.ok) throw new Error(encoded.failure.code);
    const drawn = qrSymbols(`https://${'x'.repeat(26)}/#/link/`, encoded.bytes);
    expect(drawn.ok && drawn.symbols.length).toBe(1);
  });

  it('that is not sound is refused whole, and says why', () => {
    const twice = { ...crewAnswer(2), found: [crewReport(1), crewReport(1)] };
    const encoded = answerBytes(twice);
    if (!encoded.ok) throw new Error(encoded.failure.code);
    expect(openLink(linkText(encoded.bytes))).toEqual({
      ok: false,
      failure: { code: 'not-an-answer', because: { code: 'same-id', id: 'w1' } },
    });
  });

  it('cut anywhere, or changed in one place, opens nothing', () => {
    const encoded = answerBytes(crewAnswer(1));
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

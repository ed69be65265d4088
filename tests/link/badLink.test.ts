import { crc32 } from 'node:zlib';
import {
  encode,
  forLink,
  leastChoice,
  linkBytes,
  linkLimits,
  linkText,
  openLink,
  openLinkBytes,
  readLink,
} from '@footmark/link';
import type { Site } from '@footmark/site';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { frameBytes } from '../../packages/link/src/frame/frame';
import { varint } from '../../packages/link/src/frame/varint';
import { liveShape } from '../../packages/link/src/linkKind';
import { shapeMark } from '../../packages/link/src/shape/shapeText';
import { siteKind } from '../../packages/link/src/siteKind';
import { bytesOf, fragmentOf, sampleSite } from './samples';

const site = sampleSite('rear-alley');
const bytes = bytesOf(linkBytes(site, leastChoice));
const fragment = fragmentOf(site, leastChoice);

/** Milliseconds within which any link is opened or refused; some five times what it takes on two busy cores. */
const SOON_MS = 15_000;

/** Milliseconds: some ten times what one of these takes, for a machine that is busy. */
vi.setConfig({ testTimeout: 120_000 });

const codeOf = (text: string) => {
  const opened = openLink(text);
  return opened.ok ? opened.is : opened.failure.code;
};

/** A sound frame of a site's kind and version around any bytes. */
function crafted(packed: Uint8Array | readonly number[], version = siteKind.version): string {
  const mark = shapeMark(liveShape(siteKind));
  const body = Uint8Array.from([...varint(version), mark >> 8, mark & 255, ...packed]);
  return linkText(frameBytes({ kind: siteKind.number, body }));
}

describe('a link that was spoilt on the way', () => {
  it('cut anywhere is refused, and told how much is missing', () => {
    for (let end = 0; end < bytes.length; end++) {
      const opened = openLinkBytes(bytes.subarray(0, end));
      expect(opened).toMatchObject({ ok: false, failure: { code: 'cut-off', have: end } });
      if (!opened.ok && opened.failure.code === 'cut-off' && end >= 4)
        expect(opened.failure.of).toBe(bytes.length);
    }
    for (let end = 0; end < fragment.length; end++) expect(openLink(fragment.slice(0, end)).ok).toBe(false);
  });

  it('with any one byte changed in any way is refused', () => {
    const spoilt = Uint8Array.from(bytes);
    for (let i = 0; i < bytes.length; i++) {
      for (let other = 0; other < 256; other += i < 8 ? 1 : 37) {
        if (other === bytes[i]) continue;
        spoilt[i] = other;
        expect(openLinkBytes(spoilt).ok).toBe(false);
      }
      spoilt[i] = bytes[i] ?? 0;
    }
  });

  it('with any one character changed is refused', () => {
    for (let i = 0; i < fragment.length; i++) {
      const other = fragment.charAt(i) === 'x' ? 'y' : 'x';
      expect(openLink(fragment.slice(0, i) + other + fragment.slice(i + 1)).ok).toBe(false);
    }
  });

  it('opens behind an address and with what a sentence leaves at its end', () => {
    expect(codeOf(`https://footmark.example/#/open/${fragment}`)).toBe('site');
    expect(codeOf(` ${fragment}).\n`)).toBe('site');
  });

  // a pattern that is tried at each of its places takes half a minute for one of these, and all of them longer than a test may
  it('with 190,000 blanks or full stops in it is refused', () => {
    for (const mark of [' ', '\n', '\t', '.', '!', ')', ',', '”'])
      expect(codeOf(`${fragment.slice(0, 9)}${mark.repeat(190_000)}y y`)).toBe('not-a-link');
  });

  it('says what it is', () => {
    expect(codeOf('')).toBe('not-a-link');
    expect(codeOf('https://footmark.example/#/')).toBe('not-a-link');
    expect(codeOf('<script>alert(1)</script>')).toBe('not-a-link');
    expect(codeOf(fragment.replace(/.{8}$/, 'AAAAAAAA'))).toBe('damaged');
    expect(codeOf(`${fragment}AAAA`)).toBe('damaged');
    expect(codeOf('A'.repeat(linkLimits.mostCharacters + 1))).toBe('too-long');
    expect(codeOf('9'.repeat(106))).toBe('not-a-link'); // no 44 bytes are as much
  });
});

describe('a sound link that is not for this program', () => {
  it('of a newer version is refused as that', () => {
    const opened = openLink(crafted([1, 2, 3], siteKind.version + 1));
    expect(opened).toMatchObject({ ok: false, failure: { code: 'newer-version', known: siteKind.version } });
  });

  it('of a coding that comes later is refused as that', () => {
    const later = [2, ...bytes.subarray(1, -4)];
    const sum = crc32(Uint8Array.from(later));
    const sound = Uint8Array.from([...later, sum >>> 24, (sum >>> 16) & 255, (sum >>> 8) & 255, sum & 255]);
    expect(openLinkBytes(sound)).toEqual({ ok: false, failure: { code: 'newer-coding', coding: 2 } });
  });

  it('of a shape that was never given out is refused as that', () => {
    const body = Uint8Array.from([siteKind.version, 0, 0, 1, 2, 3]);
    expect(codeOf(linkText(frameBytes({ kind: siteKind.number, body })))).toBe('other-shape');
    expect(codeOf(crafted([1, 2, 3], 1))).toBe('other-shape'); // sites of version 1 never went into links
  });

  it('of another kind is refused as that, and read by who knows the kind', () => {
    const kind = { ...siteKind, number: 9 };
    const text = linkText(bytesOf(encode(kind, forLink(site, leastChoice))));
    expect(openLink(text)).toEqual({ ok: false, failure: { code: 'other-kind', kind: 9 } });
    expect(readLink(text, [siteKind, kind])).toMatchObject({
      ok: true,
      is: 'document',
      version: kind.version,
    });
  });
});

describe('a crafted link', () => {
  it.each([0, 255, 170, 1])('of bytes %i only is refused soon', (byte) => {
    const from = performance.now();
    expect(openLink(crafted(new Uint8Array(100_000).fill(byte))).ok).toBe(false);
    expect(performance.now() - from).toBeLessThan(SOON_MS);
  });

  it('of any bytes is refused, or is a sound site', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 2000 }), (packed) => {
        const opened = openLink(crafted(packed));
        expect(opened.ok ? opened.is : 'refused').toMatch(/^(site|refused)$/);
      }),
      { numRuns: 80 },
    );
  });

  it.each<readonly [string, Partial<Site>, Partial<typeof linkLimits>]>([
    ['of very many letters', { note: 'a'.repeat(100_000) }, { mostBits: 800_000 }],
    ['of very many things', { setAside: new Array(linkLimits.mostItems + 1).fill('') }, {}],
  ])('%s is neither made nor opened', (_, much, narrower) => {
    const huge = { ...site, ...much };
    const limits = { ...linkLimits, ...narrower };
    expect(encode(siteKind, huge, limits)).toEqual({ ok: false, failure: { code: 'too-large' } });
    const bomb = bytesOf(encode(siteKind, huge, { mostCharacters: 1e9, mostBits: 1e9, mostItems: 1e9 }));
    expect(bomb.length).toBeLessThan(5000);
    const from = performance.now();
    expect(openLinkBytes(bomb, limits)).toEqual({ ok: false, failure: { code: 'not-unpacked' } });
    expect(performance.now() - from).toBeLessThan(SOON_MS);
  });

  it('of a site that is not sound is refused with the place, and nothing of it is given', () => {
    const dangling = { ...site, runs: site.runs.map((run) => ({ ...run, path: 'gone' })) };
    const opened = openLinkBytes(bytesOf(encode(siteKind, dangling)));
    expect(opened).toMatchObject({
      ok: false,
      failure: { code: 'not-a-site', because: { code: 'invalid', problems: [{ code: 'unknown-path' }, {}] } },
    });
  });

  it('with markup, formulas and turned writing in its names keeps them as the texts that they are', () => {
    const name = '=HYPERLINK("x")<script>\u202Eevil\u0000';
    const opened = openLinkBytes(bytesOf(linkBytes({ ...site, name }, leastChoice)));
    expect(opened).toMatchObject({ ok: true, site: { name } });
  });
});

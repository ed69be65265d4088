import {
  collectParts,
  forLink,
  type HeldParts,
  leastChoice,
  linkBytes,
  openLink,
  openLinkBytes,
  type QrSymbol,
  qrSymbols,
} from '@footmark/link';
import { describe, expect, it, vi } from 'vitest';
import { decimalsLength } from '../../packages/link/src/frame/decimals';
import { seededRandom } from '../random/seeded';
import { blurred, type Picture, printed } from './qrPicture';
import { NO_ZBAR, readByZbar, readByZxing } from './qrReaders';
import { asDrawn, bytesOf, sampleNames, sampleSite } from './samples';

/** An address of forty characters. */
const HEAD = 'https://footmark.example/app-2026/#/link';
const everything = { address: true, notes: true, coordinates: true };

/** Milliseconds: some ten times what one of these takes, for a machine that is busy. */
const PATIENCE_MS = 60_000;
vi.setConfig({ testTimeout: PATIENCE_MS });

const PRINT_DPI = 300;
const TURN_RAD = (3 * Math.PI) / 180;
const BLUR_PIXELS = 1.5;

function symbolsOf(frame: Uint8Array, head = `${HEAD}/`): readonly QrSymbol[] {
  const drawn = qrSymbols(head, frame);
  if (!drawn.ok) throw new Error(`${drawn.failure.needed} symbols`);
  return drawn.symbols;
}

const print = (symbol: QrSymbol): Picture => printed(symbol, { dpi: PRINT_DPI, turn: 0 });
const picture = (symbol: QrSymbol): Picture =>
  blurred(printed(symbol, { dpi: PRINT_DPI, turn: TURN_RAD }), BLUR_PIXELS);

describe.each(sampleNames)('the sample %s', (name) => {
  const site = sampleSite(name);
  const symbols = symbolsOf(bytesOf(linkBytes(site, leastChoice)));
  const [symbol] = symbols;
  if (symbol === undefined) throw new Error('no symbol');

  it('is one symbol of version 25 or less and level M, 50 mm wide with its margin', () => {
    expect(symbols).toHaveLength(1);
    expect(symbol.version).toBeLessThanOrEqual(25);
    expect(symbol.level).toBe('M');
    expect(symbol.modules).toHaveLength(17 + 4 * symbol.version); // ISO/IEC 18004, from memory
    expect(symbol.widthWithMarginMm).toBeLessThanOrEqual(50.001);
  });

  const opensIn = (text: string | undefined) => {
    expect(text?.startsWith(`${HEAD}/`)).toBe(true);
    expect(openLink(text ?? '')).toStrictEqual({
      ok: true,
      is: 'site',
      site: forLink(site, leastChoice),
      migratedFrom: null,
    });
  };

  it.each([
    ['a print', print],
    ['a turned and blurred picture of it', picture],
  ])('opens from %s, read by ZXing', async (_, pictured) => {
    const found = await readByZxing(pictured(symbol));
    expect(found).toMatchObject([{ ecLevel: symbol.level, version: String(symbol.version) }]);
    opensIn(found[0]?.text);
  });

  it.skipIf(NO_ZBAR !== null)(
    `opens from both, read by zbar${NO_ZBAR === null ? '' : ` (${NO_ZBAR})`}`,
    () => {
      for (const pictured of [print, picture]) opensIn(readByZbar(pictured(symbol))[0]);
    },
  );
});

describe('a site that one symbol does not hold', () => {
  const site = asDrawn(sampleSite('rear-alley'), seededRandom(7));
  const symbols = symbolsOf(bytesOf(linkBytes(site, everything)));

  it('is several, read in any order and more than once', async () => {
    expect(symbols.length).toBeGreaterThan(1);
    const texts: string[] = [];
    for (const symbol of symbols) {
      expect(symbol.version).toBeLessThanOrEqual(25);
      texts.push((await readByZxing(picture(symbol)))[0]?.text ?? '');
    }
    let held: HeldParts | null = null;
    let whole: Uint8Array | null = null;
    for (const text of [...texts, ...texts].reverse()) {
      const read = openLink(text);
      if (!read.ok || read.is !== 'part') throw new Error(JSON.stringify(read));
      const collected = collectParts(held, read.part);
      held = collected.held;
      if (collected.is === 'whole') whole = collected.bytes;
    }
    expect(openLinkBytes(whole ?? new Uint8Array())).toStrictEqual({
      ok: true,
      is: 'site',
      site: forLink(site, everything),
      migratedFrom: null,
    });
  });

  it('is a file when there would be too many', () => {
    expect(qrSymbols(HEAD, new Uint8Array(20_000))).toEqual({
      ok: false,
      failure: { code: 'too-many-symbols', needed: 22 },
    });
    expect(symbolsOf(new Uint8Array(14_900))).toHaveLength(16);
  });
});

describe('what a symbol holds', () => {
  /** Digits beside a text, of a symbol that holds so many bytes: mode and count take 4 + 16 and, of digits, 4 + 12 bits. */
  const digitsBeside = (head: string, bytes: number) =>
    Math.floor((3 * (8 * (bytes - head.length) - (4 + 12))) / 10);

  // ISO/IEC 18004, table 7, from memory: version 25 holds 1,273 bytes at level L and 997 at level M
  it.each<readonly ['L' | 'M', number]>([
    ['L', 1273],
    ['M', 997],
  ])('version 25 at level %s is filled to the last of its %i bytes', (level, bytes) => {
    let most = 0;
    for (let size = level === 'L' ? 1200 : 900; ; size++) {
      const [symbol, more] = symbolsOf(new Uint8Array(size).fill(255), HEAD);
      if (more !== undefined || (level === 'M' && symbol?.level === 'L')) break;
      most = size;
    }
    expect(decimalsLength(most)).toBeLessThanOrEqual(digitsBeside(HEAD, bytes));
    expect(decimalsLength(most + 1)).toBeGreaterThan(digitsBeside(HEAD, bytes));
  });

  it('is told by the smallest version, and the highest level that it has room for', () => {
    // data codewords of version 1: L 19, M 16, Q 13, H 9 (ISO/IEC 18004, table 7, from memory)
    expect(symbolsOf(new Uint8Array(10).fill(1), 'A#')).toMatchObject([{ version: 1, level: 'M' }]);
    expect(symbolsOf(new Uint8Array(5).fill(1), 'A#')).toMatchObject([{ version: 1, level: 'Q' }]);
  });

  it('is an address in ASCII only', () => {
    expect(() => qrSymbols('https://fußmark.example/#/', new Uint8Array(3))).toThrow(RangeError);
  });
});

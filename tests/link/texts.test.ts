// The textual forms and the checksum, against what others make of the same bytes: Node's Buffer, zlib and whole numbers of any size.

import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { base64url, bytesOfBase64url } from '../../packages/link/src/frame/base64url';
import { checksum } from '../../packages/link/src/frame/checksum';
import { bytesOfDecimals, decimals, decimalsLength } from '../../packages/link/src/frame/decimals';
import { bytesOf, textOf } from '../../packages/link/src/pack/literalText';

const anyBytes = fc.uint8Array({ maxLength: 400 });

describe('the letters of a link', () => {
  it('are RFC 4648’s, as Node writes and reads them', () => {
    fc.assert(
      fc.property(anyBytes, (bytes) => {
        const text = base64url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(bytesOfBase64url(text)).toEqual(bytes);
      }),
    );
  });

  it('are those of the worked examples of RFC 4648, section 10', () => {
    const examples = ['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map((t) => base64url(Buffer.from(t)));
    expect(examples).toEqual(['', 'Zg', 'Zm8', 'Zm9v', 'Zm9vYg', 'Zm9vYmE', 'Zm9vYmFy']);
  });
});

describe('the decimals of a link', () => {
  it('are, block by block, the number whose bytes they are', () => {
    fc.assert(
      fc.property(anyBytes, (bytes) => {
        const text = decimals(bytes);
        expect(text).toHaveLength(decimalsLength(bytes.length));
        const hex = Buffer.from(bytes.subarray(0, 44)).toString('hex');
        expect(BigInt(text.slice(0, 106) || '0')).toBe(BigInt(`0x${hex || '0'}`));
        expect(bytesOfDecimals(text)).toEqual(bytes);
      }),
    );
  });

  it('lose less than one per cent of what the digits of a QR symbol hold', () => {
    expect((8 * 44) / ((106 * 10) / 3)).toBeGreaterThan(0.99);
    expect((8 * 950) / ((decimalsLength(950) * 10) / 3)).toBeGreaterThan(0.99);
  });

  it.each(['9'.repeat(106), '1', '999', 'x', '12 34'])('%s is no such text', (text) => {
    expect(bytesOfDecimals(text)).toBeNull();
  });
});

describe('the checksum of a link', () => {
  it('is the CRC-32 of zlib', () => {
    fc.assert(
      fc.property(anyBytes, (bytes) => {
        expect(checksum(bytes)).toBe(crc32(bytes));
      }),
    );
    expect(checksum(Buffer.from('123456789'))).toBe(0xcbf43926); // the usual check value of this polynomial (from memory)
  });
});

describe('texts as bytes', () => {
  it('are UTF-8 as Node writes it, but for NUL', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const shown = text.replaceAll('\u0000', '');
        expect(Buffer.from(bytesOf(shown))).toEqual(Buffer.from(shown, 'utf8'));
        expect(textOf(bytesOf(text))).toBe(text);
      }),
    );
  });

  it.each([[[0x80]], [[0xc3]], [[0xe2, 0x82]], [[0xf7, 0xbf, 0xbf, 0xbf]], [[0xc3, 0x28]]])(
    'not of %j',
    (bytes) => {
      expect(textOf(bytes)).toBeNull();
    },
  );
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPictureHeader } from './pictureHeader';

// 7 × 5 pixels each, written by Pillow 12.3 (an image library of which this reader knows nothing)
const folder = new URL('./fixtures/', import.meta.url);
const fixture = (name: string) => new Uint8Array(readFileSync(new URL(name, folder)));
const bytes = (text: string) => Uint8Array.from(text, (c) => c.charCodeAt(0));

describe('readPictureHeader', () => {
  it.each([
    ['7x5.png', 'png', 1],
    ['7x5.gif', 'gif', 1],
    ['7x5-baseline.jpg', 'jpeg', 1],
    ['7x5-progressive.jpg', 'jpeg', 1],
    ['7x5-orientation-6.jpg', 'jpeg', 6],
    ['7x5-orientation-8-big-endian.jpg', 'jpeg', 8],
    ['7x5-lossy.webp', 'webp', 1],
    ['7x5-lossless.webp', 'webp', 1],
    ['7x5-extended.webp', 'webp', 1],
  ])('reads %s', (name, type, orientation) => {
    expect(readPictureHeader(fixture(name))).toEqual({
      ok: true,
      type,
      widthPx: 7,
      heightPx: 5,
      orientation,
    });
  });

  it('reads a size beyond what any canvas takes, without decoding', () => {
    const png = fixture('7x5.png');
    new DataView(png.buffer).setUint32(16, 65_000);
    new DataView(png.buffer).setUint32(20, 40_000);
    expect(readPictureHeader(png)).toMatchObject({ ok: true, widthPx: 65_000, heightPx: 40_000 });
  });

  it('calls every picture that ends within its header broken, and never throws', () => {
    for (const name of readdirSync(folder)) {
      const whole = fixture(name);
      for (let length = 0; length < whole.length; length++) {
        const read = readPictureHeader(whole.slice(0, length));
        if (read.ok) expect(read).toMatchObject({ widthPx: 7, heightPx: 5 });
        else expect(['empty', 'not-a-picture', 'broken']).toContain(read.code);
      }
    }
  });

  it('calls a picture without extent broken', () => {
    const gif = fixture('7x5.gif');
    gif[6] = 0;
    expect(readPictureHeader(gif)).toEqual({ ok: false, code: 'broken', type: 'gif' });
  });

  it('stops at a JPEG whose segments lead nowhere', () => {
    const jpeg = fixture('7x5-baseline.jpg');
    jpeg[4] = 0xff;
    jpeg[5] = 0xff;
    expect(readPictureHeader(jpeg)).toEqual({ ok: false, code: 'broken', type: 'jpeg' });
  });

  it('names what is not a picture that it can use', () => {
    expect(readPictureHeader(new Uint8Array())).toEqual({ ok: false, code: 'empty' });
    expect(readPictureHeader(bytes('\0\0\0\x18ftypheic\0\0\0\0mif1heic'))).toEqual({
      ok: false,
      code: 'heic',
    });
    expect(readPictureHeader(bytes('\0\0\0\x18ftypmif1\0\0\0\0mif1heic'))).toEqual({
      ok: false,
      code: 'heic',
    });
    const kindOf = (text: string) => readPictureHeader(bytes(text));
    expect(kindOf('\0\0\0\x1cftypavif\0\0\0\0avifmif1miaf')).toMatchObject({ kind: 'AVIF' });
    expect(kindOf('\0\0\0\x14ftypqt  \0\0\0\0qt  ')).toMatchObject({ kind: 'video' });
    expect(kindOf('%PDF-1.7\n')).toMatchObject({ kind: 'PDF' });
    expect(kindOf('II*\0\b\0\0\0')).toMatchObject({ kind: 'TIFF' });
    expect(kindOf('<?xml version="1.0"?>\n<svg xmlns="">')).toMatchObject({ kind: 'SVG' });
    expect(kindOf('{"format":"footmark-site"}')).toEqual({ ok: false, code: 'not-a-picture' });
  });
});

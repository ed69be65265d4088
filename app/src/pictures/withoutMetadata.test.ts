import { readdirSync, readFileSync } from 'node:fs';
import ExifReader from 'exifreader';
import { describe, expect, it } from 'vitest';
import { readPictureHeader } from './pictureHeader';
import { placeKeptIn, placeTakenOf, withoutMetadata } from './withoutMetadata';

// 7x5-gps*: written by sharp 0.35 (libvips), with a place, a maker and an artist in Exif and a place in XMP; read by ExifReader 4.46. Neither is ours.
const folder = new URL('./fixtures/', import.meta.url);
const fixture = (name: string) => new Uint8Array(readFileSync(new URL(name, folder)));

function bare(bytes: Uint8Array): Uint8Array {
  const header = readPictureHeader(bytes);
  const made = header.ok ? withoutMetadata(bytes, header.type, header.orientation) : null;
  if (made === null) throw new Error('a picture that cannot be followed to its end');
  return made;
}

function tags(bytes: Uint8Array): Readonly<Record<string, unknown>> {
  return ExifReader.load(bytes.slice().buffer);
}

const NAMES = /gps|latitude|longitude|make$|artist|date/i;
/** A colour profile has a date of its own, that of the profile. */
const told = (bytes: Uint8Array) =>
  Object.keys(tags(bytes)).filter((name) => NAMES.test(name) && !name.startsWith('ICC'));

describe('withoutMetadata', () => {
  it.each(['7x5-gps-orientation-6.jpg', '7x5-gps.png', '7x5-gps.webp'])(
    'takes out where %s was taken, by what and by whom',
    (name) => {
      const whole = fixture(name);
      expect(told(whole)).toEqual(expect.arrayContaining(['GPSLatitude', 'GPSLongitude', 'Make', 'Artist']));
      const left = bare(whole);
      expect(told(left)).toEqual([]);
      expect(new TextDecoder('latin1').decode(left)).not.toMatch(/Exif\0\0II|XMP |xmpmeta|Invented/);
      expect(readPictureHeader(left)).toEqual(readPictureHeader(whole));
    },
  );

  it('leaves a JPEG its orientation, as another reader has it', () => {
    expect(tags(bare(fixture('7x5-gps-orientation-6.jpg'))).Orientation).toMatchObject({ value: 6 });
    expect(tags(bare(fixture('7x5-orientation-8-big-endian.jpg'))).Orientation).toMatchObject({ value: 8 });
    expect(tags(bare(fixture('7x5-baseline.jpg'))).Orientation).toBeUndefined();
  });

  it('leaves every picture the same picture: what is left is done with', () => {
    for (const name of readdirSync(folder)) {
      const [whole, left] = [fixture(name), bare(fixture(name))];
      expect(readPictureHeader(left), name).toEqual(readPictureHeader(whole));
      expect(left.length, name).toBeLessThanOrEqual(whole.length);
      expect(bare(left), name).toEqual(left);
    }
  });

  it('drops what a phone appends behind a JPEG: another picture with its own place', () => {
    const [first, second] = [fixture('7x5-baseline.jpg'), fixture('7x5-gps-orientation-6.jpg')];
    const both = new Uint8Array([...first, ...second]);
    expect(bare(both)).toEqual(bare(first));
  });

  it('drops a comment of a GIF and keeps how often it repeats', () => {
    const gif = fixture('7x5.gif');
    const head = 13 + ((gif[10] ?? 0) & 0x80 ? 3 * 2 ** (((gif[10] ?? 0) & 7) + 1) : 0);
    const block = (label: number, ...data: readonly string[]) => [
      0x21,
      label,
      ...data.flatMap((part) => [part.length, ...Array.from(part, (c) => c.charCodeAt(0))]),
      0,
    ];
    const repeats = block(0xff, 'NETSCAPE2.0', '\x01\0\0');
    const made = new Uint8Array([
      ...gif.subarray(0, head),
      ...block(0xfe, '44.97 N 93.25 W'),
      ...repeats,
      ...block(0xff, 'XMP DataXMP', 'GPSLatitude'),
      ...gif.subarray(head),
    ]);
    const left = bare(made);
    expect(left).toEqual(new Uint8Array([...gif.subarray(0, head), ...repeats, ...gif.subarray(head)]));
  });

  it('says when a picture cannot be followed to its end, and never throws', () => {
    for (const name of readdirSync(folder)) {
      const whole = fixture(name);
      for (let length = 30; length < whole.length; length++) {
        const cut = whole.slice(0, length);
        const header = readPictureHeader(cut);
        if (!header.ok) continue;
        const left = withoutMetadata(cut, header.type, header.orientation);
        if (left !== null) expect(new TextDecoder('latin1').decode(left), name).not.toContain('Invented');
      }
    }
  });
});

describe('where a photo was taken', () => {
  const PHOTO = '7x5-gps-orientation-6.jpg';
  /** As Exif has it; XMP may say it otherwise, and goes. */
  const placeOf = (bytes: Uint8Array) => {
    const { exif = {}, gps } = ExifReader.load(bytes.slice().buffer, { expanded: true });
    return { degrees: gps, as: [exif.GPSLatitude?.value, exif.GPSLongitude?.value] };
  };
  const withItsPlace = (bytes: Uint8Array) => {
    const header = readPictureHeader(bytes);
    const made = header.ok
      ? withoutMetadata(bytes, header.type, header.orientation, placeTakenOf(bytes, header.type))
      : null;
    if (made === null) throw new Error('a picture that cannot be followed to its end');
    return made;
  };

  it('is kept if that is to be, as another reader has it, and with it nothing but the orientation', () => {
    const whole = fixture(PHOTO);
    const kept = withItsPlace(whole);
    expect(placeOf(whole).degrees).toMatchObject({
      Latitude: expect.any(Number),
      Longitude: expect.any(Number),
    });
    expect(placeOf(kept)).toEqual(placeOf(whole));
    expect(tags(kept).Orientation).toMatchObject({ value: 6 });
    expect(told(kept).filter((name) => !/gps/i.test(name))).toEqual([]);
    expect(withItsPlace(kept)).toEqual(kept);
  });

  it('is known as what was kept by wish only where nothing else stands beside it', () => {
    const whole = fixture(PHOTO);
    expect(placeKeptIn(withItsPlace(whole), 'jpeg', 6)).toEqual(placeTakenOf(whole, 'jpeg'));
    expect(placeKeptIn(whole, 'jpeg', 6)).toBeNull();
    expect(placeKeptIn(bare(whole), 'jpeg', 6)).toBeNull();
  });

  it('is told of no picture that says none, is cut, or is no JPEG', () => {
    for (const name of readdirSync(folder)) {
      const whole = fixture(name);
      const header = readPictureHeader(whole);
      if (name !== PHOTO && header.ok) expect(placeTakenOf(whole, header.type), name).toBeNull();
    }
    const whole = fixture(PHOTO);
    for (let length = 0; length < whole.length; length++) placeTakenOf(whole.slice(0, length), 'jpeg');
  });
});

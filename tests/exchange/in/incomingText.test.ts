import { incomingText } from '@footmark/exchange';
import JSZip from 'jszip';
import { describe, expect, it } from 'vitest';
import { readSound } from './reading';

const KML = `<kml xmlns="http://www.opengis.net/kml/2.2"><Placemark><name>Peña</name><Point><coordinates>1,2</coordinates></Point></Placemark></kml>`;

describe('the text of a file', () => {
  it('is UTF-8, or else western letters', () => {
    expect(incomingText(new TextEncoder().encode(KML))).toEqual({ ok: true, value: KML });
    const old = Uint8Array.from([...'8\nMu\u00f1oz'].map((c) => c.charCodeAt(0)));
    expect(incomingText(old)).toEqual({ ok: true, value: '8\nMuñoz' });
  });

  // written by jszip, which shares no code with our reader
  it('is the first KML of a KMZ', async () => {
    const zip = new JSZip();
    zip.file('images/a.png', Uint8Array.of(1, 2, 3));
    zip.file('doc.kml', KML);
    const bytes = await zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' });
    const text = incomingText(bytes);
    if (!text.ok) return expect.fail(text.code);
    expect(readSound(text.value).things[0]).toMatchObject({ name: 'Peña', shape: 'point' });
    expect(incomingText(bytes.slice(0, -10))).toEqual({ ok: false, code: 'cut-short' });
  });

  it('is none in another zip, and none that swells', { timeout: 30_000 }, async () => {
    const zip = new JSZip();
    zip.file('a.txt', 'x');
    expect(incomingText(await zip.generateAsync({ type: 'uint8array' }))).toEqual({
      ok: false,
      code: 'unknown-format',
    });
    zip.file('doc.kml', new Uint8Array(90_000_000));
    const bomb = await zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' });
    expect(incomingText(bomb)).toMatchObject({ ok: false, code: 'too-large' });
  });
});

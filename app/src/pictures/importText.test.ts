import { describe, expect, it } from 'vitest';
import { importProblemText, scaledText } from './importText';

describe('importProblemText', () => {
  it('names the file and the value that is over the limit', () => {
    expect(
      importProblemText('plat.png', { ok: false, code: 'too-many-pixels', widthPx: 12_000, heightPx: 9000 }),
    ).toContain('“plat.png” has 12,000 × 9,000 pixels, 108 megapixels; it must have fewer than 100.');
    expect(importProblemText('scan.jpg', { ok: false, code: 'too-many-bytes', bytes: 40_000_001 })).toContain(
      '“scan.jpg” has 40.1 MB; 40 MB is the most.',
    );
  });

  it('says how to get from HEIC to JPEG', () => {
    const text = importProblemText('IMG_0042.HEIC', { ok: false, code: 'heic' });
    expect(text).toContain('“IMG_0042.HEIC”');
    expect(text).toContain('most compatible');
    expect(text).toContain('JPEG');
  });
});

describe('scaledText', () => {
  it('says both sizes, and nothing of a picture that is kept whole', () => {
    const picture = { ok: true, blob: new Blob(), widthPx: 4096, heightPx: 3072 } as const;
    expect(scaledText('yard', { ...picture, scaledFrom: { widthPx: 8192, heightPx: 6144 } })).toBe(
      '“yard” had 8,192 × 6,144 pixels and is kept at 4,096 × 3,072.',
    );
    expect(scaledText('yard', { ...picture, scaledFrom: null })).toBeNull();
  });
});

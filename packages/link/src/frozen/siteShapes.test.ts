import { SITE_VERSION } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { liveShape } from '../linkKind';
import { shapeText } from '../shape/shapeText';
import { siteKind } from '../siteKind';
import { siteShapes } from './siteShapes';

const AGAIN = 'npx vitest run --config tests/vitest.config.ts packages/link -u';

describe('the frozen shapes of sites', () => {
  it(`hold the shape of this version (while it is not given out: ${AGAIN})`, async () => {
    const text =
      `// The shape of a site of version ${SITE_VERSION} for links. Written by siteShapes.test.ts, frozen once the version is given out.\n` +
      `export const siteShape${SITE_VERSION} =\n  '${shapeText(liveShape(siteKind))}';\n`;
    await expect(text).toMatchFileSnapshot(`siteShape${SITE_VERSION}.ts`);
  });

  it('name every version since links are made, this one too', () => {
    const versions = Array.from({ length: SITE_VERSION - 1 }, (_, i) => String(i + 2));
    expect(Object.keys(siteShapes)).toEqual(versions);
    expect(siteShapes[SITE_VERSION]).toBe(shapeText(liveShape(siteKind)));
  });
});

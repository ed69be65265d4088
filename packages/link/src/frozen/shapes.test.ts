import { ANSWER_VERSION, SITE_VERSION } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { answerKind } from '../answerKind';
import { type LinkKind, liveShape } from '../linkKind';
import { shapeText } from '../shape/shapeText';
import { siteKind } from '../siteKind';
import { answerShapes } from './answerShapes';
import { siteShapes } from './siteShapes';

const AGAIN = 'npx vitest run --config tests/vitest.config.ts packages/link -u';

describe.each([
  { of: 'site', kind: siteKind, now: SITE_VERSION, first: 2, shapes: siteShapes },
  { of: 'answer', kind: answerKind, now: ANSWER_VERSION, first: 1, shapes: answerShapes },
] satisfies readonly {
  of: string;
  kind: LinkKind;
  now: number;
  first: number;
  shapes: LinkKind['shapes'];
}[])('the frozen shapes of a $of', ({ of, kind, now, first, shapes }) => {
  const live = shapeText(liveShape(kind));

  it(`hold the shape of this version (while it is not given out: ${AGAIN})`, async () => {
    const text =
      `// The shape of a ${of} of version ${now} for links. Written by shapes.test.ts, frozen once the version is given out.\n` +
      `export const ${of}Shape${now} =\n  '${live}';\n`;
    await expect(text).toMatchFileSnapshot(`${of}Shape${now}.ts`);
  });

  it('name every version since links are made, this one too', () => {
    const versions = Array.from({ length: now - first + 1 }, (_, i) => String(i + first));
    expect(Object.keys(shapes)).toEqual(versions);
    expect(shapes[now]).toBe(live);
  });
});

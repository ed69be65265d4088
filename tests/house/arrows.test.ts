import { describe, expect, it } from 'vitest';
import { ARROWS, breachesOf, type Rule, type Sources } from './arrows';
import { findCycles } from './cycles';
import { houseSources } from './repository';
import { mask, specifiersOf } from './specifiers';

const rulesOf = (sources: Sources) => breachesOf(sources).map(({ rule }) => rule);
const inSite = (text: string) => ({ 'packages/site/src/a.ts': text });

describe('the house as it stands', () => {
  const sources = houseSources();

  it('is read at all: every package, and imports between them', () => {
    const owners = new Set(Object.keys(sources).map((path) => /^packages\/([^/]+)/.exec(path)?.[1] ?? 'app'));
    expect([...owners]).toEqual(expect.arrayContaining(['app', 'geometry', 'adjust', 'site']));
    const ours = Object.values(sources)
      .flatMap((text) => specifiersOf(mask(text)))
      .filter(({ from }) => from.startsWith('@footmark/'));
    expect(ours.length).toBeGreaterThan(0);
  });

  it('keeps its arrows and doors', () => {
    expect(breachesOf(sources)).toEqual([]);
  });
});

describe('the arrows themselves', () => {
  it('go one way', () => {
    expect(findCycles(new Map(Object.entries(ARROWS)))).toEqual([]);
  });

  it('name known packages only', () => {
    for (const name of Object.values(ARROWS).flat()) expect(Object.keys(ARROWS)).toContain(name);
  });
});

const BREACHES: readonly Readonly<{ name: string; rule: Rule; sources: Sources }>[] = [
  ...Object.entries({
    'a package upwards': { 'packages/site/src/a.ts': `import { draw } from '@footmark/drawing';` },
    'a type upwards': { 'packages/geometry/src/a.ts': `import type { Site } from '@footmark/site';` },
    'a re-export upwards': { 'packages/adjust/src/index.ts': `export { tie } from '@footmark/geometry';` },
    'a dynamic import upwards': { 'packages/route/src/a.ts': `const a = await import('@footmark/site');` },
    'a type query upwards': { 'packages/words/src/a.ts': `type A = import('@footmark/drawing').A;` },
    'report to drawing': { 'packages/report/src/a.ts': `import { draw } from "@footmark/drawing";` },
    'a package to the app': { 'packages/exchange/src/a.ts': `import '@footmark/app';` },
  }).map(([name, sources]) => ({ name, rule: 'arrow' as const, sources })),
  {
    name: 'an import of an unknown package',
    rule: 'unknown package',
    sources: inSite(`import '@footmark/misc';`),
  },
  { name: 'a package without arrows', rule: 'unknown package', sources: { 'packages/misc/src/a.ts': '' } },
  {
    name: 'a relative way into another package',
    rule: 'out of the package',
    sources: inSite(`import { p } from '../../geometry/src/point';`),
  },
  {
    name: 'a neighbour whose name begins alike',
    rule: 'out of the package',
    sources: inSite(`import { p } from '../../site-old/src/point';`),
  },
  {
    name: 'a worker from elsewhere',
    rule: 'out of the package',
    sources: { 'app/src/a.ts': `new Worker(new URL('../../packages/route/src/w.ts', import.meta.url));` },
  },
  { name: 'an absolute path', rule: 'out of the package', sources: { 'app/src/a.ts': `import '/src/b';` } },
  {
    name: 'the inside of another package',
    rule: 'inside of another package',
    sources: { 'app/src/a.tsx': `import { p } from '@footmark/geometry/src/point';` },
  },
  { name: 'a Node module', rule: 'node', sources: inSite(`import { readFileSync } from 'node:fs';`) },
  { name: 'a Node module by its bare name', rule: 'node', sources: inSite(`import fs from 'fs';`) },
  { name: 'its own index by path', rule: 'own index', sources: inSite(`import { x } from './index';`) },
  {
    name: 'its own index by extension',
    rule: 'own index',
    sources: inSite(`import { x } from './index.ts';`),
  },
  { name: 'its own index by folder', rule: 'own index', sources: inSite(`import { x } from '.';`) },
  {
    name: 'its own index from below',
    rule: 'own index',
    sources: { 'packages/site/src/derive/a.ts': `import { x } from '../';` },
  },
  {
    name: 'its own index by name',
    rule: 'own index',
    sources: inSite(`import { x } from '@footmark/site';`),
  },
  { name: 'a star', rule: 'export star', sources: inSite(`export * from './b';`) },
  { name: 'a named star', rule: 'export star', sources: inSite(`export * as b from './b';`) },
  { name: 'a star of types', rule: 'export star', sources: inSite(`export type * from './b';`) },
  { name: 'a default', rule: 'default export', sources: inSite('export default function a() {}') },
  {
    name: 'a renamed default',
    rule: 'default export',
    sources: inSite(`const a = 1; export { a as default };`),
  },
  { name: 'an import of a variable', rule: 'computed import', sources: inSite('await import(name);') },
  {
    name: 'Turf in two files',
    rule: 'wrapped once',
    sources: {
      'packages/geometry/src/a.ts': `import { union } from '@turf/turf';`,
      'app/src/b.ts': `import { union } from '@turf/union';`,
    },
  },
  {
    name: 'proj4 in two files',
    rule: 'wrapped once',
    sources: {
      'packages/exchange/src/a.ts': `import proj4 from 'proj4';`,
      'packages/exchange/src/b.ts': `import type { Converter } from 'proj4/dist/lib/core';`,
    },
  },
  {
    name: 'a circle of two',
    rule: 'cycle',
    sources: {
      'packages/site/src/a.ts': `import { b } from './b';`,
      'packages/site/src/b.ts': `import type { A } from './a.ts';`,
    },
  },
  {
    name: 'a circle through an inner index',
    rule: 'cycle',
    sources: {
      'app/src/a.tsx': `import { b } from './inner';`,
      'app/src/inner/index.ts': `export { b } from './b';`,
      'app/src/inner/b.tsx': `const a = import('../a');`,
    },
  },
];

describe('a breach is found', () => {
  it.each(BREACHES)('$name: $rule', ({ rule, sources }) => {
    expect(rulesOf(sources)).toEqual([rule]);
  });

  it('has an example for every rule', () => {
    const rules: Record<Rule, true> = {
      arrow: true,
      'unknown package': true,
      'out of the package': true,
      'inside of another package': true,
      node: true,
      'own index': true,
      'export star': true,
      'default export': true,
      'computed import': true,
      'wrapped once': true,
      cycle: true,
    };
    expect(new Set(BREACHES.map(({ rule }) => rule))).toEqual(new Set(Object.keys(rules)));
  });

  it('names the file, the line and the specifier', () => {
    const text = `/* two\nlines */\nimport {\n  draw,\n} from '@footmark/drawing';`;
    expect(breachesOf(inSite(text))).toEqual([
      { rule: 'arrow', at: 'packages/site/src/a.ts:5', what: '@footmark/drawing' },
    ]);
  });

  it('shows the way round a circle', () => {
    const file = (next: string) => `import { x } from './${next}';`;
    const sources = {
      'packages/site/src/a.ts': file('b'),
      'packages/site/src/b.ts': file('c'),
      'packages/site/src/c.ts': file('a'),
    };
    expect(breachesOf(sources)[0]?.what).toBe(
      'packages/site/src/a.ts → packages/site/src/b.ts → packages/site/src/c.ts → packages/site/src/a.ts',
    );
  });
});

describe('what is allowed', () => {
  const ALLOWED: Readonly<Record<string, Sources>> = {
    'every arrow': Object.fromEntries(
      Object.entries(ARROWS).map(([name, to]) => [
        `packages/${name}/src/a.ts`,
        to.map((other) => `import { x } from '@footmark/${other}';`).join('\n'),
      ]),
    ),
    'the app to all': {
      'app/src/a.ts': Object.keys(ARROWS)
        .map((name) => `import '@footmark/${name}';`)
        .join('\n'),
    },
    'Node in the report': { 'packages/report/src/a.ts': `import { readFileSync } from 'node:fs';` },
    'a default export of the app': { 'app/src/a.tsx': 'export default function Screen() {}' },
    'anything in a unit test': {
      'packages/geometry/src/a.test.ts': `import { x } from '@footmark/site'; import { y } from './index'; import 'node:fs';`,
    },
    'an inner index': {
      'packages/site/src/a.ts': `import { b } from './units'; import { c } from './units/index';`,
      'packages/site/src/units/index.ts': `export { b } from './b';`,
      'packages/site/src/units/b.ts': 'export const b = 1;',
    },
    'a diamond': {
      'packages/site/src/a.ts': `import './b'; import './c';`,
      'packages/site/src/b.ts': `import './d';`,
      'packages/site/src/c.ts': `import './d';`,
      'packages/site/src/d.ts': '',
    },
    'Turf in one file': { 'packages/geometry/src/a.ts': `import '@turf/turf'; import '@turf/union';` },
    'imports that are only spoken of': inSite(`
      // import { draw } from '@footmark/drawing';
      /* export * from './b'; export default 1; */
      const text = "import x from '@footmark/drawing'";
      const template = \`import '@footmark/drawing' \${name} from '@footmark/exchange'\`;
    `),
  };

  it.each(Object.entries(ALLOWED))('%s', (_, sources) => {
    expect(breachesOf(sources)).toEqual([]);
  });
});

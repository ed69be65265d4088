import { describe, expect, it } from 'vitest';
import { mask, specifiersOf } from './specifiers';

describe('reading specifiers', () => {
  const read = (text: string) => specifiersOf(mask(text)).map(({ from }) => from);

  it.each([
    ['a quote in a regular expression', `const q = /['"\`/]/.test(s);\nimport 'a';`],
    ['a division', `const r = a / b; import 'a'; const t = c / d;`],
    ['an apostrophe in JSX text', `const p = <p>Don't</p>;\nconst l = import('a');`],
    ['tags that close', `const p = <><b /><i>/</i></>;\nimport 'a';`],
    ['nested templates', `const t = \`\${f(\`\${x}\`)}{\`; import "a";`],
    ['an object inside a template', `const t = \`\${JSON.stringify({ a: { b: 1 } })}\`; import 'a';`],
    ['an import inside a template', `const t = \`\${await import('a')}\`;`],
    ['an escaped quote', `const s = 'it\\'s'; import 'a';`],
    ['a comment mark in a string', `const u = 'x://y'; import 'a'; const v = "/*";`],
    ['a plain template', 'await import(`a`);'],
    ['a method called from', `import 'a'; Array.from("b"); x.import("c");`],
  ])('%s', (_, text) => {
    expect(read(text)).toEqual(['a']);
  });
});

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cacheControl, HEADERS, PAGE_POLICY, STYLE_SOURCES } from '../../app/build/policy';
import { ROOT } from './repository';

/** The style sheets that react-aria writes into a page as text, taken from its own source: what a template in backticks is given to. */
function ariaStyles(): readonly string[] {
  const components = realpathSync(join(ROOT, 'app', 'node_modules', 'react-aria-components'));
  const source = join(components, '..', 'react-aria', 'dist', 'private');
  const texts = readdirSync(source, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.mjs'))
    .map((name) => readFileSync(join(source, name), 'utf8'))
    .filter((text) => /createElement\('style'\)/.test(text));
  return texts.flatMap((text) =>
    [...text.matchAll(/style\.textContent = `([^`]*)`\.trim\(\)/g)].map(([, sheet = '']) =>
      sheet.trim().replace(/\$\{([\w$]+)\}/g, (_, name: string) => constantIn(text, name)),
    ),
  );
}

function constantIn(text: string, name: string): string {
  const at = text.indexOf(`const ${name} = '`);
  expect(at).toBeGreaterThan(0);
  return text.slice(at).split("'")[1] ?? '';
}

const hashSource = (sheet: string) => `'sha256-${createHash('sha256').update(sheet).digest('base64')}'`;

describe('what a page may do', () => {
  it('lets in the styles that react-aria writes, and no others', () => {
    const styles = ariaStyles();
    expect(styles).toHaveLength(2);
    expect([...STYLE_SOURCES].sort()).toEqual(["'self'", ...styles.map(hashSource)].sort());
  });

  it('starts from nothing, and lets no script in that is not a file of its own', () => {
    expect(PAGE_POLICY).toContain("default-src 'none'");
    expect(PAGE_POLICY).toMatch(/(?:^|; )script-src 'self';/);
    expect(PAGE_POLICY).not.toContain('unsafe');
    for (const name of ['object-src', 'base-uri', 'form-action'])
      expect(PAGE_POLICY).toContain(`${name} 'none'`);
  });

  it('says who may frame it in the header alone, where it is heard', () => {
    expect(HEADERS['Content-Security-Policy']).toBe(`${PAGE_POLICY}; frame-ancestors 'none'`);
  });

  it('keeps for long only what has its content in its name', () => {
    expect(cacheControl('/assets/index-abc.js')).toContain('immutable');
    for (const path of ['/', '/index.html', '/sw.js', '/manifest.webmanifest', '/icon.svg'])
      expect(cacheControl(path)).toBe('no-cache');
  });
});

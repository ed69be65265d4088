import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT, readText } from './repository';

/**
 * Lines that tie an install to one registry: an address, a tarball's place, a setting that names a registry or a login.
 * Packages with `http` or `registry` in their names are none.
 */
function hostLines(text: string): readonly string[] {
  return text
    .split('\n')
    .filter((line) => /:\/\/|\btarball:|^\s*(?:@[^:=]+:)?registry\s*[:=]|_auth|^\s*\/\//i.test(line));
}

describe('the install depends on no particular registry', () => {
  it('the lock is there and names packages', () => {
    expect(readText('pnpm-lock.yaml')).toMatch(/^lockfileVersion:[\s\S]*integrity: sha512-/m);
  });

  it.each(['pnpm-lock.yaml', 'pnpm-workspace.yaml', '.npmrc'])('%s', (file) => {
    expect(existsSync(join(ROOT, file)) ? hostLines(readText(file)) : []).toEqual([]);
  });

  it.each([
    "    resolution: {integrity: sha512-x, tarball: 'https://registry.example/a.tgz'}",
    '    resolution: {tarball: a.tgz}',
    'registry=https://registry.example/',
    'registry = registry.example',
    '@ours:registry=registry.example',
    '//registry.example/:_authToken=x',
    'registry: registry.example',
  ])('would find %s', (line) => {
    expect(hostLines(`save-exact=true\n${line}\n`)).toEqual([line]);
  });

  it.each(['  http-errors@2.0.0:', '  https-proxy-agent@7.0.6:', 'save-exact=true', '  registry-url@6.0.1:'])(
    'lets %s be',
    (line) => {
      expect(hostLines(line)).toEqual([]);
    },
  );
});

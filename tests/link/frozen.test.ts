// Links on paper live for years: those of every version that was given out are opened here, and become what a file of the same version
// becomes. `pnpm unit -u` writes those of this version anew, which is right only while it has not been given out.

import { readdirSync, readFileSync } from 'node:fs';
import { openLink } from '@footmark/link';
import { openSite, SITE_VERSION, writeSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { fragmentOf, fullSite, sampleSite } from './samples';

const everything = { address: true, notes: true, coordinates: true };

const folder = new URL('./frozen/', import.meta.url);
const read = (name: string) => readFileSync(new URL(name, folder), 'utf8');

const sites = { 'rear-alley': sampleSite('rear-alley'), full: fullSite() };

describe('links of this version', () => {
  it.each(Object.entries(sites))('are as they were written: %s', async (name, site) => {
    const opened = openLink(fragmentOf(site, everything));
    if (!opened.ok || opened.is !== 'site') throw new Error(JSON.stringify(opened));
    const file = new URL(`v${SITE_VERSION}-${name}`, folder).pathname;
    await expect(`${fragmentOf(site, everything)}\n`).toMatchFileSnapshot(`${file}.txt`);
    await expect(writeSite(opened.site)).toMatchFileSnapshot(`${file}.site`);
  });
});

describe('links of every version', () => {
  const names = readdirSync(folder)
    .filter((file) => file.endsWith('.txt'))
    .map((file) => file.replace(/\.txt$/, ''));

  it('are kept', () => {
    const versions = new Set(names.map((name) => Number(/^v(\d+)/.exec(name)?.[1])));
    expect([...versions].sort()).toEqual(Array.from({ length: SITE_VERSION - 1 }, (_, i) => i + 2));
  });

  it.each(names)('%s opens as the file of the same version does', (name) => {
    const file = openSite(read(`${name}.site`));
    const link = openLink(read(`${name}.txt`));
    if (!file.ok) throw new Error(JSON.stringify(file.failure));
    expect(link).toStrictEqual({ ok: true, is: 'site', site: file.site, migratedFrom: file.migratedFrom });
  });
});

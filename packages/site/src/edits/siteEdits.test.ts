import { describe, expect, it } from 'vitest';
import { openSite, writeSite } from '../document/openSite';
import { yard } from '../testing/yard';
import { setAside, setSigma } from './siteEdits';
import { soundEdit } from './soundEdit';

const site = yard();

describe('standard deviations of a site', () => {
  it('are given one by one, and go back to the table without a trace', () => {
    const counter = setSigma(site, { name: 'counter', value: 0.05 });
    const both = setSigma(counter, { name: 'pipeStray', value: 0.1 });
    expect(both.sigmas).toEqual({ counter: 0.05, pipeStray: 0.1 });
    expect(setSigma(both, { name: 'counter', value: 0.06 }).sigmas).toEqual({
      counter: 0.06,
      pipeStray: 0.1,
    });
    expect(setSigma(both, { name: 'pipeStray', value: undefined })).toStrictEqual(counter);
    const opened = openSite(writeSite(both));
    expect(opened.ok && opened.site).toEqual(both);
  });

  it.each([0, -1, 1000.5, Number.NaN, Number.POSITIVE_INFINITY])('cannot be %d', (value) => {
    const edited = setSigma(site, { name: 'zero', value });
    expect(soundEdit(site, edited)).toMatchObject({ ok: false, problems: [{ path: ['sigmas', 'zero'] }] });
    expect(openSite(writeSite(edited)).ok).toBe(false);
  });

  it('are of kinds that the table has, and no others', () => {
    const file = JSON.parse(writeSite(site));
    expect(openSite(JSON.stringify({ ...file, sigmas: { counter: 0.1 } })).ok).toBe(true);
    expect(openSite(JSON.stringify({ ...file, sigmas: { guess: 0.1 } }))).toMatchObject({ ok: false });
  });
});

describe('observations that are set aside', () => {
  it('are left out once, and taken in again', () => {
    const one = setAside(site, { observation: 'locate/f1', aside: true });
    expect(setAside(one, { observation: 'locate/f1', aside: true })).toEqual(one);
    const two = setAside(one, { observation: 'pair/q1', aside: true });
    expect(two.setAside).toEqual(['locate/f1', 'pair/q1']);
    expect(setAside(two, { observation: 'locate/f1', aside: false }).setAside).toEqual(['pair/q1']);
    expect(setAside(site, { observation: 'pair/q1', aside: false })).toEqual(site);
  });
});

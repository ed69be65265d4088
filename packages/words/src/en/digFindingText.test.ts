import { describe, expect, it } from 'vitest';
import { volumeText } from '../amountText';
import type { DigFindingValues } from '../digFindingValues';
import { digFindingCodes, digFindingSample, dugYard } from '../testing/digFindingSamples';
import { digFindingText, digFindingTitle } from './digFindingText';
import { acrossText, areaText, shareText } from './digMeasure';
import { boreText, treeTakenText } from './digTreeText';

/** Labels, counts, ratios, days and the number to call, the only numbers that have no unit. */
const WITHOUT_UNIT =
  /\b[AB]\d\b|\b[\d.]+ across to 1 down|: \d of them|\b24 hours\b|\b\d closed|\b\d (facts|ladders|lots)\b|\b811\b|May \d+, \d{4}/g;
const NUMBER_WITH_UNIT = /\d[\d.⁄½¼¾]*( ft| in\b| mm\b| m\b| %|°|′|″| sq ft| m²| cu yd| m³)|[½¼¾]″/g;

describe.each(['ft', 'ft-in', 'm'] as const)('in %s', (length) => {
  it.each(digFindingCodes)('%s is said in whole sentences, with what would cure it', (code) => {
    const said = digFindingText(digFindingSample(code), dugYard(length));
    for (const text of [said.text, said.cure]) {
      expect(text).toMatch(/^[\p{Lu}\d].*[^.]\.$/u);
      expect(text).not.toMatch(/undefined|null|NaN|\[object|[{}$]|\s\s|,,/);
      expect(text.replace(WITHOUT_UNIT, '').replace(NUMBER_WITH_UNIT, '')).not.toMatch(/\d/);
    }
  });

  it.each(digFindingCodes)('%s is told in a line that a phone has the room for', (code) => {
    const title = digFindingTitle(digFindingSample(code), dugYard(length));
    // two lines of a phone's list at the most
    expect(title.length).toBeLessThanOrEqual(62);
    expect(title).toMatch(/^[\p{Lu}\d].*[^.]$/u);
    expect(title).not.toMatch(/undefined|null|NaN|\[object|[{}$]|\s\s|,,/);
    const plain = title.replace(WITHOUT_UNIT, '').replace(NUMBER_WITH_UNIT, '');
    expect(plain).not.toMatch(/\d/);
  });
});

describe('a finding says what, how much and what to do', () => {
  const site = dugYard('ft');
  const said = (code: keyof DigFindingValues, more: object = {}) =>
    digFindingText(digFindingSample(code, more), site);

  it('names the dig, the tree, its zone and its share', () => {
    expect(said('dig-in-root-zone').text).toBe(
      'The trench on Lateral from 0.0 ft to 19.69 ft takes 14 % of the critical root zone of Maple, which is protected.',
    );
  });

  it('calls a dig by the name that people gave it', () => {
    const digs = site.digging.digs.map((d) => ({ ...d, name: 'Alley pit' }));
    const named = { ...site, digging: { ...site.digging, digs } };
    expect(digFindingText(digFindingSample('engineer-designs'), named).text).toMatch(
      /^Alley pit is 21\.3 ft deep/,
    );
  });

  it('says whether the pipe lies deep enough to bore under a tree', () => {
    expect(said('pipe-in-root-zone').cure).toContain('3.6 ft of cover is planned, too little');
    expect(said('pipe-in-root-zone', { state: 'existing', cover: 1.5, enough: true }).cure).toContain(
      '4.9 ft of cover, enough for that',
    );
    const bore = { asked: 1.3716, row: 'boreDepthNear', cover: 1.5, enough: true } as const;
    expect(boreText(bore, site.units)).toBe(
      'Boring under is asked to be 4.5 ft deep; the pipe has 4.9 ft of cover, which is enough.',
    );
    expect(boreText({ ...bore, cover: 1.1, enough: false }, site.units)).toContain('which is too little');
    expect(boreText({ ...bore, cover: null, enough: null }, site.units)).toContain('cover is not known');
  });

  it('says what a tree was taken as for a zone', () => {
    const assumed = [
      { fact: 'tolerance', as: 'poor' },
      { fact: 'age', as: 'overmature' },
    ] as const;
    expect(treeTakenText(assumed)).toBe('Taken as one that stands root loss poorly and old.');
  });

  it('does not say that a tree is protected when nobody said so', () => {
    expect(said('dig-in-root-zone', { protected: false }).text).not.toContain('protected');
  });

  it('says that a depth that is not known makes the share a least one', () => {
    expect(said('dig-in-root-zone', { atLeast: true }).text).toContain('takes at least 14 %');
  });

  it('says how a side that is planned is to be kept', () => {
    expect(said('protective-system-needed').cure).toContain('Cut the sides back');
    expect(said('protective-system-needed', { planned: 'shield' }).cure).toContain('Set the shield');
  });

  it('says how the ground above a shield is kept', () => {
    expect(said('shield-stands-above').text).toMatch(
      /from there on they are cut back 1\.5 across to 1 down\.$/,
    );
    expect(said('shield-stands-above', { slope: 0 }).text).toMatch(/from there on they are not cut back\.$/);
  });

  it('says why a depth cannot be told', () => {
    expect(said('depth-not-known', { because: 'no-ground' }).text).toContain('no level of the ground');
    expect(said('depth-not-known', { because: 'indoors' }).cure).toContain('at the wall');
  });

  it('says where the whole pipe falls enough though a piece of it is not sure', () => {
    const enough = 'From the first level to the last it does fall enough.';
    expect(said('fall-not-sure').text).toContain(enough);
    expect(said('fall-not-sure', { whole: false }).text).not.toContain(enough);
  });

  it('says how deep a pipe lies and how sure that is', () => {
    expect(said('cover-too-thin').text).toMatch(/^Lateral has 0\.7 ft of cover at 29\.5 ft, less than/);
    expect(said('cover-too-thin').text).not.toContain('leave it open');
    expect(said('cover-too-thin', { cover: -0.2 }).text).toContain('out of the ground');
    expect(said('cover-above-frost').text).toContain('the levels leave it open');
  });

  it('says how water lies to a sewer', () => {
    expect(said('water-too-near').text).toContain('below the top of the sewer');
    expect(said('water-too-near', { above: 0.1 }).text).toContain('above the top of the sewer');
    expect(said('water-too-near', { crosses: true, sleeve: 1.524 }).cure).toContain('sleeve');
    const crossing = { main: true, crosses: true };
    expect(said('water-too-near', crossing).text).toContain('between them is asked');
    expect(said('water-depth-not-known', crossing).text).toContain('above or below the sewer');
    expect(said('water-depth-not-known').cure).toBe(
      'Find out how deep the water pipe lies and how deep the sewer lies.',
    );
  });

  it('says what a footing was taken for', () => {
    expect(said('dig-under-footing').text).toContain('as nothing is known of it');
    expect(said('dig-under-footing', { assumed: null }).cure).not.toContain('find out');
  });
});

describe('measures', () => {
  it('are in the units of the site', () => {
    // 1 cu yd = 0.764554857984 m³ and 1 sq ft = 0.09290304 m², exact by the foot of 0.3048 m
    expect(volumeText(0.764554857984, { length: 'ft' })).toBe('1.0 cu yd');
    expect(areaText(0.09290304 * 12, { length: 'ft-in' })).toBe('12 sq ft');
    expect(volumeText(2.04, { length: 'm' })).toBe('2.0 m³');
    expect(areaText(2.04, { length: 'm' })).toBe('2.0 m²');
  });

  it('say a share too small to print, and slopes as they are cut', () => {
    expect(shareText(0.001)).toBe('less than 1 %');
    expect(shareText(0)).toBe('0 %');
    expect(acrossText(0.75)).toBe('0.75 across to 1 down');
  });
});

import { INCH_M, type SetOutBend, type StandardBend, standardBends, type Units } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { en } from './en';

const feet: Units = { length: 'ft-in', diameter: 'in', direction: 'bearing' };
const DEGREE = Math.PI / 180;

const standard = (name: string): StandardBend | null => standardBends.find((b) => b.name === name) ?? null;
const bend = (degrees: number, facts: Partial<SetOutBend> = {}): SetOutBend => ({
  turn: degrees * DEGREE,
  known: null,
  fitting: null,
  radius: 0,
  tangent: 0,
  ...facts,
});

describe('what is painted to set a pipe out', () => {
  it('is said by what it is, a bend by its fitting and its side', () => {
    expect(en.setOutName({ is: 'start', bend: null })).toBe('Start');
    expect(en.setOutName({ is: 'end', bend: null })).toBe('End');
    expect(en.setOutName({ is: 'between', bend: null })).toBe('Straight on');
    const bends = [bend(44.3, { fitting: standard('1/8') }), bend(-22, { fitting: standard('1/16') })];
    expect(bends.map((b) => en.setOutName({ is: 'bend', bend: b }))).toEqual([
      '1/8 bend, 45° right',
      '1/16 bend, 22.5° left',
    ]);
    expect(en.setOutName({ is: 'bend', bend: bend(-31.4) })).toBe('Bend, 31° left');
  });

  // R 9 in turning 45°: the tangent is 3.7279 in (R·tan(Δ/2) of any route-surveying text)
  it('says of a bend where it begins, and that its fitting is only as drawn', () => {
    const drawn = bend(45, { fitting: standard('1/8'), radius: 9 * INCH_M, tangent: 3.7279 * INCH_M });
    expect(en.setOutBendTexts(drawn, feet)).toEqual([
      'The corner is painted: the bend begins 3¾″ before it and ends as far after.',
      'Drawn as 45°; nobody has said which fitting is laid.',
    ]);
    expect(en.setOutBendTexts({ ...drawn, known: 45 * DEGREE, tangent: 0 }, feet)).toEqual([]);
  });

  it('says what to do where the fitting is not what is drawn, and where there is none', () => {
    const known = bend(50, { known: 45 * DEGREE, fitting: standard('1/8') });
    expect(en.setOutBendTexts(known, feet)).toEqual([
      'It is drawn as 50°: move the line, or choose another fitting.',
    ]);
    expect(en.setOutBendTexts(bend(31, { known: 31 * DEGREE }), feet)).toEqual([
      'No standard bend makes this turn: make it up of two, or move the line.',
    ]);
  });
});

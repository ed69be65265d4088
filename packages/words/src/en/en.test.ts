import {
  actionIds,
  featureKindIds,
  featureKinds,
  kindSpec,
  observationKindIds,
  type ParseFailure,
  parseAzimuth,
  parseClockRange,
  parseDeclination,
  parseDiameter,
  parseLatLon,
  parseLength,
  parseSlope,
  parseTurn,
  pipeMaterials,
  runEndIds,
  severityIds,
  sigmaNames,
  visitPurposeIds,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { cautionCodes } from '../caution';
import { en } from './en';

const NAME = /^\p{Lu}[^.{}$]*[^.\s{}$]$/u;
const SENTENCE = /^[\p{Lu}\d“].*\.$/u;

describe('names', () => {
  it.each(featureKindIds)('%s, its fields, their choices and its layer have one', (kind) => {
    expect(en.featureKindName(kind)).toMatch(NAME);
    const spec = kindSpec(kind);
    expect(en.layerName(spec.layer)).toMatch(NAME);
    expect(en.shapeName(spec.shape)).toMatch(NAME);
    for (const [field, { input }] of Object.entries(spec.fields)) {
      expect(en.fieldName(kind, field)).toMatch(NAME);
      if (input.as === 'choice')
        for (const choice of input.choices) expect(en.choiceName(choice)).toMatch(NAME);
    }
  });

  it('tell kinds, observations, materials and all other words of one list apart', () => {
    const lists = [
      featureKindIds.map(en.featureKindName),
      observationKindIds.map(en.observationName),
      pipeMaterials.map(en.materialName),
      severityIds.map(en.severityName),
      actionIds.map(en.actionName),
      runEndIds.map(en.runEndName),
      visitPurposeIds.map(en.visitPurposeName),
      sigmaNames.map(en.sigmaName),
    ];
    for (const names of lists) {
      expect(new Set(names).size).toBe(names.length);
      for (const name of names) expect(name).toMatch(NAME);
    }
  });

  it('of single kinds stand for the common one', () => {
    expect(en.fieldName('well', 'diameter')).toBe('Casing diameter');
    expect(en.fieldName('cleanout', 'diameter')).toBe('Diameter');
    expect(Object.keys(featureKinds.well.fields)).toContain('diameter');
  });

  it('of unknown codes are a mistake that says which', () => {
    expect(() => en.choiceName('marble')).toThrow('no words for marble');
    expect(() => en.fieldName('tree', 'constructor')).toThrow('no words for constructor');
  });
});

describe('typed text that cannot be read', () => {
  const refusals: readonly (readonly [ParseFailure['code'], { readonly ok: boolean }])[] = [
    ['empty', parseLength('', 'ft')],
    ['not-a-number', parseLength('x', 'ft')],
    ['two-signs', parseTurn('L -45')],
    ['negative', parseLength('-3', 'ft')],
    ['unknown-unit', parseLength('3 chains', 'ft')],
    ['mixed-units', parseLength('5 m 20 cm', 'ft')],
    ['zero-denominator', parseLength('1/0', 'ft')],
    ['improper-fraction', parseLength('6 3/2"', 'ft')],
    ['ambiguous-comma', parseLength('1,234 m', 'm')],
    ['too-large', parseLength('999999999999', 'm')],
    ['inches-too-large', parseLength(`3' 14"`, 'ft')],
    ['feet-not-whole', parseLength(`3.5' 4"`, 'ft')],
    ['ambiguous-dash', parseLength('6-1/2"', 'ft')],
    ['not-positive', parseDiameter('0', 'in')],
    ['part-not-whole', parseAzimuth('45.5-30-15')],
    ['minutes-too-large', parseAzimuth('45-70')],
    ['seconds-too-large', parseAzimuth('45-30-75')],
    ['azimuth-out-of-range', parseAzimuth('400')],
    ['not-a-quadrant', parseAzimuth('N 45')],
    ['quadrant-over-90', parseAzimuth('N 95 E')],
    ['side-missing', parseTurn('45')],
    ['turn-over-180', parseTurn('R 190')],
    ['not-a-position', parseLatLon('40.446195')],
    ['sign-and-hemisphere', parseLatLon('-40 N, 79 W')],
    ['east-or-west-missing', parseDeclination('8.5')],
    ['declination-over-180', parseDeclination('190 E')],
    ['latitude-out-of-range', parseLatLon('-97.5, 30.2')],
    ['longitude-out-of-range', parseLatLon('30.2, -197.5')],
    ['slope-needs-unit', parseSlope('1/4')],
    ['clock-not-whole-hour', parseClockRange('3:30')],
    ['clock-out-of-range', parseClockRange('13')],
  ];

  it.each(refusals)('%s is said in a sentence with its values', (code, refusal) => {
    expect(refusal).toMatchObject({ ok: false, code });
    const text = en.parseProblemText(refusal as ParseFailure); // refused, by the line above
    expect(text).toMatch(SENTENCE);
    expect(text).not.toMatch(/undefined|null|NaN|“”|[{}$]/);
  });
});

describe('cautions', () => {
  it.each(cautionCodes)('%s has a title and sentences whose numbers carry units', (code) => {
    const { title, text } = en.cautionText(code);
    expect(title).toMatch(NAME);
    expect(text).toMatch(SENTENCE);
    expect(text.replace(/\b(811|911)\b/g, '').replace(/\d[\d.]* (ft|m)\b/g, '')).not.toMatch(/\d/);
  });

  it('come first with what the positions are not', () => {
    expect(cautionCodes[0]).toBe('not-a-utility-locate');
    expect(en.cautionText('call-before-digging').text).toContain('811');
  });
});

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { en } from './en/en';
import { es } from './es/es';
import type { Said } from './said';
import { digFindingCodes, digFindingVariants, dugYard } from './testing/digFindingSamples';
import { everyName } from './testing/everyName';
import { everyWord } from './testing/everyWord';
import { findingCodes, findingSample } from './testing/findingSamples';

/** Files that only one language needs. */
const ALONE = ['article.ts'];

/** Tables that a language keeps in another shape: Spanish names of kinds have their gender beside them. */
const OTHER_SHAPE = ['kindNames'];

/** Texts that are rightly alike: numbers of standards, and words that both languages spell so. */
const ALIKE = ['Error', 'Gas', 'Material', 'Patio', 'no'];

const filesOf = (folder: string) =>
  readdirSync(new URL(folder, import.meta.url)).filter((name) => /(?<!\.test)\.ts$/.test(name));

type Leaf = readonly [path: string, text: string];

/** The texts of a table with the way to each; functions are asked elsewhere. */
function leavesOf(value: unknown, path: string): readonly Leaf[] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, `${path}.${key}`));
}

/** Names and kinds of all that a language says, whatever is nested in it. */
function shapeOf(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [`${path}: ${typeof value}`];
  return Object.entries(value).flatMap(([key, inner]) => shapeOf(inner, `${path}.${key}`));
}

describe('neither language lacks a word', () => {
  it('of what a program may ask for', () => {
    expect(shapeOf(es).toSorted()).toEqual(shapeOf(en).toSorted());
    expect(es.language).not.toBe(en.language);
  });

  it('file by file', () => {
    const mirrored = filesOf('es').map((name) => (name === 'es.ts' ? 'en.ts' : name));
    expect(mirrored.filter((name) => !ALONE.includes(name)).toSorted()).toEqual(filesOf('en').toSorted());
  });

  it.each(filesOf('en').filter((name) => name !== 'en.ts'))('in the tables of %s', async (name) => {
    const stem = name.replace(/\.ts$/, '');
    const [english, spanish] = await Promise.all([import(`./en/${stem}.ts`), import(`./es/${stem}.ts`)]);
    for (const [table, value] of Object.entries(english)) {
      if (typeof value === 'function' || OTHER_SHAPE.includes(table)) continue;
      const [there, here] = [leavesOf(value, table), leavesOf(spanish[table], table)];
      expect(here.map(([path]) => path)).toEqual(there.map(([path]) => path));
      const said = new Map(there);
      const alike = here.filter(([path, text]) => said.get(path) === text && !ALIKE.includes(text));
      expect(alike).toEqual([]);
    }
  });
});

const NUMBERS = /\d[\d.,:⁄½¼¾]*|[½¼¾]/g;

/** Names of things, readings and points, which no language changes. */
const NAMES =
  /\b[AB]\d\b|\b[fp]\d\b|\b(?:House|Maple|Lateral|Fence|Plat|Pole|AS|BS|Crew (?:one|two)|Pennsylvania South|EPSG|UTM|NAD|WGS)\b/g;

/** Signs and units, which are the same in every language. */
const UNITS = /\b(?:ft|in|m|mm|s|yd|cu|sq|gal|min)\b|[\s×±−–=%°′″/]/g;

/** In order of size, as each language has its own order of words and of a day's parts. */
function factsOf(text: string): readonly string[] {
  const numbers = (text.match(NUMBERS) ?? []).map((number) => number.replace(/[.,:]$/, ''));
  return [...numbers, ...(text.match(NAMES) ?? [])].toSorted();
}

function isLanguageFree(text: string): boolean {
  return text.replace(NAMES, '').replace(NUMBERS, '').replace(UNITS, '') === '';
}

function expectAlike(spanish: string, english: string): void {
  expect(spanish).not.toBe(english);
  expect(factsOf(spanish), `${spanish}\n${english}`).toEqual(factsOf(english));
}

function expectSaidAlike(spanish: Said, english: Said): void {
  expectAlike(spanish.text, english.text);
  expect(spanish.cure).not.toBe(english.cure);
  expect(factsOf(spanish.cure), `${spanish.cure}\n${english.cure}`).toEqual(factsOf(english.cure));
}

describe.each(['ft', 'ft-in', 'm'] as const)(
  'in %s every finding tells the same things and numbers',
  (length) => {
    const site = dugYard(length);

    it.each(findingCodes)('%s', (code) => {
      expectSaidAlike(es.findingText(findingSample(code), site), en.findingText(findingSample(code), site));
    });

    it.each(digFindingCodes)('%s', (code) => {
      for (const finding of digFindingVariants(code)) {
        expectSaidAlike(es.digFindingText(finding, site), en.digFindingText(finding, site));
        expectAlike(es.digFindingTitle(finding, site), en.digFindingTitle(finding, site));
      }
    });
  },
);

describe('every function says in both languages as much, with the same numbers and names', () => {
  const found = new Set<string>();

  it.each(Object.entries(everyWord))('%s', (name, said) => {
    const [spanish, english] = [said(es), said(en)];
    expect(english.length).toBeGreaterThan(0);
    expect(spanish.length).toBe(english.length);
    for (const [i, text] of spanish.entries()) {
      const other = english[i];
      expect(text === null || text === '').toBe(other === null || other === '');
      if (text === null || other == null || text === '') continue;
      expect(text).not.toMatch(/undefined|\[object|\$\{|\s\s|,,/);
      if (!(name in everyName)) expect(factsOf(text), `${text}\n${other}`).toEqual(factsOf(other));
      if (text === other && !isLanguageFree(text)) found.add(text);
    }
  });

  it('and nothing else is alike', () => {
    expect([...found].toSorted()).toEqual([...ALIKE].toSorted());
  });
});

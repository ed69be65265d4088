import type { Danger } from '@footmark/dig';
import { type AnswerFailure, type FoundReport, foundStates, openAnswer, readAnswer } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { crewLabels } from '../crewWords';
import { languages } from '../languages';
import { sampleYard } from '../testing/sampleYard';
import { crew } from './crew';
import { en } from './en';

const feet = sampleYard({ length: 'ft-in', diameter: 'in', direction: 'bearing' }).site;
const metres = sampleYard({ length: 'm', diameter: 'mm', direction: 'azimuth' }).site;

describe('labels of the crew view', () => {
  it.each(crewLabels)('%s is a name or whole sentences', (label) => {
    const text = crew.label(label);
    expect(text).toMatch(/^[\p{Lu}].*[^\s]$|^along the pipe × across$/u);
    expect(text).not.toMatch(/undefined|[{}$]|\s\s/);
  });

  it('tell states and buttons apart', () => {
    const states = foundStates.map(crew.stateName);
    expect(new Set(states).size).toBe(foundStates.length);
    expect(new Set(crewLabels.map(crew.label)).size).toBe(crewLabels.length);
  });
});

describe('languages', () => {
  it('call themselves by a name each, and have a tag each', () => {
    expect(new Set(languages.map((l) => l.crew.languageName)).size).toBe(languages.length);
    expect(new Set(languages.map((l) => l.language)).size).toBe(languages.length);
    expect(languages[0]?.language).toBe('en');
  });
});

describe('what a hole may hit', () => {
  const danger = (parts: Partial<Danger>): Danger => ({
    is: 'service',
    feature: 'f3',
    distance: 0.3,
    at: { x: 0, y: 0 },
    byHand: true,
    depth: null,
    ...parts,
  });

  it('is said with how near it is, how deep, and what to do', () => {
    expect(crew.dangerText(danger({}), metres)).toBe('Cleanout f3: 0.30 m from the hole. Dig by hand.');
    expect(crew.dangerText(danger({ distance: -0.1, depth: 0.6 }), feet)).toMatch(
      /in the hole, its top about 2′ 0″ deep\. Dig by hand\.$/,
    );
    expect(crew.dangerText(danger({ is: 'roots', distance: -2 }), metres)).toMatch(
      /its roots reach into the hole\. Ask before a root is cut\.$/,
    );
    expect(crew.dangerText(danger({ is: 'footing' }), metres)).toMatch(/Do not undermine it\.$/);
  });
});

describe('what was found', () => {
  const found: FoundReport = {
    id: 'f1',
    about: { is: 'place' },
    state: 'found',
    by: '',
    at: '2026-05-20T12:00:00Z',
    where: { by: 'paint', along: -0.3048, right: 0.1524 },
    depth: { to: 'top', depth: 1.5 },
    seen: 'roots',
    note: '',
    photos: [],
  };

  it('is one line in the units of the site', () => {
    expect(crew.foundText(found, feet)).toBe(
      'Found, 1′ 0″ against the flow, 6″ to the right, 4′ 11″ to the top, roots.',
    );
    const { where: _, depth: __, seen: ___, ...bare } = found;
    expect(crew.foundText({ ...bare, state: 'not-found' }, metres)).toBe('Not found.');
    expect(crew.foundText({ ...found, where: { by: 'paint', along: 0, right: 0 } }, metres)).toContain(
      'at the paint',
    );
  });

  it('lies with the flow or against it, right or left, or at the paint', () => {
    expect(crew.alongText(1, metres.units)).toBe('1.0 m with the flow');
    expect(crew.acrossText(-1, metres.units)).toBe('1.0 m to the left');
    expect([crew.alongText(0, metres.units), crew.acrossText(0, metres.units)]).toEqual([
      'At the paint',
      'On the line',
    ]);
  });
});

describe('how good the computation is by digging', () => {
  const accuracy = {
    count: 1,
    rmseX: 0.2,
    rmseY: 0,
    rmse: 0.2,
    accuracy: 0.49,
    rule: 'larger',
    ratio: 0,
    enough: false,
    independent: true,
  } as const;

  it('speaks of marks, not of locates', () => {
    expect(en.accuracyText(accuracy, metres, 'digging').text).toBe(
      'The one mark that was laid bare is 0.20 m from where the computation has it.',
    );
    expect(en.accuracyText({ ...accuracy, count: 3 }, metres, 'digging').text).toMatch(
      /^The 3 marks that were laid bare are .* has them, taken together; by them, 19 of 20 lie within 0\.49 m\.$/,
    );
    expect(en.accuracyText(accuracy, metres).text).toContain('locate');
  });
});

describe('an answer that cannot be read', () => {
  const failures = [
    readAnswer('{'),
    readAnswer(' '.repeat(5_000_001)),
    openAnswer({}),
    openAnswer({ format: 'footmark-answer', version: 9 }),
    openAnswer({ format: 'footmark-answer', version: 1 }),
  ];
  const same: AnswerFailure = { code: 'same-id', id: 'f1' };

  it('is said in sentences with the way out, and never as a site', () => {
    const all = [same, ...failures.map((f) => (f.ok ? expect.fail('it was read') : f.failure))];
    expect(new Set(all.map((f) => f.code)).size).toBe(6);
    for (const failure of all) {
      const { text, cure } = crew.answerProblemText(failure);
      for (const sentence of [text, cure]) expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
      expect(text).not.toMatch(/site/);
    }
  });
});

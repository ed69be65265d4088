import type { Danger } from '@footmark/dig';
import { type FoundReport, foundStates } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { crewLabels } from '../crewWords';
import { need } from '../testing/need';
import { sampleYard } from '../testing/sampleYard';
import { derived, yard } from '../testing/weighedYard';
import { clockText } from './clockText';
import { crew } from './crew';

const feet = sampleYard({ length: 'ft-in', diameter: 'in', direction: 'bearing' }).site;
const metres = sampleYard({ length: 'm', diameter: 'mm', direction: 'azimuth' }).site;

describe('labels of the crew view in Spanish', () => {
  it.each(crewLabels)('%s is a name or whole sentences', (label) => {
    expect(crew.label(label)).toMatch(/^[\p{Lu}].*[^\s]$|^a lo largo de la tubería × a lo ancho$/u);
  });

  it('tell states and buttons apart', () => {
    expect(new Set(foundStates.map(crew.stateName)).size).toBe(foundStates.length);
    expect(new Set(crewLabels.map(crew.label)).size).toBe(crewLabels.length);
  });
});

describe('what a hole may hit, in Spanish', () => {
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
    expect(crew.dangerText(danger({}), metres)).toBe('Registro f3: a 0.30 m del hoyo. Excave a mano.');
    expect(crew.dangerText(danger({ distance: -0.1, depth: 0.6, byHand: false }), feet)).toBe(
      'Registro f3: en el hoyo, su parte superior a unos 2′ 0″ de profundidad.',
    );
    expect(crew.dangerText(danger({ is: 'roots', distance: -2 }), metres)).toMatch(
      /sus raíces llegan al hoyo\. Pregunte antes de cortar una raíz\.$/,
    );
    expect(crew.dangerText(danger({ is: 'roots' }), metres)).toMatch(/a 0\.30 m; nadie midió su tronco\./);
    expect(crew.dangerText(danger({ is: 'footing', distance: -0.2 }), metres)).toMatch(
      /el hoyo entra en su cimentación\. No excave por debajo\.$/,
    );
  });
});

describe('what was found, in Spanish', () => {
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
      'Encontrada, 1′ 0″ contra el flujo, 6″ a la derecha, 4′ 11″ hasta el lomo, raíces.',
    );
    const at = { ...found, where: { by: 'paint', along: 0, right: 0 } } as const;
    expect(crew.foundText(at, metres)).toBe('Encontrada, en la pintura, 1.5 m hasta el lomo, raíces.');
  });

  it('is counted in the plural but for one', () => {
    expect(crew.answerText({ done: 1, found: 2, photos: 0 })).toBe('1 marca, 2 anotaciones, 0 fotos');
  });
});

it('a tape is pulled from a thing with its article', () => {
  const ties = need(need(need(derived.marks.find((m) => m.label === 'B1')).place).ties);
  const said = ties.pair.map(({ from }) => crew.tapeFromText(from, yard));
  expect(said).toEqual(['desde Maple (cara cercana)', 'desde la esquina A de House']);
});

// the grammars' rule for hours: `la una`, and `las` with all others
it('hours of the clock have their article', () => {
  expect(
    [{ from: 6 } as const, { from: 11, to: 1 } as const, { from: 1, to: 1 } as const].map(clockText),
  ).toEqual(['a las 6 del reloj', 'de las 11 a la 1 del reloj', 'a la 1 del reloj']);
});

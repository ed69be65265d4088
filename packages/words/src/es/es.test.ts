import { type Finding, type FindingCode, observationKindIds, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { cautionCodes } from '../caution';
import { digFindingCodes, digFindingSample, digFindingVariants, dugYard } from '../testing/digFindingSamples';
import { everyWord } from '../testing/everyWord';
import { findingCodes, findingSample } from '../testing/findingSamples';
import { need } from '../testing/need';
import { sampleYard } from '../testing/sampleYard';
import { derived, seen, ties, yard } from '../testing/weighedYard';
import { es } from './es';

const feet = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;

/** A yard in which nobody named anything, so that all takes an article. */
function nameless(site: Site): Site {
  return {
    ...site,
    features: site.features.map((f) => ({ ...f, name: '' })),
    paths: site.paths.map((p) => ({ ...p, name: '' })),
  };
}

/** What findings carry in such a yard: ids in the place of names. */
const IDS = { House: 'f1', Maple: 'f2', Pole: 'f4', Lateral: 'p1' } as const;

function namelessSample(code: FindingCode): Finding {
  const finding = findingSample(code);
  const values = Object.entries(finding.values).map(([name, value]) => [
    name,
    typeof value === 'string'
      ? value.replace(/^(House|Maple|Pole|Lateral)\b/, (own) => IDS[own as keyof typeof IDS]) // one of those that are looked for
      : value,
  ]);
  return { ...finding, values: Object.fromEntries(values) } as Finding; // of the same code
}

describe('by hand', () => {
  const site = dugYard('ft');

  it('things are called as crews call them', () => {
    expect(
      (['cleanout', 'stack', 'tree', 'boundary', 'easement', 'curb'] as const).map(es.featureKindName),
    ).toEqual(['Registro', 'Bajante', 'Árbol', 'Lindero', 'Servidumbre', 'Bordillo']);
    expect((['roots', 'offset-joint', 'sag', 'collapse'] as const).map(es.observationName)).toEqual([
      'Raíces',
      'Junta desplazada',
      'Hundimiento',
      'Colapso',
    ]);
    expect(es.markStateName('painted')).toBe('Pintada');
    expect(es.targetName({ kind: 'reading', run: 'r1', id: 'q4' }, site)).toBe('Lectura A4 (94.2 ft)');
    expect(es.targetName({ kind: 'feature', id: 'f1', vertex: 'b' }, nameless(site))).toBe(
      'Esquina B del edificio f1',
    );
  });

  it('a finding reads as a sentence', () => {
    expect(es.findingText(findingSample('reading-past-end'), site)).toEqual({
      text: 'La lectura A4 (94.2 ft) está 3.1 ft más allá del final de Lateral, que está a 88.58 ft de cable desde la entrada.',
      cure: 'Compruebe la lectura, o prolongue el dibujo de la tubería hasta donde termina.',
    });
    expect(es.findingText(namelessSample('entry-beside-path'), nameless(site)).text).toBe(
      'El registro f3, por donde entra el recorrido A, está a 1.64 ft a un lado de la tubería p1, así que las lecturas cuentan desde su punto más cercano.',
    );
  });

  it('what stands in the way of a dig reads as a sentence, with and without names', () => {
    const finding = digFindingSample('dig-in-root-zone');
    expect(es.digFindingText(finding, site).text).toBe(
      'La zanja en Lateral de 0.0 ft a 19.69 ft ocupa 14 % de la zona crítica de raíces de Maple, que está protegido.',
    );
    expect(es.digFindingText(finding, nameless(site)).text).toBe(
      'La zanja en la tubería p1 de 0.0 ft a 19.69 ft ocupa 14 % de la zona crítica de raíces del árbol f2, que está protegido.',
    );
    expect(es.digFindingText(finding, site, { kind: 'dig', id: 'd1' }).text).toMatch(
      /^Esta zanja ocupa 14 %/,
    );
    expect(es.digFindingTitle(finding, site, { kind: 'feature', id: 'f2' })).toBe(
      'Ocupa 14 % de las raíces de este árbol',
    );
    expect(es.digFindingSubject(finding, site)).toBe('Zanja en Lateral de 0.0 ft a 19.69 ft');
  });

  it('a caution tells who to call, formally', () => {
    expect(es.cautionText('call-before-digging')).toEqual({
      title: 'Llame antes de excavar',
      text: 'Llame primero al centro de llamada única (811 en los Estados Unidos), espere las marcas, y excave respetándolas y respetando la fecha en que vencen.',
    });
  });

  it('a tape, a day, a price and a bend are told in their order', () => {
    const [tie] = ties.pair;
    expect(es.tieText(tie, yard)).toBe(`${(tie.distance / 0.3048).toFixed(2)} ft desde Maple (cara cercana)`);
    expect(es.dateText('2025-03-09')).toBe('9 mar 2025');
    expect(es.priceText({ total: 12345.6, without: ['dug'] }, feet)).toBe(
      '12,346 sin una yarda cúbica excavada y repuesta',
    );
    expect(es.sureText(0.001, feet)).toBe('menos de 0.1 ft');
    expect(need(es.traceSteps(seen, yard, derived).find((s) => s.step === 'entry')).note).toBe(
      'El registro f3, con el flujo.',
    );
  });
});

describe.each(['ft', 'ft-in', 'm'] as const)('in %s findings are whole sentences', (length) => {
  const named = dugYard(length);
  const sites = [named, nameless(named)];

  /** `de el` and `a el` are joined, and no article meets another. */
  const BROKEN =
    /\b(?:de|a) el\b|\b(?:el|la|los|las) (?:el|la|los|las)\b|\bde de\b|undefined|\[object|\s\s|,,|\$\{/i;

  const expectSentence = (text: string) => {
    expect(text).toMatch(/^[\p{Lu}\d].*[^.]\.$/u);
    expect(text).not.toMatch(BROKEN);
  };

  it.each(findingCodes)('%s', (code) => {
    const samples = [
      es.findingText(findingSample(code), named),
      es.findingText(namelessSample(code), nameless(named)),
    ];
    for (const said of samples) Object.values(said).forEach(expectSentence);
  });

  it.each(digFindingCodes)('%s', (code) => {
    for (const site of sites) {
      for (const finding of digFindingVariants(code)) {
        Object.values(es.digFindingText(finding, site)).forEach(expectSentence);
        const title = es.digFindingTitle(finding, site);
        expect(title).toMatch(/^[\p{Lu}\d].*[^.]$/u);
        expect(title).not.toMatch(BROKEN);
      }
      // Spanish is a quarter longer than the 62 characters that English has for two lines of a phone's list
      expect(es.digFindingTitle(digFindingSample(code), named).length).toBeLessThanOrEqual(78);
    }
  });
});

describe('all that is said', () => {
  const said = Object.values(everyWord).flatMap((say) => say(es).filter((text) => text !== null));

  it('joins articles, and has none twice', () => {
    for (const text of said) expect(text).not.toMatch(/\b(?:de|a) el [a-záéíóúñ]|\b(?:el|la) (?:el|la) /);
  });

  it('says usted', () => {
    const familiar = /(?<!\p{L})(?:tú|ti|tus?|contigo|puedes|tienes|debes)(?!\p{L})/iu;
    // at the beginning of a sentence; elsewhere they are what something does
    const order = /(?:^|[.:;] )(?:Llama|Excava|Pregunta|Mide|Comprueba|Elige|Pon|Haz|Deja|Mueve)(?!\p{L})/u;
    for (const text of said) expect(`${familiar.exec(text) ?? ''}${order.exec(text) ?? ''}`, text).toBe('');
  });

  it('has the numbers of its cautions with units', () => {
    for (const code of cautionCodes) {
      const { text } = es.cautionText(code);
      expect(text.replace(/\b(811|911)\b/g, '').replace(/\d[\d.]* (ft|m)\b/g, '')).not.toMatch(/\d/);
    }
  });

  it('tells things that are seen apart', () => {
    const names = observationKindIds.map((kind) => es.observationName(kind));
    expect(new Set(names).size).toBe(names.length);
  });

  it('names a key that no table has', () => {
    expect(() => es.choiceName('marble')).toThrow('no words for marble');
  });
});

it('a yard in metres is told in metres', () => {
  const { site } = sampleYard({ length: 'm', diameter: 'mm', direction: 'azimuth' });
  expect(es.landText([{ path: 'p1', whose: 'public', from: 0, to: 5, features: [] }], site.units)).toBe(
    '5.00 m en terreno público',
  );
});

import { featureKindIds, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { of, to, withArticle, withThis } from './article';
import { es } from './es';
import { kinds } from './kindNames';

describe('contractions', () => {
  // `a` and `de` join with the article `el`, and not with an `El` that is part of a name: Real Academia Española, Ortografía (from memory)
  it.each([
    ['el registro f3', 'del registro f3', 'al registro f3'],
    ['la cerca f5', 'de la cerca f5', 'a la cerca f5'],
    ['El Pozo', 'de El Pozo', 'a El Pozo'],
    ['elmo', 'de elmo', 'a elmo'],
    ['Arce', 'de Arce', 'a Arce'],
  ])('of %s', (name, after, towards) => {
    expect(of(name)).toBe(after);
    expect(to(name)).toBe(towards);
  });

  it('stand only where a kind, not a person, named the thing', () => {
    expect(withArticle({ name: 'registro f3', gender: 'm' })).toBe('el registro f3');
    expect(withArticle({ name: 'Arce', gender: null })).toBe('Arce');
    expect(withThis({ name: 'cerca', gender: 'f' })).toBe('esta cerca');
  });
});

/**
 * Words of our names with their gender as the dictionary of the Real Academia Española has it (from memory), the noun that a name
 * begins with.
 */
const GENDERS = {
  m: 'edificio cobertizo porche registro drenaje mueble pozo entronque tanque árbol seto lindero bordillo patio muro poste hidrante medidor punto banco',
  f: 'terraza bajante tubería línea servidumbre calle acera entrada cerca localización nota',
} as const;

describe('the gender of a kind', () => {
  const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
  const noun = (kind: (typeof featureKindIds)[number]) => kinds[kind].name.split(' ')[0]?.toLowerCase() ?? '';

  it.each(featureKindIds)('%s is that of its noun', (kind) => {
    const other = kinds[kind].gender === 'm' ? 'f' : 'm';
    expect(GENDERS[kinds[kind].gender].split(' ')).toContain(noun(kind));
    expect(GENDERS[other].split(' ')).not.toContain(noun(kind));
  });

  it.each(featureKindIds)('%s shows in a sentence, and a label has no article', (kind) => {
    const things = site.features.map((f) => (f.id === 'f3' ? { ...f, kind } : f));
    const yard = { ...site, features: things } as Site; // a thing of another kind without fields
    const mark = { kind: 'reading', run: 'r1', id: 'q1' } as const;
    const { text } = es.findingText(
      { code: 'mark-under-building', severity: 'warning', at: mark, values: { building: 'f3' } },
      yard,
    );
    const joined = kinds[kind].gender === 'm' ? 'del' : 'de la';
    expect(text).toMatch(new RegExp(`^La marca A1 está debajo ${joined} ${noun(kind)}.* f3, así que`, 'u'));
    expect(es.targetName({ kind: 'feature', id: 'f3' }, yard)).toBe(`${kinds[kind].name} f3`);
  });
});

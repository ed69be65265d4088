import { type ObservationKind, observationKindIds } from '@footmark/site';
import { en } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { thingMatcher } from './matchThing';
import { tradeWords } from './tradeWords';

const match = thingMatcher(en.observationName);

describe('what was seen', () => {
  it.each(observationKindIds)('is read by its name: %s', (kind) => {
    const name = en.observationName(kind);
    for (const text of [name, name.toUpperCase(), name.replaceAll(' ', '-'), ` ${name.replaceAll(' ', '')} `])
      expect(match(text), text).toEqual({ kind, whole: true });
    expect(match(`${name}, at joint (30 %)`)).toEqual({ kind, whole: false });
    expect(match(`heavy ${name.toLowerCase()}`)).toEqual({ kind, whole: false });
  });

  // Common practice, no source.
  it.each<[string, ObservationKind]>([
    ['joint offset', 'offset-joint'],
    ['Root Intrusion', 'roots'],
    ['ROOT-INTRUSION', 'roots'],
    ['belly', 'sag'],
    ['bellies', 'sag'],
    ['wye', 'fitting'],
    ['Tees', 'fitting'],
    ['bend', 'fitting'],
    ['end', 'end-of-run'],
    ['cracks', 'crack'],
    ['standing water', 'water-level'],
  ])('is read by a trade word: %s', (text, kind) => {
    expect(match(text)?.kind).toBe(kind);
  });

  it.each<[string, ObservationKind]>([
    ['infil', 'infiltration'],
    ['Mat', 'material-change'],
    ['deformed', 'deformed'],
    ['offs', 'offset-joint'],
  ])('is read by a beginning that one name has: %s', (text, kind) => {
    expect(match(text)).toEqual({ kind, whole: true });
  });

  it.each(['', '-', 'c', 'ro', 'o', 'no roots', 'joint', '18', 'break in grade', 'end of roots', '根'])(
    'is not guessed from "%s"',
    (text) => {
      expect(match(text)).toBeNull();
    },
  );

  it('is not read by a name or a beginning that two things share', () => {
    const same = thingMatcher(
      (kind) => ({ roots: 'Riss', crack: 'Riss', sag: 'Senke', scale: 'Senkrecht' })[kind as string] ?? kind,
    );
    expect(same('riss')).toBeNull();
    expect(same('sen')).toBeNull();
    expect(same('senkr')?.kind).toBe('scale');
    expect(same('senke')?.kind).toBe('sag');
  });

  it('is read in another language, with or without accents', () => {
    const names: Partial<Record<ObservationKind, string>> = {
      roots: 'Raíces',
      crack: 'Grieta',
      infiltration: 'Infiltración',
    };
    const spanish = thingMatcher((kind) => names[kind] ?? `${kind}.es`);
    expect(spanish('RAICES')).toEqual({ kind: 'roots', whole: true });
    expect(spanish('infiltracion')).toEqual({ kind: 'infiltration', whole: true });
  });

  it('has no trade word for two things, and none that a name has for another', () => {
    for (const kind of observationKindIds)
      for (const word of tradeWords[kind] ?? []) expect(match(word)?.kind, word).toBe(kind);
  });
});

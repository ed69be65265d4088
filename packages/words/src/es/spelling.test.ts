import dictionary from 'dictionary-es';
import nspell from 'nspell';
import { expect, it } from 'vitest';
import { digFindingCodes, digFindingVariants, dugYard } from '../testing/digFindingSamples';
import { everyWord } from '../testing/everyWord';
import { findingCodes, findingSample } from '../testing/findingSamples';
import { es } from './es';

/** Names that the samples bear, signs, and what stands for itself. */
const NOT_WORDS =
  /\b\w+\[\d+\]\S*|“[^”]*”|"[^"]*"|`[^`]*`|\b(?:House|Maple|Lateral|Fence|Plat|Pole|R\. Alder|Manning|Crew one|Crew two|Pennsylvania South|Footmark|GeoJSON)\b|\b[A-Z]{2,}\b|\b\p{L}*\d[\p{L}\d]*\b/gu;

/** The validator's own words for what is wrong in a file, which have one language. */
const VALIDATOR = /\(Invalid [^)]*\)/g;

/** Units, names of points, months cut short. */
const KEPT = new Set('a b c n x ft in cu yd sq mm cm m s gal min mar abr may'.split(' '));

/** Words that the dictionary lacks, and the Real Academia Española's has (from memory). */
const SOUND = new Set(['arborista', 'bajante', 'carátula', 'topógrafo']);

/** Latin that surveyors keep: common practice, no source. */
const LATIN = new Set(['datum']);

/** Kinds of files, which crews call as their devices do: common practice, no source. */
const FILES = new Set(['zip']);

/** An imperative or an infinitive with its pronoun, `cárguela`, of which the dictionary has the verb alone. */
const WITH_PRONOUN = /^(\p{L}{3,})l[aoe]s?$/u;

// Hunspell's Spanish dictionary by the RLA-ES project, which is also LibreOffice's, read by a library that we did not write
const speller = nspell({ aff: Buffer.from(dictionary.aff), dic: Buffer.from(dictionary.dic) });

function isSound(word: string): boolean {
  if (KEPT.has(word) || SOUND.has(word) || LATIN.has(word) || FILES.has(word) || speller.correct(word))
    return true;
  const verb = WITH_PRONOUN.exec(word)?.[1];
  if (verb === undefined) return false;
  const unaccented = verb
    .normalize('NFD')
    .replace(/\u0301/g, '')
    .normalize('NFC');
  return speller.correct(verb) || speller.correct(unaccented);
}

it('every word that is said is a Spanish word, spelled as the dictionary has it', () => {
  const site = dugYard('ft');
  const said = [
    ...Object.values(everyWord).flatMap((say) => say(es)),
    ...findingCodes.flatMap((code) => Object.values(es.findingText(findingSample(code), site))),
    ...digFindingCodes
      .flatMap(digFindingVariants)
      .flatMap((finding) => [
        es.digFindingTitle(finding, site),
        ...Object.values(es.digFindingText(finding, site)),
      ]),
  ].filter((text) => text !== null);
  const words = new Set(
    said.flatMap(
      (text) =>
        text
          .replace(VALIDATOR, ' ')
          .replace(NOT_WORDS, ' ')
          .match(/\p{L}+/gu) ?? [],
    ),
  );
  expect(words.size).toBeGreaterThan(1000);
  const wrong = [...words].filter((word) => !isSound(word) && !isSound(word.toLowerCase()));
  expect(wrong.toSorted()).toEqual([]);
});

it('would notice an English word and a missing accent', () => {
  expect(['trench', 'raices', 'tuberia', 'trenchla'].map(isSound)).toEqual([false, false, false, false]);
});

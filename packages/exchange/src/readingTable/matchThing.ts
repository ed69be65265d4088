import { type ObservationKind, observationKindIds } from '@footmark/site';
import { MOST_NAME_CHARACTERS } from './tableLimits';
import { degreeWords, tradeWords } from './tradeWords';

/** What a text names, and whether the kind's own name says all of it. */
export type ThingMatch = Readonly<{ kind: ObservationKind; whole: boolean }>;

export type ThingMatcher = (text: string) => ThingMatch | null;

/** Shorter beginnings look like codes, and are taken for none. */
const SHORTEST_BEGINNING = 3;

/** A remark after the name: `roots, heavy`, `roots (50 %)`, `roots - at joint`. */
const REMARK = /[,;:(/]| [-–—] /;

/**
 * Reads what was seen by its name in a language: without regard to case, accents, spaces, hyphens and a plural s; by a
 * beginning of at least three letters that only one name has; or by a trade word. A remark after it and a word of degree
 * before it are passed over.
 */
export function thingMatcher(names: (kind: ObservationKind) => string): ThingMatcher {
  const named = observationKindIds.map((kind) => ({ kind, key: wordKey(names(kind)) }));
  const nameKeys = new Map(named.map(({ kind, key }) => [kind, key]));
  const byName = byKey(named);
  const byTradeWord = byKey(
    observationKindIds.flatMap((kind) =>
      [kind, ...(tradeWords[kind] ?? [])].map((word) => ({ kind, key: wordKey(word) })),
    ),
  );

  const exactly = (text: string): ThingMatch | null => {
    const key = wordKey(text);
    if (key === '') return null;
    const kind = byName.get(key);
    if (kind !== undefined) return kind === null ? null : { kind, whole: true };
    const spoken = byTradeWord.get(key);
    if (spoken != null) return { kind: spoken, whole: nameKeys.get(spoken)?.startsWith(key) ?? false };
    const begun = key.length < SHORTEST_BEGINNING ? [] : named.filter((name) => name.key.startsWith(key));
    return begun.length === 1 && begun[0] ? { kind: begun[0].kind, whole: true } : null;
  };

  return (text) => {
    const typed = text.trim();
    const whole = typed.length <= MOST_NAME_CHARACTERS ? exactly(typed) : null;
    if (whole) return whole;
    const named = (typed.split(REMARK, 1)[0] ?? '').trim();
    if (named.length > MOST_NAME_CHARACTERS) return null;
    const [first = '', ...rest] = named.split(' ');
    const found = exactly(named) ?? (isDegree(first) ? exactly(rest.join(' ')) : null);
    return found && { kind: found.kind, whole: false };
  };
}

/** Letters and digits alone, lower case, without accents and a plural s, so that spellings of one name are alike. */
export function wordKey(text: string): string {
  const key = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f]|[^\p{L}\p{M}\p{N}]/gu, '');
  return key.length > 3 && key.endsWith('s') ? key.slice(0, -1) : key;
}

const DEGREES: ReadonlySet<string> = new Set(degreeWords);

function isDegree(word: string): boolean {
  return DEGREES.has(word.toLowerCase());
}

/** Kinds by key; `null` where two kinds share one. */
function byKey(
  entries: readonly Readonly<{ kind: ObservationKind; key: string }>[],
): ReadonlyMap<string, ObservationKind | null> {
  const found = new Map<string, ObservationKind | null>();
  for (const { kind, key } of entries) {
    if (key === '') continue;
    const other = found.get(key);
    found.set(key, other === undefined || other === kind ? kind : null);
  }
  return found;
}

import {
  ANSWER_FORMAT,
  ANSWER_VERSION,
  type Answer,
  aboutKey,
  type FoundAbout,
  type FoundReport,
  type FoundState,
} from '@footmark/site';

type Begun = Pick<Answer, 'id' | 'site' | 'madeFrom' | 'by' | 'language'> & { readonly at: string };

/** An answer with nothing in it yet. */
export function newAnswer({ id, site, madeFrom, by, language, at }: Begun): Answer {
  return {
    format: ANSWER_FORMAT,
    version: ANSWER_VERSION,
    id,
    site,
    madeFrom,
    by,
    language,
    sentAt: at,
    ticks: [],
    found: [],
  };
}

/** How far a crew has come with something by its last tick; null: not begun. */
export function stateOf({ ticks }: Answer, about: FoundAbout): FoundState | null {
  return ticks.findLast((t) => isSame(t.about, about))?.state ?? null;
}

/** What was found of it; null: nothing put down. */
export function recordOf({ found }: Answer, about: FoundAbout): FoundReport | null {
  return found.findLast((f) => isSame(f.about, about)) ?? null;
}

/** What else was found near something that is painted: records of a place of their own. */
export function othersNear({ found }: Answer, label: string): readonly FoundReport[] {
  return found.filter((f) => f.about.is === 'place' && f.given?.label === label);
}

/** Says that a crew has come so far. What is put down of it says so too. */
export function withTick(answer: Answer, about: FoundAbout, state: FoundState, at: string): Answer {
  const ticks = answer.ticks.filter((t) => !(isSame(t.about, about) && t.state === state));
  return {
    ...answer,
    ticks: [...ticks, { about, state, at }],
    found: answer.found.map((f) => (isSame(f.about, about) ? { ...f, state, at } : f)),
  };
}

/** Takes a tick back. What is put down of it has the state of the tick before, and stays as it is without one. */
export function withoutTick(answer: Answer, about: FoundAbout, state: FoundState, at: string): Answer {
  const left = {
    ...answer,
    ticks: answer.ticks.filter((t) => !(isSame(t.about, about) && t.state === state)),
  };
  const before = stateOf(left, about);
  if (before === null) return left;
  return {
    ...left,
    found: left.found.map((f) => (isSame(f.about, about) ? { ...f, state: before, at } : f)),
  };
}

/** Puts down what was found, in the place of what was put down under that id before. */
export function withRecord(answer: Answer, record: FoundReport): Answer {
  const index = answer.found.findIndex((f) => f.id === record.id);
  return {
    ...answer,
    found: index < 0 ? [...answer.found, record] : answer.found.with(index, record),
  };
}

export function withoutRecord(answer: Answer, id: string): Answer {
  return { ...answer, found: answer.found.filter((f) => f.id !== id) };
}

/** Says whose answer it is; so do its records. */
export function withName(answer: Answer, by: string): Answer {
  return { ...answer, by, found: answer.found.map((f) => ({ ...f, by })) };
}

/** How much an answer holds: marks with a tick, records, photos. */
export function countsOf({ ticks, found }: Answer): { done: number; found: number; photos: number } {
  return {
    done: new Set(ticks.map(({ about }) => aboutKey(about))).size,
    found: found.length,
    photos: found.reduce((n, { photos }) => n + photos.length, 0),
  };
}

function isSame(a: FoundAbout, b: FoundAbout): boolean {
  const key = aboutKey(a);
  return key !== null && key === aboutKey(b);
}

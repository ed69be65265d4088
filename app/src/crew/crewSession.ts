import type { Answer, FoundReport, FoundState, Site } from '@footmark/site';
import { create } from 'zustand';
import { recall, remember } from '../session/onDevice';
import { answerOfSite, saveAnswer } from '../storage/answerStore';
import { newId } from '../tools/newId';
import { words } from '../words';
import {
  newAnswer,
  recordOf,
  stateOf,
  withName,
  withoutRecord,
  withoutTick,
  withRecord,
  withTick,
} from './answerEdits';
import { isoNow } from './isoNow';
import { siteHash } from './siteHash';
import { givenAt, type Stop } from './stops';

const NAME_KEY = 'footmark-crew';

/** What can be said only of something that is laid bare. */
const OF_A_FIND = ['where', 'depth', 'seen', 'material', 'diameter'] as const;

type CrewSession = {
  /** What this crew has done and found on the open site; null before it is read. */
  readonly answer: Answer | null;
  /** Whether the device has all of it. */
  readonly saved: 'saved' | 'saving' | 'failed';
  /** The site is another than when the crew began. */
  readonly otherState: boolean;
};

export const useCrewSession = create<CrewSession>()(() => ({
  answer: null,
  saved: 'saved',
  otherState: false,
}));

/** Takes up the answer of a site where it was left, or begins one. */
export async function openAnswerOf(site: Site): Promise<void> {
  const [hash, known] = await Promise.all([siteHash(site), answerOfSite(site.id)]);
  const answer =
    known ??
    newAnswer({
      id: newId('a'),
      site: site.id,
      madeFrom: { version: site.version, hash },
      by: recall(NAME_KEY) ?? '',
      language: words.language,
      at: isoNow(),
    });
  useCrewSession.setState({ answer, saved: 'saved', otherState: answer.madeFrom.hash !== hash });
}

/** Says again whether the site is another than when the crew began: others may write it while it is open. */
export async function holdAgainst(site: Site): Promise<void> {
  const hash = await siteHash(site);
  const { answer } = useCrewSession.getState();
  if (answer?.site === site.id) useCrewSession.setState({ otherState: answer.madeFrom.hash !== hash });
}

export function closeAnswer(): void {
  useCrewSession.setState({ answer: null });
}

/**
 * Ticks something, or takes the tick back where it stands. What was dug for and is not there is a record by itself, which goes with its
 * tick unless something was put down in it.
 */
export function tick(stop: Stop, state: FoundState): void {
  change((answer) => {
    const at = isoNow();
    if (stateOf(answer, stop.about) === state) {
      const left = withoutTick(answer, stop.about, state, at);
      const record = recordOf(left, stop.about);
      return state === 'not-found' && record !== null && isBare(record)
        ? withoutRecord(left, record.id)
        : left;
    }
    const ticked = withTick(answer, stop.about, state, at);
    if (state !== 'not-found' || recordOf(ticked, stop.about) !== null) return ticked;
    return withRecord(ticked, newRecord(ticked, stop, state));
  });
}

export type FoundFacts = { [Fact in keyof FoundReport]?: FoundReport[Fact] | undefined };

/** Begins a record of something else that was found near a stop, and gives its id; null before there is an answer. */
export function putDownOther(stop: Stop): string | null {
  const { answer } = useCrewSession.getState();
  if (answer === null) return null;
  const record: FoundReport = { ...newRecord(answer, stop, 'found'), about: { is: 'place' } };
  change((a) => withRecord(a, record));
  return record.id;
}

/** Changes facts of a record that was made near a stop; undefined clears one. */
export function changeRecord(id: string, stop: Stop, facts: FoundFacts): void {
  change((answer) => {
    const known = answer.found.find((f) => f.id === id);
    return known === undefined ? answer : withRecord(answer, withFacts(known, stop, facts));
  });
}

/**
 * Puts down facts of what was found; undefined clears one. The first of them ticks it as found, unless it is ticked further than painted;
 * what can be said only of a pipe that is laid bare ticks it also where it is dug.
 */
export function putDown(stop: Stop, facts: FoundFacts): void {
  change((answer) => {
    const known = recordOf(answer, stop.about);
    const state = stateOf(answer, stop.about);
    const isFound =
      state === null ||
      state === 'painted' ||
      (state === 'dug' && OF_A_FIND.some((f) => facts[f] !== undefined));
    const ticked = isFound ? withTick(answer, stop.about, 'found', isoNow()) : answer;
    const before = known ?? newRecord(ticked, stop, stateOf(ticked, stop.about) ?? 'found');
    return withRecord(
      ticked,
      withFacts({ ...before, state: stateOf(ticked, stop.about) ?? before.state }, stop, facts),
    );
  });
}

export function takeBack(record: FoundReport): void {
  change((answer) => withoutRecord(answer, record.id));
}

/** Says who it is that reports, and remembers it on this device. */
export function nameCrew(by: string): void {
  remember(NAME_KEY, by);
  change((answer) => withName(answer, by));
}

/** Marks the answer as sent now, and gives it as it goes out. */
export function answerToSend(): Answer | null {
  change((answer) => ({ ...answer, sentAt: isoNow(), language: words.language }));
  return useCrewSession.getState().answer;
}

/** Writes again what could not be written. */
export function saveAnswerAgain(): void {
  void write();
}

/** A place counts from the paint that the crew was shown when it measured: the plan may be another than when the record was begun. */
function withFacts(record: FoundReport, stop: Stop, facts: FoundFacts): FoundReport {
  const given = facts.where === undefined ? {} : { given: givenAt(stop) };
  const changed = { ...record, ...given, ...facts, at: isoNow() };
  const kept = Object.fromEntries(Object.entries(changed).filter(([, value]) => value !== undefined));
  return kept as FoundReport; // no fact is undefined, and those that must be there never were
}

/** Whether nothing is put down but how far it has come. */
function isBare(record: FoundReport): boolean {
  return OF_A_FIND.every((f) => record[f] === undefined) && record.note === '' && record.photos.length === 0;
}

function newRecord({ by }: Answer, stop: Stop, state: FoundState): FoundReport {
  return {
    id: newId('w'),
    about: stop.about,
    state,
    by,
    at: isoNow(),
    given: givenAt(stop),
    note: '',
    photos: [],
  };
}

function change(edit: (answer: Answer) => Answer): void {
  const { answer } = useCrewSession.getState();
  if (answer === null) return;
  useCrewSession.setState({ answer: edit(answer) });
  void write();
}

/** Writes the latest state to the device: the database takes writes in the order in which they are made. */
async function write(): Promise<void> {
  const { answer } = useCrewSession.getState();
  if (answer === null) return;
  useCrewSession.setState({ saved: 'saving' });
  try {
    await saveAnswer(answer, Date.now());
    if (useCrewSession.getState().answer === answer) useCrewSession.setState({ saved: 'saved' });
  } catch {
    useCrewSession.setState({ saved: 'failed' });
  }
}

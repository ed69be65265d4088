import {
  canonicalText,
  changesBetween,
  type OtherVersion,
  type Place,
  type SiteState,
  valueAt,
} from '@footmark/merge';
import type { Site } from '@footmark/site';

/** A value that somebody gave a thing and that the device took: nobody who saw it has given the thing another. */
type Entry = {
  readonly site: string;
  readonly place: Place;
  readonly text: string;
  /** What it was taken away with: a reading with its run. */
  readonly wentWith?: string;
};

const NONE = canonicalText(null);

/** What people have put in and nobody has replaced knowingly. It knows nothing of how sites are merged or exchanged. */
export class Ledger {
  readonly #alive = new Map<string, Entry>();
  /** Edits that a device has taken. */
  acknowledged = 0;

  /**
   * An edit that was acknowledged: who made it saw `before`. What is put back to as it was in `base`, what this device last knew others to
   * have, is an edit that was withdrawn: others' changes hold.
   */
  write(before: Site, after: Site, base: Site | null): void {
    this.acknowledged += 1;
    for (const change of changesBetween(before, after)) {
      const seen = pieces(change.place, change.before);
      const put = pieces(change.place, change.after);
      for (const key of seen.places.keys()) this.#alive.delete(`${after.id} ${key} ${seen.texts.get(key)}`);
      for (const key of new Set([...seen.places.keys(), ...put.places.keys()])) {
        // who puts a thing where there was none saw that there was none
        if (!seen.places.has(key)) this.#alive.delete(`${after.id} ${key} ${NONE}`);
        const place = put.places.get(key) ?? seen.places.get(key) ?? [];
        const text = put.texts.get(key) ?? NONE;
        if (base !== null && (pieceAt(base, place) ?? NONE) === text) continue;
        const whole = change.place.join('/');
        const wentWith = change.after === undefined && key !== whole ? { wentWith: whole } : {};
        this.#alive.set(`${after.id} ${key} ${text}`, { site: after.id, place, text, ...wentWith });
      }
    }
  }

  /** A version that somebody looked at and did not want, or has taken. */
  choose(site: string, { place, other }: OtherVersion): void {
    this.acknowledged += 1;
    const seen = pieces(place, other ?? undefined);
    for (const key of seen.places.keys()) this.#alive.delete(`${site} ${key} ${seen.texts.get(key)}`);
    if (other !== null) return;
    const whole = place.join('/');
    for (const [id, entry] of this.#alive) {
      const isIt = entry.place.join('/') === whole || entry.wentWith === whole;
      if (entry.site === site && entry.text === NONE && isIt) this.#alive.delete(id);
    }
  }

  /** What is neither in its site nor waits beside it. */
  lost(states: ReadonlyMap<string, SiteState>): readonly Entry[] {
    return [...this.#alive.values()].filter((entry) => {
      const state = states.get(entry.site);
      return state === undefined || !isKept(state, entry);
    });
  }
}

/** A value as the things that are in it: a run apart from its readings. */
function pieces(place: Place, value: unknown): { places: Map<string, Place>; texts: Map<string, string> } {
  const places = new Map<string, Place>();
  const texts = new Map<string, string>();
  const add = (at: Place, piece: unknown) => {
    places.set(at.join('/'), at);
    texts.set(at.join('/'), canonicalText(piece));
  };
  if (value === undefined) return { places, texts };
  if (place[0] === 'runs' && place.length === 2) {
    const { readings = [], ...facts } = Object(value) as { readings?: readonly { id: string }[] }; // a run
    add(place, facts);
    for (const reading of readings) add([...place, 'readings', reading.id], reading);
  } else add(place, value);
  return { places, texts };
}

/** The text of the one thing at a place. */
function pieceAt(site: Site, place: Place): string | undefined {
  return pieces(place, valueAt(site, place)).texts.get(place.join('/'));
}

function isKept({ site, others }: SiteState, { place, text }: Entry): boolean {
  const key = place.join('/');
  const isIn = (at: Place, value: unknown) => pieces(at, value).texts.get(key) === text;
  const now = valueAt(site, place);
  if (text === NONE ? now === undefined : isIn(place, now)) return true;
  return others.some(({ place: at, other }) => {
    const above = key === at.join('/') || key.startsWith(`${at.join('/')}/`);
    if (!above) return false;
    return other === null
      ? text === NONE
      : isIn(at, other) || (text === NONE && !pieces(at, other).places.has(key));
  });
}

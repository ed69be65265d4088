import type { Site } from '@footmark/site';

/** Sites of which it is kept: the open one, those before and after an edit, one that is looked at. */
const MOST = 8;

/** What was computed of the sites that were asked about last. A history of hundreds of states does not hold on to what followed from each. */
export class LastSites<Value> {
  readonly #known = new Map<Site, Value>();

  get(site: Site): Value | undefined {
    const value = this.#known.get(site);
    if (value !== undefined) this.set(site, value);
    return value;
  }

  set(site: Site, value: Value): void {
    this.#known.delete(site);
    this.#known.set(site, value);
    const [oldest] = this.#known.keys();
    if (this.#known.size > MOST && oldest !== undefined) this.#known.delete(oldest);
  }
}

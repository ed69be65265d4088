/** Facts that become others: undefined clears one that need not be given, and what is left out stays. */
export type Patch<Thing> = {
  readonly [Fact in keyof Thing]?: undefined extends Thing[Fact] ? Thing[Fact] | undefined : Thing[Fact];
};

/** A thing with some of its facts changed. */
export function patched<Thing extends object>(thing: Thing, facts: Patch<NoInfer<Thing>>): Thing {
  return withoutAbsent<Thing>({ ...thing, ...facts });
}

/** Absent is how a site says 'not given': an undefined value is a key too many. */
export function withoutAbsent<Thing extends object>(
  facts: {
    readonly [Fact in keyof Thing]: Thing[Fact] | undefined;
  },
): Thing {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as Thing; // no value is undefined
}

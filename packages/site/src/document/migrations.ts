/** Turns a file of one version into the next. Frozen once released; imports nothing from live code. */
export type Migration = (file: Record<string, unknown>) => Record<string, unknown>;

/** By the version they start from. Version 1 is the first. */
export const migrations: Readonly<Record<number, Migration>> = { 1: toVersion2, 2: toVersion3 };

/** Runs come to belong to visits, one for each day; a counter's scale says where it is from, and the head gets its length. */
function toVersion2(file: Record<string, unknown>): Record<string, unknown> {
  const runs = Array.isArray(file.runs) ? file.runs : [];
  const dates = [...new Set(runs.flatMap((run) => (run?.date === undefined ? [] : [run.date])))].sort();
  const visitOf = (date: unknown) => {
    const index = dates.indexOf(date);
    return index < 0 ? null : `v${index + 1}`;
  };
  return {
    ...file,
    version: 2,
    sigmas: {},
    visits: dates.map((date, i) => ({
      id: `v${i + 1}`,
      date,
      purpose: i === 0 ? 'first-look' : 'other',
      note: '',
    })),
    runs: Array.isArray(file.runs)
      ? runs.map((run) => {
          if (typeof run !== 'object' || run === null) return run;
          const { date, scale, ...same } = run as Record<string, unknown>;
          return {
            ...same,
            visit: visitOf(date),
            scale: { by: 'said', factor: scale },
            head: { length: 0, zeroed: 'lens' },
          };
        })
      : file.runs,
    pairs: [],
    different: [],
    rules: { set: 'us-ipc', changed: [] },
    digging: { soil: 'not-chosen', disturbed: true, protection: 'slope', digs: [], notes: [] },
    setAside: [],
  };
}

/** What crews found comes to have its place; nobody has found anything yet. */
function toVersion3(file: Record<string, unknown>): Record<string, unknown> {
  return { ...file, version: 3, asFound: [] };
}

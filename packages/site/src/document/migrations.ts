/** Turns a file of one version into the next. Frozen once released; imports nothing from live code. */
export type Migration = (file: Record<string, unknown>) => Record<string, unknown>;

/** By the version they start from. Version 1 is the first. */
export const migrations: Readonly<Record<number, Migration>> = {};

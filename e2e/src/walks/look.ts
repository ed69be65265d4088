/** Looks at what is on the screen now; `at`: where that is, for whoever reads what was found. */
export type Look = (at: string) => Promise<void>;

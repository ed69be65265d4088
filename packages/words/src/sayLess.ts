/** How a language says that something is below an amount: `less than 0.1 ft`. */
export type SayLess = (amount: string) => string;

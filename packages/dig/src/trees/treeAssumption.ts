/** A fact that nobody gave, and what it was taken as. */
export type TreeAssumption = {
  readonly fact: 'tolerance' | 'age' | 'condition' | 'base-diameter';
  readonly as: string;
};

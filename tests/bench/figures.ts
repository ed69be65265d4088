import { appendFileSync } from 'node:fs';

/** One figure of a benchmark. */
export type Figure = {
  readonly name: string;
  readonly value: number;
  /** What it counts, as it stands behind the number; '' for a plain count. */
  readonly unit: string;
  readonly goal?: { readonly under: number } | { readonly atLeast: number };
  /** How many times the figure is that of something comparable, taken in the same run: `to` names that. */
  readonly ratio: { readonly to: string; readonly times: number } | null;
};

/** Prints a figure, hands it to whoever gathers them (a line of JSON in the file that FOOTMARK_FIGURES names), and says whether its goal is met. */
export function tell(figure: Figure): boolean {
  const met = isMet(figure);
  const { name, value, unit, goal, ratio } = figure;
  const aim = goal === undefined ? '' : ` (goal ${goalText(goal)}: ${met ? 'met' : 'MISSED'})`;
  const beside = ratio === null ? '' : `; ${inThree(ratio.times)} × ${ratio.to}`;
  console.log(`${name}: ${inThree(value)} ${unit}${aim}${beside}`);
  const into = process.env.FOOTMARK_FIGURES;
  if (into !== undefined) appendFileSync(into, `${JSON.stringify({ ...figure, met })}\n`);
  return met;
}

/** The value that so many of 1 lie below; of an even number in the middle the upper one. NaN of none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

function isMet({ value, goal }: Figure): boolean {
  if (goal === undefined) return true;
  return 'under' in goal ? value < goal.under : value >= goal.atLeast;
}

function goalText(goal: NonNullable<Figure['goal']>): string {
  return 'under' in goal ? `under ${goal.under}` : `${goal.atLeast} or more`;
}

/** Three digits that count, and no powers of ten. */
function inThree(value: number): string {
  return Number(value.toPrecision(3)).toLocaleString('en-US', { maximumFractionDigits: 6 });
}

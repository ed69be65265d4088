import { bytesOf, type FuzzReader, textOf } from '../reader';

export type Read = { readonly accepted: boolean; readonly taken: readonly string[] };

/** A reader of numbers with commas between them, with the fault that is to be found. Partial: not as many as stand there. */
export const faultyReader = (name: string, read: (cells: readonly string[]) => Read): FuzzReader<Read> => ({
  name,
  seeds: () => ['1,2,3', '10,20,30,40'].map(bytesOf),
  mutators: [],
  read: (input) => read(textOf(input).split(',')),
  judge: (input, { taken }) => {
    const there = textOf(input).split(',').length;
    return taken.length === there ? null : `${taken.length} of ${there}`;
  },
});

export const isNumber = (cell: string): boolean => /^\d+$/.test(cell);

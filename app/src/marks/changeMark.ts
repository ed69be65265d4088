import { changeReading, type Mark, type Reading } from '@footmark/site';
import { edit } from '../session/siteSession';

type GroundFacts = { [Fact in 'ground' | 'offset']?: Reading[Fact] | undefined };

/** Changes what is known of a mark on the ground; undefined clears it. */
export function changeMark(name: string, { run, reading }: Mark, facts: GroundFacts): boolean {
  const { id, number: _, ground, offset, ...rest } = { ...reading, ...facts };
  return edit(name, (s) =>
    changeReading(s, {
      run: run.id,
      id,
      facts: {
        ...rest,
        ...(ground === undefined ? {} : { ground }),
        ...(offset === undefined ? {} : { offset }),
      },
    }),
  );
}

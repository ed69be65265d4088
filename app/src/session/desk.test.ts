import { newSite, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { type Weighed, weigh } from '../fit/weigh';
import { type DeskAnswer, type DeskQuestion, workerDesk } from './desk';

/** A worker that answers when it is told to. */
class HandWorker {
  static made: HandWorker[] = [];
  readonly asked: DeskQuestion<Site>[] = [];
  ended = false;
  onmessage: ((event: { data: DeskAnswer<Weighed> }) => void) | null = null;
  onerror: (() => void) | null = null;

  constructor() {
    HandWorker.made.push(this);
  }

  postMessage(question: DeskQuestion<Site>): void {
    this.asked.push(question);
  }

  terminate(): void {
    this.ended = true;
  }

  answer(weighed: Weighed): void {
    const job = this.asked.at(-1)?.job ?? -1;
    this.onmessage?.({ data: { job, answer: weighed } });
  }
}

function siteOf(id: string): Site {
  return newSite({
    id,
    name: id,
    createdAt: '2026-05-04T08:00:00Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
}

function desk() {
  HandWorker.made = [];
  const answers: Weighed[] = [];
  // it has of a worker what the desk uses
  const made = workerDesk(
    () => new HandWorker() as unknown as Worker,
    (site: Site) => weigh(site),
  );
  return { desk: made, answers, take: (weighed: Weighed) => void answers.push(weighed) };
}

const FAILED: Weighed = { failed: true };

describe('the desk', () => {
  it('asks one worker again and again while it keeps up', () => {
    const { desk: at, answers, take } = desk();
    at.ask(siteOf('a'), take);
    HandWorker.made[0]?.answer(FAILED);
    at.ask(siteOf('b'), take);
    HandWorker.made[0]?.answer(FAILED);
    expect(HandWorker.made).toHaveLength(1);
    expect(HandWorker.made[0]?.asked.map((q) => q.asked.id)).toEqual(['a', 'b']);
    expect(answers).toEqual([FAILED, FAILED]);
  });

  it('ends a worker that still weighs what nobody asks for any more, and hears nothing of it', () => {
    const { desk: at, answers, take } = desk();
    at.ask(siteOf('a'), take);
    at.ask(siteOf('b'), take);
    const [old, next] = HandWorker.made;
    expect(old?.ended).toBe(true);
    old?.answer(FAILED);
    expect(answers).toEqual([]);
    next?.answer(FAILED);
    expect(answers).toEqual([FAILED]);
    expect(next?.ended).toBe(false);
  });

  it('passes on how far the answer is, and nothing of what was given up', () => {
    const { desk: at, take } = desk();
    const shares: number[] = [];
    at.ask(siteOf('a'), take, (share) => void shares.push(share));
    const [worker] = HandWorker.made;
    const job = worker?.asked.at(-1)?.job ?? -1;
    worker?.onmessage?.({ data: { job, progress: 0.5 } });
    at.drop();
    worker?.onmessage?.({ data: { job, progress: 0.7 } });
    expect(shares).toEqual([0.5]);
  });

  it('is quiet once it was told to drop everything', () => {
    const { desk: at, answers, take } = desk();
    at.ask(siteOf('a'), take);
    at.drop();
    expect(HandWorker.made[0]?.ended).toBe(true);
    HandWorker.made[0]?.answer(FAILED);
    expect(answers).toEqual([]);
  });

  it('weighs in the page where there are no workers, or one that does not start', async () => {
    const refuses = workerDesk(
      () => {
        throw new ReferenceError('Worker is not defined');
      },
      (site: Site) => weigh(site),
    );
    const inPage = await new Promise<Weighed>((take) => refuses.ask(siteOf('a'), take));
    expect(inPage).toMatchObject({ failed: false, fit: { status: 'no-evidence' } });

    const { desk: at } = desk();
    const broken = new Promise<Weighed>((take) => at.ask(siteOf('b'), take));
    HandWorker.made[0]?.onerror?.();
    expect(await broken).toMatchObject({ failed: false, fit: { status: 'no-evidence' } });
    // and it does not try again
    const later = new Promise<Weighed>((take) => at.ask(siteOf('c'), take));
    expect(await later).toMatchObject({ failed: false });
    expect(HandWorker.made).toHaveLength(1);
  });
});

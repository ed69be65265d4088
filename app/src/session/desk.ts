/** What goes to a worker and what comes back: `job` tells answers to what nobody asks for any more. */
export type DeskQuestion<Asked> = { readonly job: number; readonly asked: Asked };
export type DeskAnswer<Answer> =
  | { readonly job: number; readonly answer: Answer }
  | { readonly job: number; readonly progress: number };

/** Computes one thing at a time, away from the page where the browser can. */
export type Desk<Asked, Answer> = {
  /** Gives up what is being computed, and computes this. `onProgress`: how much of it is done, 0 to 1. */
  ask(asked: Asked, answer: (answer: Answer) => void, onProgress?: (share: number) => void): void;
  /** Gives up what is being computed. */
  drop(): void;
};

/** `makeWorker` may throw: then `compute` is done in the page, and may fetch its code first. It answers in any case. */
export function workerDesk<Asked, Answer>(
  makeWorker: () => Worker,
  compute: (asked: Asked) => Answer | Promise<Answer>,
): Desk<Asked, Answer> {
  let worker: Worker | null = null;
  let usable = true;
  let job = 0;
  let running = false;

  const drop = () => {
    job += 1;
    // a worker cannot be told to stop while it computes
    if (running) {
      worker?.terminate();
      worker = null;
    }
    running = false;
  };

  const ask: Desk<Asked, Answer>['ask'] = (asked, answer, onProgress) => {
    drop();
    const own = job;
    const done = (found: Answer) => {
      if (own !== job) return;
      running = false;
      answer(found);
    };
    const inPage = () => {
      worker = null;
      usable = false;
      setTimeout(async () => {
        if (own === job) done(await compute(asked));
      });
    };
    running = true;
    if (!usable) {
      inPage();
      return;
    }
    try {
      worker ??= makeWorker();
      worker.onmessage = ({ data }: MessageEvent<DeskAnswer<Answer>>) => {
        if (data.job !== own) return;
        if ('answer' in data) done(data.answer);
        else if (own === job) onProgress?.(data.progress);
      };
      worker.onerror = () => own === job && inPage();
      const question: DeskQuestion<Asked> = { job: own, asked };
      worker.postMessage(question);
    } catch {
      inPage();
    }
  };
  return { ask, drop };
}

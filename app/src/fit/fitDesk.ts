import type { Site } from '@footmark/site';
import type { FitAnswer, FitQuestion } from './fitWorker';
import { type Weighed, weigh } from './weigh';

/** Weighs one site at a time, away from the page where the browser can. */
export type FitDesk = {
  /** Gives up what is being weighed, and weighs this. */
  ask(site: Site, answer: (weighed: Weighed) => void): void;
  /** Gives up what is being weighed. */
  drop(): void;
};

/** `makeWorker` may throw: then sites are weighed in the page. */
export function fitDesk(makeWorker: () => Worker): FitDesk {
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

  const ask: FitDesk['ask'] = (site, answer) => {
    drop();
    const asked = job;
    const done = (weighed: Weighed) => {
      if (asked !== job) return;
      running = false;
      answer(weighed);
    };
    const inPage = () => {
      worker = null;
      usable = false;
      setTimeout(() => asked === job && done(weigh(site)));
    };
    running = true;
    if (!usable) {
      inPage();
      return;
    }
    try {
      worker ??= makeWorker();
      worker.onmessage = ({ data }: MessageEvent<FitAnswer>) => data.job === asked && done(data.weighed);
      worker.onerror = () => asked === job && inPage();
      const question: FitQuestion = { job: asked, site };
      worker.postMessage(question);
    } catch {
      inPage();
    }
  };
  return { ask, drop };
}

import type { Site } from '@footmark/site';
import { type Weighed, weigh } from './weigh';

/** What the page asks, and what comes back for it. */
export type FitQuestion = { readonly job: number; readonly site: Site };
export type FitAnswer = { readonly job: number; readonly weighed: Weighed };

self.addEventListener('message', ({ data }: MessageEvent<FitQuestion>) => {
  const answer: FitAnswer = { job: data.job, weighed: weigh(data.site) };
  self.postMessage(answer);
});

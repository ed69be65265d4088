import type { Site } from '@footmark/site';
import type { DeskAnswer, DeskQuestion } from '../session/desk';
import { type Weighed, weigh } from './weigh';

self.addEventListener('message', ({ data: { job, asked } }: MessageEvent<DeskQuestion<Site>>) => {
  const answer: DeskAnswer<Weighed> = { job, answer: weigh(asked) };
  self.postMessage(answer);
});

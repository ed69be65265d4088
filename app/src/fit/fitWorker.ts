import type { Site } from '@footmark/site';
import type { DeskAnswer, DeskQuestion } from '../session/desk';
import { readyToDerive } from '../session/readyToDerive';
import { type Weighed, weigh } from './weigh';

self.addEventListener('message', ({ data: { job, asked } }: MessageEvent<DeskQuestion<Site>>) => {
  const say = (weighed: Weighed) => {
    const answer: DeskAnswer<Weighed> = { job, answer: weighed };
    self.postMessage(answer);
  };
  readyToDerive(asked).then(
    () => say(weigh(asked)),
    () => say({ failed: true }),
  );
});

import type { DeskAnswer, DeskQuestion } from '../session/desk';
import { readyToDerive } from '../session/readyToDerive';
import { lookForWays, type WaysAsked, type WaysFound } from './lookForWays';

self.addEventListener('message', ({ data: { job, asked } }: MessageEvent<DeskQuestion<WaysAsked>>) => {
  const say = (answer: DeskAnswer<WaysFound>) => self.postMessage(answer);
  readyToDerive(asked.site).then(
    () => say({ job, answer: lookForWays(asked, (progress) => say({ job, progress })) }),
    () => say({ job, answer: { is: 'failed' } }),
  );
});

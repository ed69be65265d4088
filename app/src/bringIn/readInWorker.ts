import { loadProjection } from '@footmark/site';
import type { DeskAnswer, DeskQuestion } from '../session/desk';
import { type ReadIn, type ReadInAsked, readIn } from './readIn';

self.addEventListener('message', ({ data: { job, asked } }: MessageEvent<DeskQuestion<ReadInAsked>>) => {
  const say = (answer: DeskAnswer<ReadIn>) => self.postMessage(answer);
  loadProjection().then(
    () => say({ job, answer: readIn(asked, (progress) => say({ job, progress })) }),
    () => say({ job, answer: { is: 'failed' } }),
  );
});

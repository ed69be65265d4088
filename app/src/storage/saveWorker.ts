import type { SaveAnswer, SaveQuestion } from './saveMessages';
import { saveSiteAfter } from './saveSiteAfter';

self.addEventListener('message', ({ data: { job, save } }: MessageEvent<SaveQuestion>) => {
  const tell = (answer: SaveAnswer) => self.postMessage(answer);
  saveSiteAfter(save).then(
    (seq) => tell({ job, is: 'done', seq }),
    (error: unknown) => tell({ job, is: 'failed', name: error instanceof Error ? error.name : '' }),
  );
});

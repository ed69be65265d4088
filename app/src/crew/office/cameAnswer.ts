import type { Answer } from '@footmark/site';
import { create } from 'zustand';

/** An answer that came with a link and waits for its site to be opened. */
const useCame = create<{ readonly answer: Answer | null }>()(() => ({ answer: null }));

export function keepAnswer(answer: Answer): void {
  useCame.setState({ answer });
}

/** Whether one waits for a site. */
export function useAnswerFor(site: string): Answer | null {
  return useCame(({ answer }) => (answer?.site === site ? answer : null));
}

export function dropAnswer(): void {
  useCame.setState({ answer: null });
}

export function answerWaits(site: string): boolean {
  return useCame.getState().answer?.site === site;
}

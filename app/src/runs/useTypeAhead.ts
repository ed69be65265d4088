import { useRef } from 'react';
import type { Option } from '../controls/Choice';

/** Letters that come within this time (ms) of each other are of one word. */
const ONE_WORD_MS = 1000;

/** Finds the option that begins with the letters typed in quick succession; false where none does. */
export function useTypeAhead(
  options: readonly Option<string>[],
  onFind: (id: string) => void,
): (letter: string) => boolean {
  const typed = useRef({ letters: '', at: 0 });
  return (letter) => {
    const now = performance.now();
    const goesOn = now - typed.current.at < ONE_WORD_MS;
    const letters = `${goesOn ? typed.current.letters : ''}${letter.toLowerCase()}`;
    typed.current = { letters, at: now };
    const found = options.find((option) => option.name.toLowerCase().startsWith(letters));
    if (found !== undefined) onFind(found.id);
    return found !== undefined;
  };
}

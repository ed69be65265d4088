import { useEffect } from 'react';
import { pressKey } from './shortcuts';

/** Where keys write text or move within a list, they are not ours. */
const WRITING = 'input, textarea, [role="listbox"], [role="dialog"], [contenteditable]';

/** Lets the shortcuts work while a site is open. */
export function useShortcuts(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const writing = event.target instanceof HTMLElement && event.target.closest(WRITING) !== null;
      if (writing && event.key !== 'Escape') return;
      if (writing && event.target instanceof HTMLElement) event.target.blur();
      else if (pressKey(event)) event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

import { useEffect } from 'react';
import { LEG_FIELDS } from '../measure/LegForm';
import { useWorkbench } from '../session/workbench';
import { pressKey } from './shortcuts';

/** Where keys write text or move within a list, they are not ours. */
const WRITING = 'input, textarea, [role="listbox"], [role="dialog"], [contenteditable]';

/**
 * While a line is being drawn, a digit typed anywhere begins the next leg's length, and a letter of the compass or of a turn its
 * direction: the field takes the focus before the key is written.
 */
function typesLeg(event: KeyboardEvent): boolean {
  const { tool } = useWorkbench.getState();
  if (tool?.is !== 'draw' || event.ctrlKey || event.metaKey || event.altKey) return false;
  const id = /^[0-9.]$/.test(event.key)
    ? LEG_FIELDS.length
    : /^[nsewlr]$/i.test(event.key)
      ? LEG_FIELDS.direction
      : null;
  const field = id === null ? null : document.getElementById(id);
  field?.focus();
  return field !== null;
}

/** Lets the shortcuts work while a site is open. */
export function useShortcuts(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const writing = event.target instanceof HTMLElement && event.target.closest(WRITING) !== null;
      if (writing && event.key !== 'Escape') return;
      if (!writing && typesLeg(event)) return;
      if (writing && event.target instanceof HTMLElement) event.target.blur();
      else if (pressKey(event)) event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

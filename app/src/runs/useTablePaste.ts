import { useEffect, useRef } from 'react';
import { useSite } from '../session/siteSession';
import { counterUnit } from './counterUnit';
import { isReadingTable } from './pastedTable';

/**
 * Hands over rows that are pasted anywhere on the page while it is in use: cells from a spreadsheet come with tabs or in several
 * lines. What is pasted where several lines are written stays there, and in a field all that are no readings.
 */
export function useTablePaste(take: (text: string) => void): void {
  const unit = counterUnit(useSite().units);
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const onPaste = (event: ClipboardEvent) => {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (!/[\t\n]/.test(text.trim()) || event.target instanceof HTMLTextAreaElement) return;
      if (event.target instanceof HTMLInputElement && !isReadingTable(text, unit)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      latest.current(text);
    };
    // before anybody else on the page takes it for a copied thing
    window.addEventListener('paste', onPaste, { capture: true });
    return () => window.removeEventListener('paste', onPaste, { capture: true });
  }, [unit]);
}

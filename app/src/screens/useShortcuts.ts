import { removeThing } from '@footmark/site';
import { useEffect } from 'react';
import { zoomView } from '../canvas/planView';
import { currentSite, derivedFrom, edit, redo, undo } from '../session/siteSession';
import { select, take, useWorkbench } from '../session/workbench';
import { finishDrawing } from '../tools/useTool';
import { showAll } from './PlanFurniture';

/** Keys that work wherever nothing is being typed. */
export function useShortcuts(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const typing =
        event.target instanceof HTMLElement && event.target.closest('input, textarea, [role="listbox"]');
      const ctrl = event.ctrlKey || event.metaKey;
      if (ctrl && event.key.toLowerCase() === 'z' && !typing) {
        event.preventDefault();
        if (event.shiftKey) redo();
        else undo();
      } else if (ctrl && event.key.toLowerCase() === 'y' && !typing) {
        event.preventDefault();
        redo();
      } else if (event.key === 'Escape') {
        if (useWorkbench.getState().tool !== null) take(null);
        else if (!typing) select(null);
      } else if (!typing && !ctrl) plainKey(event);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

function plainKey(event: KeyboardEvent): void {
  switch (event.key) {
    case '+':
    case '=':
      zoomView(1.5);
      return;
    case '-':
      zoomView(1 / 1.5);
      return;
    case '0':
      showAll();
      return;
    case 'Enter':
      if (event.target === document.body) finishDrawing();
      return;
    case 'Delete':
      removeSelected();
  }
}

function removeSelected(): void {
  const { selected } = useWorkbench.getState();
  if (selected === null || selected.kind === 'site' || selected.kind === 'reading') return;
  const site = currentSite();
  const places = derivedFrom(site).points;
  edit('Delete', (s) => removeThing(s, { id: selected.id, places }));
  select(null);
}

import { type Grid, type GridSystem, openGrid } from '@footmark/grid';
import { create } from 'zustand';
import { recallJson, remember } from '../../session/onDevice';

/** The system that files are given in, by site; it stays on this device. */
const useChosen = create<{ readonly by: Readonly<Record<string, GridSystem | null>> }>()(() => ({ by: {} }));

const keyOf = (site: string) => `footmark-grid/${site}`;

/** The chosen grid of a site; null for the site's own coordinates. */
export function useGrid(site: string): Grid | null {
  const known = useChosen(({ by }) => by[site]);
  const system = known === undefined ? recalled(site) : known;
  if (system === null) return null;
  const grid = openGrid(system);
  return grid.ok ? grid.value : null;
}

export function chooseGrid(site: string, system: GridSystem | null): void {
  useChosen.setState(({ by }) => ({ by: { ...by, [site]: system } }));
  remember(keyOf(site), JSON.stringify(system));
}

/** As it was kept; another hand may have written what is there. */
function recalled(site: string): GridSystem | null {
  const kept = recallJson(keyOf(site));
  return isSystem(kept) ? kept : null;
}

function isSystem(kept: unknown): kept is GridSystem {
  if (typeof kept !== 'object' || kept === null) return false;
  const { definition, name, unit } = kept as Partial<GridSystem>; // looked at below
  return (
    typeof definition === 'string' &&
    typeof name === 'string' &&
    typeof unit === 'object' &&
    typeof unit.metres === 'number'
  );
}

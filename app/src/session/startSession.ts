import { startWeighing } from '../fit/fitSession';
import { startAutosave } from './autosave';

let started = false;

/** What goes on beside an open site, from the first one on: its states are written to the device, its runs are weighed. */
export function startSession(): void {
  if (started) return;
  started = true;
  startAutosave();
  startWeighing();
}

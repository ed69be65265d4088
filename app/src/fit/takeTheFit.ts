import { dropFit, type RunsFit, type Site, takeFit } from '@footmark/site';
import { currentSite, derivedFrom, edit } from '../session/siteSession';
import { currentFit } from './fitSession';

/** Whether taking the fit would change what is shown. */
export function isWorthTaking(fit: RunsFit | null): fit is RunsFit {
  if (fit === null || fit.status !== 'fitted') return false;
  return fit.pending > 0 || (!fit.taken && [...fit.marks.values()].some((m) => m.fitted !== null));
}

/** Puts lines and marks where the evidence has them. Does nothing while the site is still being weighed. */
export function takeTheFit(): void {
  const { fit, ofSite } = currentFit();
  const site = currentSite();
  if (ofSite !== site || !isWorthTaking(fit)) return;
  edit('Take the fit', (s) => takeFit(s, { fit, places: placesOf(s) }));
}

/** Puts lines and marks back to where they were drawn. */
export function backToDrawn(): void {
  edit('Back to as drawn', (s) => dropFit(s, { places: placesOf(s) }));
}

function placesOf(site: Site) {
  return derivedFrom(site).points;
}

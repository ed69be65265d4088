import { type IntegrityProblem, integrityProblems } from '../document/integrity';
import type { Site } from '../document/site';

export type SoundEdit =
  | { readonly ok: true; readonly site: Site }
  | { readonly ok: false; readonly problems: readonly IntegrityProblem[] };

/**
 * Guards an edit that was put together from what people chose: gives the edited site back, or what would be unsound in it. An edit that
 * touches no thing, run, picture or frame is not looked at.
 */
export function soundEdit(site: Site, edited: Site): SoundEdit {
  const same =
    site.features === edited.features &&
    site.paths === edited.paths &&
    site.runs === edited.runs &&
    site.underlays === edited.underlays &&
    site.frame === edited.frame;
  const problems = same ? [] : integrityProblems(edited);
  return problems.length === 0 ? { ok: true, site: edited } : { ok: false, problems };
}

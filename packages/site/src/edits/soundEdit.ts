import { type IntegrityProblem, integrityProblems } from '../document/integrity';
import { sameValue } from '../document/sameValue';
import type { Site } from '../document/site';
import { type ValueProblem, valueProblems } from '../document/valueProblems';

/** Why an edit cannot be kept: a value that the file has no room for, or a name that leads nowhere or back to itself. */
export type EditProblem = ValueProblem | IntegrityProblem;

export type SoundEdit =
  | { readonly ok: true; readonly site: Site }
  | { readonly ok: false; readonly problems: readonly EditProblem[] };

/**
 * Guards an edit that was put together from what people chose and typed: gives the edited site back (`site` itself where nothing is another), or what in it could not be read
 * back from its file. What the edit left as it was (the same objects as in `site`, which is sound) is not looked at for its values, and
 * for its names only when some thing, visit, run, pair, dig, record of a crew, picture or the frame is another.
 */
export function soundEdit(site: Site, edited: Site): SoundEdit {
  if (sameValue(site, edited)) return { ok: true, site };
  const same =
    site.features === edited.features &&
    site.paths === edited.paths &&
    site.visits === edited.visits &&
    site.runs === edited.runs &&
    site.pairs === edited.pairs &&
    site.different === edited.different &&
    site.digging === edited.digging &&
    site.asFound === edited.asFound &&
    site.underlays === edited.underlays &&
    site.frame === edited.frame;
  const values = valueProblems(site, edited);
  // names are looked for only in what has the shape of a site: what a list within a thing has too many of was not looked at
  const shapeless = values.some(
    ({ code, path }) => code === 'wrong-value' || (code === 'too-many' && path.length > 1),
  );
  const problems = [...values, ...(same || shapeless ? [] : integrityProblems(edited))];
  return problems.length === 0 ? { ok: true, site: edited } : { ok: false, problems };
}

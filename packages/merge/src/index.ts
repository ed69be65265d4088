export { changesBetween, type SiteChange } from './changesBetween';
export type { OtherVersion } from './mergeParts';
export { distinctVersions, type MergedSite, mergeSites } from './mergeSites';
export { mergeStates, type SiteState } from './mergeStates';
export { type Place, valueAt, withVersion } from './place';
export { canonicalText, sameValue } from './sameValue';

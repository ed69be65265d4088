export { changesBetween, type SiteChange } from './changesBetween';
export { type MergedSite, mergeSites, mergeStates } from './mergeStates';
export { type Place, valueAt, withVersion } from './place';
export { canonicalText } from './plainData';
export type { OtherVersion, SiteState } from './siteState';
export {
  highestCount,
  join,
  type Stamped,
  type StampedSite,
  type StampedThing,
  sameStamped,
} from './stampedSite';
export { stampSite } from './stampSite';
export { type SiteView, viewSite } from './viewSite';

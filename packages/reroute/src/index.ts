export { type RerouteAsk, stationsOf, usualAsk, usualAskOf } from './ask';
export { bendTable } from './bendTable';
export { checkPath } from './checkPath';
export { type PriceItem, type PriceList, priceItems, priceOf } from './price';
export { type Rerouting, requestOf } from './requestOf';
export { routePath } from './routePath';
export { type Ends, type Minded, mindedOn, type Treatment } from './treatment';
export type { BendCount, Dug, TreeShare, WayFacts } from './wayFacts';
export { type Way, type WayIs, waysOf } from './ways';

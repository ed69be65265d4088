export { type RerouteAsk, usualAsk } from './ask';
export { bendTable } from './bendTable';
export { type Rerouting, requestOf } from './requestOf';
export { type Ends, type Minded, mindedOn, type Treatment } from './treatment';

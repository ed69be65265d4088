export type { Device, Exchanged, OnDevice } from './device';
export { type ExchangeOutcome, exchangeSite } from './exchangeSite';
export type { Replica, RevisedDocument, WriteOutcome } from './replica';
export { settle } from './settle';
export { documentIdOf, documentOf, siteOfDocument, stateOfDocument, type TeamDocument } from './teamDocument';

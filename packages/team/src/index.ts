export type { Device, Exchanged, OnDevice, Stamps } from './device';
export { type ExchangeOutcome, exchangeSite, type Occasion } from './exchangeSite';
export type { Replica, RevisedDocument, WriteOutcome } from './replica';
export { documentIdOf, documentOf, siteOfDocument, stampedOf, type TeamDocument } from './teamDocument';

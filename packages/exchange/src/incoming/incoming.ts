import type { Failure, Result } from '@footmark/geometry';
import type { GridUnit } from '@footmark/grid';
import type { IncomingNote, IncomingProblemCode } from '@footmark/words';

/** A place as its file has it, in the file's order and unit; `height` where there is one. */
export type IncomingPoint = {
  readonly first: number;
  readonly second: number;
  readonly height: number | null;
};

/** A thing of a file. An area's outline is open: its last point is not its first again. */
export type IncomingThing = {
  readonly name: string;
  /** Folder, layer or property of that name; empty for none. */
  readonly layer: string;
  readonly shape: 'point' | 'line' | 'area';
  readonly points: readonly IncomingPoint[];
};

/** What a file says of its coordinates; null where it is silent. */
export type IncomingSays = {
  /** `earth`: degrees of WGS 84; `named`: a system by its name alone, which is not looked up. */
  readonly coordinates: { readonly is: 'earth' } | { readonly is: 'named'; readonly name: string } | null;
  readonly unit: GridUnit | null;
  /** Which column is what, as letters: see `IncomingOrder`. */
  readonly order: IncomingOrder | null;
};

/**
 * What coordinates are, in the order in which they stand: E easting or longitude, N northing or latitude. For a table all its columns: P point, Z
 * elevation, D description, - what is passed over.
 */
export type IncomingOrder = string;

/** A file that was read, before anybody has said where it lies. */
export type Incoming = {
  readonly format: 'geojson' | 'kml' | 'dxf' | 'table';
  readonly says: IncomingSays;
  readonly things: readonly IncomingThing[];
  /** Of a table: its cells, from which things are made once the order is known. */
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly IncomingNote[];
};

export type IncomingFailure = Failure<IncomingProblemCode>;
export type IncomingResult = Result<Incoming, IncomingProblemCode>;

/** A file that is being read: yields how far it has come, 0 to 1, some times a second; returns what was in it. */
export type IncomingSteps = Generator<number, IncomingResult>;

/** Why a file is not taken in. `values` are what its sentence needs. */
export type IncomingProblemCode =
  | 'too-large' // characters, most
  | 'unknown-format'
  | 'not-json'
  | 'not-geojson'
  | 'not-xml' // line
  | 'has-doctype' // XML that declares entities of its own, which can make a reader fetch files or swell without end
  | 'not-kml'
  | 'not-dxf' // line
  | 'binary-dxf'
  | 'cut-short' // the file ends before its end mark
  | 'too-deep' // most
  | 'too-many-things' // most
  | 'too-many-points' // most
  | 'nothing-in-it';

export type IncomingProblemFacts = {
  readonly code: IncomingProblemCode;
  readonly values?: Readonly<Record<string, number>>;
};

/** What of a file is left out or made simpler, and how often. */
export type IncomingNote = {
  readonly code:
    | 'no-number' // a coordinate that is none
    | 'too-few-points' // a line of one point, an outline of two
    | 'holes-left-out'
    | 'kinds-left-out' // what is neither point nor line nor area
    | 'texts-left-out'
    | 'links-left-out' // to other files
    | 'paper-left-out' // what lies on a CAD file's sheets
    | 'curves-as-chords'
    | 'rows-left-out';
  readonly count: number;
};

/** What a file does not say and people must. `order`: which coordinate comes first, and for a table which column is what. */
export type IncomingQuestion = 'coordinates' | 'unit' | 'order';

/** Why what came in has no place in this site. */
export type PlacingProblem = 'questions-open' | 'site-not-on-the-earth' | 'grid-not-read' | 'not-an-order';

/** What is to be known of where it lies, before it is taken. Lengths in metres. */
export type IncomingFinding = { readonly severity: 'error' | 'warning' | 'note' } & (
  | { readonly code: 'too-far'; readonly metres: number }
  | { readonly code: 'far-away'; readonly metres: number }
  | { readonly code: 'wrong-hemisphere'; readonly metres: number }
  | { readonly code: 'order-swapped'; readonly metres: number | null }
  | { readonly code: 'unit-suspected'; readonly metres: number }
  | { readonly code: 'larger-than-a-yard'; readonly metres: number }
  | { readonly code: 'smaller-than-a-yard'; readonly metres: number }
  | { readonly code: 'no-place'; readonly count: number }
  | { readonly code: 'too-many-for-a-site'; readonly count: number; readonly room: number }
  | { readonly code: 'too-many-corners'; readonly count: number; readonly most: number }
);

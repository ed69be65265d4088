import type { GridNote, GridSystem, GridUnit } from '@footmark/grid';
import type { LinkProblem } from '@footmark/link';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { linkProblemSamples } from './linkProblemSamples';

const zone: GridSystem = {
  kind: 'state-plane',
  epsg: 2272,
  name: 'Pennsylvania South',
  datum: 'NAD83',
  unit: { name: 'us-ft', metres: 1200 / 3937 },
  definition: '',
  area: null,
};

const systems: readonly GridSystem[] = [
  zone,
  { ...zone, kind: 'utm', epsg: 26918, name: '18N', unit: { name: 'm', metres: 1 } },
  { ...zone, kind: 'typed', epsg: null, datum: null, unit: { name: 'other', metres: 1000 } },
];

const units: readonly GridUnit[] = [...systems.map(({ unit }) => unit), { name: 'ft', metres: 0.3048 }];

const notes: { readonly [Code in GridNote['code']]: readonly Extract<GridNote, { code: Code }>[] } = {
  'datum-as-wgs84': [{ code: 'datum-as-wgs84' }],
  'datum-shifted': [{ code: 'datum-shifted' }],
  'outside-area': [{ code: 'outside-area' }],
  'not-conformal': [{ code: 'not-conformal' }],
  'height-not-given': [{ code: 'height-not-given' }],
  'north-not-known': [{ code: 'north-not-known' }],
  'ground-is-not-grid': [
    { code: 'ground-is-not-grid', partsPerMillion: -260 },
    { code: 'ground-is-not-grid', partsPerMillion: 260 },
  ],
};

const factors = { pointScale: 1.000014609, conformal: true, elevationFactor: 0.99995, combined: 0.99996 };

/** What is said of grids, and of files and links that go out and come in. */
export const everyFileText = {
  gridSystemText: (w) => systems.map((system) => w.gridSystemText(system)),
  gridUnitText: (w) => units.map((unit) => w.gridUnitText(unit)),
  gridFactorRows: (w) =>
    [
      { ...factors, convergence: 0.008 },
      { ...factors, convergence: -0.008, elevationFactor: null, combined: null },
      { ...factors, convergence: 0 },
    ].flatMap((each) => w.gridFactorRows(each).flatMap(({ name, text }) => [name, text])),
  gridNoteText: (w) =>
    Object.values(notes).flatMap((samples: readonly GridNote[]) => samples.map((n) => w.gridNoteText(n))),
  fileFrameText: (w) => [null, zone].map((system) => w.fileFrameText(system)),
  fileUnitText: (w) => units.map((unit) => w.fileUnitText(unit)),
  mapLayerName: (w) => (['marks', 'pipe'] as const).map((layer) => w.mapLayerName(layer)),
  definitionProblemText: (w) =>
    (
      [
        'definition-too-long',
        'not-a-definition',
        'not-projected',
        'needs-shift-grid',
        'datum-not-given',
      ] as const
    ).flatMap((problem) => Object.values(w.definitionProblemText(problem))),
  linkProblemText: (w) =>
    Object.values<LinkProblem>(linkProblemSamples).flatMap((problem) => {
      const { text, cure, problems } = w.linkProblemText(problem);
      return [text, cure, ...problems];
    }),
} as const satisfies Partial<Record<keyof Words, SaidBy>>;

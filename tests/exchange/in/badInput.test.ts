import {
  finishSteps,
  type IncomingAnswers,
  incomingSite,
  openQuestions,
  placeIncoming,
  readIncoming,
} from '@footmark/exchange';
import { openGrid, typedSystem, utmSystem } from '@footmark/grid';
import { US_SURVEY_FOOT_M } from '@footmark/site';
import { en } from '@footmark/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frontTerrace, rearAlley } from '../rearAlley';
import { dxf, dxfOf, read, readSound } from './reading';

const kml = (inside: string) =>
  `<?xml version="1.0"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document>${inside}</Document></kml>`;
const placemark = (coordinates: string) =>
  kml(`<Placemark><name>a</name><Point><coordinates>${coordinates}</coordinates></Point></Placemark>`);
const point = (lon: unknown, lat: unknown) => JSON.stringify({ type: 'Point', coordinates: [lon, lat] });
const nested = (depth: number) =>
  `${'{"type":"GeometryCollection","geometries":['.repeat(depth)}${point(1, 2)}${']}'.repeat(depth)}`;
const many = (n: number) => `{"type":"MultiPoint","coordinates":[${'[1,2],'.repeat(n - 1)}[1,2]]}`;

describe('files that are refused, in a code', () => {
  const line = [0, 'LINE', 8, 'a', 10, 0, 20, 0, 11, 1, 21, 1];
  const circle = [0, 'CIRCLE', 8, 'a', 10, 0, 20, 0, 40, 1];
  const refused: readonly (readonly [string, string, string])[] = [
    ['nothing', '', 'unknown-format'],
    ['a picture', '\ufffdPNG\r\n\u001a\n\u0000\u0000', 'unknown-format'],
    ['a zip', 'PK\u0003\u0004\u0014\u0000', 'unknown-format'],
    ['words', 'Dear crew, the drain is over there.', 'unknown-format'],
    ['GeoJSON cut short', point(1, 2).slice(0, -3), 'not-json'],
    ['JSON that is another', '{"a":1}', 'not-geojson'],
    ['a collection without features', '{"type":"FeatureCollection"}', 'not-geojson'],
    ['an empty collection', '{"type":"FeatureCollection","features":[]}', 'nothing-in-it'],
    ['a collection in a collection, 100 deep', nested(100), 'too-deep'],
    [
      'a list in a list, 200,000 deep',
      `{"type":"MultiPoint","coordinates":${'['.repeat(200_000)}${']'.repeat(200_000)}}`,
      'nothing-in-it',
    ],
    ['a million points', many(1_000_000), 'too-many-things'],
    ['a line of a million points', many(1_000_000).replace('MultiPoint', 'LineString'), 'too-many-points'],
    ['KML cut short', placemark('1,2').slice(0, -20), 'not-xml'],
    ['another XML', '<gpx version="1.1"/>', 'not-kml'],
    [
      'KML with an external entity',
      `<!DOCTYPE kml [<!ENTITY x SYSTEM "file:///etc/passwd">]>${placemark('&x;').replace('<?xml version="1.0"?>', '')}`,
      'has-doctype',
    ],
    [
      'KML with entities of entities',
      `<!DOCTYPE kml [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]>${kml('&b;').replace('<?xml version="1.0"?>', '')}`,
      'has-doctype',
    ],
    ['KML with an entity that is nowhere', placemark('&nowhere;'), 'not-xml'],
    ['KML with folders 1,000 deep', kml(`${'<Folder>'.repeat(1000)}${'</Folder>'.repeat(1000)}`), 'too-deep'],
    ['KML with nothing in it', kml(''), 'nothing-in-it'],
    ['DXF cut short', dxfOf(line).replace(/ENDSEC\s+0\s+EOF\s*$/, ''), 'cut-short'],
    ['DXF that breaks', dxfOf(line).replace('\n20\n', '\ntwenty\n'), 'not-dxf'],
    ['binary DXF', 'AutoCAD Binary DXF\r\n\u001a\u0000', 'binary-dxf'],
    ['DXF with nothing but texts', dxfOf([0, 'TEXT', 8, 'a', 10, 0, 20, 0, 1, 'x']), 'nothing-in-it'],
    [
      'a block that holds itself',
      dxfOf([0, 'INSERT', 8, 'a', 2, 'b', 10, 0, 20, 0], {
        blocks: [0, 'BLOCK', 2, 'b', 10, 0, 20, 0, 0, 'INSERT', 8, 'a', 2, 'b', 10, 0, 20, 0, 0, 'ENDBLK'],
      }),
      'too-deep',
    ],
    [
      'blocks in blocks that would be 10^20 lines',
      dxfOf([0, 'INSERT', 8, 'a', 2, 'b20', 10, 0, 20, 0], { blocks: laughs(20) }),
      'too-many-things',
    ],
    ['DXF with a section in a section', dxfOf([...line, 0, 'SECTION', 2, 'ENTITIES', ...line]), 'not-dxf'],
    ['DXF with a section without a name', dxfOf(line).replace('\n2\nENTITIES', ''), 'not-dxf'],
    ['DXF with a thing between sections', dxfOf([...line, 0, 'ENDSEC', ...line]), 'not-dxf'],
    ['DXF with a block among its things', dxfOf([...line, 0, 'BLOCK', 2, 'b', ...line]), 'not-dxf'],
    ['DXF with the end of no block', dxfOf([...line, 0, 'ENDBLK']), 'not-dxf'],
    ['DXF with a block that does not end', dxfOf(line, { blocks: [0, 'BLOCK', 2, 'b', ...line] }), 'not-dxf'],
    ['DXF with a thing between blocks', dxfOf(line, { blocks: line }), 'not-dxf'],
    [
      'a block of a hundred circles nowhere, a thousand times',
      dxfOf(Array.from({ length: 1000 }, () => [0, 'INSERT', 2, 'b', 10, 'x', 20, 0]).flat(), {
        blocks: [0, 'BLOCK', 2, 'b', ...Array.from({ length: 100 }, () => circle).flat(), 0, 'ENDBLK'],
      }),
      'too-many-points',
    ],
    [
      'a block of a line with ten thousand groups of others, a thousand times',
      dxfOf(Array.from({ length: 1000 }, () => [0, 'INSERT', 2, 'b', 10, 1, 20, 0]).flat(), {
        blocks: [0, 'BLOCK', 2, 'b', ...line, ...new Array(10_000).fill([1000, 'x']).flat(), 0, 'ENDBLK'],
      }),
      'too-many-things',
    ],
    ['a table with a heading and no row', 'P,N,E,Z,D\n', 'nothing-in-it'],
  ];

  it.each(refused)('%s', { timeout: 60_000 }, (_, text, code) => {
    const found = read(text);
    expect(found).toMatchObject({ ok: false, code });
    if (found.ok) return;
    const said = en.incomingProblemText(found);
    expect(`${said.text} ${said.cure}`).not.toMatch(/undefined|NaN|null/);
  });

  function laughs(levels: number): readonly (string | number)[] {
    const of = (n: number) =>
      Array.from({ length: 10 }, () => [0, 'INSERT', 8, 'a', 2, `b${n - 1}`, 10, 0, 20, 0]).flat();
    return Array.from({ length: levels + 1 }, (_, n) => [
      0,
      'BLOCK',
      2,
      `b${n}`,
      10,
      0,
      20,
      0,
      ...(n === 0 ? [] : of(n)),
      0,
      'ENDBLK',
    ]).flat();
  }
});

describe('what is wrong in a part is left out and counted', () => {
  it('coordinates that are no numbers', () => {
    const text = JSON.stringify({
      type: 'FeatureCollection',
      features: [[1, 2], [null, 2], ['3', 4], [1], []].map((coordinates) => ({
        type: 'Feature',
        properties: null,
        geometry: { type: 'Point', coordinates },
      })),
    });
    const { things, notes } = readSound(text);
    expect(things.length).toBe(1);
    expect(notes).toEqual([{ code: 'no-number', count: 4 }]);
    expect(
      readSound(
        kml(
          ['1,2', 'NaN,2', '1', '', 'x,y']
            .map((c) => `<Placemark><Point><coordinates>${c}</coordinates></Point></Placemark>`)
            .join(''),
        ),
      ).notes,
    ).toEqual([{ code: 'no-number', count: 4 }]);
    const rows = readSound('P,N,E,Z,D\n1,10,20,,a\n2,NaN,20,,b\n3,1e999,1,,c\n4,"1,000",2,,d\n');
    const placed = placeIncoming(
      rows,
      { coordinates: { is: 'site' }, unit: { name: 'm', metres: 1 } },
      incomingSite(frontTerrace().derived),
    );
    expect(placed.ok && placed.value.notes).toEqual([{ code: 'rows-left-out', count: 3 }]);
    for (const note of [...notes, { code: 'rows-left-out', count: 3 } as const])
      expect(en.incomingNoteText(note)).toMatch(/^\d.*\.$/);
  });

  it('a GeoJSON geometry of several that has none', () => {
    const empty = ['MultiPoint', 'MultiLineString', 'MultiPolygon'].map((type) => ({
      type,
      coordinates: [],
    }));
    const geometries = [
      ...empty,
      { type: 'GeometryCollection', geometries: [] },
      { type: 'Point', coordinates: [1, 2] },
    ];
    const { things, notes } = readSound(JSON.stringify({ type: 'GeometryCollection', geometries }));
    expect(things.length).toBe(1);
    expect(notes).toEqual([{ code: 'kinds-left-out', count: 4 }]);
  });

  it('a height without end is none', () => {
    const heights = ['7.5', '1e999', '-1e999', '"3"'].map(
      (z) => readSound(`{"type":"Point","coordinates":[1,2,${z}]}`).things[0]?.points[0]?.height,
    );
    expect(heights).toEqual([7.5, null, null, null]);
  });

  it('KML that has no place, or one that cannot be read', () => {
    const inPlacemark = (inside: string) => `<Placemark>${inside}</Placemark>`;
    const at = (coordinates: string) => `<Point><coordinates>${coordinates}</coordinates></Point>`;
    const { things, notes } = readSound(
      kml(
        [
          inPlacemark(at('1,2')),
          inPlacemark('<name>nowhere</name>'),
          inPlacemark(`<MultiGeometry><Point/>${at('3,4')}</MultiGeometry>`),
          inPlacemark(at('5,<b/>6')),
          inPlacemark('<Camera><coordinates>7,8</coordinates></Camera>'),
          at('9,10'),
        ].join(''),
      ),
    );
    expect(things.map(({ points }) => points[0]?.first)).toEqual([1, 3]);
    expect(new Map(notes.map(({ code, count }) => [code, count]))).toEqual(
      new Map([
        ['kinds-left-out', 3], // the placemark with a name only, the camera, the point that is no placemark's
        ['too-few-points', 1],
        ['no-number', 1],
      ]),
    );
  });

  it('numbers that only programs write are none', () => {
    const placemarks = ['1,2', '0x1F,2', '0b11,2', '1,0o7', 'Infinity,1']
      .map((c) => `<Placemark><Point><coordinates>${c}</coordinates></Point></Placemark>`)
      .join('');
    expect(readSound(kml(placemarks)).notes).toEqual([{ code: 'no-number', count: 4 }]);
    const points = ['1', ' 2 ', '0x1F', '0b11'].flatMap((x) => [0, 'POINT', 8, 'a', 10, x, 20, 1]);
    const drawing = readSound(dxfOf(points));
    expect(drawing.things.map((t) => t.points[0]?.first)).toEqual([1, 2]);
    expect(drawing.notes).toEqual([{ code: 'no-number', count: 2 }]);
  });

  it('the end of a DXF block’s attributes is no thing', () => {
    const insert = [0, 'INSERT', 8, 'a', 66, 1, 2, 'b', 10, 0, 20, 0];
    const attributes = [0, 'ATTRIB', 8, 'a', 10, 0, 20, 0, 1, 'x', 0, 'SEQEND', 8, 'a'];
    const point = [0, 'POINT', 8, '0', 10, 1, 20, 1];
    const { things, notes } = readSound(
      dxfOf([...insert, ...attributes], { blocks: [0, 'BLOCK', 2, 'b', ...point, 0, 'ENDBLK'] }),
    );
    expect(things.length).toBe(1);
    expect(notes).toEqual([{ code: 'texts-left-out', count: 1 }]);
  });

  it('names with controls and names without end', () => {
    const feature = {
      type: 'Feature',
      properties: { name: `a\u202eb\u0000${'x'.repeat(10_000)}`, layer: '__proto__' },
      geometry: { type: 'Point', coordinates: [1, 2] },
    };
    const [thing] = readSound(JSON.stringify(feature)).things;
    expect(thing?.name.startsWith('abx')).toBe(true);
    expect(thing?.name.length).toBeLessThanOrEqual(200);
    expect(thing?.layer).toBe('__proto__');
  });
});

describe('what a file does not say is asked', () => {
  it('a drawing: which coordinates, and the unit where it has none', () => {
    const line = [0, 'LINE', 8, 'a', 10, 0, 20, 0, 11, 10, 21, 0];
    expect(openQuestions(readSound(dxfOf(line)), {})).toEqual(['coordinates', 'unit']);
    expect(openQuestions(readSound(dxfOf(line, { insUnits: 0 })), {})).toEqual(['coordinates', 'unit']);
    expect(openQuestions(readSound(dxfOf(line, { insUnits: 2 })), {})).toEqual(['coordinates']);
    const yard = incomingSite(rearAlley().derived);
    const none = placeIncoming(readSound(dxfOf(line)), { coordinates: { is: 'site' } }, yard);
    expect(none).toEqual({ ok: false, code: 'questions-open' });
    const inches = placeIncoming(
      readSound(dxfOf(line, { insUnits: 1 })),
      { coordinates: { is: 'site' } },
      yard,
    );
    expect(inches.ok && inches.value.things[0]?.points[1]?.x).toBeCloseTo(0.254, 12);
  });

  it('a table: the order, unless its headings or its comment give it', () => {
    const rows = '1,10,20,3,nail\n2,11,21,3,stake\n';
    expect(openQuestions(readSound(rows), {})).toEqual(['coordinates', 'unit', 'order']);
    expect(openQuestions(readSound(`# P,N,E,Z,D\n${rows}`), {})).toEqual(['coordinates', 'unit']);
    expect(
      readSound(`point;easting_m;northing_m;elevation;note\n${rows.replaceAll(',', ';')}`).says,
    ).toMatchObject({
      order: 'PENZD',
      unit: { name: 'm' },
    });
    expect(readSound('name\tlatitude\tlongitude\na\t45.6\t-31.2\n').says).toMatchObject({
      order: 'PNE',
      coordinates: { is: 'earth' },
    });
    expect(openQuestions(readSound('a,feet,feet\n1,2,3\n'), {})).toContain('order');
    expect(openQuestions(readSound('point,x,y\n1,2,3\n'), {})).toContain('order');
    expect(openQuestions(readSound(rows), { order: 'PNNZD' })).toContain('order');
    const yard = incomingSite(rearAlley().derived);
    const at = (order: string) => {
      const placed = placeIncoming(
        readSound(rows),
        { order, coordinates: { is: 'site' }, unit: { name: 'm', metres: 1 } },
        yard,
      );
      return placed.ok ? placed.value.things[0] : null;
    };
    expect(at('PNEZD')).toMatchObject({ points: [{ x: 20, y: 10 }], height: 3, name: 'nail' });
    expect(at('PENZD')).toMatchObject({ points: [{ x: 10, y: 20 }] });
    expect(at('-NE')).toMatchObject({ name: '', height: null });
    expect(at('PNE-Z')).toMatchObject({ height: null }); // `nail` is no height
  });

  it('a table of nothing but northing and easting, in that order', () => {
    const yard = incomingSite(rearAlley().derived);
    for (const [text, order] of [
      ['N,E\n10,20\n', undefined],
      ['10,20\n', 'NE'],
    ] as const) {
      const placed = placeIncoming(
        readSound(text),
        {
          coordinates: { is: 'site' },
          unit: { name: 'm', metres: 1 },
          ...(order === undefined ? {} : { order }),
        },
        yard,
      );
      expect(placed.ok && placed.value.things.map((t) => t.points)).toEqual([[{ x: 20, y: 10 }]]);
    }
  });

  it('GeoJSON that names another system, or has numbers that are no degrees', () => {
    const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::2272' } };
    const named = readSound(JSON.stringify({ type: 'Point', coordinates: [2_700_000, 250_000], crs }));
    expect(named.says.coordinates).toEqual({ is: 'named', name: 'urn:ogc:def:crs:EPSG::2272' });
    expect(openQuestions(named, {})).toEqual(['coordinates', 'unit']);
    expect(openQuestions(readSound(point(2_700_000, 250_000)), {})).toEqual(['coordinates', 'unit']);
    const earth = { type: 'name', properties: { name: 'urn:ogc:def:crs:OGC:1.3:CRS84' } };
    expect(
      openQuestions(readSound(JSON.stringify({ type: 'Point', coordinates: [1, 2], crs: earth })), {}),
    ).toEqual([]);
  });
});

describe('where it lies is told before anything is taken', () => {
  const { site, derived } = frontTerrace();
  const yard = incomingSite(derived);
  const { latitudeDeg, longitudeDeg } = site.frame.control[0] ?? { latitudeDeg: 0, longitudeDeg: 0 };
  const place = (text: string, answers: IncomingAnswers = {}) => {
    const placed = placeIncoming(readSound(text), answers, yard);
    if (!placed.ok) throw new Error(placed.code);
    return placed.value;
  };
  const codes = (text: string, answers: IncomingAnswers = {}) =>
    place(text, answers).findings.map((f) => f.code);

  it('a table without a row of two numbers is nowhere, and its rows are counted', () => {
    const placed = place('1,10.5,20\n2,11,21\n', { coordinates: { is: 'earth' }, order: 'PNZE' });
    expect(placed).toMatchObject({ things: [], distance: null, findings: [], canBeTaken: false });
    expect(placed.notes).toEqual([{ code: 'rows-left-out', count: 2 }]);
  });

  it.each([
    ['east for west', point(-longitudeDeg, latitudeDeg), 'wrong-hemisphere'],
    ['south for north', point(longitudeDeg, -latitudeDeg), 'wrong-hemisphere'],
    ['both', point(-longitudeDeg, -latitudeDeg), 'wrong-hemisphere'],
    ['latitude first', point(latitudeDeg, longitudeDeg), 'order-swapped'],
    ['latitude first in KML', placemark(`${latitudeDeg},${longitudeDeg}`), 'order-swapped'],
    ['another town', point(2.35, 48.85), 'too-far'],
  ])('%s', (_, text, code) => {
    const placed = place(text);
    expect(placed.findings).toMatchObject([{ code, severity: 'error' }]);
    expect(placed.canBeTaken).toBe(false);
    expect(placed.things).toEqual([]);
    expect(placed.counts.point).toBe(1);
    for (const finding of placed.findings) {
      const said = en.incomingFindingText(finding, site.units);
      expect(said.text).toMatch(/\d km from the site/);
    }
  });

  // by hand: a degree of the great circle is 111.2 km; from 45.6° north to 45.6° south on one meridian, 91.2° of it: 10,141 km
  it('how far off in thousands of kilometres', () => {
    const [finding] = place(point(longitudeDeg, -latitudeDeg)).findings;
    if (finding?.code !== 'wrong-hemisphere') return expect.fail(JSON.stringify(finding));
    expect(finding.metres / 1000).toBeGreaterThan(10_130);
    expect(finding.metres / 1000).toBeLessThan(10_150);
    expect(en.incomingFindingText(finding, site.units).text).toContain('10,140 km');
  });

  it('the other order, once chosen, is taken; a latitude of 100° is nowhere', () => {
    expect(place(point(latitudeDeg, longitudeDeg), { order: 'NE' }).canBeTaken).toBe(true);
    expect(codes(point(10, 100))).toContain('no-place');
    expect(place(point(10, 100)).canBeTaken).toBe(false);
  });

  it('a yard two kilometres off, a thing of ten kilometres, a thing of a hand', () => {
    expect(codes(point(longitudeDeg, latitudeDeg + 0.02))).toEqual(['far-away']);
    const line = (d: number) =>
      JSON.stringify({
        type: 'LineString',
        coordinates: [
          [longitudeDeg, latitudeDeg - d],
          [longitudeDeg, latitudeDeg + d],
        ],
      });
    expect(codes(line(0.05))).toEqual(['larger-than-a-yard']);
    const near = [0, 1e-7].map((d) => ({
      type: 'Feature',
      properties: {},
      geometry: { type: 'Point', coordinates: [longitudeDeg + d, latitudeDeg] },
    }));
    expect(codes(JSON.stringify({ type: 'FeatureCollection', features: near }))).toEqual([
      'smaller-than-a-yard',
    ]);
  });

  it('feet taken for metres in a grid, and a grid’s two coordinates swapped', () => {
    const grid = openGrid(utmSystem({ zone: 25, hemisphere: 'N' }));
    if (!grid.ok) return expect.fail(grid.code);
    const at = grid.value.projection.fromEarth({ latitudeDeg, longitudeDeg });
    if (!at.ok) return expect.fail(at.code);
    const metres = { name: 'm', metres: 1 } as const;
    const answers = { coordinates: { is: 'grid', system: grid.value.system }, unit: metres } as const;
    const row = (e: number, n: number) => `E,N\n${e},${n}\n`;
    expect(codes(row(at.value.x, at.value.y), answers)).toEqual([]);
    expect(codes(row(at.value.x / 0.3048, at.value.y / 0.3048), answers)).toEqual(['unit-suspected']);
    expect(codes(row(at.value.y, at.value.x), answers)).toEqual(['order-swapped']);
    const feet = { name: 'us-ft', metres: US_SURVEY_FOOT_M } as const;
    const inFeet = row(at.value.x / US_SURVEY_FOOT_M, at.value.y / US_SURVEY_FOOT_M);
    expect(codes(inFeet, { ...answers, unit: feet })).toEqual([]);
    // the wrong foot is 2 parts in a million: over 5,049 km of northing, 10 m
    const wrong = place(inFeet, { ...answers, unit: { name: 'ft', metres: 0.3048 } });
    const right = place(inFeet, { ...answers, unit: feet });
    const [a, b] = [wrong.things[0]?.points[0], right.things[0]?.points[0]];
    expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeCloseTo(10.2, 0);
  });

  it('nothing, for a site that is nowhere on the earth', () => {
    const nowhere = incomingSite(rearAlley().derived);
    expect(placeIncoming(readSound(point(1, 2)), {}, nowhere)).toEqual({
      ok: false,
      code: 'site-not-on-the-earth',
    });
    expect(typedSystem({ name: '', definition: '' }).ok).toBe(false);
  });
});

describe('damaged files', () => {
  const files = [
    JSON.stringify({
      type: 'FeatureCollection',
      features: [
        {
          type: 'Feature',
          properties: { name: 'a' },
          geometry: {
            type: 'Polygon',
            coordinates: [
              [
                [0, 0],
                [1, 0],
                [1, 1],
                [0, 0],
              ],
            ],
          },
        },
      ],
    }),
    kml(
      '<Folder><name>f</name><Placemark><name>p</name><LineString><coordinates>1,2 3,4</coordinates></LineString></Placemark></Folder>',
    ),
    dxfOf(
      [
        0,
        'POLYLINE',
        8,
        'a',
        66,
        1,
        70,
        1,
        0,
        'VERTEX',
        8,
        'a',
        10,
        0,
        20,
        0,
        42,
        1,
        0,
        'VERTEX',
        8,
        'a',
        10,
        1,
        20,
        0,
        0,
        'SEQEND',
        0,
        'ARC',
        8,
        'a',
        10,
        0,
        20,
        0,
        40,
        5,
        50,
        10,
        51,
        50,
      ],
      { insUnits: 6 },
    ),
    '# P,N,E,Z,D\n1,2,3,4,five\n6,7,8,9,ten\n',
  ];

  it('never throw, whatever is cut out of them or put in', { timeout: 60_000 }, () => {
    const yard = incomingSite(frontTerrace().derived);
    const answers = { coordinates: { is: 'site' }, unit: { name: 'm', metres: 1 }, order: 'PNEZD' } as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...files),
        fc.nat(2000),
        fc.nat(20),
        fc.constantFrom(
          '',
          '<',
          '"',
          '[',
          '0',
          '-',
          '\n',
          '\u0000',
          '1e400',
          '999\n',
          ',',
          '&amp;',
          '<![CDATA[',
        ),
        (file, from, cut, put) => {
          const at = from % file.length;
          const found = finishSteps(readIncoming(file.slice(0, at) + put + file.slice(at + cut)));
          if (found.ok) placeIncoming(found.value, answers, yard);
          else expect(en.incomingProblemText(found).text).toMatch(/\.$/);
        },
      ),
      { numRuns: 1500, seed: 7 },
    );
    expect(dxf(0, 'EOF')).toBe('0\nEOF\n');
  });
});

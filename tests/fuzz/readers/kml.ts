import { DOMParser, type Element as XmlElement } from '@xmldom/xmldom';
import { kmlMutators } from '../mutate/kml';
import { zipOf } from '../nodeZip';
import { bytesOf } from '../reader';
import { ownFile } from '../soundFiles';
import { decimalsIn, incomingReader } from './incoming';

const kml = (inside: string) =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>d</name>${inside}</Document></kml>\n`;
const placemark = (geometry: string, name = 'a') => `<Placemark><name>${name}</name>${geometry}</Placemark>`;
const ring = '<LinearRing><coordinates>-31,45 -31.001,45 -31.001,45.001 -31,45</coordinates></LinearRing>';
const polygon = `<Polygon><outerBoundaryIs>${ring}</outerBoundaryIs><innerBoundaryIs>${ring}</innerBoundaryIs></Polygon>`;
const line = '<LineString><coordinates>-31,45,0 -31.0001,45,1</coordinates></LineString>';
const point = '<Point><coordinates>-31,45,7.5</coordinates></Point>';
const small = [
  kml(placemark(point)),
  kml(`<Folder><name>f &amp; g</name>${placemark(line)}${placemark(polygon, '<![CDATA[b]]>')}</Folder>`),
  kml(placemark(`<MultiGeometry>${point}${line}${polygon}</MultiGeometry>`)),
  kml(
    `${placemark(point)}${placemark(`<MultiGeometry><Point></Point>${line}</MultiGeometry>`)}<NetworkLink><name>n</name></NetworkLink>${placemark('<Model></Model>')}${placemark('')}`,
  ),
];

export const reader = incomingReader({
  name: 'KML',
  format: 'kml',
  seeds: () => [
    ...small.map(bytesOf),
    ...small.slice(1, 3).map((text) =>
      zipOf(
        [
          ['doc.kml', bytesOf(text)],
          ['x.png', new Uint8Array(9)],
        ],
        true,
      ),
    ),
    ownFile('kml'),
  ],
  mutators: kmlMutators,
  count: thingsIn,
  numbers: (text) => (rootOf(text) === null ? null : decimalsIn(textsOf(text))),
});

/** Read by a parser that shares no code with the one of the reader; null for what only the other takes. */
function rootOf(text: string): XmlElement | null {
  try {
    const parser = new DOMParser({
      onError: (level, message) => {
        if (level !== 'warning') throw new Error(message);
      },
    });
    return parser.parseFromString(text.replace(/^\ufeff/, ''), 'text/xml').documentElement;
  } catch {
    return null;
  }
}

const local = (element: XmlElement) => element.nodeName.slice(element.nodeName.indexOf(':') + 1);

function elementsIn(root: XmlElement): readonly XmlElement[] {
  const found: XmlElement[] = [];
  const ahead = [root];
  for (let one = ahead.pop(); one !== undefined; one = ahead.pop()) {
    found.push(one);
    for (let child = one.firstChild; child !== null; child = child.nextSibling)
      if (child.nodeType === 1) ahead.push(child as XmlElement); // an element, by its type
  }
  return found;
}

function isInside(element: XmlElement, name: string): boolean {
  for (let at = element.parentNode; at !== null; at = at.parentNode)
    if (at.nodeType === 1 && local(at as XmlElement) === name) return true; // an element, by its type
  return false;
}

const ITSELF = new Set([
  'innerBoundaryIs',
  'NetworkLink',
  'GroundOverlay',
  'PhotoOverlay',
  'ScreenOverlay',
  'Model',
  'Track',
  'MultiTrack',
]);

const GEOMETRIES = new Set(['Point', 'LineString', 'LinearRing']);

/** Outside of holes: a list of coordinates, or a geometry that has none. */
function isThing(element: XmlElement): boolean {
  const name = local(element);
  if (isInside(element, 'innerBoundaryIs')) return false;
  return name === 'coordinates' || (GEOMETRIES.has(name) && !hasCoordinates(element));
}

function hasCoordinates(element: XmlElement): boolean {
  for (let child = element.firstChild; child !== null; child = child.nextSibling)
    if (child.nodeType === 1 && local(child as XmlElement) === 'coordinates') return true; // an element, by its type
  return false;
}

/**
 * One for each list of coordinates and each empty geometry outside of holes, each hole, each thing of another kind, and each placemark with none of
 * them.
 */
function thingsIn(text: string): number | null {
  const root = rootOf(text);
  if (root === null) return null;
  const all = elementsIn(root);
  const counted = all.filter((e) => ITSELF.has(local(e)) || isThing(e));
  const full = new Set<unknown>();
  for (const e of counted) for (let at = e.parentNode; at !== null; at = at.parentNode) full.add(at);
  return counted.length + all.filter((e) => local(e) === 'Placemark' && !full.has(e)).length;
}

function textsOf(text: string): string {
  const root = rootOf(text);
  return root === null
    ? ''
    : elementsIn(root)
        .filter((e) => local(e) === 'coordinates')
        .map((e) => e.textContent)
        .join(' ');
}

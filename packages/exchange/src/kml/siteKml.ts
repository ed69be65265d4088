import { ok, type Result, ringArea } from '@footmark/geometry';
import type { Derived, EarthPoint, RunsFit, Site } from '@footmark/site';
import type { Words } from '@footmark/words';
import { harmlessName } from '../harmless';
import { type EarthProblem, type EarthThing, mapDegrees, onEarth } from '../things/onEarth';
import { type SiteThing, siteThings } from '../things/siteThings';
import { element, escaped, textElement, xmlDocument } from '../xmlText';

type Style = { readonly colour: string; readonly width: number };

const PLAIN: Style = { colour: 'ff404040', width: 1.5 };

/** Colours are KML's aabbggrr: green for the sewer and its marks, as the uniform colour code has it (APWA / ANSI Z535.1). */
const STYLES: Partial<Record<SiteThing['layer'], Style>> = {
  marks: { colour: 'ff2f8f00', width: 2 },
  pipe: { colour: 'ff2f8f00', width: 4 },
  drain: { colour: 'ff2f8f00', width: 3 },
  trees: { colour: 'ff3c7d3c', width: 1.5 },
  land: { colour: 'ff7a5a2a', width: 2.5 },
};

/**
 * A site as KML 2.2 (OGC 07-147r2): a folder for each layer, a placemark for each thing, clamped to the ground. What is told of a thing is in
 * its extended data; descriptions, which viewers take for a page, are left out.
 */
export function siteKml(
  site: Site,
  derived: Derived,
  fit: RunsFit | null,
  words: Words,
): Result<string, EarthProblem> {
  const things = onEarth(siteThings({ site, derived, fit, words }), derived);
  if (!things.ok) return things;
  const layers = new Map<SiteThing['layer'], EarthThing[]>();
  for (const thing of things.value) {
    const known = layers.get(thing.layer);
    if (known === undefined) layers.set(thing.layer, [thing]);
    else known.push(thing);
  }
  const document = element('Document', [
    textElement('name', harmlessName(site.name)),
    ...[...layers.keys()].map(styleElement),
    ...[...layers.values()].map(folder),
  ]);
  return ok(xmlDocument(element('kml xmlns="http://www.opengis.net/kml/2.2"', [document])));
}

function styleElement(layer: SiteThing['layer']): string {
  const { colour, width } = STYLES[layer] ?? PLAIN;
  const faint = `30${colour.slice(2)}`;
  return element(`Style id="${layer}"`, [
    element('IconStyle', [textElement('color', colour)]),
    element('LineStyle', [textElement('color', colour), textElement('width', String(width))]),
    element('PolyStyle', [textElement('color', faint)]),
  ]);
}

function folder(things: readonly EarthThing[]): string {
  return element('Folder', [textElement('name', things[0]?.layerName ?? ''), ...things.map(placemark)]);
}

function placemark(thing: EarthThing): string {
  const data = Object.entries(thing.facts).map(([key, value]) =>
    element(`Data name="${escaped(key)}"`, [textElement('value', String(value))]),
  );
  return element(`Placemark id="${escaped(thing.id.replaceAll(':', '-'))}"`, [
    textElement('name', thing.name),
    textElement('styleUrl', `#${thing.layer}`),
    element('ExtendedData', data),
    geometry(thing),
  ]);
}

function geometry({ shape, points, places }: EarthThing): string {
  const coordinates = (of: readonly EarthPoint[]) => textElement('coordinates', of.map(tuple).join(' '));
  if (shape === 'point') return element('Point', [coordinates(places.slice(0, 1))]);
  if (shape === 'line') return element('LineString', [textElement('tessellate', '1'), coordinates(places)]);
  const round = ringArea(points) < 0 ? places.toReversed() : places;
  const ring = element('LinearRing', [coordinates([...round, ...round.slice(0, 1)])]);
  return element('Polygon', [textElement('tessellate', '1'), element('outerBoundaryIs', [ring])]);
}

function tuple({ longitudeDeg, latitudeDeg }: EarthPoint): string {
  return `${mapDegrees(longitudeDeg)},${mapDegrees(latitudeDeg)}`;
}

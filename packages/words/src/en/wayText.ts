import { boredLength, type Way, type WayFacts, type WayIs } from '@footmark/reroute';
import { formatDiameter, type Site, type Units } from '@footmark/site';
import { volumeText } from '../amountText';
import { angleText } from '../measureText';
import { atStart, inSentence } from '../named';
import type { WayRow } from '../said';
import { type Asked, askedBefore, bendCount, mostRooted, nearestOf, partsOf } from '../wayFacts';
import { coverAsked, type WayPipe, wayMaterials } from '../wayMaterials';
import { areaText, shareText } from './digMeasure';
import { materialNames } from './drainNames';
import { belowGroundText, dropText } from './heightText';
import { andList } from './listText';
import { sureText } from './sureText';
import { targetInText } from './thingName';

export const wayNames: Record<WayIs, string> = {
  new: 'New pipe in a trench',
  bored: 'New pipe, bored under the roots',
  repair: 'Old pipe dug up and laid anew',
  'in-place': 'Old pipe burst or lined from pits',
  drawn: 'As it is drawn',
};

/** What a way is in a line: how long, with how many bends, what of root zones it takes. */
export function wayText({ facts, bored }: Way, site: Site): string {
  const { units } = site;
  const bends = bendCount(facts);
  const most = mostRooted(facts);
  return [
    sureText(facts.length, units),
    bends === 0 ? 'no bend' : bends === 1 ? '1 bend' : `${bends} bends`,
    most === null ? 'no root zone' : rootsText(most, site),
    ...(bored.length === 0 ? [] : [`${sureText(boredLength(bored), units)} without a trench`]),
  ].join(', ');
}

/** The side alone may be what tells one way from another. */
function rootsText({ tree, share, side }: WayFacts['trees'][number], site: Site): string {
  const roots = `${shareText(share)} of the roots of ${targetInText({ kind: 'feature', id: tree }, site)}`;
  return side === 'left' || side === 'right' ? `${roots} on its ${side}` : roots;
}

/** What a way takes, row by row; the same rows in the same order for every way. */
export function wayRows(way: Way, site: Site): readonly WayRow[] {
  const { facts, bored, branches } = way;
  const { units } = site;
  const length = (metres: number) => sureText(metres, units);
  const feature = (id: string) => targetInText({ kind: 'feature', id }, site);
  return [
    { name: 'Length of pipe', text: length(facts.length) },
    { name: 'Bends', text: bendsText(facts) },
    { name: 'Materials', text: materialsText(way, site) },
    { name: 'Fall', text: fallText(facts, site) },
    { name: 'Least cover', text: coverText(facts, site) },
    { name: 'Trench', text: facts.dug.length === 0 ? 'none' : trenchText(facts, length) },
    { name: 'Without a trench', text: bored.length === 0 ? 'nothing' : length(boredLength(bored)) },
    {
      name: 'Ground dug out',
      text: facts.dug.volume === null ? 'not known' : volumeText(facts.dug.volume, units),
    },
    {
      name: 'Surfaces to restore',
      text: joined(
        [
          [facts.dug.paved, 'pavement'],
          [facts.dug.lawn, 'lawn'],
          [facts.dug.beyond, 'beyond the lot'],
        ],
        (squareMetres) => areaText(squareMetres, units),
      ),
    },
    {
      name: 'Root zones',
      text:
        facts.trees.length === 0
          ? 'none'
          : atStart(
              andList(
                facts.trees.map(
                  (t) => `${shareText(t.share)} of ${feature(t.tree)}, ${length(t.length)} of pipe`,
                ),
              ),
            ),
    },
    { name: 'Nearest', text: nearestText(facts, site) },
    {
      name: 'Other services crossed',
      text: facts.services.length === 0 ? 'none' : atStart(andList(facts.services.map(feature))),
    },
    {
      name: 'Land that is not the house’s own',
      text: joined(
        [
          [facts.public, 'public'],
          [facts.shared, 'shared'],
          [facts.others, 'of others'],
          [facts.unknownLand, 'whose is not known'],
        ],
        length,
      ),
    },
    {
      name: 'Branches to bring over',
      text:
        branches.length === 0
          ? 'none'
          : atStart(andList(branches.map((id) => targetInText({ kind: 'path', id }, site)))),
    },
    {
      name: 'Cleanouts to set',
      text:
        facts.cleanouts.missing.length === 0
          ? 'none'
          : `${facts.cleanouts.missing.length} of ${facts.cleanouts.asked} asked for, at ${andList(facts.cleanouts.missing.map(length))}`,
    },
    { name: 'To be asked', text: atStart(andList(askedBefore(facts, site).map((who) => asked[who]))) },
  ];
}

function bendsText({ bends }: WayFacts): string {
  if (bends.length === 0) return 'none';
  return bends.map(({ name, turn, count }) => `${count} × ${name ?? angleText(turn)}`).join(', ');
}

/** What has to be brought for it. */
function materialsText(way: Way, { units }: Site): string {
  const { pipe, pulled, bends, cleanouts } = wayMaterials(way);
  return [
    `${sureText(way.facts.length, units)} of ${pipeText(pipe, units)}`,
    ...(pulled === null ? [] : [`${sureText(pulled, units)} of it fit to be pulled`]),
    ...bends.map(({ name, turn, count }) => `${count} × ${name ?? angleText(turn)} bend`),
    ...(cleanouts === 0 ? [] : [cleanouts === 1 ? '1 cleanout' : `${cleanouts} cleanouts`]),
  ].join(', ');
}

function pipeText(pipe: WayPipe, { diameter }: Units): string {
  switch (pipe.is) {
    case 'anew':
      return 'new pipe';
    case 'in-place':
      return 'liner or pulled pipe';
    case 'not-said':
      return 'pipe';
    case 'laid': {
      const material = pipe.material === null ? '' : `${inSentence(materialNames[pipe.material])} `;
      return `${formatDiameter(pipe.diameter, diameter)} ${material}pipe`;
    }
  }
}

/** With what is asked for where that is more. */
function coverText(facts: WayFacts, { units }: Site): string {
  if (facts.cover === null) return 'not known';
  const asked = coverAsked(facts).map(({ by, metres }) =>
    by === 'rule' ? `${sureText(metres, units)} asked` : `frost goes ${sureText(metres, units)} deep`,
  );
  return [belowGroundText(facts.cover, units), ...asked].join(', ');
}

function fallText({ fall: { required, available } }: WayFacts, { units }: Site): string {
  const needs = `needs ${sureText(required, units)}`;
  if (available === null) return `${needs}, what it has is not known`;
  return `${needs}, ${available < 0 ? '' : 'has '}${dropText(available, units)}`;
}

function trenchText({ dug }: WayFacts, length: (metres: number) => string): string {
  const deep = dug.deepest === null ? 'depth not known' : `up to ${length(dug.deepest)} deep`;
  return `${length(dug.length)}, ${deep}`;
}

function joined(
  parts: readonly (readonly [number | null, string])[],
  print: (value: number) => string,
): string {
  const found = partsOf(parts);
  if (found === null) return 'not known';
  return found.length === 0 ? 'none' : found.map(([value, what]) => `${print(value)} ${what}`).join(', ');
}

function nearestText(facts: WayFacts, site: Site): string {
  const nearest = nearestOf(facts);
  if (nearest === null) return 'nothing';
  const { feature, distance, required, toCentre } = nearest;
  return [
    `${atStart(targetInText({ kind: 'feature', id: feature }, site))} ${sureText(distance, site.units)}`,
    ...(toCentre ? ['to its middle'] : []),
    ...(required === null || required === 0 ? [] : [`${sureText(required, site.units)} asked`]),
  ].join(', ');
}

const asked: Record<Asked, string> = {
  'one-call': 'the one-call centre',
  'street-owner': 'the street’s owner',
  'easement-holder': 'who holds the easement',
  neighbour: 'the neighbour',
  arborist: 'an arborist, and who protects the tree',
};

/** A thing that a route minds, by its name. */
export function mindedName(id: string, feature: string, site: Site): string {
  const name = targetInText({ kind: 'feature', id: feature }, site);
  if (id === 'beyond') return 'Land beyond the lot';
  return id.startsWith('roots/') ? `Roots of ${name}` : atStart(name);
}

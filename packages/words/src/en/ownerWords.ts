import type { Site } from '@footmark/site';
import type { OwnerGap, OwnerPlace, SheetWords } from '../sheetWords';
import { andList } from './listText';
import { ownerActionNames, ownerSeenNames } from './sheetNames';
import { sureText } from './sureText';
import { dateText } from './visitText';

type OwnerWords = Pick<SheetWords, Extract<keyof SheetWords, `owner${string}`>>;

/** What is said to an owner: no term of the trade without its meaning. */
export const ownerWords: OwnerWords = {
  ownerIntro: (site, things) => [introText(site), thingsText(things)],
  ownerSeenName: (kind) => ownerSeenNames[kind],
  ownerPlaceText: (place, units) =>
    [
      `${sureText(place.along, units)} of pipe from ${place.entry ?? 'where the camera went in'}`,
      depthText(place, units),
      nearText(place, units),
    ]
      .filter((t) => t !== '')
      .join(', ')
      .concat('.'),
  ownerNote: (note) => `Noted: ${note}`,
  ownerActionName: (action) => `${ownerActionNames[action]}.`,
  ownerAdvice: (action, labels) => `${ownerActionNames[action]}: ${andList(labels)}.`,
  ownerNoAdvice: () => 'Nothing was written down. Ask whoever ran the camera what they advise.',
  ownerNothingSeen: () => 'Nothing wrong was seen where the camera went.',
  ownerGapText: ({ pipe, length, whole, why }: OwnerGap, units) =>
    [
      whole
        ? `${pipe}: no camera went through it (${sureText(length, units)}).`
        : `${pipe}: ${sureText(length, units)} of it was not seen.`,
      ...why,
    ].join(' '),
  ownerAllSeen: () => 'The camera went through all of the pipe that is drawn here.',
  ownerZoneText: (half, units) =>
    `Places are worked out from a counter and a sketch. 95 of 100 times a thing lies within ${sureText(half, units)} of its mark, and closer at most of them.`,
  ownerDepthText: (known) =>
    known
      ? 'Depths are estimates until the pipe is dug up.'
      : 'How deep the pipe lies is not known everywhere. Depths are estimates until it is dug up.',
  ownerAlways: () => [
    'A camera sees the inside of the pipe on one day. What lies behind its wall, under water or past a blockage it does not see.',
    'Other lines in the ground may lie where this plan shows none. Whoever digs calls the one-call centre first (811 in the United States) and waits for its marks.',
  ],
};

function introText({ visits, runs }: Site): string {
  const days = visits.flatMap((v) => (v.date === undefined ? [] : [dateText(v.date)]));
  const on = days.length === 0 ? '' : ` on ${andList(days)}`;
  const times = runs.length === 1 ? 'once' : runs.length === 2 ? 'twice' : `${runs.length} times`;
  return runs.length === 0
    ? 'No camera has been through the drain yet.'
    : `A camera was pushed through the drain ${times}${on}.`;
}

function thingsText(things: number): string {
  if (things === 0) return 'It found nothing wrong where it went.';
  const count = things === 1 ? 'one thing' : `${things} things`;
  return `It found ${count} to know about. The letters and numbers are those on the plan.`;
}

function depthText({ depth }: OwnerPlace, units: Parameters<typeof sureText>[1]): string {
  return depth === null || depth <= 0 ? '' : `about ${sureText(depth, units)} down`;
}

function nearText({ near }: OwnerPlace, units: Parameters<typeof sureText>[1]): string {
  if (near === null) return '';
  return near.distance <= 0 ? `at ${near.thing}` : `${sureText(near.distance, units)} from ${near.thing}`;
}

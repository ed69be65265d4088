import { stampSite, viewSite } from '@footmark/merge';
import { newSite, SITE_VERSION } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { documentOf, siteOfDocument, stampedOf } from './teamDocument';

const site = newSite({
  id: 's1',
  name: 'Yard',
  createdAt: '2026-01-02T03:04:05Z',
  units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
});
const state = { site, others: [{ place: ['name'], other: 'Front yard' }], binnedAt: 5 };
const stamped = stampSite(null, state, { by: 'w1' });
const document = documentOf(stamped);
const name = { place: ['name'], is: 'thing' };

describe('the document of a site', () => {
  it('gives the state back, and is the same text whatever the order of its fields was', () => {
    const back = stampedOf(document);
    expect(back).toEqual(stamped);
    expect(back && viewSite(back)).toMatchObject(state);
    const turned = Object.fromEntries(Object.entries(site).reverse()) as typeof site;
    const again = stampSite(null, { ...state, site: turned }, { by: 'w1' });
    expect(JSON.stringify(documentOf(again))).toBe(JSON.stringify(document));
  });

  it('is told from others by its id', () => {
    expect(siteOfDocument('site:s1')).toBe('s1');
    expect(siteOfDocument('_design/views')).toBeNull();
  });

  const withThing = (thing: unknown) => ({ things: [...document.things, thing] });
  it.each<readonly [string, object]>([
    ['another kind of document', { is: 'note' }],
    ['a site under another id', { _id: 'site:s2' }],
    ['of a newer version of the file', { fixed: { ...document.fixed, version: SITE_VERSION + 1 } }],
    ['without what makes it this site', { fixed: null }],
    ['without things', { things: [] }],
    ['no list of things', { things: { length: 1 } }],
    ['with a count that is none', { seen: { w1: -1 } }],
    ['with a thing at no place', withThing({ ...name, place: 'name', values: [{ by: 'w', n: 1, is: 'x' }] })],
    ['with a place too deep', withThing({ ...name, place: [...'abcde'], values: [{ by: 'w', n: 1 }] })],
    ['with a thing of no value', withThing({ ...name, place: ['note'], values: [] })],
    ['with a value of nobody', withThing({ ...name, place: ['note'], values: [{ n: 1, is: 'x' }] })],
  ])('is not opened when it is %s', (_, change) => {
    expect(stampedOf({ ...document, ...change })).toBeNull();
  });

  it('lets a value wait that no file may have', () => {
    const seen = { ...document.seen, w2: 9 };
    const reach = document.things.find(({ place }) => place[0] === 'entryReach');
    const bad = { by: 'w2', n: 9, is: -1, was: 2 };
    const things = document.things.map((t) => (t === reach ? { ...t, values: [bad] } : t));
    const opened = stampedOf({ ...document, seen, things });
    const view = opened && viewSite(opened);
    expect(view?.site.entryReach).toBe(2);
    expect(view?.others).toContainEqual({ place: ['entryReach'], other: -1 });
  });
});

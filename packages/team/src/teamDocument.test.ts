import { newSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { documentOf, siteOfDocument, stateOfDocument } from './teamDocument';

const site = newSite({
  id: 's1',
  name: 'Yard',
  createdAt: '2026-01-02T03:04:05Z',
  units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
});
const state = { site, others: [{ place: ['name'], other: 'Front yard' }], binnedAt: null };
const document = documentOf(state);

describe('the document of a site', () => {
  it('gives the state back, and is the same text whatever the order of its fields was', () => {
    expect(stateOfDocument(document)).toEqual(state);
    const turned = Object.fromEntries(Object.entries(site).reverse());
    expect(JSON.stringify(documentOf({ ...state, site: turned as typeof site }))).toBe(
      JSON.stringify(document),
    );
  });

  it('is told from others by its id', () => {
    expect(siteOfDocument('site:s1')).toBe('s1');
    expect(siteOfDocument('_design/views')).toBeNull();
  });

  it.each([
    ['another kind of document', { is: 'note' }],
    ['a site under another id', { _id: 'site:s2' }],
    ['a newer version of the file', { site: { ...site, version: 99 } }],
    ['a value that no file may have', { site: { ...site, entryReach: -1 } }],
    ['a bin without a time', { binnedAt: 'yesterday' }],
    ['versions that are none', { others: [{ place: 'name', other: 1 }] }],
    ['a place that is too deep', { others: [{ place: ['a', 'b', 'c', 'd', 'e'], other: 1 }] }],
    ['no versions at all', { others: null }],
  ])('is not opened when it is %s', (_, change) => {
    expect(stateOfDocument({ ...document, ...change })).toBeNull();
  });
});

import { forLink, leastChoice } from '@footmark/link';
import { derive, openSiteValue, type Site, standingFit } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { fullSite, sampleSite } from './samples';

const everything = { address: true, notes: true, coordinates: true };

/** All texts in a value. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** A site in which every text that a person could have written says so, with a word by which it is found again. */
function told(): Site {
  const site = fullSite();
  const [run] = site.runs;
  const [reading] = run?.readings ?? [];
  const [corner] = site.features.filter((f) => f.kind === 'building');
  if (run === undefined || reading === undefined || corner === undefined)
    throw new Error('the site has too little in it');
  const opened = openSiteValue({
    ...site,
    address: 'secret address',
    note: 'secret note',
    visits: site.visits.map((v) => ({ ...v, note: 'secret note' })),
    runs: site.runs.map((r) => ({
      ...r,
      note: 'secret note',
      readings: r.readings.map((g) => ({ ...g, note: 'secret note', photo: 'secret-photo' })),
    })),
    features: [
      ...site.features,
      {
        id: 'seen-here',
        kind: 'photo-point',
        name: 'Gate',
        vertices: [{ id: 'a', spot: { by: 'finger', x: 1 / 3, y: -1e-9 } }],
        fields: { photo: 'secret-photo', text: 'secret note' },
      },
    ],
    underlays: [
      {
        id: 'u1',
        name: 'secret picture',
        file: 'secret-photo',
        widthPx: 10,
        heightPx: 10,
        fit: { by: 'finger', middle: { x: 0, y: 0 }, metresPerPixel: 1, upAzimuth: 0 },
        opacity: 1,
        shown: true,
        locked: false,
      },
    ],
    rules: {
      ...site.rules,
      changed: [{ rule: 'nearby', value: 1, who: 'secret note', why: 'secret note' }],
    },
    digging: {
      ...site.digging,
      digs: [
        { is: 'pit', id: 'd1', at: { run: run.id, reading: reading.id }, name: '', note: 'secret note' },
      ],
      notes: [{ id: 'n1', at: '2026-04-14T13:05:00Z', text: 'secret note' }],
    },
    asFound: [
      {
        id: 'w1',
        about: { is: 'mark', run: run.id, reading: reading.id },
        state: 'found',
        by: 'secret note',
        at: '2026-04-15T09:30:00-05:00',
        where: { by: 'paint', along: 0.3, right: 0 },
        note: 'secret note',
        photos: ['secret-photo'],
      },
    ],
    frame: {
      north: { by: 'control' },
      control: [
        [45.1234567, 'c1'],
        [45.1244567, 'c2'],
      ].map(([latitudeDeg, id], i) => ({
        id,
        point: { of: corner.id, at: corner.vertices[i]?.id },
        latitudeDeg,
        longitudeDeg: -31.7654321,
        accuracy: 1,
        source: 'typed',
      })),
    },
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

describe('what goes along', () => {
  const site = told();

  it('is nothing that people wrote, no address, no picture and no place on the earth, unless it is chosen', () => {
    const sent = forLink(site, leastChoice);
    expect(openSiteValue(sent)).toMatchObject({ ok: true });
    expect(textsIn(sent).filter((text) => text.includes('secret'))).toEqual([]);
    expect(JSON.stringify(sent)).not.toMatch(/45\.12|31\.76/);
  });

  it('is each of these when it is chosen, and never a picture', () => {
    const secrets = (choice: Partial<typeof everything>) =>
      new Set(
        textsIn(forLink(site, { ...leastChoice, ...choice })).filter((text) => text.includes('secret')),
      );
    expect(secrets({ address: true })).toEqual(new Set(['secret address']));
    expect(secrets({ notes: true })).toEqual(new Set(['secret note']));
    expect(forLink(site, { ...leastChoice, coordinates: true }).frame).toEqual(site.frame);
    expect(secrets(everything)).toEqual(new Set(['secret address', 'secret note']));
  });

  it('keeps north where the control points had it', () => {
    const sent = forLink(site, leastChoice);
    expect(sent.frame.north.by).toBe('typed');
    expect(derive(sent).frame.northAzimuth).toBeCloseTo(derive(site).frame.northAzimuth, 12);
  });

  it('keeps a fit that stands standing', () => {
    const fitted = fullSite();
    expect(fitted.fit).toBeDefined();
    const sent = forLink(fitted, leastChoice);
    expect(standingFit(sent) === null).toBe(standingFit(fitted) === null);
  });

  it('is, of a place by eye, a tenth of a millimetre, and of a measured one all', () => {
    const spots = (of: Site) => of.features.flatMap((f) => f.vertices.map((v) => v.spot));
    const [before, after] = [spots(site), spots(forLink(site, everything))];
    expect(after).toHaveLength(before.length);
    for (const [i, spot] of after.entries()) {
      const was = before[i];
      if (spot.by !== 'finger' || was?.by !== 'finger') expect(spot).toEqual(was);
      else expect(Math.hypot(spot.x - was.x, spot.y - was.y)).toBeLessThan(1e-4);
    }
    expect(after.at(-1)).toStrictEqual({ by: 'finger', x: 0.3333, y: 0 });
  });

  it('leaves the site that was sent as it is', () => {
    const before = sampleSite('rear-alley');
    const copy = structuredClone(before);
    forLink(before, leastChoice);
    expect(before).toStrictEqual(copy);
  });
});

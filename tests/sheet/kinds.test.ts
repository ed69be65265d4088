import { type Item, sheetPdf } from '@footmark/sheet';
import { setOutsOf } from '@footmark/site';
import { es, lengthText } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { readPdf, textOn } from './readPdf';
import { FONTS, SLOW, sample, sheet, sourceOf } from './sheets';

// What each kind of sheet holds, taken out of its PDF by a reader that is not ours (pdfjs-dist).

async function textsOf(source: ReturnType<typeof sourceOf>, kind: Parameters<typeof sheet>[1]) {
  const pages = await readPdf(sheetPdf(sheet(source, kind), FONTS));
  return pages.map(textOn).join(' ');
}

/** The sample with its lateral as a pipe that is only planned. */
function planned() {
  const site = sample('rear-alley');
  return sourceOf({
    ...site,
    paths: site.paths.map((p) => (p.id === 'p1' ? { ...p, state: 'proposed' as const } : p)),
  });
}

describe('a sheet of a new drain', SLOW, () => {
  const source = planned();
  const text = textsOf(source, { kind: 'reroute' });
  const setOuts = setOutsOf(source.site, source.derived);

  it('has every point that sets the pipe out, with its tapes', async () => {
    const said = await text;
    const points = setOuts.flatMap((s) => s.points);
    expect(points.length).toBeGreaterThan(4);
    for (const { label, ties, station } of points) {
      expect(said).toContain(label);
      expect(said).toContain(lengthText(station, source.site.units));
      for (const tie of ties?.pair ?? []) expect(said).toContain(lengthText(tie.distance, source.site.units));
    }
  });

  it('lists the pipe by size and material, its bends by name, its fall and its cover', async () => {
    const said = await text;
    expect(said).toMatch(/Pipe, 4″ clay \d+\.\d ft/);
    expect(said).toMatch(/1\/8 bend, 45° \d/);
    for (const row of ['Fall', 'Least cover', 'Cleanouts to set', 'To be asked']) expect(said).toContain(row);
  });

  it('shows it in the legend as on the plan: white, with dark dashes along its middle', () => {
    const [first] = sheet(source, { kind: 'reroute' }).pages;
    const items = first?.items ?? [];
    const at = items.findIndex((i) => i.is === 'text' && i.text === 'Drain, proposed');
    const sample_ = items.slice(0, at).findLast((i) => i.is === 'window');
    const pens = sample_?.items.flatMap((i) => (i.is === 'lines' && i.pen !== undefined ? [i.pen] : []));
    expect(pens?.map((pen) => pen.colour)).toEqual(['#ffffff', '#14181c']);
    expect(pens?.map((pen) => pen.dash !== undefined)).toEqual([false, true]);
  });

  it('says so where there is no new drain', async () => {
    const said = await textsOf(sourceOf(sample('rear-alley')), { kind: 'reroute' });
    expect(said).not.toContain('Setting out');
    expect(said).toContain('New drain, to be set out');
  });
});

describe('a sheet of a drain as built', SLOW, () => {
  it('tells of the pipes that were laid, and where there are none of those that were there', async () => {
    const site = sample('front-terrace');
    const before = await textsOf(sourceOf(site), { kind: 'as-built' });
    expect(before).toContain('GD-1');
    expect(before).toContain('L-1');
    const paths = site.paths.map((p) => (p.id === 'p1' ? { ...p, state: 'as-built' as const } : p));
    const after = await textsOf(sourceOf({ ...site, paths }), { kind: 'as-built' });
    expect(after).toContain('L-1');
    expect(after).not.toContain('GD-1');
  });
});

describe('a sheet for the owner', SLOW, () => {
  const source = sourceOf(sample('rear-alley'));
  const text = textsOf(source, { kind: 'findings' });

  it('tells of all that is wrong, where it is, what is advised and what was not seen', async () => {
    const said = await text;
    for (const { label, reading } of source.derived.marks)
      if (['roots', 'sag', 'crack', 'offset-joint'].includes(reading.seen)) expect(said).toContain(label);
    expect(said).toContain('64.8 ft of pipe from Basement floor cleanout');
    expect(said).toContain('Kitchen branch: no camera went through it');
    expect(said).toContain('Clean the pipe, then look again');
    expect(said).toContain('811');
  });

  it('is one page or two, without the trade’s terms', async () => {
    expect(sheet(source, { kind: 'findings' }).pages.length).toBeLessThanOrEqual(2);
    expect(await text).not.toMatch(
      /\b(invert|station|sonde|lateral line|o’clock|offset joint|infiltration)\b/i,
    );
  });

  it('is as short in Spanish, and as plain', async () => {
    const spanish = sourceOf(source.site, es);
    expect(sheet(spanish, { kind: 'findings' }).pages.length).toBeLessThanOrEqual(2);
    const said = await textsOf(spanish, { kind: 'findings' });
    expect(said).toContain('A 64.8 ft de tubería desde donde entró la cámara (Basement floor cleanout)');
    expect(said).toContain('Limpiar la tubería y volver a revisarla');
    expect(said).not.toMatch(
      /(?<!\p{L})(?:fondo|cota|lomo|estación|sonda|entronque|reloj|junta desplazada|hundimiento|infiltración|encamisar)(?!\p{L})/iu,
    );
  });

  it('says nothing of a camera that never went in', async () => {
    const site = sample('rear-alley');
    const said = await textsOf(sourceOf({ ...site, runs: [], pairs: [] }), { kind: 'findings' });
    expect(said).toContain('No camera has been through the drain yet');
    expect(said).toContain('Nothing wrong was seen');
  });
});

describe('a square code', SLOW, () => {
  const SIZE = 25;
  const modules = Array.from({ length: SIZE }, (_, r) =>
    Array.from({ length: SIZE }, (_, c) => (r * 7 + c * 11 + ((r * c) % 5)) % 3 === 0),
  );

  it('has each of its modules in its place, large enough to be read, with room about it', () => {
    const made = sheet(sourceOf(sample('rear-alley')), { qr: [{ modules, caption: 'Opens the sketch' }] });
    const bars = made.pages
      .flatMap((p) => p.items)
      .flatMap((i: Item) => (i.is === 'lines' && i.tint?.colour === '#000000' ? i.lines : []));
    const xs = bars.flatMap((b) => b.map((p) => p.x));
    const ys = bars.flatMap((b) => b.map((p) => p.y));
    const [left, top] = [Math.min(...xs), Math.min(...ys)];
    const module = Math.min(...bars.map((b) => (b[2]?.y ?? 0) - (b[0]?.y ?? 0)));
    expect(module).toBeGreaterThanOrEqual(0.4);
    const isDark = (r: number, c: number) => {
      const at = { x: left + (c + 0.5) * module, y: top + (r + 0.5) * module };
      return bars.some(
        ([a, , b]) =>
          a !== undefined && b !== undefined && a.x < at.x && at.x < b.x && a.y < at.y && at.y < b.y,
      );
    };
    expect(modules.map((row, r) => row.map((_, c) => isDark(r, c)))).toEqual(modules);
  });
});

describe('what comes nearer than asked', SLOW, () => {
  it('is listed from the worst on, and what has no room in the list is counted', async () => {
    const site = sample('rear-alley');
    const crossing = (i: number) => ({
      id: `gas${i}`,
      kind: 'service' as const,
      name: `Gas ${i}`,
      vertices: [3, 12].map((x, v) => ({
        id: 'ab'[v] ?? '',
        spot: { by: 'coordinates' as const, x, y: 16 + 0.8 * i, sigma: 0.02 },
      })),
      fields: { carries: 'gas' as const },
    });
    const crowded = sourceOf({
      ...site,
      features: [...site.features, ...Array.from({ length: 20 }, (_, i) => crossing(i))],
    });
    const near = crowded.inTheWay.clearances.filter(
      (c) => c.verdict !== null && c.verdict !== 'meets' && c.verdict !== 'serves',
    );
    expect(near.length).toBeGreaterThan(11);
    const said = await textsOf(crowded, { kind: 'mark-out' });
    expect(said).toContain(`${near.length - 10} more that come nearer than asked are left out here.`);
    expect(await textsOf({ ...crowded, words: es }, { kind: 'mark-out' })).toContain(
      `Aquí se dejan fuera ${near.length - 10} más que quedan más cerca de lo exigido.`,
    );
    expect(await textsOf(sourceOf(site), { kind: 'mark-out' })).not.toContain('more that come nearer');
  });
});

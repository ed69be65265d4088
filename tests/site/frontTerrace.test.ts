import { readFileSync } from 'node:fs';
import { derive, openSite, type Site, stemDiameterOf, writeSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';

const text = readFileSync(new URL('../../packages/site/samples/front-terrace.json', import.meta.url), 'utf8');

function opened(): Site {
  const result = openSite(text);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.site;
}

describe('the front-terrace sample', () => {
  const site = opened();
  const derived = derive(site);
  const feature = (name: string) => {
    const found = [...derived.features.values()].find((f) => f.feature.name === name);
    if (found === undefined) throw new Error(`no ${name}`);
    return found;
  };

  it('opens, and is written back to the letter', () => {
    expect(writeSite(site)).toBe(text);
  });

  it('derives without an error', () => {
    expect(derived.findings.map((f) => f.severity)).not.toContain('error');
  });

  it('shows every way to place a point', () => {
    const ways = new Set([...site.features, ...site.paths].flatMap((o) => o.vertices.map((v) => v.spot.by)));
    expect([...ways].sort()).toEqual(
      [
        'arc',
        'at',
        'bearing',
        'between',
        'coordinates',
        'course',
        'finger',
        'offset',
        'tapes',
        'turn',
      ].sort(),
    );
  });

  it('has a balanced boundary of courses and an arc that closes to about 1 in 4,000', () => {
    const { closure, sweeps } = feature('Lot line');
    expect(closure?.balanced).toBe(true);
    expect(closure?.ratio).toBeGreaterThan(3000);
    expect(closure?.ratio).toBeLessThan(5000);
    expect(sweeps.filter((s) => s !== 0)).toHaveLength(1);
  });

  it('has its easement along the boundary, arc on arc', () => {
    const [lot, strip] = [feature('Lot line'), feature('Drain strip')];
    expect(strip.points[0]).toBe(lot.points[2]);
    expect(strip.sweeps.filter((s) => s !== 0)).toHaveLength(1);
    expect(strip.closure?.length).toBeLessThan(0.01);
  });

  it('knows north from two control points, whose residuals are small', () => {
    expect(derived.frame).toMatchObject({ known: true, by: 'control' });
    expect(derived.frame.residuals.size).toBe(2);
    for (const v of derived.frame.residuals.values()) expect(Math.hypot(v.x, v.y)).toBeLessThan(0.02);
  });

  it('has a protected tree by three tapes that agree, and one of several stems', () => {
    const lime = feature('Lime').feature;
    expect(lime.kind === 'tree' && lime.fields.protected).toBe(true);
    expect(derived.points.get(`${lime.id}/a`)?.tapeResiduals).toHaveLength(3);
    const hazel = feature('Hazel').feature;
    expect(hazel.kind === 'tree' && stemDiameterOf(hazel)).toBeCloseTo(Math.hypot(0.06, 0.07, 0.09), 12);
  });

  it('places every mark of its run from the rim of the chamber, with ties', () => {
    expect(derived.marks).toHaveLength(8);
    for (const mark of derived.marks) expect(mark.place?.ties, mark.label).toBeTruthy();
    expect(site.runs[0]?.zero).toMatchObject({ at: 'rim', counter: 0 });
  });
});

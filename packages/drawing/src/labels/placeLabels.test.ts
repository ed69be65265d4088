import { readFileSync } from 'node:fs';
import { distance } from '@footmark/geometry';
import { derive, openSite } from '@footmark/site';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draw } from '../draw';
import type { Label } from '../label';
import { type Box, boxesOverlap, discMeetsBox, segmentMeetsBox } from './box';
import { LONGEST_LEADER_MM } from './candidates';
import { labelObstacles } from './labelObstacles';
import type { MeasureText, Obstacle, PlacedLabel } from './placedLabel';
import { placeLabels } from './placeLabels';

const measureText: MeasureText = (text, height) => 0.75 * height * text.length;
const MM_PER_METRE = 10;
const setting = { mmPerMetre: MM_PER_METRE, measureText };

function label(id: string, x: number, y: number, more: Partial<Label> = {}): Label {
  return {
    id,
    text: `text ${id}`,
    at: { x, y },
    height: 2.2,
    ink: 'ink',
    weight: 'regular',
    priority: 1,
    seat: 'around',
    clear: 1,
    whenCrowded: 'leader',
    ...more,
  };
}

function boxOf(placed: PlacedLabel, mmPerMetre: number): Box {
  return {
    x: placed.at.x * mmPerMetre,
    y: placed.at.y * mmPerMetre,
    ux: Math.sin(placed.azimuth),
    uy: Math.cos(placed.azimuth),
    // less than a hundredth of a millimetre is rounding, not overlap
    halfW: placed.widthMm / 2 - 0.005,
    halfH: placed.heightMm / 2 - 0.005,
  };
}

/** What may never be: texts on texts, on discs, on leaders, and leaders that are too long. */
function faultsOf(
  placed: readonly PlacedLabel[],
  obstacles: readonly Obstacle[],
  mm: number,
): readonly string[] {
  const faults: string[] = [];
  const boxes = placed.map((p) => boxOf(p, mm));
  placed.forEach((p, i) => {
    const box = boxes[i] as Box; // one for each
    boxes.slice(i + 1).forEach((other, k) => {
      if (boxesOverlap(box, other)) faults.push(`${p.label.id} on ${placed[i + 1 + k]?.label.id}`);
    });
    for (const o of obstacles) {
      if (o.kind === 'disc' && discMeetsBox(o.at.x * mm, o.at.y * mm, o.radiusMm - 0.01, box)) {
        faults.push(`${p.label.id} on a disc`);
      }
    }
    for (const { label: of, leader } of placed) {
      if (leader === undefined) continue;
      const [a, b] = leader;
      if (of.id === p.label.id && distance(a, b) * mm > LONGEST_LEADER_MM + 0.01)
        faults.push(`${of.id}: long leader`);
      if (of.id !== p.label.id && segmentMeetsBox(a.x * mm, a.y * mm, b.x * mm, b.y * mm, box)) {
        faults.push(`leader of ${of.id} through ${p.label.id}`);
      }
    }
  });
  return faults;
}

const coordinate = fc.double({ min: 0, max: 30, noNaN: true });
const randomLabels = fc
  .array(
    fc.record({
      x: coordinate,
      y: coordinate,
      priority: fc.integer({ min: 0, max: 5 }),
      azimuth: fc.double({ min: 0, max: 6.28, noNaN: true }),
      seat: fc.constantFrom('around', 'centre', 'along', 'on-line'),
      whenCrowded: fc.constantFrom('leader', 'leave-out'),
    }),
    { maxLength: 120 },
  )
  .map((all) =>
    all.map(({ x, y, azimuth, ...rest }, i) =>
      label(`l${i}`, x, y, { ...rest, along: { azimuth, span: 6 } }),
    ),
  );
const randomObstacles = fc.array(
  fc.oneof(
    fc
      .record({ x: coordinate, y: coordinate, radiusMm: fc.double({ min: 0.5, max: 4, noNaN: true }) })
      .map(({ x, y, radiusMm }): Obstacle => ({ kind: 'disc', at: { x, y }, radiusMm })),
    fc
      .record({ x: coordinate, y: coordinate, u: coordinate, v: coordinate })
      .map(({ x, y, u, v }): Obstacle => ({ kind: 'stroke', from: { x, y }, to: { x: u, y: v } })),
  ),
  { maxLength: 60 },
);

describe('placeLabels', () => {
  it('lets no text overlap a text, a disc or a leader, and no leader grow long, whatever is asked', () => {
    fc.assert(
      fc.property(randomLabels, randomObstacles, (labels, obstacles) => {
        expect(faultsOf(placeLabels(labels, obstacles, setting), obstacles, MM_PER_METRE)).toEqual([]);
      }),
      { seed: 20260412, numRuns: 120 },
    );
  });

  it.each([50, 120, 240, 500])('lets nothing overlap on the sample site at 1:%i', (scaleDenominator) => {
    const file = new URL('../../../site/samples/rear-alley.json', import.meta.url);
    const opened = openSite(readFileSync(file, 'utf8'));
    if (!opened.ok) throw new Error('the sample does not open');
    const drawing = draw(opened.site, derive(opened.site));
    const mm = 1000 / scaleDenominator;
    const obstacles = labelObstacles(drawing, mm);
    const labels = drawing.layers.flatMap((l) => l.labels);
    const placed = placeLabels(labels, obstacles, { mmPerMetre: mm, measureText });
    expect(faultsOf(placed, obstacles, mm)).toEqual([]);
    const missing = labels.filter(
      (l) => l.target?.kind === 'reading' && !placed.some((p) => p.label.id === l.id),
    );
    if (scaleDenominator <= 240) expect(missing.map((l) => l.text)).toEqual([]);
  });

  it('gives the place that two want to the one of higher priority', () => {
    const [low, high] = [label('a', 0, 0), label('b', 0, 0, { priority: 2 })];
    const alone = placeLabels([high], [], setting)[0];
    const both = placeLabels([low, high], [], setting);
    expect(both.find((p) => p.label.id === 'b')?.at).toEqual(alone?.at);
    expect(both.find((p) => p.label.id === 'a')?.at).not.toEqual(alone?.at);
  });

  it('leaves out what may be left out, and moves the rest aside with a leader', () => {
    const crowd = Array.from({ length: 4 }, (_, i) =>
      label(`c${i}`, 0, 0, { priority: 9, text: 'a long text' }),
    );
    const placed = placeLabels(
      [...crowd, label('dimension', 0, 0, { whenCrowded: 'leave-out' }), label('name', 0, 0)],
      [],
      setting,
    );
    expect(placed.map((p) => p.label.id)).not.toContain('dimension');
    expect(placed.find((p) => p.label.id === 'name')?.leader).toBeDefined();
  });

  it('says the same thing again only so far apart', () => {
    const letters = [0, 1, 2, 3, 4].map((x) =>
      label(`s${x}`, x, 0, { text: 'SS', repeat: { group: 'pipe', apartMm: 25 } }),
    );
    expect(placeLabels(letters, [], setting).map((p) => p.label.id)).toEqual(['s0', 's3']);
  });

  it('writes along a line so that it reads from below or from the right', () => {
    for (let degrees = 0; degrees < 360; degrees += 5) {
      const azimuth = (degrees * Math.PI) / 180;
      const [placed] = placeLabels(
        [label('l', 0, 0, { seat: 'along', along: { azimuth, span: 20 } })],
        [],
        setting,
      );
      expect(placed?.azimuth).toBeGreaterThan(-0.2);
      expect(placed?.azimuth).toBeLessThan(Math.PI - 0.15);
      expect(Math.abs(Math.sin((placed?.azimuth ?? 1) - azimuth))).toBeLessThan(1e-9);
    }
  });

  it('does not write along a line that is shorter than the text', () => {
    const short = label('l', 0, 0, {
      seat: 'along',
      along: { azimuth: 1, span: 0.5 },
      whenCrowded: 'leave-out',
    });
    expect(placeLabels([short], [], setting)).toEqual([]);
  });

  it('is steady: the order of the list and the place of the whole site change nothing', () => {
    fc.assert(
      fc.property(randomLabels, randomObstacles, coordinate, (labels, obstacles, by) => {
        const shift = { x: by * 37 - 400, y: 911 - by * 13 };
        const moved = (p: { x: number; y: number }) => ({ x: p.x + shift.x, y: p.y + shift.y });
        const before = placeLabels(labels, obstacles, setting);
        const after = placeLabels(
          labels.map((l) => ({ ...l, at: moved(l.at) })).reverse(),
          obstacles.map((o) =>
            o.kind === 'disc' ? { ...o, at: moved(o.at) } : { ...o, from: moved(o.from), to: moved(o.to) },
          ),
          setting,
        );
        expect(after.map((p) => p.label.id)).toEqual(before.map((p) => p.label.id));
        after.forEach((p, i) => {
          expect(distance(p.at, moved(before[i]?.at ?? { x: Number.NaN, y: 0 }))).toBeLessThan(1e-6);
        });
      }),
      { seed: 20260412, numRuns: 40 },
    );
  });
});

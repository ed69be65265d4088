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
import { HIDDEN_MM, placeLabels } from './placeLabels';

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
    // a mark that is not named lies, at this scale, under one that is
    const marks = labels.filter((l) => l.target?.kind === 'reading');
    const named = marks.filter((l) => placed.some((p) => p.label.id === l.id));
    const lost = marks.filter((l) => named.every((n) => distance(n.at, l.at) * mm >= HIDDEN_MM));
    if (scaleDenominator <= 240) expect(lost.map((l) => l.text)).toEqual([]);
    if (scaleDenominator === 50) expect(named).toHaveLength(marks.length);
  });

  it('gives the place that two want to the one of higher priority', () => {
    const [low, high] = [label('a', 0, 0), label('b', 0, 0, { priority: 2 })];
    const alone = placeLabels([high], [], setting)[0];
    const both = placeLabels([low, high], [], setting);
    expect(both.find((p) => p.label.id === 'b')?.at).toEqual(alone?.at);
    expect(both.find((p) => p.label.id === 'a')?.at).not.toEqual(alone?.at);
  });

  it('leaves out what may be left out, and moves the rest aside with a leader', () => {
    // a disc over all places beside the anchors
    const disc: Obstacle = { kind: 'disc', at: { x: 0, y: 0 }, radiusMm: 6 };
    const wanted = [
      label('name', 0, 0, { priority: 2 }),
      label('dimension', 0, 0, { whenCrowded: 'leave-out' }),
      label('hidden', 0.1, 0),
    ];
    const placed = placeLabels(wanted, [disc], setting);
    expect(placed.map((p) => p.label.id)).not.toContain('dimension');
    expect(placed.find((p) => p.label.id === 'name')?.leader).toBeDefined();
    // its symbol lies under that of the name: no leader goes to it
    expect(placed.map((p) => p.label.id)).not.toContain('hidden');
  });

  it('takes the brief text where the full one finds no place, and a leader only after that', () => {
    // a text of 28 mm between two columns of discs that leave 12 mm
    const walls = Array.from({ length: 41 }, (_, i): readonly Obstacle[] => [
      { kind: 'disc', at: { x: -0.6, y: (i - 20) * 0.2 }, radiusMm: 1.5 },
      { kind: 'disc', at: { x: 0.6, y: (i - 20) * 0.2 }, radiusMm: 1.5 },
    ]).flat();
    const mark = label('a', 0, 0, { text: 'A7 Offset joint', brief: 'A7' });
    expect(placeLabels([mark], [], setting)).toMatchObject([{ text: 'A7 Offset joint' }]);
    const [tight] = placeLabels([mark], walls, setting);
    expect(tight?.text).toBe('A7');
    expect(tight?.leader).toBeUndefined();
    const full = { kind: 'disc', at: { x: 0, y: 0 }, radiusMm: 6 } as const;
    const [led] = placeLabels([mark], [full], setting);
    expect(led?.text).toBe('A7');
    expect(led?.leader).toBeDefined();
  });

  it('takes the brief text at once where things of one group crowd', () => {
    const crowd = { group: 'marks', apartMm: 7 };
    const marks = [0, 0.5, 5].map((x) => label(`m${x}`, x, 0, { brief: 'b', crowd }));
    const texts = new Map(placeLabels(marks, [], setting).map((p) => [p.label.id, p.text]));
    expect(texts).toEqual(
      new Map([
        ['m0', 'b'],
        ['m0.5', 'b'],
        ['m5', 'text m5'],
      ]),
    );
  });

  it('writes what is always written, over symbols when there is nothing else', () => {
    const everywhere = { kind: 'disc', at: { x: 0, y: 0 }, radiusMm: 60 } as const;
    const tie = { seat: 'on-line', along: { azimuth: 1, span: 3 } } as const;
    expect(placeLabels([label('t', 0, 0, tie)], [everywhere], setting)).toEqual([]);
    const [placed] = placeLabels(
      [label('t', 0, 0, { ...tie, whenCrowded: 'always' })],
      [everywhere],
      setting,
    );
    expect(placed?.azimuth).toBeCloseTo(1, 9);
  });

  it('slides along the line off what is in its way', () => {
    const tie = label('t', 0, 0, {
      seat: 'on-line',
      along: { azimuth: Math.PI / 2, span: 8 },
      text: '35 ft',
    });
    const inTheWay = { kind: 'disc', at: { x: 0, y: 0 }, radiusMm: 3 } as const;
    const [placed] = placeLabels([tie], [inTheWay], setting);
    expect(placed?.at.y).toBeCloseTo(0, 9);
    expect(Math.abs(placed?.at.x ?? 0)).toBeGreaterThan(0.3);
    expect(placed?.leader).toBeUndefined();
  });

  it.each([0, 90, 180, 270])(
    'keeps a length on a long line, %i° on, near the end that it is read from',
    (degrees) => {
      const azimuth = (degrees * Math.PI) / 180;
      const tie = { seat: 'on-line', along: { azimuth, span: 20, fromEndMm: 30 } } as const;
      const [placed] = placeLabels([label('t', 0, 0, tie)], [], setting);
      const end = { x: 10 * Math.sin(azimuth), y: 10 * Math.cos(azimuth) };
      expect(distance(placed?.at ?? { x: 0, y: 0 }, end)).toBeCloseTo(3, 9);
    },
  );

  it('keeps texts and leaders off heavy lines while another place is free', () => {
    const tape: Obstacle = { kind: 'stroke', from: { x: 0, y: 0 }, to: { x: 9, y: 9 }, weight: 4 };
    const tapes = [tape, { ...tape, to: { x: 9, y: -9 } }, { ...tape, to: { x: 9, y: 0 } }];
    const [placed] = placeLabels([label('a', 0, 0)], tapes, setting);
    expect(placed?.at.x).toBeLessThan(0);
  });

  it('goes to another place in its area when the first is taken', () => {
    const area = label('a', 0, 0, {
      seat: 'centre',
      elsewhere: [{ x: 3, y: 0 }],
      whenCrowded: 'leave-out',
    });
    const taken = { kind: 'disc', at: { x: 0, y: 0 }, radiusMm: 9 } as const;
    expect(placeLabels([area], [taken], setting)).toMatchObject([{ at: { x: 3, y: 0 } }]);
  });

  it.each([50, 120, 240, 330])(
    'writes the ties of each mark of the sample at 1:%i, and its own text in full',
    (denominator) => {
      const opened = openSite(
        readFileSync(new URL('../../../site/samples/rear-alley.json', import.meta.url), 'utf8'),
      );
      if (!opened.ok) throw new Error('the sample does not open');
      const derived = derive(opened.site);
      const mm = 1000 / denominator;
      for (const { run, reading, place, label: name } of derived.marks) {
        if (place === null) continue;
        const highlight = { mark: { run: run.id, id: reading.id } };
        const words = { observation: () => 'seen' };
        const drawing = draw(opened.site, derived, { highlight, words });
        const labels = drawing.layers.flatMap((l) => l.labels);
        const placed = placeLabels(labels, labelObstacles(drawing, mm), { mmPerMetre: mm, measureText });
        const ties = placed.filter((p) => p.label.id.startsWith(`${run.id}/${reading.id}/tie/`));
        const count = place.ties === null ? 0 : place.ties.check === null ? 2 : 3;
        expect(ties).toHaveLength(count);
        expect(placed[0]).toMatchObject({ text: `${name} seen` });
        // of what is not theirs, nothing that may be left out stands on the tapes
        for (const p of placed.filter((q) => q.label.whenCrowded === 'leave-out')) {
          for (const tape of drawing.layers.find((l) => l.name === 'ties')?.primitives ?? []) {
            if (tape.kind !== 'line') continue;
            const [a, b] = tape.points;
            if (a === undefined || b === undefined) throw new Error('a tape has two ends');
            const across = segmentMeetsBox(a.x * mm, a.y * mm, b.x * mm, b.y * mm, boxOf(p, mm));
            expect(across, `${p.text} on a tape of ${name}`).toBe(false);
          }
        }
      }
    },
  );

  it('sends only marks and things of the drain away on leaders, and none whose symbol is under another', () => {
    const opened = openSite(
      readFileSync(new URL('../../../site/samples/rear-alley.json', import.meta.url), 'utf8'),
    );
    if (!opened.ok) throw new Error('the sample does not open');
    const drawing = draw(opened.site, derive(opened.site), { words: { observation: () => 'seen' } });
    // the whole lot on a phone
    const mm = 1000 / 400;
    const labels = drawing.layers.flatMap((l) => l.labels);
    const placed = placeLabels(labels, labelObstacles(drawing, mm), { mmPerMetre: mm, measureText });
    const layerOf = (id: string) => drawing.layers.find((l) => l.labels.some((x) => x.id === id))?.name;
    const led = placed.filter((p) => p.leader !== undefined);
    for (const p of led) {
      expect(['marks', 'drain']).toContain(layerOf(p.label.id));
      const above = placed.filter((q) => q.label.seat === 'around' && q.label.priority > p.label.priority);
      for (const q of above) expect(distance(q.label.at, p.label.at) * mm).toBeGreaterThanOrEqual(HIDDEN_MM);
    }
    expect(placed.filter((p) => layerOf(p.label.id) === 'marks').every((p) => !p.text.includes(' '))).toBe(
      true,
    );
    expect(placed.length).toBeLessThan(labels.length / 2);
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

import { developedAt } from '@footmark/geometry';
import type { Way } from '@footmark/reroute';
import { type Derived, formatDiameter, type PipeMaterial, standardBends } from '@footmark/site';
import type { Section } from '../flow/section';
import type { SheetSetting } from '../setting';
import { tableSection } from '../table/tableSection';

/** What new pipes are made of: pipe by material and size, bends by name, cleanouts that the code asks for and that are not there. */
export function materialsTable(ways: readonly Way[], setting: SheetSetting): Section {
  const { words, site, derived } = setting;
  const { sheet } = words;
  const pipes = pipeLengths(
    ways.map((way) => way.path.id),
    derived,
  ).map(({ material, diameter, length }) => ({
    item: sheet.pipeItem(words.materialName(material), formatDiameter(diameter, site.units.diameter)),
    amount: words.sureText(length, site.units),
  }));
  const bends = new Map<string, number>();
  for (const { facts } of ways)
    for (const { name, turn, count } of facts.bends) {
      const said = sheet.bendItem(name, turnOf(name, turn));
      bends.set(said, (bends.get(said) ?? 0) + count);
    }
  const missing = ways.reduce((sum, { facts }) => sum + facts.cleanouts.missing.length, 0);
  const rows = [
    ...pipes,
    ...[...bends].map(([item, count]) => ({ item, amount: String(count) })),
    ...(missing === 0 ? [] : [{ item: sheet.cleanoutItem(), amount: String(missing) }]),
  ];
  return tableSection(
    sheet.heading('materials'),
    [
      { head: sheet.column('item'), share: 3 },
      { head: sheet.column('amount'), share: 1 },
    ],
    rows.map(({ item, amount }) => [{ main: item }, { main: amount }]),
    setting,
    { notes: [sheet.wasteNote()], abreast: ABREAST },
  );
}

/** What the fitting turns by, rather than what was drawn. */
function turnOf(name: string | null, drawn: number): number {
  return standardBends.find((bend) => bend.name === name)?.turn ?? drawn;
}

/** Short lines: two stretches beside each other. */
const ABREAST = 2;

type PipeLength = Readonly<{ material: PipeMaterial; diameter: number; length: number }>;

/** Metres along the pipe, drops and slopes in them, by what it is of. */
function pipeLengths(paths: readonly string[], derived: Derived): readonly PipeLength[] {
  const found = new Map<string, PipeLength>();
  for (const id of paths) {
    const on = derived.paths.get(id);
    if (on === undefined) continue;
    for (const [i, { from, material, diameter }] of on.path.stretches.entries()) {
      const to = Math.min(on.length, on.path.stretches[i + 1]?.from ?? on.length);
      if (from >= to) continue;
      const length = developedAt(on.profile, to, 'after') - developedAt(on.profile, from);
      const key = `${material}/${diameter}`;
      found.set(key, { material, diameter, length: (found.get(key)?.length ?? 0) + length });
    }
  }
  return [...found.values()];
}

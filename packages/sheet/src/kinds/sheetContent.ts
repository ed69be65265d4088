import type { Drawing } from '@footmark/drawing';
import { type SetOut, setOutOf, setOutsOf } from '@footmark/site';
import { cautionsSection } from '../blocks/cautionsSection';
import { clearancesTable } from '../blocks/clearancesTable';
import { findingsSection } from '../blocks/findingsSection';
import { marksTable } from '../blocks/marksTable';
import { materialsTable } from '../blocks/materialsTable';
import { plannedWay } from '../blocks/plannedWay';
import { qrSection } from '../blocks/qrSection';
import { setOutTable } from '../blocks/setOutTable';
import { wayTable } from '../blocks/wayTable';
import type { Section } from '../flow/section';
import { ownerPlan } from '../owner/ownerPlan';
import { ownerSections } from '../owner/ownerSections';
import { seenThings } from '../owner/seenThings';
import { planDrawing } from '../plan/planDrawing';
import { referencesOf } from '../plan/usedReferences';
import { profileSection } from '../profile/profileSection';
import type { SheetSetting } from '../setting';
import { asBuiltPaths } from './asBuiltPaths';

/** What a sheet shows: a plan that has pages of its own, or null, and what follows it. */
export type SheetContent = Readonly<{ plan: Drawing | null; sections: readonly Section[] }>;

/** The parts of a sheet by its kind, in the order in which they are read. */
export function sheetContent(setting: SheetSetting): SheetContent {
  const codes = setting.options.qr ?? [];
  const qr = codes.length === 0 ? [] : [qrSection(codes, setting)];
  switch (setting.options.kind) {
    case 'mark-out':
      return markOut(setting, qr);
    case 'reroute':
      return reroute(setting, qr);
    case 'as-built':
      return asBuilt(setting, qr);
    case 'findings':
      return findings(setting);
  }
}

function markOut(setting: SheetSetting, qr: readonly Section[]): SheetContent {
  const { marks } = setting.derived;
  const places = marks.flatMap((m) => m.place ?? []);
  const references = referencesOf(places.map((p) => (p.paint ?? p).ties));
  const paths = [...new Set(places.map((p) => p.path))];
  return {
    plan: planDrawing(setting, { references, setOuts: [] }),
    sections: [
      marksTable(setting),
      profileSection(paths, setting),
      findingsSection(setting),
      clearancesTable(setting),
      cautionsSection(setting),
      ...qr,
    ],
  };
}

function reroute(setting: SheetSetting, qr: readonly Section[]): SheetContent {
  const { site, derived } = setting;
  const setOuts = setOutsOf(site, derived);
  const ways = setOuts.flatMap((s) => plannedWay(s.path, setting) ?? []);
  return {
    plan: planDrawing(setting, { references: tapedFrom(setOuts), setOuts }),
    sections: [
      setOutTable('set-out', setOuts, setting),
      ...(ways.length === 0 ? [] : [materialsTable(ways, setting)]),
      ...ways.map((way) => wayTable(way, setting)),
      profileSection(
        setOuts.map((s) => s.path),
        setting,
      ),
      findingsSection(setting),
      clearancesTable(setting),
      cautionsSection(setting),
      ...qr,
    ],
  };
}

function asBuilt(setting: SheetSetting, qr: readonly Section[]): SheetContent {
  const { site, derived } = setting;
  const setOuts = asBuiltPaths(derived).flatMap((path) => setOutOf(site, derived, path, 'lasting') ?? []);
  return {
    plan: planDrawing(setting, { references: tapedFrom(setOuts), setOuts }),
    sections: [
      setOutTable('as-built', setOuts, setting),
      profileSection(
        setOuts.map((s) => s.path),
        setting,
      ),
      cautionsSection(setting),
      ...qr,
    ],
  };
}

function findings(setting: SheetSetting): SheetContent {
  const { site, derived, words } = setting;
  const plan = planDrawing(setting, { references: [], setOuts: [] });
  const said = words.sheet.ownerIntro(site, seenThings(site, derived.marks).length);
  return { plan: null, sections: [ownerPlan(plan, said, setting), ...ownerSections(setting)] };
}

function tapedFrom(setOuts: readonly SetOut[]) {
  return referencesOf(setOuts.flatMap((s) => s.points.map((p) => p.ties)));
}

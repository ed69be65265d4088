import { drainRules } from './drainRules';
import { separationRules } from './separationRules';
import type { SettingRow } from './settings';
import { trenchRules } from './trenchRules';

const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;

/** What US codes and rules ask for stands in as a model where no other is known, and says that it is no law there. */
const NO_LAW = 'a model value of the United States, not the law here';

type Rows = Readonly<Record<string, SettingRow>>;

function asModels<Table extends Rows>(table: Table): { readonly [Name in keyof Table]: SettingRow } {
  const rows = Object.entries<SettingRow>(table).map(([name, row]) => [name, asModel(row)]);
  return Object.fromEntries(rows) as { [Name in keyof Table]: SettingRow }; // the same names
}

function asModel(row: SettingRow): SettingRow {
  return row.basis === 'practice' ? row : { ...row, clause: `${row.clause}; ${NO_LAW}` };
}

const osha = (name: 'protectionDepth' | 'egressDepth' | 'egressTravel' | 'spoilSetback', metres: number) => ({
  ...asModel({ ...trenchRules[name], clause: `${trenchRules[name].clause}, printed as ${metres} m` }),
  value: metres,
});
const taped = (metres: number) => ({ value: metres, unit: 'm', ...practice }) as const;

/** Where people tape in metres: what US rules print in metres, customs in round metres, and all else as a model. */
export const metricRules = {
  ...asModels(trenchRules),
  ...asModels(separationRules),
  ...asModels(drainRules),
  protectionDepth: osha('protectionDepth', 1.52),
  egressDepth: osha('egressDepth', 1.22),
  egressTravel: osha('egressTravel', 7.62),
  spoilSetback: osha('spoilSetback', 0.61),
  bottomWidth: taped(0.6),
  workSpace: taped(0.3),
  beddingDepth: taped(0.1),
  footingBasement: taped(2.4),
  footingCrawlSpace: taped(0.9),
  footingSlab: taped(0.45),
  footingPiers: taped(0.9),
  setOutSpacing: taped(7.5),
  waterMainDiameter: taped(0.075),
  otherService: taped(0.3),
  nearby: taped(6),
  cleanoutBeside: taped(1),
  fittingSocket: taped(0.05),
  routeStraight: taped(0.1),
  routeTreeUnknown: taped(3),
  routeEnds: taped(1.8),
  routeBend: taped(0.6),
  routeCleanout: taped(2.4),
  routePit: taped(1.8),
} as const;

/** The widest tolerance zone that is published in metres. */
export const metricTolerance = {
  value: 1,
  unit: 'm',
  title: 'Canadian Common Ground Alliance, Best Practices',
  edition: '',
  clause: '3-8 and 4-18, 1 m to each side: Canada, elsewhere a model value',
  basis: 'read',
} as const satisfies SettingRow;

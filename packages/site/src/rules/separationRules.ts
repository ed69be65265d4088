import type { SettingRow } from './settings';

const FOOT_M = 0.3048;
const INCH_M = 0.0254;
const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;
const ipc = (clause: string, basis: SettingRow['basis']) =>
  ({ title: 'IPC', edition: '2012', clause, basis }) as const;
const upc = (clause: string, basis: SettingRow['basis']) =>
  ({ title: 'UPC', edition: '', clause, basis }) as const;

/** How far a sewer and a dig keep from other things, edge to edge. */
export const separationRules = {
  waterService: {
    value: 5 * FOOT_M,
    unit: 'm',
    ...ipc('603.2, water service and building sewer side by side', 'read'),
  },
  waterAbove: {
    value: 12 * INCH_M,
    unit: 'm',
    ...ipc('603.2 exception 1, bottom of water over top of sewer', 'memory'),
  },
  /** Beside a sewer of a material that may lie in the ground under a building; 0: both may lie in one trench. */
  waterListed: {
    value: 0,
    unit: 'm',
    ...ipc('603.2 exception 2, in one trench with a sewer of material listed in Table 702.2', 'read'),
  },
  waterSleeve: {
    value: 5 * FOOT_M,
    unit: 'm',
    ...ipc('603.2, a crossing water pipe sleeved to each side', 'memory'),
  },
  waterMain: {
    value: 10 * FOOT_M,
    unit: 'm',
    title: 'Ten States Standards',
    edition: '',
    clause: 'Water Works 8.8.2, mains: a caution for laterals',
    basis: 'read',
  },
  waterMainCrossing: {
    value: 18 * INCH_M,
    unit: 'm',
    title: 'Ten States Standards',
    edition: '',
    clause: 'Water Works 8.8.3, mains: a caution for laterals',
    basis: 'read',
  },
  /** Water lines of this diameter and more are taken for mains. */
  waterMainDiameter: { value: 3 * INCH_M, unit: 'm', ...practice },
  waterShelf: {
    value: 12 * INCH_M,
    unit: 'm',
    ...upc(
      '609.2, in one trench with a sewer of clay: bottom of water over top of sewer, on a solid shelf',
      'read',
    ),
  },
  waterLocal: {
    value: 10 * FOOT_M,
    unit: 'm',
    title: '10 NYCRR Appendix 75-A',
    edition: '',
    clause: '75-A.5, house sewer to any water line: a caution elsewhere',
    basis: 'read',
  },
  waterLocalBelow: {
    value: 18 * INCH_M,
    unit: 'm',
    title: '10 NYCRR Appendix 75-A',
    edition: '',
    clause: '75-A.5, a water line that crosses below the house sewer: a caution elsewhere',
    basis: 'read',
  },
  serviceLocal: {
    value: 5 * FOOT_M,
    unit: 'm',
    title: 'Rossford OH ordinance',
    edition: '',
    clause: 'utility lines 5 ft from the building sewer: a caution elsewhere',
    basis: 'read',
  },
  building: { value: 2 * FOOT_M, unit: 'm', ...upc('718.3, sewer and building', 'read') },
  bearingWall: {
    value: 3 * FOOT_M,
    unit: 'm',
    title: 'Sewer-use ordinances after the EPA model',
    edition: '',
    clause: 'not parallel to and within 3 ft of a bearing wall it might weaken',
    basis: 'read',
  },
  /** A pipe within this angle of a wall runs along it. */
  bearingWallTurn: { value: Math.PI / 12, unit: 'rad', ...practice },
  well: {
    value: 50 * FOOT_M,
    unit: 'm',
    ...upc('Table 721.1, water supply well and building sewer', 'memory'),
  },
  propertyLine: {
    value: 0,
    unit: 'm',
    ...upc('Table 721.1, property line adjoining private land: clear of it', 'memory'),
  },
  pavement: { value: 0, unit: 'm', ...practice },
  otherService: { value: 1 * FOOT_M, unit: 'm', ...practice },
  /** Things further off than this, and than any rule asks of them, are not listed. */
  nearby: { value: 20 * FOOT_M, unit: 'm', ...practice },
  /** Half width of the tolerance zone beyond the outside of a service; a state's law says how much. */
  toleranceZone: {
    value: 24 * INCH_M,
    unit: 'm',
    title: 'State one-call laws',
    edition: '',
    clause: 'such as FL, SC, NY: 24 in',
    basis: 'read',
  },
  toleranceFloor: {
    value: 18 * INCH_M,
    unit: 'm',
    title: 'Common Ground Alliance, Best Practices',
    edition: '',
    clause: '5-19, width of the facility and 18 in to each side, unless the state says more',
    basis: 'read',
  },
} as const satisfies Record<string, SettingRow>;

/** Where the uniform code of the western states says otherwise: what it asks goes by what the sewer is made of. */
export const separationRulesUpc = {
  waterService: { value: 5 * FOOT_M, unit: 'm', ...practice },
  waterListed: {
    value: 1 * FOOT_M,
    unit: 'm',
    ...upc('Table 721.1, on-site domestic water service and building sewer', 'memory'),
  },
} as const satisfies Partial<Record<keyof typeof separationRules, SettingRow>>;

import type { SettingRow } from './settings';

const FOOT_M = 0.3048;
const INCH_M = 0.0254;
const DEGREE = Math.PI / 180;
const ipc = (clause: string, basis: SettingRow['basis']) =>
  ({ title: 'IPC', edition: '2018', clause, basis }) as const;
const irc = (clause: string) =>
  ({ title: 'IRC', edition: '2012', clause: `Table P3005.1, ${clause}`, basis: 'read' }) as const;
const slopes = (clause: string) =>
  ({
    title: 'IRC and IPC',
    edition: 'IRC 2006; IPC as adopted by Chicago, 18-29-704.1',
    clause: `P3005.3 and Table 704.1, ${clause}`,
    basis: 'read',
  }) as const;
const ipcByChicago = (clause: string) =>
  ({
    title: 'IPC',
    edition: 'as adopted by Chicago, 18-29-704.1',
    clause: `Table 704.1, ${clause}`,
    basis: 'read',
  }) as const;
const sweep = (size: string) =>
  ({
    title: 'ASTM A74',
    edition: '',
    clause: `Tables 3 and 8, long sweep, ${size}`,
    basis: 'memory',
  }) as const;
const upc = (clause: string) => ({ title: 'UPC', edition: '2012', clause, basis: 'read' }) as const;
const upcSlopes = (clause: string) =>
  ({ title: 'UPC', edition: '2015', clause: `708.1, ${clause}`, basis: 'read' }) as const;

/** What a drain itself must be like, by the code that the site's rule set follows. */
export const drainRules = {
  /** Least fall over run: of drains that are smaller than `fallMiddleFrom`. */
  fallSmall: { value: 1 / 48, unit: 'fall', ...slopes('1/4 inch per foot for 2 1/2 inches and less') },
  /** Of drains from here on to `fallLargeFrom`. Sizes are nominal. */
  fallMiddle: { value: 1 / 96, unit: 'fall', ...slopes('1/8 inch per foot for 3 to 6 inches') },
  fallMiddleFrom: { value: 3 * INCH_M, unit: 'm', ...slopes('3 inches and more') },
  fallLarge: {
    value: 1 / 192,
    unit: 'fall',
    ...ipcByChicago('1/16 inch per foot for 8 inches and more'),
  },
  fallLargeFrom: { value: 8 * INCH_M, unit: 'm', ...ipcByChicago('8 inches and more') },
  fallLocal: {
    value: 1 / 48,
    unit: 'fall',
    title: '10 NYCRR Appendix 75-A',
    edition: '',
    clause: '75-A.5, house sewer at least 1/4 inch per foot: a caution elsewhere',
    basis: 'read',
  },
  /** Manning's n of an old drain. */
  roughness: {
    value: 0.015,
    unit: '1',
    title: 'NSPC',
    edition: '2009',
    clause: 'Appendix K, Table K-1, rough pipe',
    basis: 'read',
  },
  /** Of water in a full or half full pipe: so fast it carries solids along. */
  scourVelocity: {
    value: 2 * FOOT_M,
    unit: 'm/s',
    title: 'NSPC',
    edition: '2009',
    clause: 'Appendix K, 2 ft/s',
    basis: 'read',
  },
  /** A code leaves this blank for the adopting body: set it to what the local one says. */
  leastCover: {
    value: 1 * FOOT_M,
    unit: 'm',
    title: 'UPC',
    edition: '',
    clause: '718.3, not less than 1 ft below the surface',
    basis: 'read',
  },
  frostDepth: {
    value: 0,
    unit: 'm',
    title: 'common practice, no source',
    edition: '',
    clause: '',
    basis: 'practice',
  },
  cleanoutSpacing: {
    value: 100 * FOOT_M,
    unit: 'm',
    ...ipc('708.1.1 and 708.1.2, horizontal drains and sewers under 8 in', 'memory'),
  },
  /** From this size on openings are manholes; 0: they are not told apart. */
  manholeFrom: {
    value: 8 * INCH_M,
    unit: 'm',
    ...ipc('708.1.2, building sewers of 8 in and more', 'memory'),
  },
  manholeFirst: {
    value: 200 * FOOT_M,
    unit: 'm',
    ...ipc('708.1.2, the first manhole within 200 ft of the junction with the building drain', 'memory'),
  },
  manholeSpacing: {
    value: 400 * FOOT_M,
    unit: 'm',
    ...ipc('708.1.2, manholes no more than 400 ft apart', 'memory'),
  },
  cleanoutJunction: {
    value: 10 * FOOT_M,
    unit: 'm',
    ...ipc(
      '708.1.3, near the junction of building drain and building sewer: taken as within 10 ft',
      'memory',
    ),
  },
  /** How far a building's drain goes on past its wall before it is called a sewer. */
  drainPastWall: {
    value: 30 * INCH_M,
    unit: 'm',
    ...ipc('202, a building drain extends 30 in beyond the wall', 'memory'),
  },
  /** A cleanout is as wide as the pipe, but need not be wider than this. */
  cleanoutSize: {
    value: 4 * INCH_M,
    unit: 'm',
    title: 'IPC',
    edition: 'as adopted by Chicago, 18-29-708.7',
    clause: '708.1.5, the size of the pipe up to 4 in, 4 in or more for larger',
    basis: 'read',
  },
  cleanoutTurn: {
    value: 45 * DEGREE,
    unit: 'rad',
    ...ipc('708.1.4, each change of direction over 45 degrees', 'read'),
  },
  cleanoutTurnGroup: {
    value: 40 * FOOT_M,
    unit: 'm',
    ...ipc('708.1.4, one serves all such changes within 40 ft', 'read'),
  },
  /** Sum of turns after which another is asked; 0: turns are not summed. */
  cleanoutTurnSum: { value: 0, unit: 'rad', ...ipc('708.1.4, turns are not summed', 'read') },
  /** A stack this near along the pipe to its upper end serves as the cleanout there, if it has one; 0: none does. */
  cleanoutStack: {
    value: 10 * FOOT_M,
    unit: 'm',
    title: 'IPC',
    edition: 'before 2015',
    clause: '708.3.5, none near the junction where one on a stack of 3 in or more lies within 10 ft',
    basis: 'read',
  },
  /** A cleanout this near along the pipe stands at the place that asks for one. */
  cleanoutBeside: {
    value: 3 * FOOT_M,
    unit: 'm',
    title: 'common practice, no source',
    edition: '',
    clause: '',
    basis: 'practice',
  },
  /** The sharpest turn of a fitting that is no sweep, in a drain that lies. */
  fittingTurn: { value: 60 * DEGREE, unit: 'rad', ...irc('sixth bend, from horizontal to horizontal') },
  /** In drains up to this diameter a quarter bend or a short sweep is allowed. */
  fittingShortTurn: { value: 2 * INCH_M, unit: 'm', ...irc('note a, fixture drains of 2 in and less') },
  /** The least centre-line radius of what is called a long sweep. */
  longSweepRadius: { value: 8.5 * INCH_M, unit: 'm', ...sweep('3 in') },
  sweepRadius4: { value: 9 * INCH_M, unit: 'm', ...sweep('4 in') },
  sweepRadius6: { value: 10 * INCH_M, unit: 'm', ...sweep('6 in') },
} as const satisfies Record<string, SettingRow>;

/** Where the uniform code of the western states says otherwise. */
export const drainRulesUpc = {
  fallSmall: { value: 1 / 48, unit: 'fall', ...upcSlopes('1/4 inch per foot') },
  fallMiddle: {
    value: 1 / 48,
    unit: 'fall',
    ...upcSlopes('1/4 inch per foot; 1/8 only where that is impractical and the authority approves it first'),
  },
  fallMiddleFrom: {
    value: 3 * INCH_M,
    unit: 'm',
    ...upcSlopes('sizes for which less may be approved; 4 inches and larger in earlier editions'),
  },
  fallLarge: {
    value: 1 / 48,
    unit: 'fall',
    ...upcSlopes('1/4 inch per foot; 1/8 only where that is impractical and the authority approves it first'),
  },
  cleanoutSpacing: { value: 100 * FOOT_M, unit: 'm', ...upc('707.4, each 100 ft or fraction') },
  cleanoutTurn: { value: Math.PI, unit: 'rad', ...upc('707.4, single turns are not asked about') },
  cleanoutTurnGroup: { value: 0, unit: 'm', ...upc('707.4') },
  cleanoutTurnSum: {
    value: 135 * DEGREE,
    unit: 'rad',
    ...upc('707.4, an additional one for each aggregate change of more than 135 degrees'),
  },
  manholeFrom: { value: 0, unit: 'm', ...upc('719.6, manholes may stand in lieu of cleanouts') },
  cleanoutJunction: {
    value: 10 * FOOT_M,
    unit: 'm',
    title: 'UPC',
    edition: '1995',
    clause: '719.1, at the lower end of the building drain, outside: taken as within 10 ft',
    basis: 'read',
  },
  cleanoutStack: { value: 0, unit: 'm', ...upc('707.4, a cleanout at the upper terminal') },
} as const satisfies Partial<Record<keyof typeof drainRules, SettingRow>>;

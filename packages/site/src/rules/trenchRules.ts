import type { SettingRow } from './settings';

const FOOT_M = 0.3048;
const INCH_M = 0.0254;
const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;
const osha = (clause: string, basis: SettingRow['basis']) =>
  ({ title: 'OSHA 29 CFR 1926 Subpart P', edition: 'CFR 2010', clause, basis }) as const;

/** What a trench or a pit asks for. Slopes are horizontal over vertical. */
export const trenchRules = {
  protectionDepth: {
    value: 5 * FOOT_M,
    unit: 'm',
    ...osha('1926.652(a)(1), a protective system from 5 ft on', 'read'),
  },
  engineerDepth: {
    value: 20 * FOOT_M,
    unit: 'm',
    ...osha('Appendix B, Table B-1 note 3, over 20 ft', 'read'),
  },
  egressDepth: { value: 4 * FOOT_M, unit: 'm', ...osha('1926.651(c)(2), a way out from 4 ft on', 'read') },
  egressTravel: {
    value: 25 * FOOT_M,
    unit: 'm',
    ...osha('1926.651(c)(2), within 25 ft of lateral travel', 'read'),
  },
  spoilSetback: { value: 2 * FOOT_M, unit: 'm', ...osha('1926.651(j)(2), spoil and equipment', 'read') },
  slopeRock: { value: 0, unit: '1', ...osha('Appendix B, Table B-1, stable rock', 'read') },
  slopeA: { value: 0.75, unit: '1', ...osha('Appendix B, Table B-1, Type A', 'read') },
  /** Of soil A that stands open for no longer than 24 hours, down to `shortTermDepth`. */
  slopeShortTerm: {
    value: 0.5,
    unit: '1',
    ...osha('Appendix B, Table B-1 note 2, Type A open for 24 hours or less', 'read'),
  },
  shortTermDepth: {
    value: 12 * FOOT_M,
    unit: 'm',
    ...osha('Appendix B, Table B-1 note 2, down to 12 ft', 'read'),
  },
  slopeB: { value: 1, unit: '1', ...osha('Appendix B, Table B-1, Type B', 'read') },
  slopeC: { value: 1.5, unit: '1', ...osha('Appendix B, Table B-1, Type C', 'read') },
  slopeUnknown: {
    value: 1.5,
    unit: '1',
    ...osha('1926.652(b)(1)(i), where nobody has looked at the soil', 'read'),
  },
  /** Ground that was dug before, whatever it is by nature. */
  slopeDisturbed: {
    value: 1,
    unit: '1',
    ...osha('Appendix A, soil that was disturbed is at best Type B', 'memory'),
  },
  shieldAbove: {
    value: 18 * INCH_M,
    unit: 'm',
    ...osha('Appendix B figures, shield above the vertical side', 'memory'),
  },
  bottomWidth: { value: 24 * INCH_M, unit: 'm', ...practice },
  /** Beyond the pipe to each side of a pit, to work in. */
  workSpace: { value: 12 * INCH_M, unit: 'm', ...practice },
  /** Below the invert, for bedding. */
  beddingDepth: { value: 4 * INCH_M, unit: 'm', ...practice },
  /** A footing presses on the ground within this slope of its outer bottom edge (rule of thumb: 45 degrees). */
  footingInfluence: { value: 1, unit: '1', ...practice },
  /** Bottom of a footing below the ground where nobody has said, by kind of foundation. */
  footingBasement: { value: 8 * FOOT_M, unit: 'm', ...practice },
  footingCrawlSpace: { value: 3 * FOOT_M, unit: 'm', ...practice },
  footingSlab: { value: 1.5 * FOOT_M, unit: 'm', ...practice },
  footingPiers: { value: 3 * FOOT_M, unit: 'm', ...practice },
  /** Loose soil takes more room than it did in the ground. */
  soilSwell: { value: 1.25, unit: '1', ...practice },
  /** The side slope at which a heap of loose soil stands. */
  spoilSlope: { value: 1.5, unit: '1', ...practice },
  /** Along a pipe that is set out, paint stands no further apart; 0: only at its points. */
  setOutSpacing: { value: 25 * FOOT_M, unit: 'm', ...practice },
} as const satisfies Record<string, SettingRow>;

import { DRAWN_TURN_RAD, type SetOutBend } from '@footmark/site';

/** Turns of standard bends have up to two decimals: 22.5°, 11.25°. */
const BEND_DECIMALS = 2;

/** What is to be said beside a bend that is set out, in this order. */
export type BendRemark = 'corner-painted' | 'nobody-said' | 'drawn-otherwise' | 'no-standard-bend';

export function bendRemarks({ turn, known, fitting, tangent }: SetOutBend): readonly BendRemark[] {
  const remarks: readonly (BendRemark | null)[] = [
    tangent === 0 ? null : 'corner-painted',
    known === null ? 'nobody-said' : null,
    known !== null && Math.abs(Math.abs(turn) - known) > DRAWN_TURN_RAD ? 'drawn-otherwise' : null,
    fitting === null ? 'no-standard-bend' : null,
  ];
  return remarks.filter((remark) => remark !== null);
}

/** The turn of a standard bend (rad) in degrees, as its maker gives it. */
export function bendTurnText(rad: number): string {
  return `${Number(((rad * 180) / Math.PI).toFixed(BEND_DECIMALS))}°`;
}

import { azimuthBetween, type Point } from '@footmark/geometry';
import { type FittedMark, trueAzimuth } from '@footmark/site';
import { holeSizeText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { FitActions } from '../fit/FitActions';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';

/** Less than this (m) is no other place on the ground. */
const SAME_PLACE_M = 0.025;

type Props = { readonly fitted: NonNullable<FittedMark['fitted']>; readonly at: Point };

/** Where the evidence has a mark that stands elsewhere as yet. */
export function FittedHere({ fitted, at }: Props) {
  const { units } = useSite();
  const { frame } = useDerived();
  if (fitted.off < SAME_PLACE_M) return null;
  return (
    <div className={cards.section}>
      <p>
        The evidence has it <b>{words.sureText(fitted.off, units)}</b> to the{' '}
        {words.windText(trueAzimuth(frame, azimuthBetween(at, fitted.at)))} of here, in a hole of{' '}
        {holeSizeText(fitted.zone.hole, units)}.
      </p>
      <FitActions withDetails />
    </div>
  );
}

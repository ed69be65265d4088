import { type Mark, type MarkPlace, trueAzimuth } from '@footmark/site';
import { directionText, lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { TapesList } from './TapesList';
import { WALLS } from './walls';

/** Directions (rad) that differ by less are the same but for rounding. */
const SAME_WAY = 1e-9;

type Props = { readonly mark: Mark; readonly place: MarkPlace };

/** The tapes to where paint stands: on the mark, or beside it where that cannot be. */
export function PaintTapes({ mark, place }: Props) {
  const { units } = useSite();
  const { frame } = useDerived();
  const { offset } = mark.reading;
  if (place.paint === null || offset === undefined) {
    return place.ties === null ? null : <TapesList ties={place.ties} />;
  }
  const { distance } = offset;
  const azimuth = trueAzimuth(frame, offset.azimuth);
  const isWall = Object.values(WALLS).some(
    (wall) => Math.abs(Math.sin(wall - azimuth)) < SAME_WAY && Math.cos(wall - azimuth) > 0,
  );
  const way = isWall ? `to the ${words.windText(azimuth)}` : `at ${directionText(azimuth, units)}`;
  return (
    <div>
      <p>
        Paint stands{' '}
        <b>
          {lengthText(distance, units)} {way}
        </b>{' '}
        of the mark. The tapes are to the paint.
      </p>
      {place.paint.ties === null ? (
        <p className={cards.empty}>No tapes reach the paint.</p>
      ) : (
        <TapesList ties={place.paint.ties} />
      )}
    </div>
  );
}

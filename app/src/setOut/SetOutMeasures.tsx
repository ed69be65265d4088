import { type SetOut, type SetOutPoint, WITHIN_95 } from '@footmark/site';
import { lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { useSite } from '../session/siteSession';
import { words } from '../words';

type Props = { readonly setOut: SetOut; readonly point: SetOutPoint };

/** How far along its pipe a point is, and how deep that is to lie there. */
export function SetOutMeasures({ setOut: { points, evenGround }, point }: Props) {
  const { units } = useSite();
  const { fromBefore, invert, depth, drop } = point;
  const before = points.find((p) => p.number === point.number - 1);
  return (
    <dl className={cards.facts}>
      <Fact name="Depth to invert" note={depthNote(depth !== null, evenGround)}>
        {depth === null
          ? 'not known'
          : `${lengthText(depth.depth, units)} ${words.giveOrTakeText(WITHIN_95 * depth.sigma, units)}`}
      </Fact>
      <Fact
        name="Invert"
        note={
          invert?.by === 'beyond'
            ? 'By the slope that is said of the pipe, from the nearest level.'
            : undefined
        }
      >
        {invert === null
          ? 'no level known'
          : `${lengthText(invert.invert, units)} ${words.giveOrTakeText(WITHIN_95 * invert.sigma, units)}`}
      </Fact>
      {drop === 0 ? null : (
        <Fact name="Drops here" note="The invert is that below the drop.">
          {lengthText(drop, units)}
        </Fact>
      )}
      {fromBefore === null || before === undefined ? null : (
        <Fact name={`Straight from ${before.label}`}>{lengthText(fromBefore, units)}</Fact>
      )}
      <Fact name="Along the pipe" note="From its start, with its slopes and drops.">
        {lengthText(point.developed, units)}
      </Fact>
    </dl>
  );
}

function depthNote(isKnown: boolean, evenGround: boolean): string | undefined {
  if (!isKnown) return 'Needs a level or a depth of the pipe, and a level of the ground here.';
  return evenGround ? 'Below a ground that is taken as even.' : undefined;
}

import { changeDig, type Dig } from '@footmark/site';
import { lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { LengthField } from '../controls/unitFields';
import { edit, useDerived, useSite } from '../session/siteSession';
import { frameDig } from './showDig';

type Trench = Extract<Dig, { is: 'trench' }>;

/** A length as it is typed may be so much (m) longer than the pipe that it is of. */
const ROUNDING_M = 0.01;

/** Where a trench begins and ends along its pipe. Ends that are typed the other way round change places. */
export function TrenchEnds({ trench }: { readonly trench: Trench }) {
  const { units } = useSite();
  const length = useDerived().paths.get(trench.path)?.length ?? 0;
  const past = (station: number) =>
    station > length + ROUNDING_M ? `The pipe is ${lengthText(length, units)} long.` : null;
  const move = (what: string, a: number, b: number) => {
    const facts = { from: Math.min(a, b, length), to: Math.min(length, Math.max(a, b)) };
    if (edit(what, (s) => changeDig(s, { id: trench.id, facts }))) frameDig(trench.id);
  };
  return (
    <div className={cards.pair}>
      <LengthField
        label="From station"
        value={trench.from}
        required
        check={past}
        onChange={(from) => from !== undefined && move('Move the start of a trench', from, trench.to)}
      />
      <LengthField
        label="To station"
        value={trench.to}
        required
        check={past}
        onChange={(to) => to !== undefined && move('Move the end of a trench', trench.from, to)}
      />
    </div>
  );
}

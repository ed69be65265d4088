import type { Excavation } from '@footmark/dig';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { digSizeText } from './digSizeText';
import { showDig } from './showDig';
import { startPit, startTrench } from './startDig';

/** The planned digs, and the ways to plan another. */
export function DigList({ excavations }: { readonly excavations: readonly Excavation[] }) {
  const site = useSite();
  const derived = useDerived();
  const placed = derived.marks.filter((m) => m.place !== null);
  return (
    <div className={cards.section}>
      <h3>Planned digs</h3>
      {site.digging.digs.length === 0 ? (
        <p className={cards.empty}>
          A pit at a mark, or a trench along a pipe: then this card says what it takes, what is near, and who
          must be asked.
        </p>
      ) : (
        <ul className={cards.rows}>
          {site.digging.digs.map((dig) => (
            <li key={dig.id}>
              <Button className={cards.row ?? ''} onPress={() => showDig(dig.id)}>
                <span className={cards.grow}>
                  {words.targetName({ kind: 'dig', id: dig.id }, site)}
                  <small>
                    {digSizeText(
                      excavations.find((e) => e.dig.id === dig.id),
                      site.units,
                    )}
                  </small>
                </span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div className={cards.pair}>
        <Choice
          label="Pit at a mark"
          placeholder="Choose a mark"
          options={placed.map((m) => ({
            id: m.reading.id,
            name: `${m.label} ${words.observationName(m.reading.seen)}`,
          }))}
          value={null}
          onChange={(id) => {
            const mark = placed.find((m) => m.reading.id === id);
            if (mark !== undefined) startPit(mark);
          }}
        />
        <Choice
          label="Trench along a pipe"
          placeholder="Choose a pipe"
          options={[...derived.paths.values()].map(({ path }) => ({
            id: path.id,
            name: words.targetName({ kind: 'path', id: path.id }, site),
          }))}
          value={null}
          onChange={startTrench}
        />
      </div>
    </div>
  );
}

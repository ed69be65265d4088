import { bendTable, type RerouteAsk, usualAskOf } from '@footmark/reroute';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { Tick } from '../controls/Tick';
import { DiameterField, LengthField } from '../controls/unitFields';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { ArrivalFields } from './ArrivalFields';
import { OtherwiseFold } from './OtherwiseFold';
import { changeAsk } from './waysSession';

const LEAVES = [
  { id: 'along', name: 'As the old pipe' },
  { id: 'square', name: 'Square to the wall' },
] as const;

const NEW_MATERIALS = ['plastic', 'cast-iron', 'clay', 'concrete'] as const;

/** From where to where a new pipe is to go in place of which, and what it is to be. */
export function AskFields({ ask }: { readonly ask: RerouteAsk }) {
  const site = useSite();
  const derived = useDerived();
  const { paths } = derived;
  const length = paths.get(ask.path)?.length ?? 0;
  const back = ask.to.is === 'station' ? ask.to.station : null;
  return (
    <div className={cards.section}>
      <Choice
        label="In place of"
        options={[...paths.values()]
          .filter(({ path }) => path.state !== 'as-built')
          .map(({ path }) => ({ id: path.id, name: words.targetName({ kind: 'path', id: path.id }, site) }))}
        value={ask.path}
        onChange={(path) => changeAsk(usualAskOf(derived, path) ?? { path, from: 0 })}
      />
      <LengthField
        label="Leaves it at station"
        value={ask.from}
        required
        check={(from) => (from < (back ?? length) ? null : 'It must leave before it comes back.')}
        onChange={(from) => from !== undefined && changeAsk({ from })}
      />
      <Segments
        label="Leaves it"
        options={LEAVES}
        value={ask.leaves}
        onChange={(leaves) => changeAsk({ leaves })}
      />
      <ArrivalFields ask={ask} length={length} />
      <div className={cards.pair}>
        <DiameterField
          label="Inside diameter"
          value={ask.diameter}
          required
          onChange={(diameter) => diameter !== undefined && changeAsk({ diameter })}
        />
        <Choice
          label="Material"
          options={NEW_MATERIALS.map((id) => ({ id, name: words.materialName(id) }))}
          value={ask.material}
          onChange={(material) => changeAsk({ material })}
        />
      </div>
      <Tick isSelected={ask.keepsGrade} onChange={(keepsGrade) => changeAsk({ keepsGrade })}>
        Leave out routes that cannot fall enough
      </Tick>
      <p className={cards.empty}>
        Laid of straight pipe and bends of{' '}
        {bendTable(site, ask.diameter, ask.otherwise)
          .map((b) => b.id)
          .join(', ')}
        .
      </p>
      <OtherwiseFold ask={ask} />
    </div>
  );
}

import { bendTable, type RerouteAsk, usualAskOf } from '@footmark/reroute';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { Tick } from '../controls/Tick';
import { DiameterField, LengthField } from '../controls/unitFields';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { changeAsk } from './waysSession';

const LEAVES = [
  { id: 'along', name: 'As the old pipe' },
  { id: 'square', name: 'Square to the wall' },
] as const;

const NEW_MATERIALS = ['plastic', 'cast-iron', 'clay', 'concrete'] as const;

/** Between which places of which pipe a new one is to go, and what it is to be. */
export function AskFields({ ask }: { readonly ask: RerouteAsk }) {
  const site = useSite();
  const derived = useDerived();
  const { paths } = derived;
  const on = paths.get(ask.path);
  const length = on?.length ?? 0;
  return (
    <div className={cards.section}>
      <Choice
        label="In place of"
        options={[...paths.values()]
          .filter(({ path }) => path.state !== 'as-built')
          .map(({ path }) => ({ id: path.id, name: words.targetName({ kind: 'path', id: path.id }, site) }))}
        value={ask.path}
        onChange={(path) => changeAsk(usualAskOf(derived, path) ?? { path, from: 0, to: null })}
      />
      <div className={cards.pair}>
        <LengthField
          label="Leaves it at station"
          value={ask.from}
          required
          check={(from) => (from < (ask.to ?? length) ? null : 'It must leave before it comes back.')}
          onChange={(from) => from !== undefined && changeAsk({ from })}
        />
        <LengthField
          label="Comes back at station"
          value={ask.to ?? undefined}
          placeholder="at its end"
          check={(to) =>
            to > ask.from && to < length ? null : 'Between where it leaves and the end of the pipe.'
          }
          onChange={(to) => changeAsk({ to: to ?? null })}
        />
      </div>
      <Segments
        label="Leaves it"
        options={LEAVES}
        value={ask.leaves}
        onChange={(leaves) => changeAsk({ leaves })}
      />
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
        {bendTable(site)
          .map((b) => b.id)
          .join(', ')}
        .
      </p>
    </div>
  );
}

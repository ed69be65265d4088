import type { IncomingGroup } from '@footmark/exchange';
import { type FeatureKind, featureKindIds, kindSpec } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { words } from '../words';

const OUT = '';

/** What each layer of a file becomes, of kinds that have its shape; or it is left out. */
export function GroupKinds({
  groups,
  kinds,
  onChange,
}: {
  readonly groups: readonly IncomingGroup[];
  readonly kinds: ReadonlyMap<string, FeatureKind>;
  readonly onChange: (kinds: ReadonlyMap<string, FeatureKind>) => void;
}) {
  return (
    <ul className={cards.section}>
      {groups.map(({ key, layer, shape, count }) => {
        const fitting = featureKindIds.filter((kind) => kindSpec(kind).shape === shape);
        return (
          <li key={key}>
            <Choice
              label={`${layer === '' ? 'No layer' : layer}: ${count} ${SHAPES[shape]}${count === 1 ? '' : 's'}`}
              options={[
                { id: OUT, name: 'Leave out' },
                ...fitting.map((id) => ({ id, name: words.featureKindName(id) })),
              ]}
              value={kinds.get(key) ?? OUT}
              onChange={(chosen) => {
                const next = new Map(kinds);
                const kind = fitting.find((id) => id === chosen);
                if (kind === undefined) next.delete(key);
                else next.set(key, kind);
                onChange(next);
              }}
            />
          </li>
        );
      })}
    </ul>
  );
}

const SHAPES: Record<IncomingGroup['shape'], string> = { point: 'point', line: 'line', area: 'area' };

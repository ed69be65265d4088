import type { DigByTree } from '@footmark/dig';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** What a dig takes of each tree's root zone, by the site's rule. */
export function DigTrees({ taken }: { readonly taken: readonly DigByTree[] }) {
  const site = useSite();
  const rows = taken.flatMap(({ tree, atLeast, zones: [chosen] }) =>
    chosen === undefined || chosen.share === 0 ? [] : [{ tree, atLeast, chosen }],
  );
  if (rows.length === 0) return null;
  return (
    <div className={cards.section}>
      <h3>Taken of root zones</h3>
      <dl className={cards.facts}>
        {rows.map(({ tree, atLeast, chosen }) => (
          <Fact
            key={tree}
            name={words.targetName({ kind: 'feature', id: tree }, site)}
            note={`Dug ${words.shareText(chosen.dug)}, under spoil ${words.shareText(chosen.spoil)}; by ${words.treeRuleName(chosen.rule)}`}
          >
            {atLeast ? 'at least ' : ''}
            {words.shareText(chosen.share)}
          </Fact>
        ))}
      </dl>
    </div>
  );
}

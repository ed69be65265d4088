import type { Mark } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { ClearanceRows } from '../dig/ClearancesFold';
import { useDigging } from '../dig/digging';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** On whose land a mark is, and what is near it with the rules that ask: there somebody is going to dig. */
export function NearMark({ mark: { reading } }: { readonly mark: Mark }) {
  const site = useSite();
  const { clearances, land } = useDigging();
  const near = clearances.filter(({ of }) => of.is === 'mark' && of.reading === reading.id);
  const at = land.marks.find((m) => m.reading === reading.id);
  const whose = at === undefined ? '' : words.whoseAtText(at, 'full', site);
  if (near.length === 0 && whose === '') return null;
  return (
    <div className={cards.section}>
      <h3>What is near</h3>
      {whose === '' ? null : (
        <p>
          <strong>{whose}.</strong> Ask before painting or digging there.
        </p>
      )}
      <ClearanceRows found={near} first={6} />
    </div>
  );
}

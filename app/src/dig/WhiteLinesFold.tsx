import type { WhiteLine } from '@footmark/dig';
import { lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { Fold } from '../cards/Fold';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** What to line in white before the services are marked: each piece of ground, corner by corner with its tapes. */
export function WhiteLinesFold({ lines }: { readonly lines: readonly WhiteLine[] }) {
  const site = useSite();
  if (lines.length === 0) return null;
  return (
    <Fold
      title="White lines for the one-call centre"
      result={lengthText(
        lines.reduce((sum, { length }) => sum + length, 0),
        site.units,
      )}
    >
      {lines.map(({ digs, atLeast, corners, area, length }) => (
        <div key={`${digs.join()} ${corners[0]?.at.x} ${corners[0]?.at.y}`} className={cards.section}>
          <h3>{digs.map((id) => words.targetName({ kind: 'dig', id }, site)).join(', ')}</h3>
          <p className={cards.sub}>
            {words.areaText(area, site.units)} to dig, {lengthText(length, site.units)} of line.
          </p>
          {atLeast.length === 0 ? null : (
            <p className={cards.sub}>
              At least: the depth of{' '}
              {atLeast.map((id) => words.targetName({ kind: 'dig', id }, site)).join(', ')} is not known, so
              more may be dug than these corners go round.
            </p>
          )}
          <dl className={cards.facts}>
            {corners.map(({ at, ties }, i) => (
              <Fact
                key={`${at.x} ${at.y}`}
                name={`Corner ${i + 1}`}
                note={ties === null ? 'Nothing to tape from is in reach.' : words.sideText(ties, site)}
              >
                {ties === null ? '' : ties.pair.map((tie) => words.tieText(tie, site)).join('; ')}
              </Fact>
            ))}
          </dl>
        </div>
      ))}
    </Fold>
  );
}

import type { UnseenGap } from '@footmark/site';
import { lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { Fold } from '../cards/Fold';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';

/** What the cameras saw of each pipe, from which runs, and what none has seen, with what stopped them. */
export function CoverageFold() {
  const site = useSite();
  const { lookedAt, unseen, coverage } = useDerived();
  if (coverage.length === 0) return null;
  const length = (metres: number) => lengthText(metres, site.units);
  const letters = (runs: readonly string[]) =>
    runs.map((id) => site.runs.find((r) => r.id === id)?.letter ?? id).join(' and ');
  return (
    <Fold title="What the cameras saw">
      {[...lookedAt].map(([path, stretches]) => (
        <div key={path} className={cards.section}>
          <h3>{words.targetName({ kind: 'path', id: path }, site)}</h3>
          <dl className={cards.facts}>
            {stretches.map(({ from, to, runs }) => {
              const gap = unseen.find((g) => g.path === path && g.from === from && g.to === to);
              return (
                <Fact
                  key={from}
                  name={`${length(from)} to ${length(to)}`}
                  note={gap === undefined ? undefined : stoppedText(gap)}
                >
                  {runs.length === 0 ? <b>not seen</b> : `seen by ${letters(runs)}`}
                </Fact>
              );
            })}
          </dl>
        </div>
      ))}
    </Fold>
  );

  function stoppedText({ upstream, downstream }: UnseenGap): string {
    return [upstream, downstream]
      .flatMap((end) => (end === null ? [] : (words.stoppedText(end, site) ?? [])))
      .join(' ');
  }
}

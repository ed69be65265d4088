import type { RunsFit } from '@footmark/site';
import { holeSizeText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { fitMoves } from './fitMoves';
import { RunsTable } from './RunsTable';

/** The lines and runs as they were drawn and said, against how they fit. */
export function MovesSection({ fit }: { readonly fit: RunsFit }) {
  const site = useSite();
  if (fit.status !== 'fitted') return null;
  const { mark, point } = fitMoves(fit);
  const zones = mark === null ? undefined : fit.marks.get(mark.reading);
  const misfit = words.misfitText(fit);
  return (
    <div className={cards.section}>
      <h3>{fit.taken ? 'The fit that was taken' : 'As drawn, and as it fits'}</h3>
      <dl className={cards.facts}>
        {fit.taken ? null : (
          <>
            <Fact name="Marks move" note={mark === null ? undefined : `${labelOf(mark.reading)} furthest`}>
              {mark === null ? 'not at all' : `up to ${words.sureText(mark.by, site.units)}`}
            </Fact>
            <Fact name="Line moves" note={point === null ? undefined : `${nameOf(point)} furthest`}>
              {point === null ? 'not at all' : `up to ${words.sureText(point.by, site.units)}`}
            </Fact>
            {zones?.fitted && mark !== null ? (
              <Fact
                name={`Hole for ${labelOf(mark.reading)}`}
                note={`${holeSizeText(zones.zone.hole, site.units)} as drawn`}
              >
                {holeSizeText(zones.fitted.zone.hole, site.units)}
              </Fact>
            ) : null}
          </>
        )}
        {misfit === null ? null : (
          <Fact name="Misfit" note={misfit.cure}>
            {misfit.text}
          </Fact>
        )}
      </dl>
      <RunsTable runs={fit.runs} />
    </div>
  );

  function labelOf(reading: string): string {
    const run = site.runs.find((r) => r.readings.some(({ id }) => id === reading));
    return `${run?.letter ?? ''}${run?.readings.find(({ id }) => id === reading)?.number ?? ''}`;
  }

  function nameOf({ path, vertex }: { readonly path: string; readonly vertex: string | null }): string {
    return words.targetName({ kind: 'path', id: path, ...(vertex === null ? {} : { vertex }) }, site);
  }
}

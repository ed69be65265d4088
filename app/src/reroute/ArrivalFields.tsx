import { type Arrival, AT_ITS_END, arrivalsOn, type RerouteAsk } from '@footmark/reroute';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { LengthField } from '../controls/unitFields';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { changeAsk } from './waysSession';

/** Where a new pipe arrives: back on the old one, at a tap, cleanout or manhole, or anywhere on a pipe. */
export function ArrivalFields({ ask, length }: { readonly ask: RerouteAsk; readonly length: number }) {
  const site = useSite();
  const derived = useDerived();
  const nameOf = (arrival: Arrival) => {
    if (arrival.is === 'thing')
      return `At ${words.targetName({ kind: 'feature', id: arrival.feature }, site)}`;
    if (arrival.is === 'pipe')
      return `Anywhere on ${words.targetName({ kind: 'path', id: arrival.path }, site)}`;
    return arrival.station === null ? 'Back at its end' : 'Back at a station';
  };
  const atStation: Arrival = { is: 'station', station: length / 2 };
  const arrivals = [AT_ITS_END, atStation, ...arrivalsOn(derived, ask.path)];
  const { to } = ask;
  return (
    <>
      <Choice
        label="Arrives"
        options={arrivals.map((arrival) => ({ id: keyOf(arrival), name: nameOf(arrival) }))}
        value={keyOf(to)}
        onChange={(key) => {
          const chosen = arrivals.find((arrival) => keyOf(arrival) === key);
          if (chosen !== undefined && key !== keyOf(to)) changeAsk({ to: chosen });
        }}
      />
      {to.is === 'station' && to.station !== null ? (
        <LengthField
          label="Comes back at station"
          value={to.station}
          required
          check={(station) =>
            station > ask.from && station < length ? null : 'Between where it leaves and the end of the pipe.'
          }
          onChange={(station) => station !== undefined && changeAsk({ to: { ...to, station } })}
        />
      ) : null}
      {to.is === 'pipe' ? (
        <LengthField
          label="Past its station"
          value={to.past}
          required
          onChange={(past) => past !== undefined && changeAsk({ to: { ...to, past } })}
        />
      ) : null}
      {to.is === 'station' || (to.is === 'pipe' && to.path === ask.path) ? null : (
        <p className={cards.empty}>The old pipe is then given up from where the new one leaves it.</p>
      )}
    </>
  );
}

function keyOf(arrival: Arrival): string {
  switch (arrival.is) {
    case 'station':
      return arrival.station === null ? 'end' : 'station';
    case 'thing':
      return `thing ${arrival.feature}`;
    case 'pipe':
      return `pipe ${arrival.path}`;
  }
}

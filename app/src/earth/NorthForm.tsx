import { formatDeclination, type North, parseDeclination, sameValue, setNorth } from '@footmark/site';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import { PointField } from '../measure/PointField';
import { edit, useSite } from '../session/siteSession';
import { DirectionField } from './DirectionField';
import {
  draftOfNorth,
  isSamePoint,
  type NorthDraft,
  type NorthWay,
  northOfDraft,
  northWays,
} from './northDraft';

const WAY_NAMES: Record<NorthWay, string> = {
  assumed: 'Not known: north is taken as up',
  compass: 'A compass reading along a wall or line',
  line: 'A line of known true azimuth',
  typed: 'The azimuth of straight up on the plan',
  control: 'Points of known latitude and longitude',
};

/** How the plan's north is known. What is complete is taken over at once. */
export function NorthForm() {
  const { frame } = useSite();
  const [draft, setDraft] = useState<NorthDraft>(() => draftOfNorth(frame.north));
  const [followed, setFollowed] = useState(frame.north);
  // what this form has sent comes back a moment later, when more may have been typed
  const [sent, setSent] = useState<North | null>(null);
  if (followed !== frame.north) {
    setFollowed(frame.north);
    setSent(null);
    if (!sameValue(sent, frame.north) && !sameValue(northOfDraft(draft), frame.north))
      setDraft(draftOfNorth(frame.north));
  }
  const change = (part: Partial<NorthDraft>) => {
    const next = { ...draft, ...part };
    setDraft(next);
    const north = northOfDraft(next);
    if (north !== null && !sameValue(north, frame.north)) {
      setSent(north);
      edit('Set north', (s) => setNorth(s, { north }));
    }
  };
  return (
    <>
      <Choice
        label="North is known by"
        options={northWays.map((way) => ({ id: way, name: WAY_NAMES[way] }))}
        value={draft.by}
        onChange={(by) => change({ by })}
      />
      <NorthFields draft={draft} change={change} />
      {draft.from !== null && draft.to !== null && isSamePoint(draft.from, draft.to) ? (
        <p className={cards.problem}>The line starts and ends at the same point. Choose another end.</p>
      ) : null}
    </>
  );
}

type FieldsProps = { readonly draft: NorthDraft; readonly change: (part: Partial<NorthDraft>) => void };

function NorthFields({ draft, change }: FieldsProps) {
  switch (draft.by) {
    case 'assumed':
      return null;
    case 'typed':
      return (
        <DirectionField
          label="True azimuth of straight up on the plan"
          value={draft.azimuth}
          onChange={(azimuth) => change({ azimuth })}
        />
      );
    case 'line':
      return (
        <>
          <LineFields draft={draft} change={change} />
          <DirectionField
            label="True azimuth, looking along it"
            value={draft.azimuth}
            onChange={(azimuth) => change({ azimuth })}
            hint="From a plat or a map whose north is true"
          />
        </>
      );
    case 'compass':
      return (
        <>
          <LineFields draft={draft} change={change} />
          <div className={cards.pair}>
            <DirectionField
              label="Compass reading"
              value={draft.azimuth}
              onChange={(azimuth) => change({ azimuth })}
            />
            <MeasureField
              label="Declination"
              value={draft.declination}
              parse={parseDeclination}
              print={formatDeclination}
              onChange={(declination) => change({ declination })}
              placeholder="8.5 E"
              when="typing"
            />
          </div>
          <p className={cards.empty}>
            Read the compass well away from the house, a car and any steel, looking from the first point to
            the second. Declination belongs to the place and the year: take it from a current chart.
          </p>
        </>
      );
    case 'control':
      return (
        <p className={cards.empty}>Two points or more, as far apart as the yard allows. Give them below.</p>
      );
  }
}

function LineFields({ draft, change }: FieldsProps) {
  return (
    <>
      <PointField label="Looking from" value={draft.from} onChoose={(from) => change({ from })} />
      <PointField label="Looking to" value={draft.to} onChoose={(to) => change({ to })} />
    </>
  );
}

import { type Point, pointInRing } from '@footmark/geometry';
import { type Derived, formatBearing, parseAzimuth, type Ref, type Spot } from '@footmark/site';
import { Plus } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import { showCandidates } from '../session/picking';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './measure.module.css';
import { PointField } from './PointField';
import { pointName } from './pointChoices';
import {
  type DraftOutcome,
  draftOfSpot,
  emptyDraft,
  type MeasuredBy,
  measuredBy,
  outcomeOf,
  type SpotDraft,
} from './spotDraft';

type Props = {
  /** The point that is being placed, null for one that is not there yet. */
  readonly self: Ref | null;
  readonly spot: Spot | null;
  readonly place: Point | null;
  readonly submit: string;
  readonly onPlace: (spot: Spot) => void;
  readonly onCancel?: () => void;
};

/** Takes down how a point was measured, shows both places that the tapes allow, and says when they cannot meet. */
export function SpotForm({ self, spot, place, submit, onPlace, onCancel }: Props) {
  const derived = useDerived();
  const [draft, setDraft] = useState<SpotDraft>(() =>
    spot === null ? emptyDraft('tapes') : draftOfSpot(spot, place),
  );
  const outcome = useMemo(() => outcomeOf(draft, derived), [draft, derived]);
  const [touched, setTouched] = useState(spot === null);
  const [sideChosen, setSideChosen] = useState(spot !== null);
  const change: ChangeDraft = (part) => {
    setTouched(true);
    if (typeof part !== 'function' && part.side !== undefined && part.by === undefined) setSideChosen(true);
    setDraft((before) => ({ ...before, ...(typeof part === 'function' ? part(before) : part) }));
  };

  // until a side is chosen, one that lies outside of the buildings is meant
  if (
    !sideChosen &&
    outcome.is === 'ready' &&
    outcome.other !== null &&
    isUnderRoof(outcome.at, derived) &&
    !isUnderRoof(outcome.other, derived)
  ) {
    setSideChosen(true);
    flipSide(setDraft);
  }

  useEffect(() => {
    showCandidates(
      touched && outcome.is === 'ready'
        ? { chosen: outcome.at, other: outcome.other, swap: () => flipSide(setDraft) }
        : null,
    );
    return () => showCandidates(null);
  }, [outcome, touched]);

  const take = () => {
    if (outcome.is === 'ready') onPlace(outcome.spot);
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <Choice
        label="Measured by"
        options={measuredBy.map((by) => ({ id: by, name: words.spotName(by) }))}
        value={draft.by}
        onChange={(by: MeasuredBy) => change(emptyDraft(by))}
      />
      <SpotFields draft={draft} change={change} self={self} outcome={outcome} />
      <Outcome outcome={outcome} />
      <div className={styles.row}>
        <Action look="primary" type="submit" isDisabled={outcome.is !== 'ready'} wide>
          {submit}
        </Action>
        {onCancel ? (
          <Action look="quiet" onPress={onCancel}>
            Close
          </Action>
        ) : null}
      </div>
    </form>
  );
}

function isUnderRoof(at: Point, derived: Derived): boolean {
  return [...derived.features.values()].some(
    (f) => f.spec.blocksTape && pointInRing(at, f.outline) === 'inside',
  );
}

function flipSide(setDraft: (change: (before: SpotDraft) => SpotDraft) => void): void {
  setDraft((before) => ({ ...before, side: before.side === 'left' ? 'right' : 'left' }));
}

/** Changes some of the draft, as it is when the change comes. */
type ChangeDraft = (part: Partial<SpotDraft> | ((before: SpotDraft) => Partial<SpotDraft>)) => void;

type FieldsProps = {
  readonly draft: SpotDraft;
  readonly change: ChangeDraft;
  readonly self: Ref | null;
  readonly outcome: DraftOutcome;
};

function SpotFields({ draft, change, self, outcome }: FieldsProps) {
  const site = useSite();
  const setRef = (i: number) => (ref: Ref) => change((before) => ({ refs: before.refs.with(i, ref) }));
  const setLength = (i: number) => (value: number | undefined) =>
    change((before) => ({ lengths: before.lengths.with(i, value) }));
  const name = (i: number) => {
    const ref = draft.refs[i];
    return ref ? pointName(site, ref) : i === 0 ? 'the first' : 'the second';
  };
  switch (draft.by) {
    case 'tapes':
      return (
        <>
          {draft.refs.map((ref, i) => (
            // a tape has no identity but its place in the list
            // biome-ignore lint/suspicious/noArrayIndexKey: tapes are only added at the end
            <div key={i} className={styles.pair}>
              <PointField label={`Tape ${i + 1} from`} value={ref} self={self} onChoose={setRef(i)} />
              <LengthField label="Length" value={draft.lengths[i]} onChange={setLength(i)} when="typing" />
            </div>
          ))}
          {draft.refs.length < 6 ? (
            <Action
              look="quiet"
              onPress={() => change({ refs: [...draft.refs, null], lengths: [...draft.lengths, undefined] })}
            >
              <Plus size={18} aria-hidden /> Another tape
            </Action>
          ) : null}
          {outcome.is === 'ready' && outcome.other !== null && draft.refs.length === 2 ? (
            <SideField draft={draft} change={change} looking={`${name(0)} to ${name(1)}`} />
          ) : null}
        </>
      );
    case 'offset':
      return (
        <>
          <div className={styles.pair}>
            <PointField
              label="Line from"
              value={draft.refs[0] ?? null}
              self={self}
              onChoose={setRef(0)}
              onChooseLine={(from, to) => change({ refs: [from, to] })}
            />
            <PointField label="to" value={draft.refs[1] ?? null} self={self} onChoose={setRef(1)} />
          </div>
          <div className={styles.pair}>
            <LengthField
              label={`Along from ${name(0)}`}
              value={draft.lengths[0]}
              onChange={setLength(0)}
              when="typing"
              allowNegative
            />
            <LengthField
              label="Square off it"
              value={draft.lengths[1]}
              onChange={setLength(1)}
              when="typing"
            />
          </div>
          <SideField draft={draft} change={change} looking={`${name(0)} to ${name(1)}`} />
        </>
      );
    case 'bearing':
      return (
        <>
          <PointField label="From" value={draft.refs[0] ?? null} self={self} onChoose={setRef(0)} />
          <div className={styles.pair}>
            <MeasureField
              label="Bearing or azimuth"
              value={draft.azimuth}
              parse={parseAzimuth}
              print={(azimuth) => formatBearing(azimuth, { plain: true })}
              onChange={(azimuth) => change({ azimuth })}
              placeholder="N 45 E"
              when="typing"
            />
            <LengthField label="Distance" value={draft.lengths[0]} onChange={setLength(0)} when="typing" />
          </div>
        </>
      );
    case 'between':
      return (
        <>
          <div className={styles.pair}>
            <PointField label="Between" value={draft.refs[0] ?? null} self={self} onChoose={setRef(0)} />
            <PointField label="and" value={draft.refs[1] ?? null} self={self} onChoose={setRef(1)} />
          </div>
          <Segments
            label="How far along"
            value={String(draft.fraction)}
            options={[
              { id: '0.25', name: '¼' },
              { id: '0.5', name: 'Middle' },
              { id: '0.75', name: '¾' },
            ]}
            onChange={(share) => change({ fraction: Number(share) })}
          />
        </>
      );
    case 'coordinates':
      return (
        <div className={styles.pair}>
          <LengthField
            label="East (x)"
            value={draft.x}
            onChange={(x) => change({ x })}
            when="typing"
            allowNegative
          />
          <LengthField
            label="North (y)"
            value={draft.y}
            onChange={(y) => change({ y })}
            when="typing"
            allowNegative
          />
        </div>
      );
  }
}

function SideField({
  draft,
  change,
  looking,
}: {
  readonly draft: SpotDraft;
  readonly change: ChangeDraft;
  readonly looking: string;
}) {
  return (
    <Segments
      label={`Side, looking from ${looking}`}
      value={draft.side}
      options={[
        { id: 'left', name: 'Left' },
        { id: 'right', name: 'Right' },
      ]}
      onChange={(side) => change({ side })}
    />
  );
}

function Outcome({ outcome }: { readonly outcome: DraftOutcome }) {
  const { units } = useSite();
  switch (outcome.is) {
    case 'incomplete':
    case 'ready':
      return null;
    case 'same-reference':
      return <p className={styles.problem}>{words.spotProblemText({ code: 'same-reference' }, units)}</p>;
    case 'cannot-meet':
      return <p className={styles.problem}>{words.spotProblemText(outcome, units)}</p>;
  }
}

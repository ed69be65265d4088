import { alignThings, type PointOwner, parseTurn, rotateThings, setLocked } from '@footmark/site';
import { Copy, CopyPlus, Lock, LockOpen, Search, Trash2 } from 'lucide-react';
import { memo, useMemo, useState } from 'react';
import { showChosen } from '../canvas/showAll';
import { Action } from '../controls/Action';
import { MeasureField } from '../controls/MeasureField';
import { LengthField } from '../controls/unitFields';
import { copyChosen, duplicateChosen, middleOf, moveChosenBy, removeChosen } from '../session/chosenThings';
import { derivedFrom, edit } from '../session/siteSession';
import styles from './cards.module.css';
import { Fold } from './Fold';

/** What can be done to one thing or several as a whole. Points that were measured stay where their measurements hold them. */
export function ThingActions({ owners }: { readonly owners: readonly PointOwner[] }) {
  // nothing else of them matters: an edit that moves them leaves the actions as they are
  const facts = JSON.stringify(owners.map(({ id, locked }) => ({ id, locked: locked === true })));
  const things: readonly Thing[] = useMemo(() => JSON.parse(facts), [facts]);
  return <ActionsOf things={things} />;
}

type Thing = { readonly id: string; readonly locked: boolean };

const ActionsOf = memo(function ActionsOf({ things }: { readonly things: readonly Thing[] }) {
  const ids = things.map(({ id }) => id);
  const free = things.filter(({ locked }) => !locked).map(({ id }) => id);
  const locked = free.length === 0;
  const lock = () =>
    edit(locked ? 'Unlock' : 'Lock', (s) =>
      ids.reduce((now, id) => setLocked(now, { id, locked: !locked }), s),
    );
  return (
    <>
      <div className={styles.actions}>
        <Action onPress={showChosen}>
          <Search size={18} aria-hidden /> Show it
        </Action>
        <Action onPress={duplicateChosen}>
          <CopyPlus size={18} aria-hidden /> Duplicate
        </Action>
        <Action onPress={copyChosen}>
          <Copy size={18} aria-hidden /> Copy
        </Action>
        <Action onPress={lock}>
          {locked ? <LockOpen size={18} aria-hidden /> : <Lock size={18} aria-hidden />}{' '}
          {locked ? 'Unlock' : 'Lock'}
        </Action>
        {things.length > 1 ? (
          <Action onPress={removeChosen}>
            <Trash2 size={18} aria-hidden /> Delete
          </Action>
        ) : null}
      </div>
      {locked ? null : (
        <Fold title={things.length > 1 ? 'Move, turn, line up' : 'Move, turn'}>
          {free.length < ids.length ? <p className={styles.empty}>What is locked stays as it is.</p> : null}
          <MoveFields ids={free} />
          <TurnField ids={free} />
          {free.length > 1 ? <LineUp ids={free} /> : null}
        </Fold>
      )}
    </>
  );
});

function MoveFields({ ids }: { readonly ids: readonly string[] }) {
  const [east, setEast] = useState<number | undefined>(undefined);
  const [north, setNorth] = useState<number | undefined>(undefined);
  const [moves, setMoves] = useState(0);
  const move = () => {
    if (!east && !north) return;
    if (!moveChosenBy(ids, east ?? 0, north ?? 0)) return;
    setEast(undefined);
    setNorth(undefined);
    setMoves((n) => n + 1);
  };
  return (
    <form
      className={styles.section}
      onSubmit={(event) => {
        event.preventDefault();
        move();
      }}
    >
      <div className={styles.pair}>
        <LengthField
          key={`e${moves}`}
          label="East"
          value={east}
          onChange={setEast}
          when="typing"
          allowNegative
        />
        <LengthField
          key={`n${moves}`}
          label="North"
          value={north}
          onChange={setNorth}
          when="typing"
          allowNegative
        />
      </div>
      <Action type="submit" isDisabled={!east && !north}>
        Move by this
      </Action>
    </form>
  );
}

function TurnField({ ids }: { readonly ids: readonly string[] }) {
  const [turn, setTurn] = useState<number | undefined>(undefined);
  const [turns, setTurns] = useState(0);
  const rotate = () => {
    const about = middleOf(ids);
    if (turn === undefined || about === null) return;
    const turned = edit('Turn', (site) =>
      rotateThings(site, { ids, about, angle: turn, places: derivedFrom(site).points }),
    );
    if (!turned) return;
    setTurn(undefined);
    setTurns((n) => n + 1);
  };
  return (
    <form
      className={styles.section}
      onSubmit={(event) => {
        event.preventDefault();
        rotate();
      }}
    >
      <MeasureField
        key={turns}
        label="Turn about the middle"
        placeholder="R 12"
        value={turn}
        parse={parseTurn}
        print={String}
        onChange={setTurn}
        when="typing"
      />
      <Action type="submit" isDisabled={turn === undefined}>
        Turn by this
      </Action>
    </form>
  );
}

function LineUp({ ids }: { readonly ids: readonly string[] }) {
  const lineUp = (axis: 'x' | 'y') =>
    edit('Line up', (site) => alignThings(site, { ids, axis, places: derivedFrom(site).points }));
  return (
    <div className={styles.actions}>
      <Action onPress={() => lineUp('x')}>Line up north to south</Action>
      <Action onPress={() => lineUp('y')}>Line up east to west</Action>
    </div>
  );
}

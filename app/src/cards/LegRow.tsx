import { azimuthBetween, distance } from '@footmark/geometry';
import { type LegProblem, type PointOwner, refKey, setLegLength, type Vertex } from '@footmark/site';
import { directionText, lengthText } from '@footmark/words';
import { useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { Segments } from '../controls/Segments';
import { Tick } from '../controls/Tick';
import { LengthField } from '../controls/unitFields';
import { currentSite, derivedFrom, edit, useDerived, useSite } from '../session/siteSession';
import { select, selectLeg } from '../session/workbench';
import { words } from '../words';
import styles from './cards.module.css';
import { lengthAcross, wallAcross } from './squareWalls';
import { targetOf } from './targetOf';

type Props = {
  readonly owner: PointOwner;
  readonly start: Vertex;
  readonly end: Vertex;
  readonly isOpen: boolean;
};

/** The leg between two points: its length and direction, and on a tap its length to change, with the end that stays. */
export function LegRow({ owner, start, end, isOpen }: Props) {
  const site = useSite();
  const derived = useDerived();
  const place = (v: Vertex) => derived.points.get(refKey({ of: owner.id, at: v.id }))?.at;
  const [a, b] = [place(start), place(end)];
  if (a === undefined || b === undefined) return null;
  const length = distance(a, b);
  const [long, towards] = [lengthText(length, site.units), directionText(azimuthBetween(a, b), site.units)];
  return (
    <>
      <Button
        className={styles.leg ?? ''}
        aria-expanded={isOpen}
        aria-label={`Length from ${start.id.toUpperCase()} to ${end.id.toUpperCase()}, ${long} ${towards}`}
        onPress={() => (isOpen ? select(targetOf(owner)) : selectLeg(targetOf(owner), end.id))}
      >
        <span>{long}</span> <span className={styles.hintText}>{towards}</span>
      </Button>
      {isOpen && !owner.locked ? (
        <LegLengthForm key={length} owner={owner} start={start} end={end} length={length} />
      ) : null}
    </>
  );
}

function LegLengthForm({ owner, start, end, length }: Omit<Props, 'isOpen'> & { readonly length: number }) {
  const [typed, setTyped] = useState<number | undefined>(length);
  const [keeps, setKeeps] = useState<'start' | 'end'>('start');
  const [problem, setProblem] = useState<LegProblem | null>(null);
  const across = useMemo(() => wallAcross(owner, end, derivedFrom(currentSite()).points), [owner, end]);
  const [square, setSquare] = useState(true);
  const change = () => {
    if (typed === undefined || typed <= 0) return;
    const site = currentSite();
    const places = derivedFrom(site).points;
    const first = setLegLength(site, { of: owner.id, end: end.id, distance: typed, keeps, places });
    const done = first.ok && square && across ? lengthAcross(first.site, owner, across, typed, keeps) : first;
    setProblem(done.ok ? null : done.code);
    if (!done.ok) return;
    if (edit(`Change a length of ${words.targetName(targetOf(owner), site)}`, () => done.site))
      select(targetOf(owner));
  };
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'center' });
  }, []);
  return (
    <form
      ref={form}
      className={styles.vertexForm}
      onSubmit={(event) => {
        event.preventDefault();
        change();
      }}
    >
      <LengthField
        label="Length"
        value={typed}
        onChange={setTyped}
        when="typing"
        required
        autoFocus
        onEnter={change}
      />
      <Segments
        label="Which end stays"
        value={keeps}
        options={[
          { id: 'start', name: start.id.toUpperCase() },
          { id: 'end', name: end.id.toUpperCase() },
        ]}
        onChange={(stays) => {
          setKeeps(stays);
          setProblem(null);
        }}
      />
      {across === null ? null : (
        <Tick isSelected={square} onChange={setSquare}>
          Keep it square: the side across changes too
        </Tick>
      )}
      {problem === null ? null : <p className={styles.problem}>{words.legProblemText(problem)}</p>}
      <Action look="primary" type="submit" isDisabled={typed === undefined || typed <= 0}>
        Change the length
      </Action>
    </form>
  );
}

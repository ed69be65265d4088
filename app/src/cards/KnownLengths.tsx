import { stationOfVertex } from '@footmark/geometry';
import {
  type DerivedPath,
  type KnownLength,
  type Path,
  removeKnownLength,
  setKnownLength,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { LengthField } from '../controls/unitFields';
import { edit, useSite } from '../session/siteSession';
import { newId } from '../tools/newId';
import styles from './cards.module.css';

type Props = { readonly path: Path; readonly curve: DerivedPath | undefined };

/** Lengths of the pipe that were taped or are known from a plan; the fit of the runs holds the pipe to them. */
export function KnownLengths({ path, curve }: Props) {
  const known = path.knownLengths ?? [];
  return (
    <>
      {known.length === 0 ? (
        <p className={styles.empty}>
          A length between two of its points that was taped or stands on a plan helps the fit of the runs.
        </p>
      ) : (
        <ul className={styles.rows}>
          {known.map((one) => (
            <li key={one.id}>
              <KnownRow path={path} curve={curve} known={one} />
            </li>
          ))}
        </ul>
      )}
      {path.locked ? null : <KnownForm path={path} />}
    </>
  );
}

function KnownRow({ path, curve, known }: Props & { readonly known: KnownLength }) {
  const { units } = useSite();
  const drawn = drawnBetween(curve, path, known);
  const ends = `${known.from.toUpperCase()} to ${known.to.toUpperCase()}`;
  return (
    <div className={styles.row}>
      <span className={styles.grow}>
        {ends}
        <small>{drawn === null ? '' : `drawn ${lengthText(drawn, units)}`}</small>
      </span>
      <span className={styles.number}>{lengthText(known.length, units)}</span>
      <Action
        look="icon"
        aria-label={`Remove the length ${ends}`}
        isDisabled={path.locked === true}
        onPress={() =>
          edit('Remove a known length', (s) => removeKnownLength(s, { id: path.id, known: known.id }))
        }
      >
        <Trash2 size={18} aria-hidden />
      </Action>
    </div>
  );
}

function drawnBetween(curve: DerivedPath | undefined, path: Path, { from, to }: KnownLength): number | null {
  const at = (id: string) => path.vertices.findIndex((v) => v.id === id);
  if (curve === undefined || at(from) < 0 || at(to) < 0) return null;
  return Math.abs(stationOfVertex(curve.line, at(to)) - stationOfVertex(curve.line, at(from)));
}

function KnownForm({ path }: { readonly path: Path }) {
  const [from, setFrom] = useState(path.vertices[0]?.id ?? null);
  const [to, setTo] = useState(path.vertices.at(-1)?.id ?? null);
  const [length, setLength] = useState<number | undefined>(undefined);
  const points = path.vertices.map((v) => ({ id: v.id, name: v.id.toUpperCase() }));
  const isWhole = from !== null && to !== null && from !== to && length !== undefined && length > 0;
  const add = () => {
    if (!isWhole) return;
    const done = edit('Say a length of the pipe', (s) =>
      setKnownLength(s, { id: path.id, known: { id: newId('l'), from, to, length } }),
    );
    if (done) setLength(undefined);
  };
  return (
    <form
      className={styles.section}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div className={styles.pair}>
        <Choice label="From point" options={points} value={from} onChange={setFrom} />
        <Choice label="To point" options={points} value={to} onChange={setTo} />
      </div>
      <div className={styles.pair}>
        <LengthField
          key={(path.knownLengths ?? []).length}
          label="Length along the pipe"
          value={length}
          when="typing"
          hint="In plan, as taped or from a plan."
          onChange={setLength}
        />
        <Action type="submit" isDisabled={!isWhole}>
          Add the length
        </Action>
      </div>
    </form>
  );
}

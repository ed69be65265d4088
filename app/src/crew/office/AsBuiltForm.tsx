import { findsBeside, findsOn, makeAsBuilt } from '@footmark/site';
import { useState } from 'react';
import cards from '../../cards/cards.module.css';
import { Action } from '../../controls/Action';
import { Choice } from '../../controls/Choice';
import { Tick } from '../../controls/Tick';
import { derivedFrom, edit, useDerived, useSite } from '../../session/siteSession';
import { notify, show } from '../../session/workbench';
import { newId } from '../../tools/newId';
import { words } from '../../words';
import { AsBuiltTies } from './AsBuiltTies';

/** Draws a pipe as it was built, through what was found, and ties it to what will still stand. */
export function AsBuiltForm() {
  const site = useSite();
  const derived = useDerived();
  const found = [...derived.paths.values()].filter(
    (on) =>
      on.path.state !== 'as-built' &&
      (findsOn(derived, on).length > 0 || findsBeside(derived, on).length > 0),
  );
  const [chosen, setChosen] = useState<string | null>(null);
  // finds of no mark that are said to be of the pipe
  const [also, setAlso] = useState<readonly string[]>([]);
  const on = found.find(({ path }) => path.id === chosen) ?? found[0];
  const count = on === undefined ? 0 : findsOn(derived, on, also).length;
  const name = (id: string) => words.targetName({ kind: 'path', id }, site);
  const draw = () => {
    if (on === undefined) return;
    const id = newId('p');
    const made = edit(`Draw ${name(on.path.id)} as built`, (s) =>
      makeAsBuilt(s, {
        path: on.path.id,
        id,
        name: asBuiltName(name(on.path.id)),
        derived: derivedFrom(s),
        also,
      }),
    );
    if (!made) return;
    show({ kind: 'path', id });
    notify('Drawn as built: solid where it was found, dashed where it is taken to lie. The old line stays.');
  };
  return (
    <div className={cards.section}>
      <h3>As built</h3>
      {on === undefined ? (
        <p className={cards.empty}>
          Once a mark is found and its place measured, the pipe can be drawn as built.
        </p>
      ) : (
        <>
          {found.length < 2 ? null : (
            <Choice
              label="Pipe"
              options={found.map(({ path }) => ({ id: path.id, name: name(path.id) }))}
              value={on.path.id}
              onChange={setChosen}
            />
          )}
          {findsBeside(derived, on).map(({ record, label }) => (
            <Tick
              key={record.id}
              isSelected={also.includes(record.id)}
              onChange={(isIt) =>
                setAlso(isIt ? [...also, record.id] : also.filter((id) => id !== record.id))
              }
            >
              What was found near {label || 'it'} is this pipe: {words.crew.foundText(record, site)}{' '}
              {record.note}
            </Tick>
          ))}
          <p>
            {name(on.path.id)}: {count === 1 ? 'one place' : `${count} places`} found on it. Between them it
            is taken to lie as drawn.
          </p>
          <Action wide onPress={draw} isDisabled={count === 0}>
            Draw it as built
          </Action>
        </>
      )}
      {site.paths
        .filter((path) => path.state === 'as-built')
        .map((path) => (
          <AsBuiltTies key={path.id} path={path.id} name={name(path.id)} />
        ))}
    </div>
  );
}

/** A line of the file takes 200 characters. */
function asBuiltName(of: string): string {
  return `${of} as built`.slice(0, 200);
}

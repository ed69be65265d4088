import { type Grid, type GridSystem, gridFactors, gridNotes } from '@footmark/grid';
import type { EarthPoint } from '@footmark/site';
import { useState } from 'react';
import cards from '../../cards/cards.module.css';
import { Fact } from '../../cards/Fact';
import { Action } from '../../controls/Action';
import { Choice } from '../../controls/Choice';
import { LengthField } from '../../controls/unitFields';
import { useDerived, useSite } from '../../session/siteSession';
import { toggleLeaf } from '../../session/workbench';
import { words } from '../../words';
import { chooseGrid } from './gridChoice';
import { TypedGrid } from './TypedGrid';
import { useGrids } from './useGrids';

const OWN = 'own';
const TYPED = 'typed';

/** In which coordinates files are given, and what goes between them and the ground. */
export function GridFields({ grid }: { readonly grid: Grid | null }) {
  const { id } = useSite();
  const { place, systems } = useGrids();
  const [isTyping, setTyping] = useState(false);
  if (place === null)
    return (
      <>
        <p className={cards.empty}>
          Files are in this site’s own coordinates. With a point of known latitude and longitude they can be
          in State Plane, UTM or another system.
        </p>
        <Action onPress={() => toggleLeaf('north')}>Add a known point</Action>
      </>
    );
  const keyOf = (system: GridSystem) =>
    system.kind === 'typed' ? TYPED : `${system.epsg} ${system.unit.name}`;
  const value = isTyping ? TYPED : grid === null ? OWN : keyOf(grid.system);
  return (
    <>
      <Choice
        label="Coordinates in files"
        options={[
          { id: OWN, name: 'This site’s own' },
          ...systems.map((system) => ({ id: keyOf(system), name: words.gridSystemText(system) })),
          { id: TYPED, name: 'Another system, typed' },
        ]}
        value={value}
        onChange={(key) => {
          setTyping(key === TYPED);
          if (key === OWN) chooseGrid(id, null);
          const chosen = systems.find((system) => keyOf(system) === key);
          if (chosen !== undefined) chooseGrid(id, chosen);
        }}
      />
      {value === TYPED ? (
        <TypedGrid
          system={grid?.system.kind === 'typed' ? grid.system : null}
          onDone={(system) => {
            chooseGrid(id, system);
            setTyping(false);
          }}
        />
      ) : null}
      {grid === null || isTyping ? null : <GridFacts grid={grid} place={place} />}
    </>
  );
}

/** Convergence, scale and height, and what must be known beside such coordinates. */
function GridFacts({ grid, place }: { readonly grid: Grid; readonly place: EarthPoint }) {
  const { frame } = useDerived();
  const [height, setHeight] = useState<number | undefined>(undefined);
  const factors = gridFactors(grid, place, height ?? null);
  if (!factors.ok) return <p className={cards.empty}>This system has no coordinates here.</p>;
  return (
    <>
      <LengthField
        label="Height above sea level, for the elevation factor"
        value={height}
        allowNegative
        onChange={setHeight}
      />
      <dl>
        {words.gridFactorRows(factors.value).map(({ name, text }) => (
          <Fact key={name} name={name}>
            {text}
          </Fact>
        ))}
      </dl>
      {gridNotes(grid, place, frame, factors.value).map((note) => (
        <p key={note.code} className={cards.empty}>
          {words.gridNoteText(note)}
        </p>
      ))}
    </>
  );
}

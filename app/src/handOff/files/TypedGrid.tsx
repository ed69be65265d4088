import { type GridSystem, typedSystem } from '@footmark/grid';
import type { Said } from '@footmark/words';
import { useState } from 'react';
import cards from '../../cards/cards.module.css';
import { Action } from '../../controls/Action';
import { TextLine } from '../../controls/TextLine';
import { words } from '../../words';

const LONGEST = 4000;

/** A coordinate system by its definition, as a register or a surveyor gives it. */
export function TypedGrid({
  system,
  onDone,
}: {
  readonly system: GridSystem | null;
  readonly onDone: (system: GridSystem) => void;
}) {
  const [code, setCode] = useState(system?.epsg === null || system === null ? '' : String(system.epsg));
  const [definition, setDefinition] = useState(system?.definition ?? '');
  // of what was last pressed: were it gone as soon as something is typed, the button would move from under the finger
  const [problem, setProblem] = useState<Said | null>(null);
  const epsg = /^\d{4,6}$/.test(code.trim()) ? Number(code) : undefined;
  const typed = typedSystem({
    ...(epsg === undefined ? {} : { epsg }),
    name: epsg === undefined ? 'Typed system' : `EPSG ${epsg}`,
    definition,
  });
  return (
    <>
      <TextLine label="EPSG code, if there is one" value={code} maxLength={6} onCommit={setCode} />
      <TextLine
        label="Its definition (PROJ string or WKT)"
        value={definition}
        lines={4}
        maxLength={LONGEST}
        onCommit={setDefinition}
      />
      {problem === null ? null : (
        <p role="alert" className={cards.empty}>
          {problem.text} {problem.cure}
        </p>
      )}
      <Action
        onPress={() => {
          setProblem(typed.ok ? null : words.definitionProblemText(typed.code));
          if (typed.ok) onDone(typed.value);
        }}
      >
        Use this system
      </Action>
    </>
  );
}

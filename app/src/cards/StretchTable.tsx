import { type Path, pipeMaterials, removeStretch, type Stretch, setStretch } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { DiameterField, LengthField, SlopeField } from '../controls/unitFields';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';
import cards from './cards.module.css';
import styles from './StretchTable.module.css';

type Props = { readonly path: Path; readonly length: number | null };

/** Material, diameter and slope of a pipe, stretch by stretch from its start. */
export function StretchTable({ path, length }: Props) {
  const site = useSite();
  const [from, setFrom] = useState<number | undefined>(undefined);
  const name = words.targetName({ kind: 'path', id: path.id }, site);
  const fits = from !== undefined && from > 0 && (length === null || from < length);
  const begin = () => {
    const before = path.stretches.findLast((s) => s.from < (from ?? 0));
    if (from === undefined || before === undefined || !fits) return;
    const begun = edit(`Begin a stretch of ${name}`, (s) =>
      setStretch(s, { id: path.id, stretch: { ...before, from } }),
    );
    if (begun) setFrom(undefined);
  };
  return (
    <div className={cards.section}>
      {path.stretches.map((stretch, i) => (
        <StretchRow
          key={stretch.from}
          path={path}
          stretch={stretch}
          to={path.stretches[i + 1]?.from ?? length}
        />
      ))}
      <form
        className={cards.pair}
        onSubmit={(event) => {
          event.preventDefault();
          begin();
        }}
      >
        <LengthField
          key={path.stretches.length}
          label="It changes at"
          value={from}
          onChange={setFrom}
          when="typing"
          hint={
            from !== undefined && !fits
              ? `Within the pipe, which is ${length === null ? 'not complete' : lengthText(length, site.units)}.`
              : 'From the start of the pipe.'
          }
        />
        <Action type="submit" isDisabled={!fits}>
          Begin a stretch
        </Action>
      </form>
    </div>
  );
}

function StretchRow({
  path,
  stretch,
  to,
}: {
  readonly path: Path;
  readonly stretch: Stretch;
  readonly to: number | null;
}) {
  const { units } = useSite();
  const change = (part: Partial<Stretch>) =>
    edit('Change the pipe', (s) => setStretch(s, { id: path.id, stretch: { ...stretch, ...part } }));
  return (
    <fieldset className={styles.stretch}>
      <legend>
        {lengthText(stretch.from, units)} to {to === null ? 'the end' : lengthText(to, units)}
      </legend>
      <Choice
        label="Material"
        options={pipeMaterials.map((id) => ({ id, name: words.materialName(id) }))}
        value={stretch.material}
        onChange={(material) => change({ material })}
      />
      <div className={cards.pair}>
        <DiameterField
          label="Diameter inside"
          value={stretch.diameter}
          required
          onChange={(diameter) => diameter !== undefined && change({ diameter })}
        />
        <SlopeField
          label="Slope"
          value={stretch.slope}
          required
          onChange={(slope) => slope !== undefined && change({ slope })}
        />
      </div>
      {stretch.from === 0 ? null : (
        <Action
          look="quiet"
          onPress={() =>
            edit('Join two stretches', (s) => removeStretch(s, { id: path.id, from: stretch.from }))
          }
        >
          Remove this stretch
        </Action>
      )}
    </fieldset>
  );
}

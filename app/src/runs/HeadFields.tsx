import type { Run } from '@footmark/site';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import { words } from '../words';
import type { ChangeRun } from './changeRunFacts';

type Props = { readonly run: Run; readonly change: ChangeRun };

/** How long the camera head is, which puts the sonde behind what the camera sees, and which end of it stood at the zero. */
export function HeadFields({ run: { head }, change }: Props) {
  return (
    <>
      <LengthField
        label="Camera head, lens to tail"
        value={head.length === 0 ? undefined : head.length}
        placeholder=""
        hint="A receiver finds the sonde in the tail, so far behind what the camera sees."
        onChange={(length) => change('Change the head length', { head: { ...head, length: length ?? 0 } })}
      />
      {head.length === 0 ? null : (
        <Segments
          label="What stood at the zero"
          options={(['lens', 'tail'] as const).map((id) => ({ id, name: words.headPartName(id) }))}
          value={head.zeroed}
          onChange={(zeroed) => change('Change what stood at the zero', { head: { ...head, zeroed } })}
        />
      )}
    </>
  );
}

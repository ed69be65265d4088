import { changePathVertex, lengthInputText, type Path, type PathVertex } from '@footmark/site';
import { LengthField } from '../controls/unitFields';
import { edit, useSite } from '../session/siteSession';
import styles from './cards.module.css';

type Props = { readonly path: Path; readonly vertex: PathVertex };

/** What the fitting at a point of a pipe does to the cable: the radius of its bend, and how far the pipe drops there. */
export function PathPointFields({ path, vertex }: Props) {
  const { units } = useSite();
  const change = (part: Partial<Record<'bendRadius' | 'drop', number | undefined>>) =>
    edit('Change a fitting', (s) => changePathVertex(s, { id: path.id, at: vertex.id, facts: part }));
  return (
    <div className={styles.pair}>
      <LengthField
        label="Radius of this bend"
        value={vertex.bendRadius}
        placeholder={lengthInputText(path.bendRadius, units.length)}
        hint="As the pipe's other bends unless given."
        onChange={(bendRadius) => change({ bendRadius })}
      />
      <LengthField
        label="Drops straight down by"
        value={vertex.drop}
        placeholder={lengthInputText(0, units.length)}
        hint="Cable that does not show in plan."
        onChange={(drop) => change({ drop })}
      />
    </div>
  );
}

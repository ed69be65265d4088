import {
  changePathVertex,
  lengthInputText,
  type Path,
  type PathPointFacts,
  type PathVertex,
} from '@footmark/site';
import { LengthField } from '../controls/unitFields';
import { edit, useSite } from '../session/siteSession';
import { BendField } from './BendField';
import styles from './cards.module.css';
import { LevelFields } from './LevelFields';

type Props = { readonly path: Path; readonly vertex: PathVertex };

/** What is known of the pipe at one of its points besides where it is: the fitting there, and how deep it lies. */
export function PathPointFields({ path, vertex }: Props) {
  const { units } = useSite();
  const change = (facts: PathPointFacts, name = 'Change a fitting') =>
    edit(name, (s) => changePathVertex(s, { id: path.id, at: vertex.id, facts }));
  const isEnd = vertex === path.vertices[0] || vertex === path.vertices.at(-1);
  return (
    <>
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
      {isEnd ? null : <BendField bend={vertex.bend} onChange={(bend) => change({ bend })} />}
      <LevelFields
        level={vertex.level}
        hasDrop={(vertex.drop ?? 0) > 0}
        onChange={(level) => change({ level }, 'Change a level')}
      />
    </>
  );
}

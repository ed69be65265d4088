import { changePath, type Path, reversePath } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ArrowLeft, ArrowLeftRight, SprayCan, Trash2, TrendingDown } from 'lucide-react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { TextLine } from '../controls/TextLine';
import { LengthField } from '../controls/unitFields';
import { ConcernsSection } from '../dig/ConcernsSection';
import { openProfile, useProfileView } from '../profile/profileView';
import { AsRoute } from '../reroute/AsRoute';
import { removeThings } from '../session/chosenThings';
import { derivedFrom, edit, useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { setOutPath } from '../setOut/showSetOut';
import { words } from '../words';
import { aboutPath } from './aboutPath';
import styles from './cards.module.css';
import { FindingRow } from './FindingRow';
import { KnownLengths } from './KnownLengths';
import { StretchTable } from './StretchTable';
import { ThingActions } from './ThingActions';
import { targetOf } from './targetOf';
import { VertexList } from './VertexList';

const STATES = ['existing', 'proposed', 'as-built'] as const;

/** One pipe: what it is made of from where to where, and the points that it is drawn through. */
export function PathCard({ path }: { readonly path: Path }) {
  const site = useSite();
  const derived = useDerived();
  const curve = derived.paths.get(path.id);
  const about = aboutPath(derived.findings, path.id);
  const name = words.targetName(targetOf(path), site);
  const turnRound = () =>
    edit(`Turn ${name} round`, (s) =>
      reversePath(s, { id: path.id, length: curve?.length ?? 0, places: derivedFrom(s).points }),
    );
  const remove = () => removeThings([path.id]);
  const profileOpen = useProfileView((v) => v.isOpen);
  return (
    <section className={styles.card} aria-label={name}>
      <div className={styles.head}>
        <Action look="quiet" onPress={() => select(null)}>
          <ArrowLeft size={20} aria-hidden /> Line
        </Action>
        <Action look="quiet" onPress={remove} isDisabled={path.locked === true}>
          <Trash2 size={20} aria-hidden /> Delete
        </Action>
      </div>
      <h2 className={styles.title}>
        {name}
        {curve ? `, ${lengthText(curve.length, site.units)}` : ''}
      </h2>
      {curve === undefined ? null : (
        <div className={styles.actions}>
          {profileOpen ? null : (
            <Action onPress={() => openProfile(path.id)}>
              <TrendingDown size={18} aria-hidden /> Show its profile
            </Action>
          )}
          {path.state === 'proposed' ? (
            <Action onPress={() => setOutPath(path.id)}>
              <SprayCan size={18} aria-hidden /> Set it out
            </Action>
          ) : null}
        </div>
      )}
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      <ConcernsSection here={{ kind: 'path', id: path.id }} />
      <div className={styles.pair}>
        <TextLine
          label="Name"
          value={path.name}
          onCommit={(text) =>
            edit('Name the pipe', (s) => changePath(s, { id: path.id, facts: { name: text } }))
          }
        />
        <Choice
          label="State"
          options={STATES.map((id) => ({ id, name: words.pathStateName(id) }))}
          value={path.state}
          onChange={(state) =>
            edit('Change the state', (s) => changePath(s, { id: path.id, facts: { state } }))
          }
        />
      </div>
      {path.state === 'proposed' ? <AsRoute path={path} /> : null}
      <div className={styles.section}>
        <h3>What it is made of</h3>
        <StretchTable path={path} length={curve?.length ?? null} />
      </div>
      <LengthField
        label="Radius of its bends"
        value={path.bendRadius}
        required
        hint="Centre line of the fittings. The cable takes the bend, not the corner."
        onChange={(bendRadius) =>
          bendRadius !== undefined &&
          edit('Change the bends', (s) => changePath(s, { id: path.id, facts: { bendRadius } }))
        }
      />
      <div className={styles.section}>
        <h3>Points, with the flow</h3>
        <VertexList owner={path} closed={false} />
      </div>
      <div className={styles.section}>
        <h3>Known lengths</h3>
        <KnownLengths key={path.vertices.length} path={path} curve={curve} />
      </div>
      {path.locked || curve === undefined ? null : (
        <div className={styles.actions}>
          <Action onPress={turnRound}>
            <ArrowLeftRight size={18} aria-hidden /> Turn the pipe round
          </Action>
        </div>
      )}
      <ThingActions owners={[path]} />
    </section>
  );
}

import type { TreeEncroachments, TreeZones } from '@footmark/dig';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { showPlace } from '../cards/showPlace';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { DigFindingRow } from './DigFindingRow';
import styles from './dig.module.css';
import { RuleSource } from './RuleSource';

/** Every tree with its root zone by the site's rule and, beside it, by the others: how much pipe is in it, how much digs take. */
export function TreesFold({
  trees: { trees, pipes, totals, findings },
}: {
  readonly trees: TreeEncroachments;
}) {
  const unmeasured = findings.filter((f) => f.code === 'tree-without-diameter');
  const count = trees.length + unmeasured.length;
  if (count === 0) return null;
  return (
    <Fold title="Trees" result={resultText()}>
      {trees.map((tree) => (
        <TreeZonesTable
          key={tree.tree}
          tree={tree}
          pipes={pipes.filter((p) => p.tree === tree.tree)}
          taken={totals.find((t) => t.tree === tree.tree)}
        />
      ))}
      {unmeasured.map((finding) => (
        <DigFindingRow key={finding.values.tree} finding={finding} />
      ))}
    </Fold>
  );

  function resultText(): string {
    const most = Math.max(0, ...totals.map(({ zones: [chosen] }) => chosen?.share ?? 0));
    return most === 0 ? String(count) : `${count}, up to ${words.shareText(most)} of a root zone taken`;
  }
}

type Props = {
  readonly tree: TreeZones;
  readonly pipes: TreeEncroachments['pipes'];
  readonly taken: TreeEncroachments['totals'][number] | undefined;
};

function TreeZonesTable({ tree, pipes, taken }: Props) {
  const site = useSite();
  const size = (metres: number) => words.sureText(metres, site.units);
  const name = words.targetName({ kind: 'feature', id: tree.tree }, site);
  return (
    <div className={cards.section}>
      <Button className={styles.name ?? ''} onPress={() => showPlace({ kind: 'feature', id: tree.tree })}>
        {name}
        {tree.protected ? ', protected' : ''}
      </Button>
      {pipes.map((pipe) => (
        <p key={pipe.path}>
          {words.targetName({ kind: 'path', id: pipe.path }, site)}{' '}
          {pipe.distance < 0
            ? 'runs under its trunk'
            : `passes ${size(pipe.distance)} from the face of its trunk`}
          ; the tree stands to the {pipe.side} of the flow. {words.boreText(pipe.bore, site.units)}
        </p>
      ))}
      <table className={styles.zones}>
        <thead>
          <tr>
            <th scope="col">By</th>
            <th scope="col">Radius</th>
            <th scope="col">Pipe in it</th>
            <th scope="col">Taken</th>
          </tr>
        </thead>
        <tbody>
          {tree.zones.map((zone, i) => (
            <ZoneRow
              key={zone.rule}
              name={words.treeRuleName(zone.rule)}
              note={zone.assumed.length === 0 ? null : words.treeTakenText(zone.assumed)}
              chosen={i === 0}
              radius={zone.radius}
              pipe={pipes.reduce((sum, { zones }) => sum + (zones[i]?.length ?? 0), 0)}
              taken={`${taken?.atLeast ? 'at least ' : ''}${words.shareText(taken?.zones[i]?.share ?? 0)}`}
            />
          ))}
          {tree.zones.map(({ rule, inner }, i) =>
            inner === null ? null : (
              <ZoneRow
                key={`${rule}/${inner.is}`}
                name={words.holdingRootsName(inner.is)}
                note={inner.row === tree.held.row ? 'No dig may cut these.' : null}
                chosen={inner.row === tree.held.row}
                radius={inner.radius}
                pipe={pipes.reduce((sum, { zones }) => sum + (zones[i]?.inner ?? 0), 0)}
                taken={cutText(taken, i)}
              />
            ),
          )}
        </tbody>
      </table>
      <RuleSource rule={tree.chosen.row} />
      <RuleSource rule={tree.held.row} />
    </div>
  );
}

/** Whether roots that hold it up are cut, by one way to tell. */
function cutText(taken: Props['taken'], zone: number): string {
  if (taken?.zones[zone]?.inner === true) return 'cut';
  return taken?.atLeast ? 'not known' : 'not cut';
}

type ZoneRowProps = {
  readonly name: string;
  readonly note: string | null;
  readonly chosen: boolean;
  readonly radius: number;
  readonly pipe: number;
  readonly taken: string;
};

function ZoneRow({ name, note, chosen, radius, pipe, taken }: ZoneRowProps) {
  const { units } = useSite();
  return (
    <tr data-chosen={chosen || undefined}>
      <th scope="row">
        {name}
        {note === null ? null : <small> {note}</small>}
      </th>
      <td data-name="Radius">{words.sureText(radius, units)}</td>
      <td data-name="Pipe in it">{words.sureText(pipe, units)}</td>
      <td data-name="Taken">{taken}</td>
    </tr>
  );
}

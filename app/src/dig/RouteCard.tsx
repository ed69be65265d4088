import { BookOpen, Route as RouteIcon } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { toggleLeaf, useWorkbench } from '../session/workbench';
import { ClearancesFold } from './ClearancesFold';
import { DigCard } from './DigCard';
import { DigCautions } from './DigCautions';
import { DigList } from './DigList';
import { DrainFold } from './DrainFold';
import { useDigging } from './digging';
import { LesserFolds, MustSection } from './FindingLists';
import { GroundFold } from './GroundFold';
import { LandFold } from './LandFold';
import { NotesFold } from './NotesFold';
import { OneCallFold } from './OneCallFold';
import { ServicesFold } from './ServicesFold';
import { TreesFold } from './TreesFold';
import { WhiteLinesFold } from './WhiteLinesFold';

/** What a dig would take, and what stands in its way: first what must be settled, the digs and the ticket, then all else by its result. */
export function RouteCard() {
  const site = useSite();
  const digging = useDigging();
  const selected = useWorkbench((w) => w.selected);
  const dig = selected?.kind === 'dig' ? site.digging.digs.find((d) => d.id === selected.id) : undefined;
  if (dig !== undefined) return <DigCard key={dig.id} dig={dig} />;
  return (
    <section className={cards.card} aria-label="Route">
      <div className={cards.head}>
        <h2>What stands in the way</h2>
        <Action look="quiet" onPress={() => toggleLeaf('rules')}>
          <BookOpen size={20} aria-hidden /> Rules
        </Action>
      </div>
      <MustSection findings={digging.findings} />
      <DigList excavations={digging.excavations} />
      <Action onPress={() => toggleLeaf('reroute')}>
        <RouteIcon size={20} aria-hidden /> Find another way
      </Action>
      <div>
        <OneCallFold services={digging.services} />
        <LesserFolds findings={digging.findings} />
        <GroundFold />
        <TreesFold trees={digging.trees} />
        <ClearancesFold clearances={digging.clearances} />
        <ServicesFold services={digging.services} />
        <LandFold land={digging.land} />
        <DrainFold drains={digging.drains} />
        <WhiteLinesFold lines={digging.whiteLines} />
        <NotesFold />
      </div>
      <DigCautions />
    </section>
  );
}

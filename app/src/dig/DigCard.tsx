import { concerns } from '@footmark/dig';
import { changeDig, type Dig, type DigFacts, removeDig } from '@footmark/site';
import { ArrowLeft, Trash2 } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { TextLine } from '../controls/TextLine';
import { LengthField } from '../controls/unitFields';
import { edit, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { ClearanceRows } from './ClearancesFold';
import { DigCautions } from './DigCautions';
import { DigResults } from './DigResults';
import { DigTrees } from './DigTrees';
import { useDigging } from './digging';
import { digSizeText } from './digSizeText';
import { LesserFolds, MustSection } from './FindingLists';
import { TrenchEnds } from './TrenchEnds';

/** One planned dig: what is said of it. What is left empty follows from the mark, the pipe and the rules. */
export function DigCard({ dig }: { readonly dig: Dig }) {
  const site = useSite();
  const { excavations, trees, findings, clearances } = useDigging();
  const near = clearances.filter((c) => c.of.is === 'outline' && c.of.dig === dig.id);
  const here = { kind: 'dig', id: dig.id } as const;
  const own = findings.filter((f) => concerns(f, here));
  const excavation = excavations.find((e) => e.dig.id === dig.id);
  const change = (what: string, facts: DigFacts) => edit(what, (s) => changeDig(s, { id: dig.id, facts }));
  const measure = (facts: DigFacts) => change('Change a dig', facts);
  return (
    <section className={cards.card} aria-label={words.targetName(here, site)}>
      <div className={cards.head}>
        <Action look="quiet" onPress={() => select(null)}>
          <ArrowLeft size={20} aria-hidden /> Route
        </Action>
        <Action
          look="quiet"
          onPress={() => {
            select(null);
            edit('Delete a dig', (s) => removeDig(s, { id: dig.id }));
          }}
        >
          <Trash2 size={20} aria-hidden /> Delete
        </Action>
      </div>
      <h2 className={cards.title}>{words.targetName(here, site)}</h2>
      <p className={cards.empty} role="status">
        {digSizeText(excavation, site.units)}
      </p>
      <MustSection findings={own} here={here} />
      {dig.is === 'trench' ? (
        <TrenchEnds trench={dig} />
      ) : (
        <LengthField
          label="Length along the pipe"
          value={dig.length}
          placeholder="as the mark’s hole"
          onChange={(length) => measure({ length })}
        />
      )}
      <div className={cards.pair}>
        <LengthField
          label="Depth of the bottom"
          value={dig.depth}
          placeholder="from the pipe"
          onChange={(depth) => measure({ depth })}
        />
        <LengthField
          label="Width of the bottom"
          value={dig.bottomWidth}
          placeholder={dig.is === 'pit' ? 'as the mark’s hole' : 'by the rule'}
          onChange={(bottomWidth) => measure({ bottomWidth })}
        />
      </div>
      <div className={cards.pair}>
        <Choice
          label="Sides"
          options={[
            {
              id: 'site',
              name: `As on this site: ${words.protectionName(site.digging.protection).toLowerCase()}`,
            },
            ...(['slope', 'shield'] as const).map((id) => ({ id, name: words.protectionName(id) })),
          ]}
          value={dig.protection ?? 'site'}
          onChange={(id) =>
            change('Say how the sides are kept', { protection: id === 'site' ? undefined : id })
          }
        />
        <Choice
          label="Spoil goes"
          options={SPOIL_SIDES}
          value={dig.spoil ?? 'any'}
          onChange={(id) => change('Say where the spoil goes', { spoil: id === 'any' ? undefined : id })}
        />
      </div>
      {(dig.protection ?? site.digging.protection) === 'shield' ? (
        <LengthField
          label="Height of the shield"
          value={dig.shieldHeight}
          placeholder="to the ground"
          onChange={(shieldHeight) => change('Say how high the shield is', { shieldHeight })}
        />
      ) : null}
      {excavation === undefined ? null : <DigResults excavation={excavation} />}
      <DigTrees taken={trees.digs.filter((d) => d.dig === dig.id)} />
      <div>
        <LesserFolds findings={own} here={here} />
        {near.length === 0 ? null : (
          <Fold title="How near things are" result={String(near.length)}>
            <ClearanceRows found={near} />
          </Fold>
        )}
        <Fold title="Name and note">
          <TextLine label="Name" value={dig.name} onCommit={(name) => change('Name a dig', { name })} />
          <TextLine
            label="Note"
            value={dig.note}
            lines={2}
            maxLength={5000}
            onCommit={(note) => change('Change the note', { note })}
          />
        </Fold>
      </div>
      <DigCautions />
    </section>
  );
}

const SPOIL_SIDES = [
  { id: 'any', name: 'Where there is room' },
  { id: 'left', name: 'Left of the flow' },
  { id: 'right', name: 'Right of the flow' },
  { id: 'away', name: 'Away, by truck' },
] as const;

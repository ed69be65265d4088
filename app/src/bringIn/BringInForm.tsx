import {
  type IncomingAnswers,
  type IncomingGroup,
  incomingLoose,
  type PlacedIncoming,
} from '@footmark/exchange';
import { type FeatureKind, pasteThings } from '@footmark/site';
import { useState } from 'react';
import { ProgressBar } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Tick } from '../controls/Tick';
import { LengthField } from '../controls/unitFields';
import { edit, useSite } from '../session/siteSession';
import { notifyOfEdit } from '../session/workbench';
import { newId } from '../tools/newId';
import { words } from '../words';
import { AnswerFields } from './AnswerFields';
import { GroupKinds } from './GroupKinds';
import { PlacedPicture } from './PlacedPicture';
import type { ReadIn } from './readIn';
import { type ChosenFile, useReadIn } from './useReadIn';

/** A file on its way in: what it does not say is asked, then what it holds is seen in its place, then it is taken. */
export function BringInForm({
  chosen,
  onClose,
}: {
  readonly chosen: ChosenFile;
  readonly onClose: () => void;
}) {
  const [answers, setAnswers] = useState<IncomingAnswers>({});
  const state = useReadIn(chosen, answers);
  return (
    <section className={cards.offer} aria-label={`Bring in ${chosen.name}`}>
      <p>
        <strong>{chosen.name}</strong>
      </p>
      {typeof state === 'number' ? <Reading share={state} /> : <Read read={state} />}
      {typeof state !== 'number' && state.is === 'read' ? (
        <>
          <AnswerFields read={state} answers={answers} onChange={setAnswers} />
          <Placed read={state} onClose={onClose} />
        </>
      ) : null}
      <Action onPress={onClose}>Leave it</Action>
    </section>
  );
}

function Reading({ share }: { readonly share: number }) {
  return (
    <ProgressBar value={100 * share} aria-label="Reading the file">
      {({ percentage }) => <p role="status">Reading: {Math.round(percentage ?? 0)} %</p>}
    </ProgressBar>
  );
}

/** Why nothing comes of it. */
function Read({ read }: { readonly read: ReadIn }) {
  if (read.is === 'read') return null;
  const { text, cure } =
    read.is === 'refused'
      ? words.incomingProblemText(read.problem)
      : {
          text: 'This file could not be read.',
          cure: 'Save it anew in its own program, or as another kind.',
        };
  return (
    <p role="alert">
      <strong>{text}</strong> {cure}
    </p>
  );
}

function Placed({
  read,
  onClose,
}: {
  readonly read: Extract<ReadIn, { is: 'read' }>;
  readonly onClose: () => void;
}) {
  const { units } = useSite();
  const { placed, groups } = read;
  if (placed === null) return null;
  if (typeof placed === 'string') {
    const { text, cure } = words.placingProblemText(placed);
    return (
      <p role="alert">
        <strong>{text}</strong> {cure}
      </p>
    );
  }
  return (
    <>
      <PlacedPicture placed={placed} />
      <p>{countText(placed)}</p>
      {placed.findings.map((finding) => {
        const { text, cure } = words.incomingFindingText(finding, units);
        return (
          <p key={finding.code} role={finding.severity === 'error' ? 'alert' : undefined}>
            <strong>{text}</strong> {cure}
          </p>
        );
      })}
      {placed.notes.map((note) => (
        <p key={note.code} className={cards.sub}>
          {words.incomingNoteText(note)}
        </p>
      ))}
      {placed.canBeTaken ? <Taking placed={placed} groups={groups} onClose={onClose} /> : null}
    </>
  );
}

/** What each group becomes, how sure it is, and the button that takes it. */
function Taking({
  placed,
  groups,
  onClose,
}: {
  readonly placed: PlacedIncoming;
  readonly groups: readonly IncomingGroup[];
  readonly onClose: () => void;
}) {
  const site = useSite();
  const [kinds, setKinds] = useState<ReadonlyMap<string, FeatureKind>>(
    () => new Map(groups.map(({ key, suggestion }) => [key, suggestion])),
  );
  const [sigma, setSigma] = useState<number | undefined>(undefined);
  const [levels, setLevels] = useState(false);
  const loose = incomingLoose(placed, { kinds, sigma: sigma ?? null, levels }, site.features.length);
  const { features } = loose.things;
  const take = () => {
    const ids = new Map(features.map(({ id }) => [id, newId('f')]));
    const done = edit('Bring a file in', (s) =>
      pasteThings(s, { things: loose.things, ids, by: { x: 0, y: 0 } }),
    );
    if (!done) return;
    onClose();
    notifyOfEdit(`Brought in: ${features.length === 1 ? '1 thing' : `${features.length} things`}.`);
  };
  return (
    <>
      <GroupKinds groups={groups} kinds={kinds} onChange={setKinds} />
      <LengthField
        label="Its places are sure to"
        value={sigma}
        placeholder="as if put there by eye"
        hint="1 in 3 lies outside of it."
        onChange={setSigma}
      />
      <Tick isSelected={levels} onChange={setLevels}>
        Its heights count from this site’s own datum
      </Tick>
      {loose.findings.map((finding) => {
        const { text, cure } = words.incomingFindingText(finding, site.units);
        return (
          <p key={finding.code} role="alert">
            <strong>{text}</strong> {cure}
          </p>
        );
      })}
      <Action look="primary" isDisabled={features.length === 0} onPress={take}>
        {features.length === 1 ? 'Bring in 1 thing' : `Bring in ${features.length} things`}
      </Action>
    </>
  );
}

function countText({ counts }: PlacedIncoming): string {
  const of = (n: number, one: string) => (n === 0 ? [] : [`${n} ${one}${n === 1 ? '' : 's'}`]);
  return [...of(counts.point, 'point'), ...of(counts.line, 'line'), ...of(counts.area, 'area')].join(', ');
}

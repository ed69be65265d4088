import {
  changeRun,
  factorOf,
  kindSpec,
  lengthInputText,
  parseLength,
  type Run,
  type RunFacts,
  settings,
  type Zero,
} from '@footmark/site';
import { ArrowLeft, Trash2 } from 'lucide-react';
import styles from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import { Segments } from '../controls/Segments';
import { TextLine } from '../controls/TextLine';
import { LengthField } from '../controls/unitFields';
import { removeThings } from '../session/chosenThings';
import { edit, useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { BranchPicker } from './BranchPicker';
import { entryOf } from './entryOf';
import { ReadingEntry } from './ReadingEntry';
import { ReadingTable } from './ReadingRows';

/** One push of the camera: the readings first, for they are typed in the yard; how it went in below. */
export function RunCard({ run }: { readonly run: Run }) {
  const site = useSite();
  const derived = useDerived();
  const about = derived.findings.filter((f) => f.at.kind === 'run' && f.at.id === run.id);
  const change = (what: string, facts: RunFacts) => edit(what, (s) => changeRun(s, { id: run.id, facts }));
  const remove = () => removeThings([run.id]);
  const settled = run.readings.length > 0;
  return (
    <section className={styles.card} aria-label={`Run ${run.letter}`}>
      <div className={styles.head}>
        <Action look="quiet" onPress={() => select(null)}>
          <ArrowLeft size={20} aria-hidden /> Runs
        </Action>
        <Action look="quiet" onPress={remove}>
          <Trash2 size={20} aria-hidden /> Delete
        </Action>
      </div>
      <h2 className={styles.title}>
        Run {run.letter}
        {entryOf(site, run) ? `, from ${entryOf(site, run)?.name}` : ''}
      </h2>
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      <Fold title="How the camera went in" isOpen={!settled}>
        <RunSetup run={run} change={change} />
      </Fold>
      <ReadingEntry run={run} />
      <ReadingTable run={run} />
    </section>
  );
}

type SetupProps = { readonly run: Run; readonly change: (what: string, facts: RunFacts) => void };

function RunSetup({ run, change }: SetupProps) {
  const site = useSite();
  const entries = site.features.filter((f) => kindSpec(f.kind).entry);
  return (
    <>
      <div className={styles.pair}>
        <Choice
          label="Went in at"
          options={entries.map((f) => ({ id: f.id, name: f.name || words.featureKindName(f.kind) }))}
          value={run.entry}
          onChange={(entry) => change('Change the entry', { entry })}
        />
        <Choice
          label="Into the pipe"
          options={site.paths.map((p) => ({ id: p.id, name: p.name || 'Pipe' }))}
          value={run.path}
          onChange={(path) => change('Change the pipe of the run', { path, branches: [] })}
        />
      </div>
      <Segments
        label="Pushed"
        options={[
          { id: 'with-flow', name: words.directionName('with-flow') },
          { id: 'against-flow', name: words.directionName('against-flow') },
        ]}
        value={run.direction}
        onChange={(direction) => change('Turn the run round', { direction, branches: [] })}
      />
      {run.direction === 'against-flow' ? <BranchPicker run={run} change={change} /> : null}
      <ZeroFields run={run} change={change} />
      <div className={styles.pair}>
        <MeasureField
          label="Counter scale"
          value={factorOf(run.scale)}
          required
          parse={parseScale}
          print={String}
          hint="True length for each counted length; 1 unless checked."
          onChange={(factor) =>
            factor !== undefined && change('Change the counter scale', { scale: { by: 'said', factor } })
          }
        />
        <CounterField
          label="Counter shows steps of"
          value={run.resolution}
          onChange={(resolution) => change('Change the counter step', { resolution })}
        />
      </div>
      <TextLine
        label="Note"
        value={run.note}
        lines={2}
        maxLength={5000}
        onCommit={(note) => change('Change the note', { note })}
      />
    </>
  );
}

function parseScale(text: string) {
  const scale = Number(text.trim().replace(',', '.'));
  return Number.isFinite(scale) && scale > 0 && scale <= 100
    ? ({ ok: true, value: scale } as const)
    : ({ ok: false, code: 'not-a-number', values: { text } } as const);
}

/** Where the head was when the counter was zeroed, and what that takes to know. */
function ZeroFields({ run, change }: SetupProps) {
  const { zero } = run;
  const entry = entryOf(useSite(), run);
  const setPlace = (at: Exclude<Zero['at'], 'point'>) => {
    const riser = entry?.kind === 'cleanout' ? (entry.fields.riserDepth ?? 0) : 0;
    const next: Zero =
      at === 'rim'
        ? { at, counter: zero.counter, riser, sweepRadius: settings.bendRadius.value }
        : { at, counter: zero.counter };
    change('Change the zero', { zero: next });
  };
  return (
    <>
      <Choice
        label="Zeroed with the"
        options={(['in-pipe', 'rim', 'stack-base'] as const).map((id) => ({ id, name: words.zeroName(id) }))}
        value={zero.at === 'point' ? null : zero.at}
        onChange={setPlace}
      />
      {zero.at === 'rim' ? (
        <div className={styles.pair}>
          <LengthField
            label="Riser, rim to pipe"
            value={zero.riser}
            required
            onChange={(riser) =>
              riser !== undefined && change('Change the riser', { zero: { ...zero, riser } })
            }
          />
          <LengthField
            label="Sweep radius"
            value={zero.sweepRadius}
            required
            onChange={(sweepRadius) =>
              sweepRadius !== undefined && change('Change the sweep', { zero: { ...zero, sweepRadius } })
            }
          />
        </div>
      ) : null}
      <CounterField
        label="The counter then showed"
        value={zero.counter}
        onChange={(counter) => change('Change the zero', { zero: { ...zero, counter } })}
      />
    </>
  );
}

type CounterProps = {
  readonly label: string;
  readonly value: number;
  readonly onChange: (metres: number) => void;
};

/** A count in the counter's unit: decimal feet or metres. */
function CounterField({ label, value, onChange }: CounterProps) {
  const { units } = useSite();
  const unit = units.length === 'm' ? 'm' : 'ft';
  return (
    <MeasureField
      label={label}
      value={value}
      required
      parse={(text) => parseLength(text, unit)}
      print={(metres) => lengthInputText(metres, unit)}
      onChange={(metres) => metres !== undefined && onChange(metres)}
    />
  );
}

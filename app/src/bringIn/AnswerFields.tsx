import type { IncomingAnswers } from '@footmark/exchange';
import { gridUnits } from '@footmark/grid';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { TextLine } from '../controls/TextLine';
import { useGrids } from '../handOff/files/useGrids';
import { words } from '../words';
import type { ReadIn } from './readIn';

const PAIRS = [
  { id: 'EN', name: 'East (longitude, x) first' },
  { id: 'NE', name: 'North (latitude, y) first' },
] as const;

const COLUMNS = ['PNEZD', 'PENZD', 'NEZD', 'ENZD', 'NE', 'EN'] as const;

/** What a file leaves open, one field for each question; what was answered stays to be changed. */
export function AnswerFields({
  read,
  answers,
  onChange,
}: {
  readonly read: Extract<ReadIn, { is: 'read' }>;
  readonly answers: IncomingAnswers;
  readonly onChange: (answers: IncomingAnswers) => void;
}) {
  const { questions, says, format, rows } = read;
  const { place, systems } = useGrids();
  const asks = (question: (typeof questions)[number], answered: boolean) =>
    questions.includes(question) || answered;
  const chosen = answers.coordinates;
  const systemKey = (epsg: number | null, unit: string) => `${epsg} ${unit}`;
  return (
    <>
      {says.coordinates?.is === 'named' ? (
        <p className={cards.sub}>It says that its coordinates are {says.coordinates.name}.</p>
      ) : null}
      {asks('coordinates', chosen !== undefined) ? (
        <Choice
          label={words.incomingQuestionText('coordinates')}
          options={[
            { id: 'site', name: 'This site’s own, x and y' },
            ...(place === null ? [] : [{ id: 'earth', name: 'Degrees of latitude and longitude' }]),
            ...systems.map((s) => ({ id: systemKey(s.epsg, s.unit.name), name: words.gridSystemText(s) })),
          ]}
          value={
            chosen === undefined
              ? null
              : chosen.is === 'grid'
                ? systemKey(chosen.system.epsg, chosen.system.unit.name)
                : chosen.is
          }
          onChange={(id) => {
            const system = systems.find((s) => systemKey(s.epsg, s.unit.name) === id);
            if (id === 'site' || id === 'earth') onChange({ ...answers, coordinates: { is: id } });
            else if (system !== undefined)
              onChange({ ...answers, coordinates: { is: 'grid', system }, unit: system.unit });
          }}
        />
      ) : null}
      {asks('unit', answers.unit !== undefined) ? (
        <Choice
          label={words.incomingQuestionText('unit')}
          options={Object.values(gridUnits).map((unit) => ({
            id: unit.name,
            name: words.gridUnitText(unit),
          }))}
          value={answers.unit?.name ?? null}
          onChange={(id) => {
            const unit = Object.values(gridUnits).find(({ name }) => name === id);
            if (unit !== undefined) onChange({ ...answers, unit });
          }}
        />
      ) : null}
      {asks('order', answers.order !== undefined) ? (
        format === 'table' ? (
          <>
            <table className={cards.sub}>
              <tbody>
                {rows.map((row) => (
                  <tr key={row.join('|')}>
                    {row.map((cell, i) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: cells are told apart by their column
                      <td key={i}>{cell}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
            <Choice
              label={words.incomingQuestionText('order')}
              options={COLUMNS.map((id) => ({ id, name: [...id].join(', ') }))}
              value={COLUMNS.find((id) => id === answers.order) ?? null}
              onChange={(order) => onChange({ ...answers, order })}
            />
            <TextLine
              label="Or by letters: P point, N north, E east, Z elevation, D description, - nothing"
              value={answers.order ?? ''}
              maxLength={20}
              onCommit={(order) =>
                onChange({ ...answers, order: order.toUpperCase().replaceAll(/[\s,]/g, '') })
              }
            />
          </>
        ) : (
          <Choice
            label={words.incomingQuestionText('order')}
            options={PAIRS}
            value={PAIRS.find(({ id }) => id === answers.order)?.id ?? null}
            onChange={(order) => onChange({ ...answers, order })}
          />
        )
      ) : null}
    </>
  );
}

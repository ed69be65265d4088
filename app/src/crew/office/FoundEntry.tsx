import {
  canWeigh,
  type Derived,
  type FoundPlace,
  findInHole,
  freeName,
  givenTies,
  removeAsFound,
  type Site,
  takenNames,
  weighFind,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Scale, Trash2 } from 'lucide-react';
import { Action } from '../../controls/Action';
import { useFit } from '../../fit/fitSession';
import { derivedFrom, edit } from '../../session/siteSession';
import { notify } from '../../session/workbench';
import { words } from '../../words';
import { FoundPhoto } from './FoundPhoto';
import styles from './office.module.css';

type Props = {
  readonly one: FoundPlace;
  readonly site: Site;
  readonly derived: Derived;
  readonly canRemove: boolean;
  /** Photos that are not on the device yet, by their ids. */
  readonly photos: ReadonlyMap<string, File>;
};

/** A tape that was given and would be told otherwise now by more than this (m) is said. */
const SAME_TAPE_M = 0.01;

const VERDICTS = {
  'in-zone': 'Inside the search zone.',
  'in-hole': 'Inside the hole.',
  outside: 'Outside of the hole.',
} as const;

/** One record beside what is computed: where it was found against the mark, whether the hole held it, and the figures it was set out by. */
export function FoundEntry({ one, site, derived, canRemove, photos }: Props) {
  const { fit } = useFit();
  const { record, off, label } = one;
  const { crew } = words;
  const verdict = fit === null ? null : findInHole(one, fit);
  return (
    <div className={styles.entry}>
      <p>
        <strong>{record.by || 'A crew'}</strong>, {when(record.at)}
      </p>
      <p>{crew.foundText(record, site)}</p>
      {off === null ? null : (
        <p className={styles.off}>
          {off.distance < SAME_TAPE_M
            ? 'Just where it was computed.'
            : `${words.sureText(off.distance, site.units)} from the computed place: ${offTexts(off, site).join(', ')}.`}{' '}
          {verdict === null ? '' : VERDICTS[verdict]}
        </p>
      )}
      {record.note === '' ? null : <p>“{record.note}”</p>}
      <OtherTies one={one} site={site} derived={derived} />
      <div className={styles.photos}>
        {record.photos.map((photo) => (
          <FoundPhoto key={photo} id={photo} file={photos.get(photo) ?? null} label={label} />
        ))}
      </div>
      {canRemove && canWeigh(site, one) ? (
        <Action look="quiet" onPress={() => weigh(one)}>
          <Scale size={18} aria-hidden /> Weigh it with runs and lines
        </Action>
      ) : null}
      {canRemove ? (
        <Action
          look="quiet"
          onPress={() =>
            edit(`Remove what was found at ${label || 'a place'}`, (s) => removeAsFound(s, { id: record.id }))
          }
        >
          <Trash2 size={18} aria-hidden /> Remove
        </Action>
      ) : null}
    </div>
  );
}

/** What was laid bare draws the fit from now on: it stands as a locate of a pipe that was seen. */
function weigh({ record: { id }, label }: FoundPlace): void {
  const done = edit(`Weigh what was found at ${label}`, (s) =>
    weighFind(s, { id, name: freeName(takenNames(s), `${label} laid bare`), derived: derivedFrom(s) }),
  );
  if (done) notify('It counts as a locate now. Marks has how well all of it fits together.');
}

/** Along the pipe and to its side, without what is nothing. */
function offTexts({ along, across }: NonNullable<FoundPlace['off']>, { units }: Site): readonly string[] {
  return [
    ...(Math.abs(along) < SAME_TAPE_M ? [] : [words.crew.alongText(along, units)]),
    ...(Math.abs(across) < SAME_TAPE_M ? [] : [words.crew.acrossText(across, units)]),
  ];
}

/** The tapes that the crew was given, where they would be others now. */
function OtherTies({ one, site, derived }: Pick<Props, 'one' | 'site' | 'derived'>) {
  const painted = paintNow(one, derived);
  const ties = givenTies(site, derived.points, painted, one).filter(
    ({ given, now }) => now === null || Math.abs(given - now) > SAME_TAPE_M,
  );
  if (ties.length === 0) return null;
  return (
    <p className={styles.ties}>
      Set out by other tapes than now:{' '}
      {ties
        .map(({ from, given, now }) => {
          const name = words.targetName({ kind: 'feature', id: from.of, vertex: from.at }, site);
          const told = now === null ? 'now gone' : `now ${lengthText(now, site.units)}`;
          return `${lengthText(given, site.units)} from ${name}, ${told}`;
        })
        .join('; ')}
      .
    </p>
  );
}

function paintNow({ record: { about }, sought }: FoundPlace, { marks }: Derived) {
  if (about.is !== 'mark') return sought?.at ?? null;
  const place = marks.find((m) => m.reading.id === about.reading)?.place;
  return place?.paint?.at ?? place?.at ?? null;
}

function when(iso: string): string {
  return new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' }).format(
    Date.parse(iso),
  );
}

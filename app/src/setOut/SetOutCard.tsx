import type { SetOut, SetOutPoint } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Caution } from '../cards/Caution';
import cards from '../cards/cards.module.css';
import { StepHead } from '../marks/StepHead';
import { TapesList } from '../marks/TapesList';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { SetOutMeasures } from './SetOutMeasures';
import styles from './setOut.module.css';
import { showSetOut } from './showSetOut';

type Props = { readonly setOut: SetOut; readonly point: SetOutPoint };

/** One point that sets a pipe out, large: what is painted, the tapes to it, its fitting, and how deep the pipe is to lie. */
export function SetOutCard({ setOut, point }: Props) {
  const site = useSite();
  return (
    <section className={cards.card} aria-label={`Set out ${point.label}`}>
      <StepHead
        all={setOut.points}
        index={setOut.points.indexOf(point)}
        show={showSetOut}
        before="Point before"
        next="Next point"
      />
      <div>
        <p className={styles.big}>{point.label}</p>
        <h2 className={cards.title}>{words.setOutName(point)}</h2>
        <p className={cards.sub}>
          {words.targetName({ kind: 'path', id: point.path }, site)}, at{' '}
          {lengthText(point.station, site.units)} from its start
        </p>
      </div>
      <Tapes point={point} />
      {point.bend === null
        ? null
        : words.setOutBendTexts(point.bend, site.units).map((text) => <p key={text}>{text}</p>)}
      <SetOutMeasures setOut={setOut} point={point} />
      <Caution />
    </section>
  );
}

function Tapes({ point: { ties, under } }: { readonly point: SetOutPoint }) {
  const site = useSite();
  if (ties !== null) return <TapesList ties={ties} />;
  return (
    <p className={cards.empty}>
      {under === null
        ? 'No two things within a tape’s length cut well enough to set it out.'
        : `It lies under ${words.targetName({ kind: 'feature', id: under }, site)}, where no tape goes.`}
    </p>
  );
}

import type { SetOut, SetOutPoint } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ArrowLeft, ChevronLeft, ChevronRight } from 'lucide-react';
import { Caution } from '../cards/Caution';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { TapesList } from '../marks/TapesList';
import { useSite } from '../session/siteSession';
import { select } from '../session/workbench';
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
      <SetOutHead setOut={setOut} point={point} />
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

/** The way back to the lists, and to the points before and after. */
function SetOutHead({ setOut: { points }, point }: Props) {
  const index = points.indexOf(point);
  const goTo = (to: SetOutPoint | undefined) => to && showSetOut(to);
  return (
    <div className={cards.head}>
      <Action look="quiet" onPress={() => select(null)}>
        <ArrowLeft size={20} aria-hidden /> Marks
      </Action>
      <span className={cards.actions}>
        <Action
          look="icon"
          aria-label="Point before"
          isDisabled={index <= 0}
          onPress={() => goTo(points[index - 1])}
        >
          <ChevronLeft size={22} aria-hidden />
        </Action>
        <Action
          look="icon"
          aria-label="Next point"
          isDisabled={index >= points.length - 1}
          onPress={() => goTo(points[index + 1])}
        >
          <ChevronRight size={22} aria-hidden />
        </Action>
      </span>
    </div>
  );
}

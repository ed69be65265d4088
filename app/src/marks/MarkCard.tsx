import { formatClock, type Mark, type MarkPlace, type Tie } from '@footmark/site';
import { angleText, lengthText } from '@footmark/words';
import { ArrowLeft, ChevronLeft, ChevronRight } from 'lucide-react';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { Caution } from './Caution';
import styles from './cards.module.css';
import { Fact } from './Fact';
import { FindingRow } from './FindingRow';
import { Fold } from './Fold';
import { showMark } from './showMark';

/** One mark, large: the tapes to set it out, what is near, and how its number came about. */
export function MarkCard({ mark }: { readonly mark: Mark }) {
  const site = useSite();
  const derived = useDerived();
  const { reading, place } = mark;
  const about = derived.findings.filter((f) => f.at.kind === 'reading' && f.at.id === reading.id);
  const index = derived.marks.findIndex((m) => m.reading.id === reading.id);
  const goTo = (to: Mark | undefined) => to && showMark(to);
  return (
    <section className={styles.card} aria-label={`Mark ${mark.label}`}>
      <div className={styles.head}>
        <Action look="quiet" onPress={() => select(null)}>
          <ArrowLeft size={20} aria-hidden /> Marks
        </Action>
        <span className={styles.actions}>
          <Action
            look="icon"
            aria-label="Mark before"
            isDisabled={index <= 0}
            onPress={() => goTo(derived.marks[index - 1])}
          >
            <ChevronLeft size={22} aria-hidden />
          </Action>
          <Action
            look="icon"
            aria-label="Next mark"
            isDisabled={index >= derived.marks.length - 1}
            onPress={() => goTo(derived.marks[index + 1])}
          >
            <ChevronRight size={22} aria-hidden />
          </Action>
        </span>
      </div>
      <div>
        <p className={styles.big}>{mark.label}</p>
        <h2 className={styles.title}>
          {words.observationName(reading.seen)}
          {reading.clock ? `, ${formatClock(reading.clock)}` : ''}
        </h2>
        <p className={styles.sub}>
          {reading.passed ? '' : 'The camera could not pass. '}
          {reading.note}
        </p>
      </div>
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      {place ? <PlaceFacts place={place} /> : null}
      <Fold title="How this came about">
        <dl className={styles.facts}>
          {words.traceSteps(mark, site, derived).map((step) => (
            <Fact key={step.step} name={step.label} note={step.note}>
              {step.value}
            </Fact>
          ))}
        </dl>
      </Fold>
      <Caution />
    </section>
  );
}

function PlaceFacts({ place }: { readonly place: MarkPlace }) {
  const site = useSite();
  const { ties, clearances } = place;
  return (
    <>
      {ties ? (
        <div>
          <TapeRow tie={ties.pair[0]} use="First tape" />
          <TapeRow tie={ties.pair[1]} use="Second tape" />
          {ties.check ? <TapeRow tie={ties.check} use="To check" /> : null}
          <p className={styles.sub}>
            The tapes cross at {angleText(ties.cutAngle)}, {words.sideText(ties, site)}.
          </p>
        </div>
      ) : null}
      <div className={styles.section}>
        <h3>What is near</h3>
        <dl className={styles.facts}>
          {clearances.slice(0, 6).map((clearance) => (
            <Fact key={clearance.feature} name={words.clearanceName(clearance, site)}>
              {lengthText(Math.abs(clearance.distance), site.units)}
              {clearance.distance < 0 ? ' inside' : ''}
            </Fact>
          ))}
        </dl>
      </div>
    </>
  );
}

function TapeRow({ tie, use }: { readonly tie: Tie; readonly use: string }) {
  const site = useSite();
  return (
    <div className={styles.tape}>
      <b>{lengthText(tie.distance, site.units)}</b>
      <span>
        {use}
        <br />
        from {words.referenceName(tie.from, site)}
      </span>
    </div>
  );
}

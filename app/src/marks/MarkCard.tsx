import { formatClock, type Mark, type MarkPlace } from '@footmark/site';
import { Caution } from '../cards/Caution';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { FindingRow } from '../cards/FindingRow';
import { Fold } from '../cards/Fold';
import { useFit } from '../fit/fitSession';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { FittedHere } from './FittedHere';
import { GroundSection } from './GroundSection';
import { LocatesSection } from './LocatesSection';
import { NearMark } from './NearMark';
import { OffsetSection } from './OffsetSection';
import { PaintTapes } from './PaintTapes';
import { ReachFold } from './ReachFold';
import { StepHead } from './StepHead';
import { showMark } from './showMark';
import { ZoneSection } from './ZoneSection';

/** One mark, large: the tapes and the hole to find it by, what is near, what was found, and how its number came about. */
export function MarkCard({ mark }: { readonly mark: Mark }) {
  const site = useSite();
  const derived = useDerived();
  const { reading, place } = mark;
  const about = derived.findings.filter((f) => f.at.kind === 'reading' && f.at.id === reading.id);
  return (
    <section className={cards.card} aria-label={`Mark ${mark.label}`}>
      <MarkHead mark={mark} />
      <div>
        <p className={cards.big}>{mark.label}</p>
        <h2 className={cards.title}>
          {words.observationName(reading.seen)}
          {reading.clock ? `, ${formatClock(reading.clock)}` : ''}
        </h2>
        <p className={cards.sub}>
          {reading.passed ? '' : 'The camera could not pass. '}
          {reading.note}
        </p>
      </div>
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      {place ? <PlaceSections mark={mark} place={place} /> : null}
      <ReachFold mark={mark} />
      <Fold title="How this came about">
        <dl className={cards.facts}>
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

/** The way back to the list, and to the marks before and after. */
function MarkHead({ mark }: { readonly mark: Mark }) {
  const { marks } = useDerived();
  return (
    <StepHead
      all={marks}
      index={marks.findIndex((m) => m.reading.id === mark.reading.id)}
      show={showMark}
      before="Mark before"
      next="Next mark"
    />
  );
}

type PlaceProps = { readonly mark: Mark; readonly place: MarkPlace };

function PlaceSections({ mark, place }: PlaceProps) {
  const { fit } = useFit();
  const known = fit?.marks.get(mark.reading.id);
  return (
    <>
      <GroundSection mark={mark} />
      <PaintTapes mark={mark} place={place} />
      {known === undefined ? null : <ZoneSection zone={known.zone} />}
      {known?.fitted ? <FittedHere fitted={known.fitted} at={place.at} /> : null}
      <LocatesSection mark={mark} />
      <NearMark mark={mark} />
      <OffsetSection mark={mark} place={place} />
    </>
  );
}

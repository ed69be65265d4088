import { fail, ok, type Point, type Result } from '@footmark/geometry';
import { type EarthFit, earthToPlan } from '@footmark/site';
import type { PlacingProblem } from '@footmark/words';
import type { Incoming, IncomingPoint, IncomingThing } from '../incoming';
import { tableThings } from '../table/tableThings';
import { type IncomingAnswers, type IncomingFrame, incomingFrame } from './incomingAnswers';
import type { IncomingSite } from './incomingSite';
import { middleOf } from './middleOf';
import { type PlacedIncoming, type PreviewSetting, preview } from './placedIncoming';
import { eastNorth, toEarth } from './toEarth';
import { whereabouts } from './whereabouts';

/** Puts what came in into the plan of a site, as it was answered. Nothing is changed yet: it is for people to look at. */
export function placeIncoming(
  incoming: Incoming,
  answers: IncomingAnswers,
  site: IncomingSite,
): Result<PlacedIncoming, PlacingProblem> {
  const framed = incomingFrame(incoming, answers);
  if (!framed.ok) return framed;
  const isTable = incoming.format === 'table';
  const made = isTable ? tableThings(incoming.rows, framed.value.order) : ok(incoming);
  if (!made.ok) return made;
  // a table's columns are in order from here on: what they were may read NE as well
  const frame = isTable ? { ...framed.value, order: 'EN' } : framed.value;
  const { things } = made.value;
  const notes = [...incoming.notes, ...(isTable ? made.value.notes : [])];
  if (frame.coordinates.is === 'site') {
    const { metres } = frame.coordinates.unit;
    const place = (p: IncomingPoint): Point => {
      const [x, y] = eastNorth(p, frame);
      return { x: x * metres, y: y * metres };
    };
    return ok(preview(things, place, { notes, findings: [], distance: null, heightM: metres, site }));
  }
  const fit = site.toEarth;
  if (fit === null) return fail('site-not-on-the-earth');
  return ok(onTheEarth(things, frame, fit, { notes, site }));
}

type About = Pick<PreviewSetting, 'notes' | 'site'>;

function onTheEarth(
  things: readonly IncomingThing[],
  frame: IncomingFrame,
  fit: EarthFit,
  { notes, site }: About,
): PlacedIncoming {
  const middle = middleOf(things, frame);
  const { distance, findings } =
    middle === null ? { distance: null, findings: [] } : whereabouts(middle, fit.centre, frame);
  const place = (p: IncomingPoint): Point | null => {
    const earth = toEarth(eastNorth(p, frame), frame);
    const plan = earth.ok ? earthToPlan(fit, earth.value) : earth;
    return plan.ok ? plan.value : null;
  };
  // heights of degrees are in metres by all three formats; those of a grid are in its unit
  const heightM = frame.coordinates.is === 'earth' ? 1 : frame.coordinates.unit.metres;
  const wrong = findings.some((f) => f.severity === 'error');
  return preview(wrong ? [] : things, place, { notes, findings, distance, heightM, site, of: things });
}

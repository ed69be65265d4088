import { type Derived, type OneCall, ruleValue, type Site } from '@footmark/site';
import { toleranceZone } from '../clearances/clearanceRule';
import { halfWidthOf } from '../clearances/face';
import type { DigSeverity } from '../digFinding';
import { type DigInZone, servicesIn } from './handDig';
import type { OneCallState } from './oneCallState';
import type { ServiceCrossing } from './serviceCrossings';
import type { ServiceFinding } from './serviceFinding';

type Found = {
  readonly crossings: readonly ServiceCrossing[];
  readonly digs: readonly DigInZone[];
  readonly oneCall: OneCallState;
};

/** What is to be said of services: the ticket first, then digs in their zones, then pipes that cross them. */
export function sayOfServices(site: Site, derived: Derived, found: Found): readonly ServiceFinding[] {
  const { crossings, digs, oneCall } = found;
  const met = crossings.filter(({ joins }) => !joins);
  return [
    ...ofTicket(oneCall, site.digging.oneCall, site.digging.digs.length > 0),
    ...ofZone(site, derived),
    ...digs.map((dig) => ofDig(site, dig)),
    ...met.map((crossing) => ofCrossing(site, derived, crossing)),
    ...withoutDiameter(derived, new Set([...digs, ...met].map(({ feature }) => feature))),
  ];
}

/** `planned`: something is to be dug. */
function ofTicket(
  { is, days, datesClash: clash }: OneCallState,
  oneCall: OneCall | undefined,
  planned: boolean,
): readonly ServiceFinding[] {
  const code = ticketCode(is, clash, oneCall?.validUntil === undefined);
  if (code === null) return [];
  const severity: DigSeverity = is === 'valid' ? 'should' : planned ? 'must' : 'note';
  const values = { clash, days, from: oneCall?.validFrom ?? null, until: oneCall?.validUntil ?? null };
  return [{ code, at: { kind: 'site' }, place: null, rule: null, severity, values }];
}

function ticketCode(is: OneCallState['is'], clash: boolean, endless: boolean) {
  if (is !== 'valid') return `one-call-${is}` as const;
  if (clash) return 'one-call-dates-clash';
  return endless ? 'one-call-without-end' : null;
}

/** Only where there is a service that it could be about. */
function ofZone(site: Site, derived: Derived): readonly ServiceFinding[] {
  const [value, floor] = [ruleValue(site, 'toleranceZone'), ruleValue(site, 'toleranceFloor')];
  if (value >= floor || servicesIn(derived).length === 0) return [];
  return [
    {
      code: 'tolerance-under-floor',
      severity: 'must',
      at: { kind: 'site' },
      place: null,
      rule: 'toleranceFloor',
      values: { value, floor },
    },
  ];
}

function ofDig(
  site: Site,
  { dig, feature, distance, at, handDig, length, atLeast, below }: DigInZone,
): ServiceFinding {
  return {
    code: 'dig-in-tolerance-zone',
    severity: 'must',
    at: { kind: 'dig', id: dig },
    place: at,
    rule: 'toleranceZone',
    values: { dig, feature, distance, zone: toleranceZone(site), handDig, length, atLeast, below },
  };
}

function ofCrossing(site: Site, { paths }: Derived, crossing: ServiceCrossing): ServiceFinding {
  const { path, feature, station, at, angle, gap, over, missing, carriedOn } = crossing;
  const state = paths.get(path)?.path.state ?? 'existing';
  const asked = ruleValue(site, 'otherService');
  return {
    code: 'service-crossed',
    severity: severityOf(gap, asked, state !== 'proposed'),
    at: { kind: 'path', id: path },
    place: at,
    rule: 'otherService',
    values: { path, state, feature, station, angle, gap, over, missing, asked, carriedOn },
  };
}

/** Of a pipe that lies there already a clash only says that a depth is wrong. */
function severityOf(gap: number | null, asked: number, lies: boolean): DigSeverity {
  if (gap !== null && gap < 0) return lies ? 'should' : 'must';
  if (gap !== null && gap >= asked) return 'note';
  return lies ? 'note' : 'should';
}

function withoutDiameter({ features }: Derived, about: ReadonlySet<string>): readonly ServiceFinding[] {
  return [...about].flatMap((id) => {
    const service = features.get(id);
    if (service === undefined || halfWidthOf(service) > 0) return [];
    return [
      {
        code: 'service-without-diameter',
        severity: 'note',
        at: { kind: 'feature', id },
        place: service.outline[0] ?? null,
        rule: null,
        values: { feature: id },
      } as const,
    ];
  });
}

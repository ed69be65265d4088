import type { CautionCode } from '../caution';

/*
 * The rules behind them: 49 CFR 196.103, .107 and .109 (call first, respect marks, report damage); 29 CFR 1926.651 and .652
 * (trenches: protection from 5 ft or where the ground may cave in, egress from 4 ft, spoil back 2 ft); 29 CFR 1910.146 and its
 * Appendix E (sewer air, hydrogen sulfide deadens the sense of smell); state one-call centres on private lines. That hand
 * digging is asked for in the tolerance zone, and that its width is the state's, and that crossing services are exposed before a
 * pipe is pulled or bored, are common practice, no source.
 */
export const cautions: Record<CautionCode, { readonly title: string; readonly text: string }> = {
  'not-a-utility-locate': {
    title: 'Not a utility locate',
    text: 'These positions are computed from a counter and a sketch. They show a drain, and nothing of the other lines that may be in the ground.',
  },
  'call-before-digging': {
    title: 'Call before you dig',
    text: 'Call the one-call centre first (811 in the United States), wait for the marks, and dig with regard to them and to the date they run out.',
  },
  'hand-dig': {
    title: 'Dig by hand near marks',
    text: 'Dig by hand or with vacuum in the tolerance zone on both sides of a mark. State law says how wide it is.',
  },
  bored: {
    title: 'Before it is pulled or bored',
    text: 'Expose by hand every service that crosses or lies close, where the new pipe passes it, before anything is pulled, burst or bored, and watch it there meanwhile. What passes under ground unseen can tear a gas line, a cable or a drain. This is common practice; the operator of the line may ask for more.',
  },
  'private-lines': {
    title: 'Private lines',
    text: 'Lines past the meter or on private ground are usually not marked: pool, yard light, irrigation, gas to a grill, drains. Ask the owner, and have them located.',
  },
  'depths-are-estimates': {
    title: 'Depths are estimates',
    text: 'A depth is an estimate until the pipe is exposed. Ground may have been raised or cut since the pipe was laid.',
  },
  damage: {
    title: 'If a line is hit',
    text: 'Tell its operator at once, however small the damage. Where gas or liquid comes out, leave, and call 911.',
  },
  'sewer-gas': {
    title: 'Sewer gas',
    text: 'Sewer air can burn, poison and choke, and the gas that smells of bad eggs soon cannot be smelled. Do not enter a pit or manhole, keep flames and sparks away from openings, and wash after contact.',
  },
  'trench-safety': {
    title: 'Trench safety',
    text: 'A competent person looks at the trench each day and after rain. From 5 ft (1.5 m) deep, or wherever the sides may cave in, it needs sloping, shoring or a shield; from 4 ft (1.2 m) a ladder within 25 ft (7.6 m); spoil stays 2 ft (0.6 m) back. Local rules decide.',
  },
  trees: {
    title: 'Trees',
    text: 'A tree may be protected, or belong to a neighbour. Ask an arborist and the authority before roots are cut.',
  },
  boundaries: {
    title: 'Boundaries',
    text: 'A boundary on this sketch is not a survey. Where it matters whose land it is, ask a licensed surveyor.',
  },
  'people-decide': {
    title: 'People decide, not this plan',
    text: 'A competent person on site, the code officer, an arborist and a surveyor have the last word. Model values stand here until their own do.',
  },
};

/** Of values that were taken from a model code or a guide. */
export const modelValuesText =
  'Model values, to start from. Local code and licensed practice decide: put their value in where it differs.';

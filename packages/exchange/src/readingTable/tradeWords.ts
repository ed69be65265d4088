import type { ObservationKind } from '@footmark/site';

/**
 * What else people write for a thing seen: plain trade English (common practice, no source; no coding scheme). A word that
 * could mean two things, as `fracture` or `open joint`, is left to the person.
 */
export const tradeWords: Partial<Record<ObservationKind, readonly string[]>> = {
  roots: ['root intrusion', 'roots at joint', 'tree roots', 'root ball', 'root mass', 'root growth'],
  'offset-joint': [
    'joint offset',
    'offset',
    'displaced joint',
    'joint displaced',
    'misaligned joint',
    'shifted joint',
  ],
  crack: ['cracked', 'cracking', 'cracked pipe', 'hairline crack'],
  break: ['broken', 'broken pipe', 'pipe break'],
  collapse: ['collapsed', 'collapsed pipe', 'pipe collapse', 'cave-in'],
  deformed: ['deformation', 'oval', 'out of round', 'flattened', 'squashed'],
  sag: ['belly', 'bellies', 'bellied pipe', 'dip', 'low spot', 'sagging pipe', 'sagged pipe'],
  hole: ['hole in pipe', 'puncture'],
  scale: ['scaling', 'scale build-up', 'tuberculation', 'encrustation', 'mineral deposit'],
  debris: ['grease', 'silt', 'sediment', 'sludge', 'gravel', 'deposit', 'wipes', 'rags'],
  nest: ['rat nest', 'rodent nest', 'vermin'],
  infiltration: ['leak', 'leaking', 'leaking joint', 'groundwater', 'water ingress', 'inflow', 'seepage'],
  obstruction: [
    ...['blockage', 'blocked', 'clog', 'stoppage', 'obstacle'],
    ...['cannot pass', 'could not pass', "can't pass", 'unable to pass'],
  ],
  fitting: ['wye', 'tee', 'bend', 'elbow', 'coupling', 'reducer', 'sweep', '45 bend', '90 bend'],
  connection: ['lateral', 'junction', 'branch', 'tie-in', 'service connection', 'tap'],
  'material-change': ['change of material', 'pipe change', 'material transition', 'transition'],
  'water-level': ['standing water', 'water', 'waterline', 'ponding'],
  'end-of-run': ['end', 'end of line', 'end of pipe', 'end of survey', 'stopped', 'finish'],
};

/** Said before the thing seen, to say how much of it. */
export const degreeWords: readonly string[] = [
  ...['light', 'minor', 'slight', 'small', 'fine', 'medium', 'moderate', 'partial'],
  ...['heavy', 'major', 'severe', 'large', 'big', 'multiple', 'several'],
];

/** Says that the camera could not pass. */
export const blockedWords: readonly string[] = [
  ...[
    'cannot pass',
    'could not pass',
    "can't pass",
    'unable to pass',
    'did not pass',
    'not passed',
    'blocked',
  ],
];

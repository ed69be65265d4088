import type { LayerName } from './drawing';

/**
 * Heights of lettering on paper, mm, from the one scale that all texts use. `small`: dimensions, stations, letters, names; 1.8 is
 * the least of ISO 3098's heights that reads well on a screen (grades by √2, from memory).
 */
export const TEXT_MM = { small: 1.8, landmark: 2.1, main: 2.3, tie: 2.3, mark: 2.3 } as const;

/** Who is placed first where there is not room for all: what is painted on the ground before what only names things. */
export const PRIORITY = {
  chosenMark: 2000,
  tie: 1900,
  hole: 1890,
  offset: 1880,
  clearance: 1850,
  defect: 1100,
  setOut: 1050,
  landmark: 1000,
  unseen: 950,
  excavation: 940,
  land: 700,
  course: 450,
  pipe: 420,
  wall: 100,
  letters: 80,
  station: 40,
  fitted: 36,
  rootZone: 34,
  reach: 30,
} as const;

/** Priority of a thing's name by its layer. */
export const NAME_PRIORITY: Readonly<Record<LayerName, number>> = {
  drain: 900,
  trees: 800,
  buildings: 700,
  survey: 600,
  services: 500,
  land: 440,
  pipe: 420,
  structures: 400,
  pavement: 300,
  notes: 200,
  coverage: 0,
  zones: 0,
  'root-zones': 0,
  excavation: 0,
  clearances: 0,
  fitted: 0,
  ties: 0,
  marks: 0,
};

/** Layers whose names may go on a leader; the others are left out where there is no room beside or inside. */
export const LED_LAYERS: ReadonlySet<LayerName> = new Set(['drain']);

import type { Ink } from '@footmark/drawing';

export const inkSets = ['colour', 'black-and-white'] as const;
/** `black-and-white`: for printers and copiers that know no other; what a colour tells is told by letters, dashes and weight. */
export type InkSet = (typeof inkSets)[number];

/** Colours on white paper as `#rrggbb`. */
export type Inks = Readonly<Record<Ink, string>>;

/** Services in the hue that the uniform colour code (APWA / ANSI Z535.1) gives them, dark enough for thin lines on white. */
const colour: Inks = {
  paper: '#ffffff',
  ink: '#14181c',
  faint: '#77736a',
  assumed: '#4c5054',
  land: '#2b2f34',
  plant: '#4d6b2c',
  pavement: '#8d877a',
  sewer: '#006a39',
  proposed: '#ffffff',
  'proposed-dash': '#14181c',
  survey: '#b40f66',
  water: '#1450ab',
  gas: '#947000',
  electric: '#bd2417',
  communication: '#bd5300',
  'reclaimed-water': '#6a2c9c',
  storm: '#2c7a57',
  warning: '#9a3300',
};

const GREYS = { black: '#000000', dark: '#333333', middle: '#666666', light: '#8c8c8c' } as const;

const blackAndWhite: Inks = {
  paper: '#ffffff',
  ink: GREYS.black,
  faint: GREYS.light,
  assumed: GREYS.dark,
  land: GREYS.black,
  plant: GREYS.middle,
  pavement: GREYS.light,
  sewer: GREYS.black,
  proposed: '#ffffff',
  'proposed-dash': GREYS.black,
  survey: GREYS.black,
  water: GREYS.dark,
  gas: GREYS.dark,
  electric: GREYS.dark,
  communication: GREYS.dark,
  'reclaimed-water': GREYS.dark,
  storm: GREYS.dark,
  warning: GREYS.black,
};

export function inksOf(set: InkSet): Inks {
  return set === 'colour' ? colour : blackAndWhite;
}

import type { Ink } from '@footmark/drawing';

export const themes = ['paper', 'night', 'sun'] as const;
/** `paper` for every day, `night` for the truck, `sun` for glare: black on white and the strongest colours. */
export type Theme = (typeof themes)[number];

/** Colours of the canvas. Services keep the hue that the uniform colour code gives them. */
export type Palette = Readonly<Record<Ink, string>> & {
  readonly ground: string;
  readonly grid: string;
  readonly chosen: string;
  readonly halo: string;
};

export const palettes: Readonly<Record<Theme, Palette>> = {
  paper: {
    ground: '#f6f2e8',
    grid: '#e9e2d2',
    paper: '#f6f2e8',
    ink: '#23282e',
    faint: '#7d7768',
    assumed: '#5b5f63',
    land: '#3b4046',
    plant: '#5d6b3c',
    pavement: '#9a917e',
    sewer: '#0a7040',
    proposed: '#ffffff',
    'proposed-dash': '#23282e',
    survey: '#c4166f',
    water: '#1859b8',
    gas: '#b08900',
    electric: '#c02a1d',
    communication: '#cf5f00',
    'reclaimed-water': '#7a3aa8',
    storm: '#3d8f6a',
    warning: '#a93a00',
    chosen: '#1c3f94',
    halo: 'rgba(246,242,232,0.85)',
  },
  night: {
    ground: '#15191d',
    grid: '#1f252b',
    paper: '#15191d',
    ink: '#e6e2d6',
    faint: '#8b897f',
    assumed: '#b3b1a7',
    land: '#cfcbbf',
    plant: '#9fb36a',
    pavement: '#6d6a60',
    sewer: '#3fce85',
    proposed: '#ffffff',
    'proposed-dash': '#15191d',
    survey: '#ff6fb3',
    water: '#6ea8ff',
    gas: '#f0c93a',
    electric: '#ff6a5c',
    communication: '#ff9d42',
    'reclaimed-water': '#c48cf0',
    storm: '#7fd1ab',
    warning: '#ffab5e',
    chosen: '#9db8ff',
    halo: 'rgba(21,25,29,0.85)',
  },
  sun: {
    ground: '#ffffff',
    grid: '#f0f0f0',
    paper: '#ffffff',
    ink: '#000000',
    faint: '#595959',
    assumed: '#333333',
    land: '#000000',
    plant: '#2f4a00',
    pavement: '#6e6e6e',
    sewer: '#005c2b',
    proposed: '#ffffff',
    'proposed-dash': '#000000',
    survey: '#b00060',
    water: '#003fae',
    gas: '#8a6500',
    electric: '#b00010',
    communication: '#b04a00',
    'reclaimed-water': '#5c1a94',
    storm: '#1c6a48',
    warning: '#8f2d00',
    chosen: '#0a2f9c',
    halo: 'rgba(255,255,255,0.9)',
  },
};

import type { SigmaName } from '@footmark/site';

/** The standard deviations in the order in which a crew thinks of them; every one in one group. */
export const sigmaGroups: readonly { readonly title: string; readonly names: readonly SigmaName[] }[] = [
  { title: 'The counter', names: ['counter', 'zero', 'scale', 'riser'] },
  {
    title: 'The line',
    names: ['drawnPipePoint', 'tiedPipePoint', 'pipeDirection', 'pipeStray', 'fittingAngle', 'knownLength'],
  },
  { title: 'Seen twice', names: ['sameThing'] },
  {
    title: 'The receiver',
    names: [
      'locateCrossed',
      'locateCrossedShare',
      'locatePeak',
      'locatePeakShare',
      'locateRough',
      'exposed',
      'locateDepthShare',
      'locatePeakDepthShare',
    ],
  },
  { title: 'Levels', names: ['tapedLevel', 'waterShare'] },
];

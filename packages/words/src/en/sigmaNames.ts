import type { SigmaName } from '@footmark/site';

/** What each standard deviation is of. */
export const sigmaNames: Record<SigmaName, string> = {
  counter: 'One reading of the counter',
  zero: 'Where the head stood at the zero',
  scale: 'Scale of a counter that was not checked, as a share',
  riser: 'Cable in a riser and its sweep',
  drawnPipePoint: 'Point of a pipe put there by eye',
  tiedPipePoint: 'Point of a pipe below something that was measured',
  pipeDirection: 'Direction of a pipe told as a course or a turn',
  pipeStray: 'How far a straight pipe strays to the side in the middle of 10 m',
  fittingAngle: 'Turn of a known fitting',
  knownLength: 'Known length of pipe',
  sameThing: 'Same thing seen twice',
  locateCrossed: 'Locate where peak and null agree both ways',
  locateCrossedShare: 'Locate where peak and null agree both ways, as a share of the depth',
  locatePeak: 'Locate by the peak only',
  locatePeakShare: 'Locate by the peak only, as a share of the depth',
  locateRough: 'Locate in passing',
  exposed: 'Pipe that was dug up and seen',
  locateDepthShare: 'Depth where peak and null agree, as a share of it',
  locatePeakDepthShare: 'Depth by the peak alone, as a share of it',
  tapedLevel: 'Invert or depth that was taped',
  waterShare: 'Depth of water judged on the screen, as a share of the bore',
};

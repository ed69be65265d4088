/** Flow in a round pipe: mean velocity (m/s) and discharge (m³/s). */
export type PipeFlow = { readonly velocity: number; readonly discharge: number };

/**
 * Steady flow in a round pipe by Manning's formula, V = R^(2/3) · S^(1/2) / n (SI; any hydraulics text). `diameter`: inside (m); `slope`: fall over run;
 * `roughness`: Manning's n; `fill`: depth of water as a share of the bore, 1 for a full pipe. Throws a RangeError for a diameter or n that is not above 0, a
 * slope below 0, or a fill not in (0, 1].
 */
export function manningFlow({
  diameter,
  slope,
  roughness,
  fill = 1,
}: {
  readonly diameter: number;
  readonly slope: number;
  readonly roughness: number;
  readonly fill?: number;
}): PipeFlow {
  if (!(diameter > 0 && roughness > 0 && slope >= 0 && fill > 0 && fill <= 1))
    throw new RangeError('manningFlow: needs a pipe, a roughness, a fall and a fill');
  const angle = 2 * Math.acos(1 - 2 * fill); // under which the water's surface is seen from the middle
  const area = (diameter ** 2 / 8) * (angle - Math.sin(angle));
  const wetted = (diameter * angle) / 2;
  const velocity = ((area / wetted) ** (2 / 3) * Math.sqrt(slope)) / roughness;
  return { velocity, discharge: velocity * area };
}

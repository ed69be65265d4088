import { checksum } from '../frame/checksum';
import { bytesOf } from '../pack/literalText';
import type { Shape } from './shape';

/** A shape as it is frozen for a version, and back. */
export function shapeText(shape: Shape): string {
  return JSON.stringify(shape);
}

/** The shape of a text that `shapeText` gave. */
export function shapeOfText(text: string): Shape {
  return JSON.parse(text) as Shape; // frozen texts are ours, and held to `shapeText` by tests
}

/** Sixteen bits that tell one shape from another: enough to catch a mistake between the few that a version has had. */
export function shapeMark(shape: Shape): number {
  return checksum(bytesOf(shapeText(shape))) & 0xffff;
}

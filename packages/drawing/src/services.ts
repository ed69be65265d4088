import type { FieldsOf } from '@footmark/site';
import type { Ink } from './primitive';

export type Carried = NonNullable<FieldsOf<'service'>['carries']>;

/**
 * Ink and letters of a service by what it carries. Inks: uniform colour code (APWA / ANSI Z535.1). Letters on the line are
 * general drafting practice (common practice, no source).
 */
export const services: Readonly<Record<Carried, Readonly<{ ink: Ink; letters: string }>>> = {
  electric: { ink: 'electric', letters: 'E' },
  gas: { ink: 'gas', letters: 'G' },
  communication: { ink: 'communication', letters: 'C' },
  water: { ink: 'water', letters: 'W' },
  'reclaimed-water': { ink: 'reclaimed-water', letters: 'RW' },
  'storm-drain': { ink: 'storm', letters: 'SD' },
};

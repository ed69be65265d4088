import { createRequire } from 'node:module';
import { statePlaneZones } from '@footmark/grid';
import { describe, expect, it } from 'vitest';
import { type Registered, statePlaneRows } from './statePlaneRows';

// Reference: the EPSG register as the npm package epsg-index 2.0 has it.
const require = createRequire(import.meta.url); // its types would be 40 MB
const register: Readonly<Record<string, Registered>> = require('epsg-index/all.json');

describe('the table of State Plane zones', () => {
  it('is what the register says (if not: npx vitest run --config tests/vitest.config.ts tests/grid -u)', async () => {
    const text = `/** Made from the EPSG register by tests/grid: a zone a line, name|west,south,east,north|projection|unit,x,y,code,code of 2011;… */
export const STATE_PLANE_ROWS = \`
${statePlaneRows(Object.values(register))}
\`;
`;
    await expect(text).toMatchFileSnapshot('../../packages/grid/src/statePlane/statePlaneRows.ts');
  });

  // The system has 124 zones in NAD 83 with Puerto Rico and the Virgin Islands in one, by NOAA Manual NOS NGS 5 (from memory); here Louisiana
  // offshore and Guam are left out, and Kentucky's later single zone is in
  it('has every state, and the foot that each has', async () => {
    const zones = await statePlaneZones();
    expect(zones.length).toBe(123);
    const unitsOf = (name: string) =>
      new Set(zones.filter((z) => z.name.startsWith(name)).flatMap((z) => z.systems.map((s) => s.unit.name)));
    // states that chose the international foot: common knowledge of the trade, by the register
    for (const state of ['Arizona', 'Michigan', 'Montana', 'North Dakota', 'Oregon', 'South Carolina'])
      expect(unitsOf(state)).toEqual(new Set(['ft', 'm']));
    expect(unitsOf('Utah')).toEqual(new Set(['us-ft', 'ft', 'm']));
    expect(unitsOf('Pennsylvania')).toEqual(new Set(['us-ft', 'm']));
    expect(unitsOf('Missouri')).toEqual(new Set(['m']));
  });

  it('has for every system the definition that the register has, code by code', async () => {
    for (const { systems } of await statePlaneZones()) {
      for (const system of systems) {
        const registered = register[String(system.epsg)];
        expect(registered?.name).toContain(`${system.datum} / `);
        const of = (text: string) =>
          new Set(text.split(' ').filter((part) => part !== '' && part !== '+type=crs'));
        expect(of(system.definition)).toEqual(of(registered?.proj4 ?? ''));
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { es } from './es';

const FEET = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;
const { sheet } = es;

describe('what a sheet says', () => {
  it('of bends, by name and angle, and of pipes by size', () => {
    expect(sheet.bendItem('1/16', Math.PI / 8)).toBe('Codo 1/16, 22.5°');
    expect(sheet.bendItem(null, -0.54)).toBe('Codo, 30.94°, no hay uno estándar');
    expect(sheet.pipeItem(es.materialName('clay'), '4″')).toBe('Tubería de 4″, barro');
  });

  it('of one note that is left out, and of several', () => {
    expect([1, 8].map(sheet.fewerNotes)).toEqual([
      'Aquí se deja fuera una nota que no urge.',
      'Aquí se dejan fuera 8 notas que no urgen.',
    ]);
  });

  it('of a place, to its owner, with what is known alone', () => {
    const place = {
      along: 19.75,
      entry: 'Registro f3',
      depth: 2,
      near: { thing: 'Sycamore', distance: 0.6 },
    };
    expect(sheet.ownerPlaceText(place, FEET)).toBe(
      'A 64.8 ft de tubería desde donde entró la cámara (Registro f3), a unos 6.6 ft de profundidad, a 2.0 ft de Sycamore.',
    );
    expect(sheet.ownerPlaceText({ along: 3, entry: null, depth: null, near: null }, FEET)).toBe(
      'A 9.8 ft de tubería desde donde entró la cámara.',
    );
  });

  it('of a piece that nobody saw', () => {
    const gap = { pipe: 'Lateral', length: 3.048, why: ['El recorrido A terminó en A10: no pudo pasar.'] };
    expect(sheet.ownerGapText({ ...gap, whole: false }, FEET)).toBe(
      'Lateral: un tramo de 10.0 ft no se vio. El recorrido A terminó en A10: no pudo pasar.',
    );
    expect(sheet.ownerGapText({ ...gap, why: [], whole: true }, FEET)).toBe(
      'Lateral: ninguna cámara pasó por ahí (10.0 ft).',
    );
  });

  it('of how often and when a camera went in', () => {
    const { site } = sampleYard(FEET);
    const [run] = site.runs;
    const visit = { id: 'v', date: '2026-04-14', purpose: 'first-look', note: '' } as const;
    expect(sheet.ownerIntro({ ...site, runs: run === undefined ? [] : [run], visits: [visit] }, 1)).toEqual([
      'Se pasó una cámara por el drenaje una vez, el 14 abr 2026.',
      'Encontró una cosa que conviene saber. Las letras y los números son los del plano.',
    ]);
  });
});

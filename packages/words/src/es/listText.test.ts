import { describe, expect, it } from 'vitest';
import { andList, orList } from './listText';

// Real Academia Española, Diccionario panhispánico de dudas, y² and o² (from memory): `e` before the sound i, but `y` before hie-;
// `u` before the sound o, figures read so included
describe('names in a sentence', () => {
  it.each([
    [[], '', ''],
    [['a'], 'a', 'a'],
    [['a', 'b', 'c'], 'a, b y c', 'a, b o c'],
    [['padres', 'hijos'], 'padres e hijos', 'padres o hijos'],
    [['aguja', 'hilo'], 'aguja e hilo', 'aguja o hilo'],
    [['Francia', 'Italia'], 'Francia e Italia', 'Francia o Italia'],
    [['nieve', 'hielo'], 'nieve y hielo', 'nieve o hielo'],
    [['agua', 'iones'], 'agua y iones', 'agua o iones'],
    [['unos', 'otros'], 'unos y otros', 'unos u otros'],
    [['ayer', 'hoy'], 'ayer y hoy', 'ayer u hoy'],
    [['7', '8'], '7 y 8', '7 u 8'],
    [['10', '11'], '10 y 11', '10 u 11'],
    [['109', '110'], '109 y 110', '109 o 110'],
    [['norte', 'yeso'], 'norte y yeso', 'norte o yeso'],
  ])('%j', (names, all, one) => {
    expect(andList(names)).toBe(all);
    expect(orList(names)).toBe(one);
  });
});

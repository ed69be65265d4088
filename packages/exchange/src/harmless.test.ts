import { describe, expect, it } from 'vitest';
import { formulaFree, harmlessName, plainText } from './harmless';

describe('what people typed', () => {
  it.each([
    ['=HYPERLINK("http://x";"y")', '\'=HYPERLINK("http://x";"y")'],
    ['<script>alert(1)</script>', '‹script›alert(1)‹/script›'],
    ['  \t=1+1', "'=1+1"],
    ['＝1+1', "'＝1+1"],
    ['a\u202egnp.exe', 'agnp.exe'],
    ['\u2066a\u2069b\u202a\u202b\u202c\u202d', 'ab'],
    ['a\u0000b\u001bc\u007f', 'abc'],
    ['two\r\nlines', 'two lines'],
    ['\ud83c half', 'half'],
    ['raíces 根 שורש 🌳', 'raíces 根 שורש 🌳'],
    ['-2 ft', "'-2 ft"],
    ['', ''],
  ])('%j goes out as %j', (text, name) => {
    expect(harmlessName(text)).toBe(name);
  });

  it('keeps its line ends where a format can hold them', () => {
    expect(plainText('a\r\n\tb')).toBe('a\r\n\tb');
    expect(formulaFree('a=b')).toBe('a=b');
  });
});

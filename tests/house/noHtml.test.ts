import { describe, expect, it } from 'vitest';
import { houseSources } from './repository';
import { mask } from './specifiers';

/** Ways from a text to markup or code: what a file, a link or a name holds must never go along one. */
const WAYS =
  /\.(?:inner|outer)HTML\b|\binsertAdjacentHTML\b|\bdangerouslySetInnerHTML\b|\bdocument\s*\.\s*write(?:ln)?\b|\bcreateContextualFragment\b|\bsetHTMLUnsafe\b|\bsrcDoc\b|(?<![.\w$])eval\s*\(|\bnew\s+Function\b|\bimportScripts\b|\bset(?:Timeout|Interval)\s*\(\s*"/;

/** Lines with such a way, comments and texts left out. */
function waysIn(text: string): readonly string[] {
  return mask(text)
    .code.split('\n')
    .filter((line) => WAYS.test(line));
}

describe('no text becomes markup or code', () => {
  it('in none of our sources', () => {
    const sources = Object.entries(houseSources());
    expect(sources.length).toBeGreaterThan(500);
    expect(sources.flatMap(([path, text]) => waysIn(text).map((line) => `${path}: ${line.trim()}`))).toEqual(
      [],
    );
  });

  it.each([
    'box.innerHTML = site.name;',
    'box . outerHTML += name;'.replace(' . ', '.'),
    "box.insertAdjacentHTML('beforeend', name);",
    '<p dangerouslySetInnerHTML={{ __html: name }} />',
    'document.write(name);',
    'document . writeln(name);',
    'range.createContextualFragment(name)',
    '<iframe srcDoc={name} />',
    'eval(name)',
    'return new Function(name)();',
    "setTimeout('run()', 10);",
  ])('would find %s', (line) => {
    expect(waysIn(`const a = 1;\n${line}\n`)).toEqual([line.includes("'") ? expect.any(String) : line]);
  });

  it.each(['// box.innerHTML = name', "say('eval(x)')", 'setTimeout(() => run(), 10)', 'retrieval(name)'])(
    'lets %s be',
    (line) => {
      expect(waysIn(line)).toEqual([]);
    },
  );
});

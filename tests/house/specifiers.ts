/**
 * Where a source text imports or re-exports from, read without a compiler: comments, strings, templates and regular
 * expressions are taken out first, so that the patterns for `import` and `from` see code only.
 */

export type Specifier = Readonly<{ from: string; line: number }>;

type Masked = Readonly<{ code: string; strings: readonly string[] }>;

/** What may stand before a `/` that opens a regular expression; after `<` it closes a JSX tag. */
const BEFORE_REGEX = /(?:^|[(,=:[!&|?{};+\-*%~^>\n]|\b(?:return|typeof|case|in|of|await|yield|void))\s*$/;
const REGEX = /\/(?![*/])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/[a-z]*/y;
const QUOTED = /'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"/y;
const PLAIN_TEMPLATE = /`(?:\\.|[^`\\$]|\$(?!\{))*`/y;
const COMMENT = /\/\/[^\n]*|\/\*[\s\S]*?\*\//y;

function matchAt(pattern: RegExp, text: string, at: number): string | null {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? null;
}

const newlines = (text: string) => text.replace(/[^\n]/g, '');

/** The text with each comment emptied and each string replaced by its number in `strings`; line numbers are kept. */
export function mask(text: string): Masked {
  const strings: string[] = [];
  // One entry per open template; its value counts the braces open inside the current `${`.
  const templates: number[] = [];
  let code = '';
  let at = 0;

  const templateText = (): void => {
    while (at < text.length) {
      if (text[at] === '\\') at += 2;
      else if (text[at] === '`') {
        at += 1;
        templates.pop();
        return;
      } else if (text.startsWith('${', at)) {
        at += 2;
        code += '(';
        return;
      } else {
        if (text[at] === '\n') code += '\n';
        at += 1;
      }
    }
  };

  while (at < text.length) {
    const comment = matchAt(COMMENT, text, at);
    if (comment !== null) {
      code += ` ${newlines(comment)}`;
      at += comment.length;
      continue;
    }
    const quoted = matchAt(QUOTED, text, at) ?? matchAt(PLAIN_TEMPLATE, text, at);
    if (quoted !== null) {
      code += `"#${strings.length}"${newlines(quoted)}`;
      strings.push(quoted.slice(1, -1));
      at += quoted.length;
      continue;
    }
    const regex = text[at] === '/' && BEFORE_REGEX.test(code.slice(-40)) ? matchAt(REGEX, text, at) : null;
    if (regex !== null) {
      code += '0';
      at += regex.length;
      continue;
    }
    const depth = templates.at(-1);
    if (text[at] === '`') {
      templates.push(0);
      at += 1;
      templateText();
    } else if (depth !== undefined && text[at] === '}' && depth === 0) {
      code += ')';
      at += 1;
      templateText();
    } else {
      if (depth !== undefined && text[at] === '{') templates[templates.length - 1] = depth + 1;
      if (depth !== undefined && text[at] === '}') templates[templates.length - 1] = depth - 1;
      code += text[at];
      at += 1;
    }
  }
  return { code, strings };
}

const IMPORTS = [
  /(?<![.\w$])from\s*"#(\d+)"/g,
  /(?<![.\w$])import\s*"#(\d+)"/g,
  /(?<![.\w$])import\s*\(\s*"#(\d+)"/g,
  /(?<![.\w$])require\s*(?:\.\s*resolve\s*)?\(\s*"#(\d+)"/g,
  /\bnew\s+URL\s*\(\s*"#(\d+)"\s*,\s*import\s*\.\s*meta\b/g,
];

/** Every specifier of a masked text, static or dynamic, of values or types, in the order of their lines (from 1). */
export function specifiersOf({ code, strings }: Masked): readonly Specifier[] {
  const found = IMPORTS.flatMap((pattern) =>
    [...code.matchAll(pattern)].map((match) => ({
      from: strings[Number(match[1])] ?? '',
      line: code.slice(0, match.index).split('\n').length,
    })),
  );
  return found.sort((a, b) => a.line - b.line);
}

const PLAIN_KEY = /^[A-Za-z_][A-Za-z0-9_]*$/;

/** The way to a place in a file, such as `features[3].vertices[0].spot`; empty for the whole file. */
export function filePathText(path: readonly (string | number)[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    if (!PLAIN_KEY.test(key)) return `${text}[${JSON.stringify(key)}]`;
    return text === '' ? key : `${text}.${key}`;
  }, '');
}

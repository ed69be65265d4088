/** Reads comma-separated text as RFC 4180 writes it: quotes doubled inside quotes, CRLF or LF. First row: the names. */
export function readCsv(text: string): readonly Readonly<Record<string, string>>[] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  const endCell = () => {
    rows.at(-1)?.push(cell);
    cell = '';
  };
  const body = text.replace(/^\uFEFF/, '').replace(/\r?\n$/, '');
  for (let i = 0; i < body.length; i++) {
    const c = body.charAt(i);
    if (quoted) {
      if (c !== '"') cell += c;
      else if (body.charAt(i + 1) === '"') {
        cell += c;
        i++;
      } else quoted = false;
    } else if (c === '"') quoted = true;
    else if (c === ',') endCell();
    else if (c === '\n') {
      endCell();
      rows.push([]);
    } else if (c !== '\r') cell += c;
  }
  endCell();
  const [names = [], ...records] = rows;
  return records.map((record) => Object.fromEntries(names.map((name, i) => [name, record[i] ?? ''])));
}

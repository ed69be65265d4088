/** Grammatical gender of a name. */
export type Gender = 'm' | 'f';

/** A name for labels, in sentence case, with its gender. */
export type Noun = Readonly<{ name: string; gender: Gender }>;

/** A name as it stands inside a sentence, without its article. `null`: people gave it, and it takes none. */
export type Named = Readonly<{ name: string; gender: Gender | null }>;

const the: Record<Gender, string> = { m: 'el', f: 'la' };
const this_: Record<Gender, string> = { m: 'este', f: 'esta' };

export function masculine(name: string): Noun {
  return { name, gender: 'm' };
}

export function feminine(name: string): Noun {
  return { name, gender: 'f' };
}

/** `el registro f3`, `la cerca f5`; a name that people gave stays alone. */
export function withArticle({ name, gender }: Named): string {
  return gender === null ? name : `${the[gender]} ${name}`;
}

/** `este registro`, `esta cerca`. */
export function withThis({ name, gender }: Noun): string {
  return `${this_[gender]} ${name}`;
}

/** After `de`, which swallows a small `el`: `del registro f3`, `de la cerca f5`, `de El Pozo`. */
export function of(text: string): string {
  return text.startsWith('el ') ? `d${text}` : `de ${text}`;
}

/** After `a`, which swallows a small `el`: `al registro f3`, `a la cerca f5`. */
export function to(text: string): string {
  return text.startsWith('el ') ? `al ${text.slice('el '.length)}` : `a ${text}`;
}

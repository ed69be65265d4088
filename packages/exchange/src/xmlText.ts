import { plainText } from './harmless';

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Text for XML 1.0, in an element or an attribute. */
export function escaped(text: string): string {
  return plainText(text).replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c);
}

/** An element around text, which is escaped. `tag` may carry attributes. */
export function textElement(tag: string, text: string): string {
  return `<${tag}>${escaped(text)}</${tag.replace(/ .*$/s, '')}>`;
}

/** An element around other elements, each on a line of its own, indented by one. */
export function element(tag: string, children: readonly string[]): string {
  const inside = children.join('\n').replace(/^/gm, ' ');
  return `<${tag}>\n${inside}\n</${tag.replace(/ .*$/s, '')}>`;
}

/** A whole document in UTF-8. */
export function xmlDocument(root: string): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;
}

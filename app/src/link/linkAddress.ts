/** What stands before the text of a link: this program's own address, and the screen that opens links, behind the `#`. */
export function linkHead(): string {
  const { origin, pathname } = window.location;
  return `${origin}${pathname}#/link/`;
}

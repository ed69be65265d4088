/** An instant with the offset of this device's own clock: `2026-05-20T10:15:00-05:00`. */
export function isoNow(now: Date = new Date()): string {
  const offset = -now.getTimezoneOffset();
  const local = new Date(now.getTime() + offset * 60_000).toISOString().slice(0, 19);
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0');
  const size = Math.abs(offset);
  return `${local}${offset < 0 ? '-' : '+'}${two(size / 60)}:${two(size % 60)}`;
}

const format = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** A moment (milliseconds since 1970) as day and time of this device. */
export function momentText(ms: number): string {
  return format.format(ms);
}

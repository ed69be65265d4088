import type { Ink } from '@footmark/drawing';
import { type PathProfile, setOutOf } from '@footmark/site';
import type { SheetSetting } from '../setting';

/** What is painted over a place of a pipe. */
export type ProfileTag = Readonly<{ station: number; label: string; ink: Ink }>;

/** The points of a pipe that this kind of sheet tells of: its marks, or what sets it out. */
export function profileTags(
  { path }: PathProfile,
  { site, derived, options }: SheetSetting,
): readonly ProfileTag[] {
  switch (options.kind) {
    case 'mark-out':
    case 'findings':
      return derived.marks.flatMap(({ label, place }) =>
        place?.path === path ? [{ station: place.station, label, ink: 'sewer' as const }] : [],
      );
    case 'reroute':
    case 'as-built':
      return (setOutOf(site, derived, path)?.points ?? []).map(({ station, label }) => ({
        station,
        label,
        ink: 'ink' as const,
      }));
  }
}

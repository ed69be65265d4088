import { finishSteps, type Incoming, type IncomingResult, readIncoming } from '@footmark/exchange';

export function read(text: string): IncomingResult {
  return finishSteps(readIncoming(text));
}

/** What is in a text that is expected to be sound. */
export function readSound(text: string): Incoming {
  const found = read(text);
  if (!found.ok) throw new Error(JSON.stringify(found));
  return found.value;
}

/** Lines of a DXF file: codes and values in turn. */
export function dxf(...groups: readonly (string | number)[]): string {
  return `${groups.join('\n')}\n`;
}

/** A DXF file with these entities, and with a header when `insUnits` is given. */
export function dxfOf(
  entities: readonly (string | number)[],
  { insUnits, blocks = [] }: { insUnits?: number; blocks?: readonly (string | number)[] } = {},
): string {
  const header =
    insUnits === undefined ? [] : [0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS', 70, insUnits, 0, 'ENDSEC'];
  const blockSection = blocks.length === 0 ? [] : [0, 'SECTION', 2, 'BLOCKS', ...blocks, 0, 'ENDSEC'];
  return dxf(...header, ...blockSection, 0, 'SECTION', 2, 'ENTITIES', ...entities, 0, 'ENDSEC', 0, 'EOF');
}

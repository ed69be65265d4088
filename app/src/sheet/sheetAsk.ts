import type { AskedScale, InkSet, PaperName } from '@footmark/sheet';
import type { SheetKind } from '@footmark/words';
import { create } from 'zustand';
import { recallJson, remember } from '../session/onDevice';

/** What a sheet is asked for; kept on this device, as a crew's printer takes one paper. */
export type SheetAsk = {
  readonly kind: SheetKind;
  readonly paper: PaperName | null;
  readonly turned: boolean;
  readonly scale: AskedScale;
  readonly ink: InkSet;
  /** BCP 47 tag of its language. */
  readonly language: string;
  readonly withCode: boolean;
  readonly preparedBy: string;
  readonly preparedFor: string;
  readonly note: string;
};

const KEY = 'footmark-sheet';

const USUAL: SheetAsk = {
  kind: 'mark-out',
  paper: null,
  turned: false,
  scale: 'fit',
  ink: 'colour',
  language: 'en-US',
  withCode: true,
  preparedBy: '',
  preparedFor: '',
  note: '',
};

export const useSheetAsk = create<SheetAsk>()(() => ({ ...USUAL, ...kept() }));

export function changeSheetAsk(change: Partial<SheetAsk>): void {
  useSheetAsk.setState(change);
  const { preparedFor: _, note: __, ...lasting } = useSheetAsk.getState();
  remember(KEY, JSON.stringify(lasting));
}

/** Of what was kept only that of the kind that is asked for: another hand may have written it. */
function kept(): Partial<SheetAsk> {
  const found = recallJson(KEY);
  if (typeof found !== 'object' || found === null) return {};
  const known = Object.entries(found).filter(
    ([key, value]) =>
      key in USUAL && (key === 'paper' || typeof value === typeof USUAL[key as keyof SheetAsk]),
  );
  return Object.fromEntries(known) as Partial<SheetAsk>; // keys and kinds were looked at above
}

/** What people have in the tray where a site is taped in feet, and elsewhere. */
export function usualPaper(inFeet: boolean): PaperName {
  return inFeet ? 'letter' : 'a4';
}

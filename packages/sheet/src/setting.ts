import type { InTheWay } from '@footmark/dig';
import type { Derived, RunsFit, Site } from '@footmark/site';
import type { SheetKind, Words } from '@footmark/words';
import type { Lettering } from './font/sheetFonts';
import type { InkSet, Inks } from './page/inks';
import type { Picture } from './page/page';
import type { Paper } from './page/paper';
import type { AskedScale } from './plan/planFrame';

/** A square code of dark and light modules, with what it leads to. */
export type QrCode = Readonly<{ modules: readonly (readonly boolean[])[]; caption: string }>;

/** What people say of a sheet; what is not said leaves a line to write on. */
export type SheetFacts = Readonly<{ preparedBy?: string; preparedFor?: string; note?: string }>;

/** `date`: an ISO day, for the title block and the file. */
export type SheetOptions = Readonly<{
  kind: SheetKind;
  paper: Paper;
  scale: AskedScale;
  ink: InkSet;
  date: string;
  facts?: SheetFacts;
  qr?: readonly QrCode[];
  /** By the id that a reading's `photo` has. */
  pictures?: ReadonlyMap<string, Picture>;
}>;

/** What a sheet is made of. `inTheWay` is held against the same day as the sheet. */
export type SheetSource = Readonly<{
  site: Site;
  derived: Derived;
  fit: RunsFit | null;
  inTheWay: InTheWay;
  words: Words;
}>;

/** What every part of a sheet is made with. */
export type SheetSetting = SheetSource &
  Readonly<{ options: SheetOptions; inks: Inks; lettering: Lettering }>;

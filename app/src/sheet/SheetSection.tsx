import { type InkSet, type PaperName, paperNames } from '@footmark/sheet';
import { languages, type SheetKind, sheetKinds } from '@footmark/words';
import { FileText } from 'lucide-react';
import { lazy, Suspense, useState } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { TextLine } from '../controls/TextLine';
import { Tick } from '../controls/Tick';
import { useSite } from '../session/siteSession';
import { changeSheetAsk, type SheetAsk, useSheetAsk, usualPaper } from './sheetAsk';

const SheetPreview = lazy(() => import('./SheetPreview').then((m) => ({ default: m.SheetPreview })));

const KINDS: Record<SheetKind, { readonly name: string; readonly use: string }> = {
  'mark-out': { name: 'Mark-out', use: 'For who paints and digs: the marks with their tapes and holes.' },
  reroute: { name: 'New pipe', use: 'For who lays it: old and new, points to set out, materials.' },
  'as-built': { name: 'As built', use: 'For the file: the pipe with tapes to what will still stand.' },
  findings: {
    name: 'Findings for the owner',
    use: 'In plain words: what was seen, what was not, what is advised.',
  },
};

const PAPERS: Record<PaperName, string> = { letter: 'Letter', tabloid: 'Tabloid', a4: 'A4', a3: 'A3' };

const INKS: readonly { readonly id: InkSet; readonly name: string }[] = [
  { id: 'colour', name: 'Colour' },
  { id: 'black-and-white', name: 'Black and white' },
];

const SHEET_WAYS = [
  { id: 'upright', name: 'Upright' },
  { id: 'turned', name: 'Sideways' },
] as const;

/** Denominators of the rules that crews carry: feet to an inch where a site is taped in feet. */
const FEET_TO_AN_INCH = [5, 10, 20, 30, 40, 50, 60, 100];
const METRIC = [50, 100, 200, 250, 500, 1000];
const INCHES_TO_A_FOOT = 12;

/** The sheet that a crew sets out from: what it is to be, and a look at it before it is saved or printed. */
export function SheetSection() {
  const ask = useSheetAsk();
  const [isShown, setShown] = useState(false);
  return (
    <section className={cards.section} aria-label="Sheet on paper">
      <h3>Sheet on paper</h3>
      <Choice
        label="What it is for"
        options={sheetKinds.map((id) => ({ id, name: KINDS[id].name }))}
        value={ask.kind}
        onChange={(kind) => changeSheetAsk({ kind })}
      />
      <p className={cards.empty}>{KINDS[ask.kind].use}</p>
      <Action look="primary" wide onPress={() => setShown(true)}>
        <FileText size={20} aria-hidden /> Look at the sheet
      </Action>
      <SheetFields ask={ask} />
      {isShown ? (
        <Suspense fallback={null}>
          <SheetPreview ask={ask} onClose={() => setShown(false)} />
        </Suspense>
      ) : null}
    </section>
  );
}

function SheetFields({ ask }: { readonly ask: SheetAsk }) {
  const { units } = useSite();
  const inFeet = units.length !== 'm';
  const paper = ask.paper ?? usualPaper(inFeet);
  const spoken = languages.find((l) => l.language === ask.language) ?? languages[0];
  return (
    <Fold
      title="Paper, scale, language"
      result={`${PAPERS[paper]}, ${ask.ink === 'colour' ? 'colour' : 'black and white'}, ${spoken.crew.languageName}`}
    >
      <div className={cards.pair}>
        <Choice
          label="Paper"
          options={paperNames.map((id) => ({ id, name: PAPERS[id] }))}
          value={paper}
          onChange={(chosen) => changeSheetAsk({ paper: chosen })}
        />
        <Choice
          label="Scale"
          options={scalesFor(inFeet)}
          value={String(ask.scale)}
          onChange={(scale) =>
            changeSheetAsk({ scale: scale === 'fit' || scale === 'largest' ? scale : Number(scale) })
          }
        />
      </div>
      <Segments
        label="Paper lies"
        options={SHEET_WAYS}
        value={ask.turned ? 'turned' : 'upright'}
        onChange={(way) => changeSheetAsk({ turned: way === 'turned' })}
      />
      <Segments label="Ink" options={INKS} value={ask.ink} onChange={(ink) => changeSheetAsk({ ink })} />
      {languages.length < 2 ? null : (
        <Segments
          label="Language"
          options={languages.map(({ language, crew }) => ({ id: language, name: crew.languageName }))}
          value={spoken.language}
          onChange={(language) => changeSheetAsk({ language })}
        />
      )}
      <Tick isSelected={ask.withCode} onChange={(withCode) => changeSheetAsk({ withCode })}>
        With the QR code of the sketch
      </Tick>
      <TextLine
        label="Prepared by"
        value={ask.preparedBy}
        onCommit={(preparedBy) => changeSheetAsk({ preparedBy })}
      />
      <TextLine
        label="Prepared for"
        value={ask.preparedFor}
        onCommit={(preparedFor) => changeSheetAsk({ preparedFor })}
      />
      <TextLine
        label="Note on the sheet"
        value={ask.note}
        lines={2}
        maxLength={400}
        onCommit={(note) => changeSheetAsk({ note })}
      />
    </Fold>
  );
}

function scalesFor(inFeet: boolean): readonly { readonly id: string; readonly name: string }[] {
  const rules = inFeet
    ? FEET_TO_AN_INCH.map((feet) => ({ id: String(feet * INCHES_TO_A_FOOT), name: `1 in = ${feet} ft` }))
    : METRIC.map((denominator) => ({ id: String(denominator), name: `1:${denominator}` }));
  return [
    { id: 'fit', name: 'Largest of a ruler that fits' },
    { id: 'largest', name: 'Largest that fits' },
    ...rules,
  ];
}

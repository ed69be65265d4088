import { siteFileName } from '@footmark/exchange';
import { type Page, type Sheet, sheetSvg } from '@footmark/sheet';
import { Download, Printer, Share, X } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Action } from '../controls/Action';
import { fitOfSite } from '../fit/fitOfSite';
import { canShareFiles, handOver, saveFile } from '../handOff/saveFile';
import { useDerived, useSite } from '../session/siteSession';
import { makeSheet, pdfOf } from './makeSheet';
import { pageSize } from './pageSize';
import styles from './sheet.module.css';
import type { SheetAsk } from './sheetAsk';

type Made = Sheet | 'too-many-sheets' | 'failed' | null;

/** The pages of a sheet as they are printed, and the ways to hand them out. */
export function SheetPreview({ ask, onClose }: { readonly ask: SheetAsk; readonly onClose: () => void }) {
  const site = useSite();
  const derived = useDerived();
  const [made, setMade] = useState<Made>(null);
  useEffect(() => {
    let left = false;
    makeSheet({ site, derived, fit: fitOfSite(site) }, ask).then(
      (sheet) => left || setMade(sheet),
      () => left || setMade('failed'),
    );
    return () => {
      left = true;
    };
  }, [site, derived, ask]);
  const sheet = made !== null && typeof made === 'object' ? made : null;
  const file = async () => ({
    name: siteFileName(site, `${ask.kind}.pdf`),
    data: sheet === null ? new Uint8Array() : await pdfOf(sheet),
    type: 'application/pdf',
  });
  return (
    <ModalOverlay
      className={styles.over ?? ''}
      isOpen
      isDismissable
      onOpenChange={(open) => open || onClose()}
    >
      <Modal className={styles.modal ?? ''}>
        <Dialog className={styles.dialog ?? ''}>
          <div className={styles.bar}>
            <Heading slot="title">{sheet === null ? 'Sheet' : sheetCount(sheet.pages.length)}</Heading>
            {sheet === null ? null : (
              <div className={styles.ways}>
                <Action look="primary" onPress={() => void file().then(saveFile)}>
                  <Download size={20} aria-hidden /> Save as PDF
                </Action>
                <Action onPress={() => printPages(sheet)}>
                  <Printer size={20} aria-hidden /> Print
                </Action>
                {canShareFiles() ? (
                  <Action onPress={() => void file().then((pdf) => handOver([pdf]))}>
                    <Share size={20} aria-hidden /> Share
                  </Action>
                ) : null}
              </div>
            )}
            <Action look="icon" aria-label="Close" onPress={onClose}>
              <X size={22} aria-hidden />
            </Action>
          </div>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys scroll what has the focus */}
          <section className={styles.pages} tabIndex={0} aria-label="Pages">
            {made === null ? <p role="status">Laying it out.</p> : null}
            {made === 'too-many-sheets' ? (
              <p role="alert">
                At this scale the yard takes more sheets than anyone pastes together. Choose a smaller one.
              </p>
            ) : null}
            {made === 'failed' ? (
              <p role="alert">
                The sheet could not be made. Load the page again while there is a network, then try again.
              </p>
            ) : null}
            {sheet?.pages.map((page, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: pages have no ids, and are made anew as a whole
              <SheetPage key={i} page={page} sheet={sheet} name={`Sheet ${i + 1} of ${sheet.pages.length}`} />
            ))}
          </section>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** One page, drawn from the same layout as the PDF. */
function SheetPage({
  page,
  sheet,
  name,
}: {
  readonly page: Page;
  readonly sheet: Sheet;
  readonly name: string;
}) {
  const box = useRef<HTMLDivElement>(null);
  const hrefs = useMemo(() => new Map<string, string>(), []);
  useEffect(() => {
    const hrefOf = (id: string) => {
      const picture = sheet.pictures.get(id);
      const known = hrefs.get(id);
      if (known !== undefined || picture === undefined) return known ?? '';
      const made = URL.createObjectURL(
        new Blob([new Uint8Array(picture.bytes)], { type: picture.mediaType }),
      );
      hrefs.set(id, made);
      return made;
    };
    // parsed as XML and put in as nodes: no text of a site is ever read as markup of this page
    const drawn = new DOMParser().parseFromString(
      sheetSvg(page, { hrefOf }),
      'image/svg+xml',
    ).documentElement;
    drawn.setAttribute('role', 'img');
    drawn.setAttribute('aria-label', name);
    box.current?.replaceChildren(document.importNode(drawn, true));
    return () => {
      for (const href of hrefs.values()) URL.revokeObjectURL(href);
      hrefs.clear();
    };
  }, [page, sheet, name, hrefs]);
  return <div ref={box} className={styles.page} />;
}

function sheetCount(pages: number): string {
  return pages === 1 ? '1 sheet' : `${pages} sheets`;
}

/** Prints the pages that are shown, each on paper of its own size. */
function printPages({ pages: [first] }: Sheet): void {
  if (first === undefined) return;
  pageSize(first.width, first.height);
  window.print();
}

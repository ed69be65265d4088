import { aboutKey, mergeAnswer } from '@footmark/site';
import { useEffect, useState } from 'react';
import cards from '../../cards/cards.module.css';
import { Action } from '../../controls/Action';
import { derivedFrom, edit, useSite } from '../../session/siteSession';
import { notify } from '../../session/workbench';
import { words } from '../../words';
import { countsOf } from '../answerEdits';
import { FoundGroups } from './FoundGroups';
import { keepPhotos } from './keepPhotos';
import type { OpenedAnswerFiles } from './readAnswerFiles';
import { isSameState } from './sameState';

type Props = { readonly opened: OpenedAnswerFiles; readonly onClose: () => void };

/** An answer before it is taken over: whose it is, what it holds beside what is computed and what is known, and the button that takes it. */
export function AnswerPreview({ opened, onClose }: Props) {
  const site = useSite();
  const { answer, photos } = opened;
  const [sameState, setSameState] = useState(true);
  useEffect(() => {
    void isSameState(site, answer.madeFrom.hash).then(setSameState);
  }, [site, answer]);
  const merged = mergeAnswer(site, { answer });
  const counts = countsOf(answer);
  const keys = new Set(answer.found.map((f) => aboutKey(f.about) ?? f.id));
  const named = answer.found.flatMap((f) => f.photos);
  const missing = named.filter((id) => !photos.has(id)).length;
  const take = async () => {
    // first the photos: a record that is shown looks for its own at once
    const lost = await keepPhotos(opened, site.id, Date.now());
    if (!edit('Take over what the crew found', (s) => mergeAnswer(s, { answer }))) return;
    onClose();
    notify(
      lost.length === 0
        ? 'Taken over. Undo takes it back.'
        : `Taken over, but these photos could not be kept: ${lost.join(', ')}.`,
    );
  };
  return (
    <section className={cards.offer} aria-label="Answer">
      <p>
        <strong>
          {answer.by || 'A crew'}, {when(answer.sentAt)}
        </strong>
        <br />
        {words.crew.answerText(counts)}.
      </p>
      {answer.site === site.id ? null : (
        <p className={cards.problem}>This answer was made from another site. Check that it belongs here.</p>
      )}
      {sameState || answer.site !== site.id ? null : (
        <p className={cards.sub}>
          The site has changed since the crew got it. What it found counts from the paint that it was given.
        </p>
      )}
      {missing === 0 ? null : (
        <p className={cards.sub}>
          {missing} of its photos did not come along. Open it again together with them, or take it without.
        </p>
      )}
      <FoundGroups
        site={merged}
        derived={derivedFrom(merged)}
        photos={photos}
        only={(record) => keys.has(aboutKey(record.about) ?? record.id)}
      />
      <div className={cards.actions}>
        {merged === site && photos.size === 0 ? (
          <p>All of it is taken over already.</p>
        ) : (
          <Action look="primary" onPress={() => void take()}>
            Take it over
          </Action>
        )}
        <Action onPress={onClose}>Close</Action>
      </div>
    </section>
  );
}

function when(iso: string): string {
  return new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' }).format(
    Date.parse(iso),
  );
}

import type { Run } from '@footmark/site';
import { ChevronRight } from 'lucide-react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { entryName } from './entryOf';

/** One run in a list; a press opens it. */
export function RunRow({ run }: { readonly run: Run }) {
  const site = useSite();
  const { readings, ended } = run;
  return (
    <Button className={cards.row ?? ''} onPress={() => select({ kind: 'run', id: run.id })}>
      <span className={cards.paint}>{run.letter}</span>
      <span className={cards.grow}>
        {entryName(site, run) ?? 'No entry chosen'}
        <small>
          {words.directionName(run.direction).toLowerCase()}
          {ended === undefined ? '' : `, ${words.runEndName(ended).toLowerCase()}`}
        </small>
      </span>
      <span className={cards.number}>
        {readings.length} {readings.length === 1 ? 'reading' : 'readings'}
      </span>
      <ChevronRight size={20} aria-hidden />
    </Button>
  );
}

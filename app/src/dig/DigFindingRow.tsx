import type { AnyDigFinding, DigSeverity } from '@footmark/dig';
import { Button } from 'react-aria-components';
import { bringIntoView } from '../canvas/planView';
import cards from '../cards/cards.module.css';
import { showPlace } from '../cards/showPlace';
import { useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import { RuleSource } from './RuleSource';

/** The severities of checks have their looks already. */
const LOOKS: Record<DigSeverity, string> = { must: 'error', should: 'warning', note: 'note' };

/** One thing that stands in the way: what, how much, what would cure it, which rule. A tap shows what it is about, and the place. */
export function DigFindingRow({ finding }: { readonly finding: AnyDigFinding }) {
  const site = useSite();
  const { text, cure } = words.digFindingText(finding, site);
  return (
    <Button
      className={cards.finding ?? ''}
      data-severity={LOOKS[finding.severity]}
      onPress={() => showFinding(finding)}
    >
      <strong>{text}</strong> {cure}
      {finding.rule === null ? null : <RuleSource rule={finding.rule} />}
    </Button>
  );
}

/** What is said of a dig opens the dig; all else what it is about. */
function showFinding({ at, place, values }: AnyDigFinding): void {
  if ('dig' in values) select({ kind: 'dig', id: values.dig });
  else showPlace(at);
  if (place !== null) bringIntoView(place);
}

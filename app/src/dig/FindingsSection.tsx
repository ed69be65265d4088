import type { AnyDigFinding, DigSeverity } from '@footmark/dig';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { words } from '../words';
import { DigFindingRow } from './DigFindingRow';

const SEVERITIES: readonly DigSeverity[] = ['must', 'should', 'note'];

/** All that stands in the way by how pressing it is, with how many of each. */
export function FindingsSection({ findings }: { readonly findings: readonly AnyDigFinding[] }) {
  if (findings.length === 0) return <p className={cards.empty}>Nothing that is drawn stands in the way.</p>;
  return (
    <div>
      {SEVERITIES.map((severity) => {
        const found = findings.filter((f) => f.severity === severity);
        if (found.length === 0) return null;
        return (
          <Fold
            key={severity}
            title={`${words.digSeverityName(severity)}: ${found.length}`}
            isOpen={severity === 'must'}
          >
            {found.map((finding) => (
              <DigFindingRow key={keyOf(finding)} finding={finding} />
            ))}
          </Fold>
        );
      })}
    </div>
  );
}

function keyOf({ code, values }: AnyDigFinding): string {
  return code + JSON.stringify(values);
}

import type { Target } from '@footmark/site';
import type { AnyDigFinding } from './standsInTheWay';

/** The thing that a finding is said of: its dig, else its pipe, else what it is shown by. */
export function findingSubject({ at, values }: AnyDigFinding): Target {
  if ('dig' in values) return { kind: 'dig', id: values.dig };
  if ('path' in values) return { kind: 'path', id: values.path };
  return at;
}

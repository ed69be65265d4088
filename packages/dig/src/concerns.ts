import type { Target } from '@footmark/site';
import type { AnyDigFinding } from './standsInTheWay';

/** The things on the plan, pipes and marks apart, that a finding speaks of, by their ids. */
export function featuresOf({ at, values }: AnyDigFinding): readonly string[] {
  return [
    ...(at.kind === 'feature' ? [at.id] : []),
    ...('feature' in values ? [values.feature] : []),
    ...('features' in values ? values.features : []),
    ...('tree' in values ? [values.tree] : []),
    ...('service' in values ? [values.service] : []),
    ...('tap' in values ? [values.tap] : []),
  ];
}

/** Whether a finding is said of a thing, or speaks of it. */
export function concerns(
  finding: AnyDigFinding,
  thing: Extract<Target, { kind: 'dig' | 'path' | 'feature' | 'reading' }>,
): boolean {
  const { at, values } = finding;
  switch (thing.kind) {
    case 'feature':
      return featuresOf(finding).includes(thing.id);
    case 'path':
      return (at.kind === 'path' && at.id === thing.id) || ('path' in values && values.path === thing.id);
    case 'dig':
      return 'dig' in values && values.dig === thing.id;
    case 'reading':
      return at.kind === 'reading' && at.id === thing.id;
  }
}

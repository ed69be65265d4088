import { startTransition, useEffect, useMemo, useState } from 'react';
import { oncePainted } from './oncePainted';

/**
 * What follows from an edit once the edit itself has been painted, which need not wait for it. As it is now where `hand` is another than it was then:
 * the thing in hand may be new. Both are the same objects while nothing of them changes.
 */
export function useLagging<Value>(value: Value, hand: unknown): Value {
  const now = useMemo(() => ({ value, hand }), [value, hand]);
  const [last, setLast] = useState(now);
  useEffect(() => oncePainted(() => startTransition(() => setLast(now))), [now]);
  return last.hand === hand ? last.value : value;
}

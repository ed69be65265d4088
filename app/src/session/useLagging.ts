import { startTransition, useEffect, useRef, useState } from 'react';
import { oncePainted } from './oncePainted';

/**
 * What follows from an edit once the edit itself has been painted, which need not wait for it: until then what was shown last. As it is now where `atOnce`
 * says so, and where `hand` is another than it was: the thing in hand may be new.
 */
export function useLagging<Value>(value: Value, hand: unknown, atOnce = false): Value {
  const [caughtUp, setCaughtUp] = useState(value);
  const shown = useRef({ value, hand });
  const isDue = atOnce || caughtUp === value || shown.current.hand !== hand;
  const now = isDue ? value : shown.current.value;
  useEffect(() => {
    shown.current = { value: now, hand };
    if (now === value) return undefined;
    return oncePainted(() => startTransition(() => setCaughtUp(value)));
  }, [now, value, hand]);
  return now;
}

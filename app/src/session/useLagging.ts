import { startTransition, useEffect, useRef, useState } from 'react';
import { oncePainted } from './oncePainted';

/**
 * What follows from an edit once the edit itself has been painted, which need not wait for it. As it is now where `hand` is another than it was when this
 * last was up to date: the thing in hand may be new.
 */
export function useLagging<Value>(value: Value, hand: unknown): Value {
  const [last, setLast] = useState(value);
  const lastHand = useRef(hand);
  useEffect(() => {
    if (last !== value) return oncePainted(() => startTransition(() => setLast(value)));
    lastHand.current = hand;
    return undefined;
  }, [last, value, hand]);
  return lastHand.current === hand ? last : value;
}

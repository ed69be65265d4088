import { type RefObject, useLayoutEffect, useRef } from 'react';

/** Begins a card that takes the place of another at its top, the hand at its heading. The heading needs a tabIndex of −1. */
export function useCardTop(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    heading.current?.focus({ preventScroll: true });
    // the card's own head lies over whatever is scrolled right to the top
    heading.current?.closest('section')?.scrollIntoView();
  }, []);
  return heading;
}

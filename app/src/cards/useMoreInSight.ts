import { type RefObject, useEffect, useRef, useState } from 'react';

/** Rows that are put on the page at a time: more than a screen holds. */
const AT_A_TIME = 80;

/** Further rows come when the end of those that are shown is this near to the screen. */
const NEAR_PX = 1200;

/**
 * How many rows of a long list are on the page: some at first, more as one scrolls towards their end. `end` goes on an element
 * behind the last of them, which is there while some are missing; `reach` puts a row and those before it on the page.
 */
export function useMoreInSight<End extends Element>(
  total: number,
  atATime = AT_A_TIME,
): {
  readonly shown: number;
  readonly end: RefObject<End | null>;
  readonly reach: (index: number) => void;
} {
  const [wanted, setWanted] = useState(atATime);
  const end = useRef<End>(null);
  const shown = Math.min(wanted, total);
  // biome-ignore lint/correctness/useExhaustiveDependencies: after each lot the end is another place, and is watched anew
  useEffect(() => {
    if (end.current === null) return;
    const watch = new IntersectionObserver(
      ([entry]) => entry?.isIntersecting && setWanted((now) => now + atATime),
      { root: scrollerOf(end.current), rootMargin: `${NEAR_PX}px` },
    );
    watch.observe(end.current);
    return () => watch.disconnect();
  }, [shown, total, atATime]);
  const reach = (index: number) => setWanted((now) => Math.max(now, index + atATime / 2));
  return { shown, end, reach };
}

/** What scrolls an element; null: the page. A margin in which things count as near is one of the scroller, not of the page. */
function scrollerOf(element: Element): Element | null {
  for (let box = element.parentElement; box !== null; box = box.parentElement)
    if (/auto|scroll/.test(getComputedStyle(box).overflowY)) return box;
  return null;
}

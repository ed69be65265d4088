import { type RefObject, useLayoutEffect, useState } from 'react';

/** The width of an element in CSS pixels, as it changes; 0 before it is there. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const box = element.current;
    if (box === null) return;
    setWidth(box.clientWidth);
    const watch = new ResizeObserver(() => setWidth(box.clientWidth));
    watch.observe(box);
    return () => watch.disconnect();
  }, [element]);
  return width;
}

import type { Context } from 'konva/lib/Context';
import { Layer } from 'konva/lib/Layer';
import { Shape } from 'konva/lib/Shape';
import { Stage } from 'konva/lib/Stage';
import { type RefObject, useLayoutEffect, useRef } from 'react';
import type { ViewSize } from './camera';

type Props = {
  /** Holds the stage while it is there. Whoever changes what is painted has its layers drawn. */
  readonly stage: RefObject<Stage | null>;
  readonly view: ViewSize;
  /** Larger than the view, with its middle in the view's. */
  readonly paper: ViewSize;
  /** What paints each canvas, the lowest first; as many at every render. */
  readonly layers: readonly ((context: Context) => void)[];
};

/**
 * Canvases of Konva's, one over the other, each painted by one function: Konva minds their pixel ratio and when they are redrawn. A
 * renderer of React's for its things would be a second React, and there are no things here.
 */
export function PlanStage({ stage, view, paper, layers }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const paint = useRef(layers);
  paint.current = layers;
  useLayoutEffect(() => {
    if (box.current === null) return;
    const made = new Stage({ container: box.current, listening: false });
    for (const i of paint.current.keys()) {
      const sceneFunc = (context: Context) => paint.current[i]?.(context);
      const layer = new Layer({ listening: false });
      layer.add(new Shape({ sceneFunc, listening: false, perfectDrawEnabled: false }));
      made.add(layer);
    }
    stage.current = made;
    return () => {
      stage.current = null;
      made.destroy();
    };
  }, [stage]);
  useLayoutEffect(() => {
    stage.current?.size({ width: paper.width, height: paper.height });
  }, [stage, paper.width, paper.height]);
  return (
    <div
      ref={box}
      style={{
        position: 'absolute',
        left: (view.width - paper.width) / 2,
        top: (view.height - paper.height) / 2,
      }}
    />
  );
}

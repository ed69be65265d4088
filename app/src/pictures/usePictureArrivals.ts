import { type RefObject, useEffect } from 'react';
import { screenToPlan } from '../canvas/camera';
import { usePlanView } from '../canvas/planView';
import { pasteThings } from '../session/chosenThings';
import { addPicture } from './addPicture';
import { letGoOfPictures } from './pictureHand';
import { forgetPictures } from './pictureImages';

/** Where text is pasted as text. */
const WRITING = 'input, textarea, [contenteditable]';

/** Lets pictures be dropped on the plan and pasted, and copied things pasted, while a site is open, and gives their memory back when it is left. */
export function usePictureArrivals(plan: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = plan.current;
    const onPaste = (event: ClipboardEvent) => {
      const writing = event.target instanceof Element && event.target.closest(WRITING) !== null;
      const file = event.clipboardData?.files[0];
      if (file !== undefined) {
        event.preventDefault();
        void addPicture(file);
      } else if (!writing) pasteThings();
    };
    const onOver = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault(); // else the browser opens the file itself
    };
    const onDrop = (event: DragEvent) => {
      const file = event.dataTransfer?.files[0];
      if (file === undefined) return;
      event.preventDefault();
      const { camera, size } = usePlanView.getState();
      const box = element?.getBoundingClientRect();
      const onPlan = event.target instanceof Node && element?.contains(event.target);
      const middle =
        camera && box && onPlan
          ? screenToPlan(camera, size, { x: event.clientX - box.left, y: event.clientY - box.top })
          : undefined;
      void addPicture(file, middle);
    };
    const letGo = letGoOfPictures();
    window.addEventListener('paste', onPaste);
    window.addEventListener('dragover', onOver);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('paste', onPaste);
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('drop', onDrop);
      letGo();
      forgetPictures();
    };
  }, [plan]);
}

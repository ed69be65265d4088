import { zoomView } from '../canvas/planView';
import { showAll, showChosen } from '../canvas/showAll';
import { copyChosen, cutChosen, duplicateChosen, nudgeChosen, removeChosen } from '../session/chosenThings';
import { redo, undo } from '../session/siteSession';
import { select, take, toggleLeaf, useWorkbench } from '../session/workbench';
import { finishDrawing, stepBack, toggleMeasure } from '../tools/useTool';

/** One key that works wherever nothing is being typed. */
export type Shortcut = {
  /** How the key is written for people. */
  readonly shown: string;
  readonly says: string;
  readonly matches: (event: KeyboardEvent) => boolean;
  /** False when there was nothing to do, and the key is the browser's. */
  readonly does: (event: KeyboardEvent) => unknown;
};

const isCtrl = (event: KeyboardEvent) => event.ctrlKey || event.metaKey;
const ctrl =
  (key: string, shift = false) =>
  (event: KeyboardEvent) =>
    isCtrl(event) && event.shiftKey === shift && event.key.toLowerCase() === key;
const plain =
  (...keys: readonly string[]) =>
  (event: KeyboardEvent) =>
    !isCtrl(event) && !event.altKey && keys.includes(event.key);

/** What Shift makes of a nudge. */
const FAR = 10;

/** Moves what is chosen by an inch or a centimetre, ten times that with Shift. */
const nudges: readonly Shortcut[] = (
  [
    ['ArrowLeft', -1, 0],
    ['ArrowRight', 1, 0],
    ['ArrowUp', 0, 1],
    ['ArrowDown', 0, -1],
  ] as const
).map(([key, x, y], i) => ({
  shown: 'Arrows',
  says: i === 0 ? 'Move what is chosen by a little, with Shift by more' : '',
  matches: (event) => !isCtrl(event) && event.key === key && isFree(event),
  does: (event) => nudgeChosen(x * (event.shiftKey ? FAR : 1), y * (event.shiftKey ? FAR : 1)),
}));

/** What has the focus and its own use for arrows and Enter. */
const USES_KEYS =
  'input, textarea, select, button, a, [role="listbox"], [role="tablist"], [role="radiogroup"], [role="slider"], [role="menu"], [role="dialog"]';

/** Arrows and Enter belong to lists, tabs, buttons and fields while one of them has the focus. */
function isFree(event: KeyboardEvent): boolean {
  return !(event.target instanceof Element) || event.target.closest(USES_KEYS) === null;
}

/** Text on the page is marked, to be copied as text. */
function isReading(): boolean {
  return (window.getSelection()?.toString() ?? '') !== '';
}

/** Every key, in the order in which the list shows them. */
const all: readonly Shortcut[] = [
  { shown: 'Ctrl Z', says: 'Undo', matches: ctrl('z'), does: () => undo() },
  {
    shown: 'Ctrl Y',
    says: 'Redo',
    matches: (event) => ctrl('y')(event) || ctrl('z', true)(event),
    does: () => redo(),
  },
  {
    shown: 'Esc',
    says: 'Put down the tool, let go of what is chosen',
    matches: plain('Escape'),
    does: letGo,
  },
  {
    shown: 'Enter',
    says: 'Finish what is being drawn',
    matches: (event) => plain('Enter')(event) && isFree(event),
    does: () => finishDrawing(),
  },
  { shown: 'Backspace', says: 'Take back the last point', matches: plain('Backspace'), does: stepBack },
  { shown: 'Delete', says: 'Delete what is chosen', matches: plain('Delete'), does: removeChosen },
  {
    shown: 'Ctrl C',
    says: 'Copy what is chosen',
    matches: ctrl('c'),
    does: () => !isReading() && copyChosen(),
  },
  {
    shown: 'Ctrl X',
    says: 'Cut what is chosen',
    matches: ctrl('x'),
    does: () => !isReading() && cutChosen(),
  },
  // the browser's own paste comes after the key: see usePictureArrivals, which tells pictures from things
  { shown: 'Ctrl V', says: 'Paste, also from another site', matches: () => false, does: () => false },
  { shown: 'Ctrl D', says: 'Duplicate what is chosen', matches: ctrl('d'), does: duplicateChosen },
  ...nudges,
  { shown: '+  −', says: 'Closer, further', matches: plain('+', '='), does: () => zoomView(1.5) },
  { shown: '', says: '', matches: plain('-', '_'), does: () => zoomView(1 / 1.5) },
  { shown: '0', says: 'Show the whole yard', matches: plain('0'), does: showAll },
  { shown: '.', says: 'Show what is chosen', matches: plain('.'), does: showChosen },
  { shown: 'm', says: 'Measure', matches: plain('m'), does: toggleMeasure },
  { shown: '?', says: 'This list', matches: plain('?'), does: () => toggleLeaf('keys') },
];

/** The keys that the list shows. */
export const shortcuts = all.filter((shortcut) => shortcut.says !== '');

/** Does what a key asks for; false when it asks for nothing. */
export function pressKey(event: KeyboardEvent): boolean {
  const found = all.find((shortcut) => shortcut.matches(event));
  if (found === undefined) return false;
  return found.does(event) !== false;
}

function letGo(): void {
  const { tool, leaf } = useWorkbench.getState();
  if (tool !== null) take(null);
  else if (leaf !== null) toggleLeaf(leaf);
  else select(null);
}

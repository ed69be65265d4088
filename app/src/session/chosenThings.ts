import {
  copyThings,
  FOOT_M,
  isSelfContained,
  type LooseThings,
  looseThings,
  moveThings,
  type PointOwner,
  pasteThings as pasteEdit,
  pointOwners,
  removeThing,
} from '@footmark/site';
import { newId } from '../tools/newId';
import { words } from '../words';
import { recallJson, remember } from './onDevice';
import { chosenIds, targetsOf } from './selection';
import { currentSite, derivedFrom, edit } from './siteSession';
import { notify, notifyOfEdit, select, selectGroup, useWorkbench } from './workbench';

/** Where copied things wait, in all tabs and for all sites of this device. */
const CLIP_KEY = 'footmark-copied-things';

/** What one press of an arrow key moves, metres: an inch, or a centimetre. */
const NUDGE_M = { feet: FOOT_M / 12, metres: 0.01 };

/** Copies lie this far (m) beside what they were copied from. */
const BESIDE_M = 1;

/** The things in hand that are not locked; says so when some are. */
function freeChosen(): readonly string[] {
  const ids = chosenIds();
  const locked = pointOwners(currentSite()).filter((o) => ids.includes(o.id) && o.locked);
  if (locked.length > 0) notify('What is locked stays as it is. Unlock it in its card first.');
  return ids.filter((id) => !locked.some((o) => o.id === id));
}

/** A name for a step of undo: the thing's own, or how many they are. */
function nameOf(ids: readonly string[]): string {
  if (ids.length !== 1) return `${ids.length} things`;
  const site = currentSite();
  const run = site.runs.find((r) => r.id === ids[0]);
  if (run !== undefined) return `run ${run.letter}`;
  const [target] = targetsOf(site, ids);
  return target === undefined ? 'one thing' : words.targetName(target, site);
}

/** Deletes what is in hand; a run too. */
export function removeChosen(): void {
  const { selected } = useWorkbench.getState();
  removeThings(selected?.kind === 'run' ? [selected.id] : freeChosen());
}

/** Deletes things by their ids, and says what lost its measurements by it. It can be undone. */
export function removeThings(ids: readonly string[]): void {
  if (ids.length === 0) return;
  const before = currentSite();
  const name = nameOf(ids);
  edit(`Delete ${name}`, (site) =>
    ids.reduce((left, id) => removeThing(left, { id, places: derivedFrom(left).points }), site),
  );
  select(null);
  const after = currentSite();
  const freed = pointOwners(after).filter((now) => {
    const was = pointOwners(before).find((o) => o.id === now.id);
    return (
      was !== undefined &&
      now.vertices.some((v, i) => v.spot.by === 'finger' && was.vertices[i]?.spot.by !== 'finger')
    );
  });
  if (freed.length === 0) return;
  const freedIds = freed.map((o) => o.id);
  const names = targetsOf(after, freedIds).map((target) => words.targetName(target, after));
  const shown =
    names.length > 3 ? `${names.slice(0, 2).join(', ')} and ${names.length - 2} more` : names.join(' and ');
  notifyOfEdit(
    `${shown} ${names.length === 1 ? 'stays' : 'stay'} in place, but lost the measurements from ${name}.`,
  );
}

export const HELD = 'This is held by its measurements. Change them in the card, or let go of it there.';

/** Whether something of it stands where a hand put it, so that a hand can move it. */
export function standsFree(owner: PointOwner): boolean {
  return owner.vertices.some((v) => v.spot.by === 'finger');
}

/** Moves what is in hand by steps of an inch or a centimetre. What is held by measurements stays, and a notice says so where that is all. */
export function nudgeChosen(x: number, y: number): void {
  const chosen = freeChosen();
  if (chosen.length === 0) return;
  const ids = pointOwners(currentSite()).flatMap((o) => (chosen.includes(o.id) && standsFree(o) ? o.id : []));
  if (ids.length === 0) {
    notify(HELD);
    return;
  }
  const step = currentSite().units.length === 'm' ? NUDGE_M.metres : NUDGE_M.feet;
  moveChosenBy(ids, x * step, y * step);
}

/** Moves things by a typed amount (m); false when that is not to be, and a notice says why. */
export function moveChosenBy(ids: readonly string[], x: number, y: number): boolean {
  const before = currentSite();
  const isSound = edit(`Move ${nameOf(ids)}`, (site) => moveThings(site, { ids, by: { x, y } }));
  if (isSound && currentSite() === before) notify(HELD);
  return currentSite() !== before;
}

/** Copies what is in hand; false when nothing is, or the browser keeps no copy. */
export function copyChosen(): boolean {
  const ids = chosenIds();
  if (ids.length === 0) return false;
  const site = currentSite();
  const things = copyThings(site, ids, derivedFrom(site).points);
  if (!remember(CLIP_KEY, JSON.stringify(things))) {
    notify('This browser keeps no copies: its storage is blocked or full.');
    return false;
  }
  const before = useWorkbench.getState().notice;
  void makeRoom(nameOf(ids)).then(() => {
    // what a cut took with it is said already, and matters more
    if (useWorkbench.getState().notice === before)
      notify(`Copied ${nameOf(ids)}. Paste it here or in another site.`);
  });
  return true;
}

/** What was copied last is pasted next: a picture that was copied elsewhere before makes room. A browser that forbids it keeps its own. */
async function makeRoom(name: string): Promise<void> {
  try {
    await navigator.clipboard?.writeText(name);
  } catch {
    // the picture stays, and is what is pasted
  }
}

/** Copies what is in hand and takes it out; what could not be copied stays. */
export function cutChosen(): boolean {
  const copiedThem = copyChosen();
  if (copiedThem) removeChosen();
  return copiedThem;
}

/** Puts what was copied into this site: in its old place in another site, beside it where it was copied from. */
export function pasteThings(): void {
  const things = copied();
  if (things === null) {
    notify('Nothing has been copied yet.');
    return;
  }
  putIn(things, 'Paste');
}

export function duplicateChosen(): void {
  const ids = chosenIds();
  if (ids.length === 0) return;
  const site = currentSite();
  putIn(copyThings(site, ids, derivedFrom(site).points), 'Duplicate');
}

function putIn(things: LooseThings, verb: string): void {
  const site = currentSite();
  const owners = [...things.features, ...things.paths];
  const ids = new Map(owners.map((o) => [o.id, newId('kind' in o ? 'f' : 'p')]));
  const fromHere = owners.some((o) => pointOwners(site).some((own) => own.id === o.id));
  const by = fromHere ? { x: BESIDE_M, y: -BESIDE_M } : { x: 0, y: 0 };
  const made = [...ids.values()];
  edit(`${verb} ${owners.length === 1 ? owners[0]?.name || 'one thing' : `${owners.length} things`}`, (s) =>
    pasteEdit(s, { things, ids, by }),
  );
  selectGroup(targetsOf(currentSite(), made));
}

function copied(): LooseThings | null {
  const parsed = looseThings.safeParse(recallJson(CLIP_KEY));
  return parsed.success && isSelfContained(parsed.data) ? parsed.data : null;
}

/** The middle of all points of things, for turning them about it; null when none has a place. */
export function middleOf(ids: readonly string[]): { readonly x: number; readonly y: number } | null {
  const site = currentSite();
  const { points } = derivedFrom(site);
  const places = pointOwners(site)
    .filter((o) => ids.includes(o.id))
    .flatMap((o) => o.vertices.flatMap((v) => points.get(`${o.id}/${v.id}`)?.at ?? []));
  if (places.length === 0) return null;
  const sum = places.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / places.length, y: sum.y / places.length };
}

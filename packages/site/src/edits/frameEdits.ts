import type { ControlPoint, Frame, North } from '../document/frame';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';

/** Says anew how north is known. Control points stay. */
export const setNorth: Edit<{ north: North }> = (site, { north }) => withFrame(site, { north });

/** Says where a point of the site is on the earth. */
export const addControl: Edit<{ control: ControlPoint }> = (site, { control }) =>
  withFrame(site, { control: [...site.frame.control, control] });

/** Corrects a control point. */
export const changeControl: Edit<{ id: string; facts: Partial<Omit<ControlPoint, 'id'>> }> = (
  site,
  { id, facts },
) =>
  withFrame(site, {
    control: changeById(site.frame.control, id, 'control point', (c) => ({ ...c, ...facts })),
  });

/** Takes a control point away. */
export const removeControl: Edit<{ id: string }> = (site, { id }) => {
  if (!site.frame.control.some((c) => c.id === id)) return unknown('control point', id);
  return withFrame(site, { control: site.frame.control.filter((c) => c.id !== id) });
};

function withFrame(site: Site, facts: Partial<Frame>): Site {
  return { ...site, frame: { ...site.frame, ...facts } };
}

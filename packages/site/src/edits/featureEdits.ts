import type { Feature } from '../document/feature';
import type { Site } from '../document/site';
import type { LegSpot } from '../document/spot';
import { changeById, type Edit } from './edit';

/** Puts a feature into the yard, last in the drawing order. */
export const addFeature: Edit<{ feature: Feature }> = (site, { feature }) => ({
  ...site,
  features: [...site.features, feature],
});

/** Renames a feature. */
export const nameFeature: Edit<{ id: string; name: string }> = (site, { id, name }) =>
  withFeature(site, id, (feature) => ({ ...feature, name }));

/** Sets one field of a feature, or clears it when `value` is undefined. The validator of the kind decides what fits. */
export const setField: Edit<{ id: string; field: string; value: unknown }> = (site, { id, field, value }) =>
  withFeature(site, id, (feature) => {
    const fields: Record<string, unknown> = { ...feature.fields };
    if (value === undefined) delete fields[field];
    else fields[field] = value;
    return { ...feature, fields } as Feature; // the table's validator has checked the value at the input
  });

function withFeature(site: Site, id: string, change: (feature: Feature) => Feature): Site {
  return { ...site, features: changeById(site.features, id, 'feature', change) };
}

/** Sets the course by which an outline was measured back to its first point, or takes it away when `closing` is undefined. */
export const setClosing: Edit<{ id: string; closing: LegSpot | undefined }> = (site, { id, closing }) =>
  withFeature(site, id, (feature) => {
    const { closing: _, balance, ...rest } = feature;
    if (closing === undefined) return rest as Feature; // without a closing course there is nothing to balance
    return { ...rest, closing, ...(balance === undefined ? {} : { balance }) } as Feature; // the kind is unchanged
  });

/** Shares the misclosure of an outline out by the compass rule, or leaves its sides as measured. */
export const setBalance: Edit<{ id: string; balance: 'compass' | undefined }> = (site, { id, balance }) =>
  withFeature(site, id, (feature) => {
    const { balance: _, ...rest } = feature;
    return (balance === undefined ? rest : { ...rest, balance }) as Feature; // the kind is unchanged
  });

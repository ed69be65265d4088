import { SITE_VERSION, siteSchema } from '@footmark/site';
import { siteShapes } from './frozen/siteShapes';
import type { LinkKind } from './linkKind';

/** A whole site in a link. */
export const siteKind: LinkKind = {
  number: 1,
  version: SITE_VERSION,
  schema: siteSchema,
  shapes: siteShapes,
};

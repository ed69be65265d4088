import { loadProjection } from '@footmark/site';
import { YardCard } from '../cards/YardCard';
import { earthFields } from '../earth/EarthFold';
import { type Part, type Placed, part, placed, ready } from '../parts/part';
import { type Leaf, type Step, toggleLeaf } from '../session/workbench';
import type { CardInHand } from './cardInHand';

type Nothing = Record<never, never>;

/** The cards of the steps. That of the yard is the first that a site shows, and comes with it. */
const STEP_CARDS: Record<Step, Part<Nothing>> = {
  yard: ready(YardCard),
  line: part(async () => (await import('../cards/LineCard')).LineCard),
  runs: part(async () => (await import('../runs/RunsCard')).RunsCard),
  marks: part(async () => (await import('../marks/MarksCard')).MarksCard),
  route: part(async () => (await import('../dig/RouteCard')).RouteCard),
  'hand-off': part(async () => {
    const [{ HandOffCard }] = await Promise.all([import('../handOff/HandOffCard'), loadProjection()]);
    return HandOffCard;
  }),
};

const LEAF_CARDS: Record<Leaf, Part<{ readonly onClose: () => void }>> = {
  checks: part(async () => (await import('../cards/ChecksCard')).ChecksCard),
  history: part(async () => (await import('../cards/HistoryCard')).HistoryCard),
  layers: part(async () => (await import('../cards/LayersCard')).LayersCard),
  keys: part(async () => (await import('../cards/KeysCard')).KeysCard),
  north: part(async () => (await import('../earth/EarthCard')).EarthCard),
  rules: part(async () => (await import('../rules/RulesCard')).RulesCard),
  reroute: part(async () => (await import('../reroute/RerouteCard')).RerouteCard),
  fit: part(async () => (await import('../fit/FitCard')).FitCard),
};

const draftCard = part(async () => (await import('../cards/DraftCard')).DraftCard);
const measureCard = part(async () => (await import('../cards/MeasureCard')).MeasureCard);
const groupCard = part(async () => (await import('../cards/GroupCard')).GroupCard);
const routeStatePart = part(async () => (await import('../dig/RouteState')).RouteState);

/** The Route step at a glance. */
export const routeState: Placed = placed(routeStatePart, {});

/** What is brought once a site is shown: first what a hand reaches for first. */
export const laterCards = [
  routeStatePart,
  draftCard,
  earthFields,
  ...Object.values(STEP_CARDS),
  measureCard,
  groupCard,
  ...Object.values(LEAF_CARDS),
  { bring: loadProjection },
];

export function cardPart(shown: CardInHand): Placed {
  switch (shown.is) {
    case 'leaf': {
      const { leaf } = shown;
      return placed(LEAF_CARDS[leaf], { onClose: () => toggleLeaf(leaf) });
    }
    case 'tool':
      return shown.tool.is === 'measure'
        ? placed(measureCard, { tool: shown.tool })
        : placed(draftCard, { tool: shown.tool });
    case 'group':
      return placed(groupCard, { ids: shown.ids });
    case 'step':
      return placed(STEP_CARDS[shown.step], {});
  }
}

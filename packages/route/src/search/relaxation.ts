import type { RouteRequest } from '../request';

/** One requirement given up, wholly or in part: metres, fall over run, counts. */
export type Change =
  | {
      readonly is: 'less-clearance';
      readonly obstacle: string;
      readonly from: number;
      readonly to: number;
    }
  | { readonly is: 'less-fall'; readonly from: number; readonly to: number }
  | { readonly is: 'any-heading'; readonly end: string }
  | { readonly is: 'more-bends'; readonly from: number; readonly to: number }
  | { readonly is: 'no-straight'; readonly from: number }
  | { readonly is: 'through'; readonly obstacle: string };

/** A request with one requirement less. */
export function changed(request: RouteRequest, change: Change): RouteRequest {
  const { obstacles, ends, grade } = request;
  switch (change.is) {
    case 'less-clearance':
      return {
        ...request,
        obstacles: obstacles.map((o) => (o.id === change.obstacle ? { ...o, clearance: change.to } : o)),
      };
    case 'less-fall':
      return { ...request, grade: { ...grade, least: change.to } };
    case 'any-heading':
      return { ...request, ends: ends.map((e) => (e.id === change.end ? { ...e, headings: null } : e)) };
    case 'more-bends':
      return { ...request, mostBends: change.to };
    case 'no-straight':
      return { ...request, leastStraight: 0 };
    case 'through':
      return { ...request, obstacles: obstacles.filter((o) => o.id !== change.obstacle) };
  }
}

/** How much is given up, as a share of what was asked: 0 nothing, 1 all of it. */
export function shareGiven(change: Change): number {
  switch (change.is) {
    case 'less-clearance':
    case 'less-fall':
      return 1 - change.to / change.from;
    case 'more-bends':
      return 1 - change.from / change.to;
    case 'any-heading':
    case 'no-straight':
    case 'through':
      return 1;
  }
}

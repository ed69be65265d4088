/** Heights of lettering on paper, mm, from the one scale that all texts use (ISO 3098 grades by √2, from memory). */
export const TEXT_MM = { small: 1.8, normal: 2.2, large: 2.8, mark: 2.8 } as const;

/** Who is placed first where there is not room for all: what is painted on the ground before what only names things. */
export const PRIORITY = {
  mark: 1000,
  tie: 900,
  point: 600,
  area: 500,
  line: 420,
  pipe: 380,
  course: 300,
  wall: 240,
  letters: 160,
  station: 120,
} as const;

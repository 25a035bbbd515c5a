export const notWithin = (minutes: number) => `not within ${minutes} min`;
export const reckoned = (firm: string, stiff: string, solid: string) =>
  `Reckoned for these cubes, no proof: firm at the edge from ${firm}, too stiff: out by ${stiff}, solid ${solid}. Worked out.`;

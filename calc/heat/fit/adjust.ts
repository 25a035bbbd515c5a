import type { Course, HeatStage, Medium } from '../stages/index.ts';

/** What a cook does not know of his own kitchen. All at rest: factors 1, shifts 0. */
export interface Adjustment {
  /** Multiplies every film of air and water. */
  readonly filmFactor: number;
  /** Added to every temperature of air and water that is given as a course, °C. */
  readonly mediumShiftC: number;
  /** Multiplies how strongly the oven heats the pan of a bath with its own heat balance. */
  readonly heatingFactor: number;
}

export const UNADJUSTED: Adjustment = { filmFactor: 1, mediumShiftC: 0, heatingFactor: 1 };

/** The stages as they are in that kitchen. */
export function adjustStage(
  stage: HeatStage,
  { filmFactor, mediumShiftC, heatingFactor }: Adjustment,
): HeatStage {
  const medium = ({ tempC, filmWm2K }: Medium): Medium => ({
    tempC: shifted(tempC, mediumShiftC),
    filmWm2K: filmWm2K * filmFactor,
  });
  const { water, faces } = stage;
  const bath =
    water?.bath.kind === 'oven'
      ? {
          ...water.bath,
          pan: {
            ...water.bath.pan,
            panFilmWm2K: water.bath.pan.panFilmWm2K * heatingFactor,
          },
        }
      : water && { ...water.bath, tempC: shifted(water.bath.tempC, mediumShiftC) };
  return {
    ...stage,
    // The oven around a bath is set by its thermostat; what is unknown there is how well it heats.
    air:
      water?.bath.kind === 'oven'
        ? { ...stage.air, filmWm2K: stage.air.filmWm2K * filmFactor }
        : medium(stage.air),
    ...(water && bath ? { water: { ...water, filmWm2K: water.filmWm2K * filmFactor, bath } } : {}),
    ...(faces
      ? {
          faces: Object.fromEntries(
            Object.entries(faces).map(([face, own]) => [face, own === 'closed' ? own : medium(own)]),
          ),
        }
      : {}),
  };
}

function shifted(course: Course, shiftC: number): Course {
  if (typeof course === 'number') return course + shiftC;
  if ('tauMin' in course) return { ...course, fromC: course.fromC + shiftC, toC: course.toC + shiftC };
  return course.map(([timeMin, tempC]) => [timeMin, tempC + shiftC] as const);
}

/** How far each unknown may be off, one standard deviation: of the logarithm for factors, °C for shifts. */
export const SPREAD = {
  /** Films are known within about a third. */
  filmFactor: 0.3,
  /** Ovens, baths and thermometers: 3 °C. Common practice. */
  mediumShiftC: 3,
  heatingFactor: 0.35,
} as const satisfies Record<keyof Adjustment, number>;

/** Unknowns counted in their own spreads, so that each is one when it is one deviation off. */
export type Unknowns = Readonly<Record<keyof Adjustment, number>>;

export function adjustmentOf({ filmFactor, mediumShiftC, heatingFactor }: Unknowns): Adjustment {
  return {
    filmFactor: Math.exp(SPREAD.filmFactor * filmFactor),
    mediumShiftC: SPREAD.mediumShiftC * mediumShiftC,
    heatingFactor: Math.exp(SPREAD.heatingFactor * heatingFactor),
  };
}

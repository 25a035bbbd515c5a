import type { HeatShape } from '../mesh/index.ts';
import type { Course, HeatStage, Medium } from '../stages/index.ts';
import type { BatchThermal } from './batch-thermal.ts';

const positive = (value: number) => Number.isFinite(value) && value > 0;

/** Food temperatures the property tables hold for, °C. */
const FOOD_RANGE_C = { low: -40, high: 150 };

/** Whether every measure, layer and temperature of a batch can be computed with. */
export function soundBatch({ shape, startC, layers = {}, material }: BatchThermal): boolean {
  return (
    soundShape(shape) &&
    startC >= FOOD_RANGE_C.low &&
    startC <= FOOD_RANGE_C.high &&
    positive(material.densityKgM3) &&
    Object.values(layers)
      .flat()
      .every(
        ({ thicknessM, conductivityWmK, heatCapacityJm3K }) =>
          positive(thicknessM) &&
          positive(conductivityWmK) &&
          heatCapacityJm3K >= 0 &&
          Number.isFinite(heatCapacityJm3K),
      )
  );
}

function soundShape(shape: HeatShape): boolean {
  return Object.entries(shape).every(
    ([name, value]) =>
      name === 'kind' || value === undefined || (typeof value === 'number' && positive(value)),
  );
}

/** Whether a stage has an end, and media whose films and temperatures are numbers. */
export function soundStage({ end, air, water, faces = {}, cover = {} }: HeatStage): boolean {
  const minutes = end.when === 'time' ? end.minutes : end.mostMin;
  return (
    Number.isFinite(minutes) &&
    minutes >= 0 &&
    (end.when === 'time' || Number.isFinite(end.tempC)) &&
    soundMedium(air) &&
    Object.values(faces).every((medium) => medium === 'closed' || soundMedium(medium)) &&
    Object.values(cover).every((resistance) => resistance >= 0 && Number.isFinite(resistance)) &&
    (water === undefined || soundWater(water))
  );
}

const soundMedium = ({ tempC, filmWm2K }: Medium) =>
  filmWm2K >= 0 && Number.isFinite(filmWm2K) && soundCourse(tempC);

function soundWater({ levelMm, filmWm2K, bath }: NonNullable<HeatStage['water']>): boolean {
  if (!Number.isFinite(levelMm) || !positive(filmWm2K)) return false;
  if (bath.kind === 'course') return soundCourse(bath.tempC);
  const { covered: _, ...measures } = bath.pan;
  const sound = Object.values(measures).every((value) => Number.isFinite(value) && value >= 0);
  const begun = bath.startC === null || Number.isFinite(bath.startC);
  return sound && begun && positive(bath.pan.waterG) && positive(bath.pan.pressureKPa);
}

function soundCourse(course: Course): boolean {
  if (typeof course === 'number') return Number.isFinite(course);
  if ('tauMin' in course) return [course.fromC, course.toC].every(Number.isFinite) && positive(course.tauMin);
  const rising = course.every(([timeMin], i) => i === 0 || timeMin >= (course[i - 1]?.[0] ?? 0));
  return course.length > 0 && rising && course.every((point) => point.every(Number.isFinite));
}

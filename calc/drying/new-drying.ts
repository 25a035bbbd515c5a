import { blankEntry } from '../quantities/index.ts';
import type { DryingSlice, FermentationStep } from './slice.ts';

/** A stretch of fermentation nobody has read yet. */
export function newFermentationStep(id: string): FermentationStep {
  return { id, temp: blankEntry('C'), hours: blankEntry('h') };
}

/** Nothing is dried. No figure has a default. */
export function newDryingSlice(): DryingSlice {
  return {
    kind: null,
    approvedPlan: '',
    start: blankEntry('g'),
    now: blankEntry('g'),
    lossTarget: blankEntry('%'),
    startSalt: blankEntry('%'),
    startMoisture: blankEntry('%'),
    startProtein: blankEntry('%'),
    moisture: blankEntry('%'),
    protein: blankEntry('%'),
    waterActivity: '',
    ph: '',
    degreeHourRule: null,
    steps: [],
    reachedPh53: null,
    trichina: {
      casing: blankEntry('mm'),
      holdTemp: blankEntry('C'),
      holdHours: blankEntry('h'),
      total: blankEntry('g'),
      dryIngredients: blankEntry('g'),
      salt: blankEntry('g'),
    },
  };
}

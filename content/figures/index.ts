import { benchFigures } from './bench.ts';
import { chillFigures } from './chill.ts';
import { cookFigures } from './cook.ts';
import { cureFigures } from './cure.ts';
import { curedAndSoldFigures } from './cured-and-sold.ts';
import type { Figure } from './figure.ts';
import { formulaFigures } from './formula.ts';
import { handlingFigures } from './handling.ts';
import { productFigures } from './products.ts';

export type { Figure } from './figure.ts';

const REGISTER = {
  ...formulaFigures,
  ...cureFigures,
  ...cookFigures,
  ...chillFigures,
  ...handlingFigures,
  ...benchFigures,
  ...productFigures,
  ...curedAndSoldFigures,
} as const;

export type FigureId = keyof typeof REGISTER;

/** Every number the prose leans on, by id. */
export const FIGURES: Readonly<Record<FigureId, Figure>> = REGISTER;

/** A figure by a name that may be wrong. */
export function figureNamed(id: string): Figure | undefined {
  return (FIGURES as Readonly<Record<string, Figure>>)[id];
}

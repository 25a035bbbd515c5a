import type { Figure } from './figure.ts';

export const FIGURES = {
  'bath-country': { value: [75, 82], unit: 'C', mark: 'common-practice' },
} as const satisfies Record<string, Figure>;
export type FigureId = keyof typeof FIGURES;

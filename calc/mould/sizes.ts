import type { Measures } from './shapes/geometry.ts';
import type { MouldShape } from './slice.ts';

/** A mould as commonly met. Inside measures and headspace, mm. */
export interface MouldSize {
  readonly id: string;
  readonly name: string;
  readonly shape: MouldShape;
  readonly measures: Measures;
  /** Null for a roll, which has no rim. */
  readonly headspaceMm: number | null;
  /** Pastry all round, for a pie tin; its room is taken from the fill. */
  readonly crustMm?: number;
}

/**
 * Usual moulds by their usual inside measures. Common practice, no source: measure your own inside,
 * and fill it once with water. Volumes are computed from these rows and stand nowhere else.
 */
export const MOULD_SIZES: readonly MouldSize[] = [
  {
    id: 'loaf-1l',
    name: 'Loaf tin, 1 L class',
    shape: 'rectangular',
    measures: { length: 250, width: 80, depth: 60 },
    headspaceMm: 8,
  },
  {
    id: 'terrine-1.2l',
    name: 'Terrine, 1.2 L class',
    shape: 'rectangular',
    measures: { length: 255, width: 85, depth: 65 },
    headspaceMm: 10,
  },
  {
    id: 'terrine-2l',
    name: 'Terrine, 2 L class',
    shape: 'rectangular',
    measures: { length: 290, width: 95, depth: 75 },
    headspaceMm: 10,
  },
  {
    id: 'terrine-large',
    name: 'Terrine, large kitchen',
    shape: 'rectangular',
    measures: { length: 320, width: 110, depth: 80 },
    headspaceMm: 10,
  },
  {
    id: 'bar-narrow',
    name: 'Long narrow bar',
    shape: 'rectangular',
    measures: { length: 300, width: 60, depth: 60 },
    headspaceMm: 5,
  },
  {
    id: 'bar-slim',
    name: 'Slim bar for canapés',
    shape: 'rectangular',
    measures: { length: 300, width: 40, depth: 60 },
    headspaceMm: 5,
  },
  {
    id: 'pie-hinged',
    name: 'Hinged pie mould, straight',
    shape: 'rectangular',
    measures: { length: 300, width: 80, depth: 85 },
    headspaceMm: 0,
    crustMm: 4,
  },
  {
    id: 'pie-hinged-long',
    name: 'Hinged pie mould, long',
    shape: 'rectangular',
    measures: { length: 350, width: 75, depth: 85 },
    headspaceMm: 0,
    crustMm: 4,
  },
  {
    id: 'loaf-tapered',
    name: 'Loaf tin, tapered',
    shape: 'tapered',
    measures: { length: 250, width: 110, baseLength: 230, baseWidth: 95, depth: 75 },
    headspaceMm: 10,
  },
  {
    id: 'roof',
    name: 'Roof mould, triangular',
    shape: 'roof',
    measures: { width: 75, depth: 70, length: 300 },
    headspaceMm: 5,
  },
  {
    id: 'gutter',
    name: 'Half-round gutter',
    shape: 'half-cylinder',
    measures: { diameter: 80, length: 300 },
    headspaceMm: 0,
  },
  {
    id: 'terrine-oval',
    name: 'Terrine, oval',
    shape: 'oval',
    measures: { length: 190, width: 130, depth: 75 },
    headspaceMm: 10,
  },
  {
    id: 'pie-oval',
    name: 'Fluted pie mould, oval, mean of the flutes',
    shape: 'oval',
    measures: { length: 240, width: 150, depth: 85 },
    headspaceMm: 0,
    crustMm: 4,
  },
  {
    id: 'round-deep',
    name: 'Round, deep',
    shape: 'cylinder',
    measures: { diameter: 140, depth: 80 },
    headspaceMm: 10,
  },
  {
    id: 'loaf-mini',
    name: 'Mini loaf',
    shape: 'rectangular',
    measures: { length: 100, width: 60, depth: 45 },
    headspaceMm: 5,
  },
  {
    id: 'ramekin',
    name: 'Ramekin',
    shape: 'cylinder',
    measures: { diameter: 80, depth: 40 },
    headspaceMm: 5,
  },
  {
    id: 'jar-350ml',
    name: 'Glass jar, 350 mL class',
    shape: 'cylinder',
    measures: { diameter: 86, depth: 70 },
    headspaceMm: 10,
  },
  {
    id: 'ham-box',
    name: 'Ham press box',
    shape: 'rectangular',
    measures: { length: 280, width: 110, depth: 110 },
    headspaceMm: 0,
  },
  {
    id: 'brawn-pan',
    name: 'Brawn pan, third size, 100 deep',
    shape: 'rectangular',
    measures: { length: 300, width: 150, depth: 95 },
    headspaceMm: 15,
  },
  {
    id: 'roll-60',
    name: 'Galantine roll, 60 mm',
    shape: 'cylinder',
    measures: { diameter: 60, length: 300 },
    headspaceMm: null,
  },
  {
    id: 'roll-80',
    name: 'Galantine or ballotine roll, 80 mm',
    shape: 'cylinder',
    measures: { diameter: 80, length: 350 },
    headspaceMm: null,
  },
];

import type { Face, HeatShape } from '../mesh/index.ts';
import type { Material } from '../properties/index.ts';
import type { Layer } from './network.ts';

/** What is simulated: a body of food, its coatings, and the temperature it starts at throughout. */
export interface BatchThermal {
  readonly shape: HeatShape;
  readonly material: Material;
  /** Layers from the food outward. Faces left out are bare. */
  readonly layers?: Partial<Readonly<Record<Face, readonly Layer[]>>>;
  readonly startC: number;
}

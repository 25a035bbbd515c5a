import type { ProcessStep } from '../process/index.ts';
import { entryValue } from '../quantities/index.ts';

/**
 * The hottest water or air the steps name, °C: no core gets above it. Null as soon as one heating step names none,
 * for then nothing is known about the top.
 */
export function hottestMediumC(steps: readonly ProcessStep[]): number | null {
  const heating = steps.filter((step) => step.kind !== 'chill');
  const tops = heating.map((step) => {
    const named = [step.medium, step.oven]
      .map((entry) => entryValue('temperature', entry))
      .filter((value) => value !== null);
    return named.length > 0 ? Math.max(...named) : null;
  });
  if (tops.length === 0 || tops.includes(null)) return null;
  return Math.max(...tops.filter((top) => top !== null));
}

/** Where the settings of the kitchen lie in localStorage: one JSON text (see kitchen.ts). */
export const KITCHEN_KEY = 'larderwright.kitchen';

/**
 * One of the kitchen's settings as it lies there, unchecked: for what a page shows first, before the code that checks
 * them is here. Undefined where nothing is kept.
 */
export function keptSetting(name: string): unknown {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KITCHEN_KEY) ?? 'null');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>)[name] : undefined;
  } catch {
    return undefined;
  }
}

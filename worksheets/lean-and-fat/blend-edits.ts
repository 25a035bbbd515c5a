import { newLine } from '@larderwright/calc/batch';
import { type BlendMaterial, newBlendMaterial } from '@larderwright/calc/blend';
import type { FormulaLine, LinePart } from '@larderwright/calc/formula';
import type { PickItem } from '@larderwright/calc/ingredients';
import { enteredEntry, formatQuantity } from '@larderwright/calc/quantities';
import { isCuringSalt, usualPart } from '../batch-formula/line-edits.ts';

/** Parts of a formula that are balanced against each other: meat, and what brings fat or water. */
const BALANCED: readonly LinePart[] = ['lean', 'fat', 'liver', 'offal'];

/** Materials that may stand in a blend: a curing salt is no meat, and never lies in a heap. */
export function blendable(items: readonly PickItem[]): PickItem[] {
  return items.filter((item) => !isCuringSalt(item));
}

/** The material with a row of the table picked for it. */
export function withRow(material: BlendMaterial, item: PickItem): BlendMaterial {
  return { ...material, name: item.name, ingredientId: item.id, part: usualPart(item) };
}

/** The material under another name; its figures belonged to the old one. */
export function withName(material: BlendMaterial, name: string): BlendMaterial {
  return name === material.name ? material : { ...material, name, ingredientId: null };
}

/** Materials begun from the meat lines of a formula, with their figures. */
export function materialsOf(lines: readonly FormulaLine[], newId: () => string): BlendMaterial[] {
  return lines
    .filter(({ part, name }) => BALANCED.includes(part) && name.trim() !== '')
    .map(({ name, part, ingredientId, declared }) => ({
      ...newBlendMaterial(newId(), part),
      name,
      ingredientId,
      declared,
    }));
}

/** A material and how much of it a blend takes. */
export interface BlendMass {
  readonly materialId: string;
  readonly massG: number;
}

function isSame(line: FormulaLine, material: BlendMaterial): boolean {
  if (line.part === 'curing-salt') return false;
  if (material.ingredientId !== null && line.ingredientId === material.ingredientId) return true;
  return line.name.trim().toLowerCase() === material.name.trim().toLowerCase();
}

/** Grams as a kitchen scale shows them. */
function amountOf(massG: number) {
  return enteredEntry(formatQuantity('mass', massG, { decimals: massG < 100 ? 1 : 0 }), 'g');
}

/**
 * The formula with a blend written into it. A line of the same ingredient takes the new weight, and what was weighed
 * of it and its lot are cleared; a material without a line gets one; one the blend leaves out comes to 0 g. Every
 * other line stays as it was.
 */
export function linesWithBlend(
  lines: readonly FormulaLine[],
  materials: readonly BlendMaterial[],
  masses: readonly BlendMass[],
  newId: () => string,
): FormulaLine[] {
  const next = lines.slice();
  const taken = new Set<number>();
  for (const material of materials) {
    const massG = masses.find(({ materialId }) => materialId === material.id)?.massG;
    if (massG === undefined) continue;
    const index = next.findIndex((line, at) => !taken.has(at) && isSame(line, material));
    const old = next[index];
    if (old) {
      taken.add(index);
      const actual = { ...old.actual, text: '' };
      next[index] = { ...old, basis: 'mass', amount: amountOf(massG), actual, lot: '' };
    } else if (massG > 0) {
      taken.add(next.length);
      const { name, part, ingredientId, declared } = material;
      next.push({ ...newLine(newId(), part), name, ingredientId, declared, amount: amountOf(massG) });
    }
  }
  return next;
}

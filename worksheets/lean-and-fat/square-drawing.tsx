import * as say from '#words/lean-and-fat/square-drawing.ts';
import { percentText } from '../parts/number-text.ts';

interface SquareDrawingProps {
  nameA: string;
  nameB: string;
  fatA: number;
  fatB: number;
  /** Fat the two must have together. */
  target: number;
}

/** A name short enough to stand at a corner. */
function short(name: string): string {
  return name.length > 26 ? `${name.slice(0, 25)}…` : name;
}

/**
 * The square as it is drawn on paper: fat of the two at the left, the target in the middle, and across the diagonals
 * the differences, which are the parts of each.
 */
export function SquareDrawing({ nameA, nameB, fatA, fatB, target }: SquareDrawingProps) {
  const partsA = Math.abs(fatB - target) * 100;
  const partsB = Math.abs(target - fatA) * 100;
  const parts = (value: number) => value.toFixed(1);
  const percent = (value: number) => percentText(value, 1);
  return (
    <figure class="square">
      <svg
        viewBox="0 0 360 230"
        role="img"
        aria-label={say.squareFatPartsFirstSecond(
          nameA,
          percent(fatA),
          nameB,
          percent(fatB),
          percent(target),
          parts(partsA),
          parts(partsB),
        )}
      >
        <rect class="square-frame" x="96" y="40" width="168" height="130" />
        <path class="square-diagonal" d="M96 40L264 170M96 170L264 40" />
        <rect class="square-middle" x="146" y="86" width="68" height="38" />
        <text class="square-target" x="180" y="111" text-anchor="middle">
          {percent(target)}
        </text>
        <text class="square-fat" x="88" y="46" text-anchor="end">
          {percent(fatA)}
        </text>
        <text class="square-fat" x="88" y="176" text-anchor="end">
          {percent(fatB)}
        </text>
        <text class="square-parts" x="272" y="46">
          {say.parts(parts(partsA))}
        </text>
        <text class="square-parts" x="272" y="176">
          {say.parts2(parts(partsB))}
        </text>
        <text class="square-name" x="8" y="24">
          {short(nameA)}
        </text>
        <text class="square-name" x="8" y="204">
          {short(nameB)}
        </text>
      </svg>
      <figcaption>{say.acrossEachDiagonalStands}</figcaption>
    </figure>
  );
}

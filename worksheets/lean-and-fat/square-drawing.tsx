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
        aria-label={`The square: ${nameA} at ${percent(fatA)} fat and ${nameB} at ${percent(fatB)} to ${percent(target)}; ${parts(partsA)} parts of the first, ${parts(partsB)} of the second.`}
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
          {parts(partsA)} parts
        </text>
        <text class="square-parts" x="272" y="176">
          {parts(partsB)} parts
        </text>
        <text class="square-name" x="8" y="24">
          {short(nameA)}
        </text>
        <text class="square-name" x="8" y="204">
          {short(nameB)}
        </text>
      </svg>
      <figcaption>
        Across each diagonal stands the difference: so many parts of the material on that line.
      </figcaption>
    </figure>
  );
}

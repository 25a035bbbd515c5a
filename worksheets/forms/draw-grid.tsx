import * as say from '#words/forms/draw-grid.ts';
import { LOG_WORDS } from '../words/forms.ts';
import { GRID_MM } from './log-size.ts';

/** Highest line of the empty grid, °C. */
const TOP_C = 90;
const STEP_C = 10;
const COLUMNS = 35;

/** Ruled squares for a curve drawn by hand: temperature is printed, time is for the pencil. */
export function DrawGrid() {
  const { width, height, left, right, top, bottom } = GRID_MM;
  const base = height - bottom;
  const y = (tempC: number) => base - (tempC / TOP_C) * (base - top);
  const x = (column: number) => left + (column / COLUMNS) * (width - left - right);
  const temps = Array.from({ length: TOP_C / STEP_C + 1 }, (_, step) => step * STEP_C);
  const columns = Array.from({ length: COLUMNS + 1 }, (_, column) => column);
  return (
    <svg
      class="sheet-curve draw-grid"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={LOG_WORDS.draw}
    >
      {temps.map((tempC) => (
        <g key={tempC}>
          <path class="grid-line" d={`M${left} ${y(tempC)}H${width - right}`} />
          <text x={left - 1} y={y(tempC) + 1.1} text-anchor="end">
            {tempC}°
          </text>
        </g>
      ))}
      {columns.map((column) => (
        <path key={column} class="grid-line" d={`M${x(column)} ${top}V${base}`} />
      ))}
      <text x={left} y={height - 0.6}>
        {say.start}
      </text>
      <text x={width - right} y={height - 0.6} text-anchor="end">
        {LOG_WORDS.squares}
      </text>
    </svg>
  );
}

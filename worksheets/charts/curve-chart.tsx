import { useId } from 'preact/hooks';
import * as say from '#words/charts/curve-chart.ts';
import { dayWords } from '../parts/clock-text.ts';
import { type ChartLayout, layoutChart } from './layout.ts';
import { markPath, shapeOf } from './mark-shape.ts';
import type { ChartSize, CurveModel, CurveSeries } from './model.ts';
import { curveSummary } from './summary.ts';
import { dayOf, timeText } from './time-text.ts';
import { seriesPaths, tempAt, thinned, tracePoints } from './trace.ts';

/** With more readings than this the marks would run into one another: only the special ones are drawn. */
const MOST_MARKS = 160;
const MARK_PX = 3.5;
/** A run shorter than this is still drawn wide enough to see. */
const LEAST_RUN_PX = 2;
/** Rough width of a letter, to see on which side of its line a label fits. */
const LETTER_PX = 7;

interface CurveChartProps {
  model: CurveModel;
  size: ChartSize;
}

/**
 * The core's curve as one SVG. It holds no state and needs no browser: the printed sheet draws it too.
 * Lines differ by dash and marks by shape, so that it reads in black on paper.
 */
export function CurveChart({ model, size }: CurveChartProps) {
  const id = useId();
  const layout = layoutChart(model, size);
  if (!layout) return null;
  return (
    <svg
      class="curve-chart"
      viewBox={`0 0 ${size.width} ${size.height}`}
      width={size.width}
      height={size.height}
      role="img"
      aria-labelledby={id}
    >
      <title id={id}>{curveSummary(model)}</title>
      <defs>
        <pattern
          id={`${id}-hatch`}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path class="curve-hatch" d="M0 0V7" />
        </pattern>
      </defs>
      <WindowBand layout={layout} />
      <Corridor layout={layout} model={model} />
      <Axes layout={layout} model={model} />
      <Runs layout={layout} model={model} hatch={`url(#${id}-hatch)`} />
      <Levels layout={layout} model={model} />
      <Moments layout={layout} model={model} />
      {model.series.map((series, index) => (
        <Curve
          key={series.id}
          layout={layout}
          series={series}
          index={index}
          named={model.series.length > 1}
        />
      ))}
      <WindowLabels layout={layout} model={model} />
    </svg>
  );
}

function Axes({ layout, model }: { layout: ChartLayout; model: CurveModel }) {
  const { x, y, left, right, top, bottom } = layout;
  const days = model.clock === 'elapsed' ? [] : layout.clocks.filter((tick, i) => i === 0 || tick.newDay);
  const severalDays = days.length > 1;
  return (
    <g class="curve-axes">
      {layout.degrees.map((tempC) => (
        <g key={tempC}>
          <line class="curve-grid" x1={left} x2={right} y1={y(tempC)} y2={y(tempC)} />
          <text x={left - 6} y={y(tempC)} dy="0.32em" text-anchor="end">
            {String(tempC).replace('-', '−')}
          </text>
        </g>
      ))}
      <text x={left - 6} y={top - 9} text-anchor="end">
        °C
      </text>
      {layout.clocks.map((tick) => (
        <g key={tick.atMs}>
          <line class="curve-tick" x1={x(tick.atMs)} x2={x(tick.atMs)} y1={bottom} y2={bottom + 5} />
          <text x={x(tick.atMs)} y={bottom + 18} text-anchor="middle">
            {timeText(model, tick.atMs)}
          </text>
        </g>
      ))}
      {severalDays
        ? days.map((tick) => (
            <text key={`day-${tick.atMs}`} x={x(tick.atMs)} y={bottom + 34} text-anchor="middle">
              {dayWords(dayOf(model, tick.atMs))}
            </text>
          ))
        : null}
      {model.clock === 'elapsed' ? (
        <text x={right} y={bottom + 34} text-anchor="end">
          {say.hoursMinutesSinceItWentIn}
        </text>
      ) : null}
      <path class="curve-frame" d={`M${left} ${top}V${bottom}H${right}`} />
    </g>
  );
}

/** Where the name of a curve stands: readings at their end, predicted curves along their way, apart from each other. */
const END_TAG = { share: 1, dx: -4, dy: null, anchor: 'end' } as const;
const TAGS = [
  { share: 0.34, dx: -4, dy: 18, anchor: 'end' },
  { share: 0.3, dx: 6, dy: -8, anchor: 'start' },
  { share: 0.45, dx: 0, dy: -8, anchor: 'middle' },
] as const;

function Curve(props: { layout: ChartLayout; series: CurveSeries; index: number; named: boolean }) {
  const { layout, series, index, named } = props;
  const { x, y } = layout;
  const columns = Math.max(1, Math.round(layout.right - layout.left));
  const { line, gaps } = seriesPaths(series.points, x, y, columns);
  const trace = tracePoints(series.points);
  const special = series.points.filter((point) => point.mark !== 'taken');
  const marks = series.predicted
    ? []
    : trace.length <= MOST_MARKS
      ? series.points
      : thinned(special, columns);
  const tagged = series.predicted ? (TAGS[index % TAGS.length] ?? END_TAG) : END_TAG;
  const tag = trace[Math.round(tagged.share * (trace.length - 1))];
  const tagDy = tagged.dy ?? (index === 0 ? -8 : 19);
  return (
    <g class="curve-series" data-probe={(index % 3) + 1}>
      {gaps ? <path class="curve-gap" d={gaps} /> : null}
      {line ? <path class="curve-line" d={line} /> : null}
      {marks
        .filter((point) => Number.isFinite(point.atMs) && Number.isFinite(point.tempC))
        .map((point) => (
          <path
            key={point.id}
            class="curve-mark"
            data-mark={point.mark}
            d={markPath(
              shapeOf(point.mark, index),
              x(point.atMs),
              y(point.tempC),
              point.mark === 'taken' ? MARK_PX - 1 : MARK_PX + 1,
            )}
          />
        ))}
      {named && tag ? (
        <text
          class="curve-name"
          x={x(tag.atMs) + tagged.dx}
          y={y(tag.tempC) + tagDy}
          text-anchor={tagged.anchor}
        >
          {series.name}
        </text>
      ) : null}
    </g>
  );
}

/** Where a prediction may lie, hatched so that it reads on paper. */
function Corridor({ layout, model }: { layout: ChartLayout; model: CurveModel }) {
  const { x, y } = layout;
  const points = model.corridor?.points ?? [];
  if (points.length < 2) return null;
  const place = (value: number) => Math.round(value * 10) / 10;
  const upper = points.map(({ atMs, highC }) => `${place(x(atMs))} ${place(y(highC))}`);
  const lower = points.map(({ atMs, lowC }) => `${place(x(atMs))} ${place(y(lowC))}`).reverse();
  return <path class="curve-corridor" d={`M${[...upper, ...lower].join('L')}Z`} />;
}

function Levels({ layout, model }: { layout: ChartLayout; model: CurveModel }) {
  const { y, left, right } = layout;
  return (
    <g class="curve-levels">
      {(model.levels ?? []).map((level) => (
        <g key={level.kind} data-level={level.kind}>
          <line class="curve-level" x1={left} x2={right} y1={y(level.tempC)} y2={y(level.tempC)} />
          <text x={left + 6} y={y(level.tempC) + (level.kind === 'act' ? -6 : 15)}>
            {level.label}
          </text>
        </g>
      ))}
    </g>
  );
}

function Runs({ layout, model, hatch }: { layout: ChartLayout; model: CurveModel; hatch: string }) {
  const { x, top, bottom, right } = layout;
  return (
    <g class="curve-runs">
      {(model.runs ?? []).map((run) => {
        const from = x(run.fromMs);
        const width = Math.max(LEAST_RUN_PX, x(run.toMs) - from);
        const late = from + width / 2 > (layout.left + right) / 2;
        return (
          <g key={run.fromMs}>
            <rect class="curve-run" x={from} y={top} width={width} height={bottom - top} />
            <rect x={from} y={top} width={width} height={bottom - top} fill={hatch} />
            <text
              class="curve-note"
              x={late ? from - 4 : from + width + 4}
              y={bottom - 8}
              text-anchor={late ? 'end' : 'start'}
            >
              {run.label}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function Moments({ layout, model }: { layout: ChartLayout; model: CurveModel }) {
  const { x, top, bottom, left, right } = layout;
  return (
    <g class="curve-moments">
      {(model.moments ?? []).map((moment, i) => {
        const at = x(moment.atMs);
        const late = at > (left + right) / 2;
        return (
          <g key={`${moment.label} ${moment.atMs}`}>
            <line class="curve-moment" x1={at} x2={at} y1={top - 4} y2={bottom} />
            <text
              class="curve-note"
              x={late ? at - 3 : at + 3}
              y={top - 8 + (i % 2) * 14}
              text-anchor={late ? 'end' : 'start'}
            >
              {moment.label}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** The area a cooling curve may stand in, with its stepped upper edge. */
function WindowBand({ layout }: { layout: ChartLayout }) {
  const { x, y, top, bottom, window: steps } = layout;
  if (steps.length === 0) return null;
  const edge: string[] = [];
  for (const step of steps) {
    const height = step.topC === null ? top : y(step.topC);
    edge.push(`${edge.length === 0 ? 'M' : 'L'}${x(step.fromMs)} ${height}L${x(step.toMs)} ${height}`);
  }
  const first = steps[0];
  const last = steps.at(-1);
  if (!first || !last) return null;
  const line = edge.join('');
  return (
    <g class="curve-window">
      <path class="curve-window-area" d={`${line}L${x(last.toMs)} ${bottom}L${x(first.fromMs)} ${bottom}Z`} />
      <path class="curve-window-edge" d={line} />
    </g>
  );
}

/** Each deadline beside its step, on the side where no curve runs. */
function WindowLabels({ layout, model }: { layout: ChartLayout; model: CurveModel }) {
  const { x, y, right, window: steps } = layout;
  return (
    <g class="curve-window-labels">
      {steps.slice(1).map((step, i) => {
        const label = steps[i]?.label ?? '';
        if (label === '' || step.topC === null) return null;
        const at = x(step.fromMs);
        const middleMs = step.fromMs + (step.toMs - step.fromMs) / 4;
        const temps = model.series.flatMap(({ points }) => tempAt(points, middleMs) ?? []);
        const above = temps.every((tempC) => step.topC !== null && tempC <= step.topC);
        const late = at + 4 + label.length * LETTER_PX > right;
        return (
          <text
            key={step.fromMs}
            class="curve-note"
            x={late ? at - 4 : at + 4}
            y={y(step.topC) + (above ? -6 : 14)}
            text-anchor={late ? 'end' : 'start'}
          >
            {label}
          </text>
        );
      })}
    </g>
  );
}

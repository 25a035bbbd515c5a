import type { MouldShape } from '@larderwright/calc/mould';
import { fixedText } from '@larderwright/calc/quantities';
import { useId } from 'preact/hooks';
import * as say from '#words/mould-and-fill/mould-drawing.ts';
import { DIMENSION_NAMES } from '../words/mould-names.ts';
import {
  drawingScale,
  type KnownMeasures,
  type MouldOutline,
  mouldOutline,
  type Outline,
} from './outline.ts';

interface MouldDrawingProps {
  shape: MouldShape;
  measures: KnownMeasures;
  /** From the lowest point to the top of the fill; null when it cannot be told. */
  fillDepthMm: number | null;
  /** 0 for a lining of no thickness. */
  liningMm: number;
}

const WIDE = 320;
/** Room beside and between the outlines for their measures, px. */
const LEFT = 8;
const RIGHT = 64;
const ABOVE = 26;
const BETWEEN = 34;
const BELOW = 26;
const ROOM = { width: WIDE - LEFT - RIGHT, height: 190 };

function measureText(name: string, mm: number | undefined): string {
  return mm === undefined ? `${name} ?` : `${fixedText(mm, Number.isInteger(mm) ? 0 : 1)}`;
}

/** A dimension line with its figure. */
function Measure(props: { x1: number; y1: number; x2: number; y2: number; text: string; upright?: boolean }) {
  const { x1, y1, x2, y2, text, upright = false } = props;
  const tick = upright ? 'M-4 0h8' : 'M0 -4v8';
  return (
    <g class="drawing-measure">
      <path d={`M${x1} ${y1}L${x2} ${y2}`} />
      <path d={tick} transform={`translate(${x1} ${y1})`} />
      <path d={tick} transform={`translate(${x2} ${y2})`} />
      {upright ? (
        <text x={x1 + 7} y={(y1 + y2) / 2 + 5}>
          {text}
        </text>
      ) : (
        <text x={(x1 + x2) / 2} y={y1 - 6} text-anchor="middle">
          {text}
        </text>
      )}
    </g>
  );
}

/** The cut across: wall, lining, and the fill up to its level. Drawn in mm, scaled by the caller. */
function Section(props: { outline: Outline; fillDepthMm: number | null; liningMm: number; scale: number }) {
  const { outline, fillDepthMm, liningMm, scale } = props;
  const id = useId();
  const level = fillDepthMm === null ? outline.heightMm : Math.max(0, outline.heightMm - fillDepthMm);
  const px = 1 / scale;
  return (
    <>
      <defs>
        <clipPath id={`${id}-inside`}>
          <path d={outline.path} />
        </clipPath>
        <clipPath id={`${id}-filled`}>
          <rect x={0} y={level} width={outline.widthMm} height={outline.heightMm - level} />
        </clipPath>
        <pattern
          id={`${id}-fill`}
          width={7 * px}
          height={7 * px}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path class="drawing-hatch" d={`M0 0v${7 * px}`} stroke-width={2.4 * px} />
        </pattern>
      </defs>
      <g clip-path={`url(#${id}-inside)`}>
        {fillDepthMm === null ? null : (
          <rect
            x={0}
            y={level}
            width={outline.widthMm}
            height={outline.heightMm - level}
            fill={`url(#${id}-fill)`}
          />
        )}
        {liningMm > 0 ? (
          // Up the walls to the fill and folded over it; half of each stroke is cut off.
          <g clip-path={`url(#${id}-filled)`}>
            <path class="drawing-lining" d={outline.path} stroke-width={2 * liningMm} />
            <path class="drawing-lining" d={`M0 ${level}h${outline.widthMm}`} stroke-width={2 * liningMm} />
          </g>
        ) : null}
        {fillDepthMm === null || level === 0 ? null : (
          <path class="drawing-level" d={`M0 ${level}h${outline.widthMm}`} stroke-width={2 * px} />
        )}
      </g>
      <path class="drawing-wall" d={outline.path} stroke-width={2 * px} />
    </>
  );
}

/** What the drawing shows, in words. */
function describe(outline: MouldOutline, props: MouldDrawingProps): string {
  const { measures, fillDepthMm, liningMm } = props;
  const { across, down, along } = outline.edges;
  const said = [...new Set([along, across, down])].map(
    (dimension) =>
      `${DIMENSION_NAMES[dimension].toLowerCase()} ${measures[dimension] === undefined ? say.notKnown : `${measures[dimension]} mm`}`,
  );
  const fill = fillDepthMm === null ? say.fillLevelNotKnown : say.filledToMm(fixedText(fillDepthMm, 1));
  const lining = liningMm > 0 ? say.liningMm(liningMm) : '';
  return say.mouldFromAboveAndCutAcross(said.join(', '), fill, lining);
}

/** A mould from above and cut across, drawn to scale from its own measures. */
export function MouldDrawing(props: MouldDrawingProps) {
  const { shape, measures, fillDepthMm, liningMm } = props;
  const outline = mouldOutline(shape, measures);
  const scale = drawingScale(outline, ROOM);
  const { section, plan, base, edges, known } = outline;
  const size = (part: Outline) => ({ w: part.widthMm * scale, h: part.heightMm * scale });
  const [planPx, sectionPx] = [size(plan), size(section)];
  const sectionTop = ABOVE + planPx.h + BETWEEN;
  const high = sectionTop + sectionPx.h + BELOW;
  const name = (dimension: keyof typeof DIMENSION_NAMES) => DIMENSION_NAMES[dimension];
  const downMm =
    shape === 'half-cylinder' && measures.diameter ? measures.diameter / 2 : measures[edges.down];
  return (
    <figure class="drawing">
      <svg
        viewBox={`0 0 ${WIDE} ${Math.ceil(high)}`}
        role="img"
        aria-label={describe(outline, props)}
        data-known={known ? 'yes' : 'no'}
      >
        <g transform={`translate(${LEFT} ${ABOVE}) scale(${scale})`}>
          <path class="drawing-wall" d={plan.path} stroke-width={2 / scale} />
          {base ? <path class="drawing-base" d={base.path} stroke-width={1 / scale} /> : null}
        </g>
        <Measure
          x1={LEFT}
          y1={ABOVE - 8}
          x2={LEFT + planPx.w}
          y2={ABOVE - 8}
          text={measureText(name(edges.along), measures[edges.along])}
        />
        <text class="drawing-name" x={LEFT + planPx.w + 8} y={ABOVE + planPx.h / 2 + 5}>
          {say.above}
        </text>
        <g transform={`translate(${LEFT} ${sectionTop}) scale(${scale})`}>
          <Section outline={section} fillDepthMm={fillDepthMm} liningMm={liningMm} scale={scale} />
        </g>
        <Measure
          x1={LEFT}
          y1={sectionTop - 8}
          x2={LEFT + sectionPx.w}
          y2={sectionTop - 8}
          text={measureText(name(edges.across), measures[edges.across])}
        />
        <Measure
          upright
          x1={LEFT + sectionPx.w + 10}
          y1={sectionTop}
          x2={LEFT + sectionPx.w + 10}
          y2={sectionTop + sectionPx.h}
          text={measureText(name(edges.down), downMm)}
        />
        <text class="drawing-name" x={LEFT} y={sectionTop + sectionPx.h + 18}>
          {fillDepthMm === null ? say.cutAcross : say.cutAcrossFilledTo(fixedText(fillDepthMm, 0))}
        </text>
      </svg>
      <figcaption>{say.insideMeasuresInMmDrawnTo(known ? '' : say.asFarAsTheyAreKnown)}</figcaption>
    </figure>
  );
}

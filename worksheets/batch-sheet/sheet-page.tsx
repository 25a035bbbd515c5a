import type { ComponentChildren } from 'preact';
import type { SheetCode } from './draw-code.ts';
import type { SheetModel } from './sheet-model.ts';

export type Paper = 'a4' | 'letter';

interface SheetPageProps {
  model: SheetModel;
  paper: Paper;
  /** Which copy this is: bench, record, card, or both in one. */
  copy: string;
  /** Whose rule sets the foot names. */
  rules?: readonly ('bench' | 'record')[];
  /** The standing note every sheet carries. */
  standing: string;
  code?: SheetCode | null | undefined;
  mark?: string | undefined;
  children: ComponentChildren;
}

/** One sheet of paper: title strip, stops in words, blocks, foot. */
export function SheetPage(props: SheetPageProps) {
  const { model, paper, copy, rules = ['bench', 'record'], standing, code, mark, children } = props;
  const { foot } = model;
  const demo = mark === undefined ? 'DEMO, invented: not a real batch' : 'DEMO, invented';
  const marks = [model.demo ? demo : '', mark ?? ''].filter(Boolean).join(' · ');
  const ruleSets = rules.flatMap((kind) => foot.ruleSets[kind]);
  return (
    <article class="sheet" data-paper={paper} data-copy={copy} aria-label={`Batch sheet, ${copy}`}>
      <div class="sheet-fit">
        <header class="sheet-head">
          <h2>Batch sheet: {copy}</h2>
          {marks ? <p class="sheet-demo">{marks}</p> : null}
          <p class="sheet-no">{model.header.batchNo ?? 'Batch no. ____________'} · page 1 of 1</p>
        </header>
        {model.stops.length > 0 ? (
          <ul class="sheet-stops">
            {model.stops.map((stop) => (
              <li key={stop}>
                <strong>STOP</strong> {stop}
              </li>
            ))}
          </ul>
        ) : null}
        {children}
        <footer class="sheet-foot" data-block={17} data-code={code ? 'yes' : undefined}>
          <p>
            <strong>{standing}</strong>
          </p>
          {code ? (
            <svg
              class="sheet-code"
              viewBox={`0 0 ${code.squares} ${code.squares}`}
              shape-rendering="crispEdges"
              role="img"
              aria-label="Square code: finds the record of this sheet"
            >
              <path d={code.path} />
            </svg>
          ) : null}
          <p>
            {ruleSets.length > 0 ? `${ruleSets.join(' · ')} · ` : 'Rule set: none chosen · '}
            {foot.calcVersion === null ? '' : `calc ${foot.calcVersion} · record ${foot.recordVersion}`}
            {foot.batchId ? ` · ${foot.batchId}` : ''}
            {foot.check && mark === undefined ? ` · check ${foot.check}` : ''}
            {foot.printedAt ? ` · printed ${foot.printedAt}` : ''} · E entered, D default, W worked out · keep
            12 months past the product’s life
          </p>
        </footer>
      </div>
    </article>
  );
}

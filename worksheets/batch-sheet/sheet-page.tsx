import type { ComponentChildren } from 'preact';
import * as say from '#words/batch-sheet/sheet-page.ts';
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
  const demo = mark === undefined ? say.demoInventedNotARealBatch : say.demoInvented;
  const marks = [model.demo ? demo : '', mark ?? ''].filter(Boolean).join(' · ');
  const ruleSets = rules.flatMap((kind) => foot.ruleSets[kind]);
  return (
    <article class="sheet" data-paper={paper} data-copy={copy} aria-label={say.batchSheet(copy)}>
      <div class="sheet-fit">
        <header class="sheet-head">
          <h2>{say.batchSheet2(copy)}</h2>
          {marks ? <p class="sheet-demo">{marks}</p> : null}
          <p class="sheet-no">{say.page1Of1(model.header.batchNo ?? say.batchNo)}</p>
        </header>
        {model.stops.length > 0 ? (
          <ul class="sheet-stops">
            {model.stops.map((stop) => (
              <li key={stop}>
                <strong>{say.stop}</strong> {stop}
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
              aria-label={say.squareCodeFindsRecordSheet}
            >
              <path d={code.path} />
            </svg>
          ) : null}
          <p>
            {say.eEnteredDDefaultWWorked(
              ruleSets.length > 0 ? `${ruleSets.join(' · ')} · ` : say.ruleSetNoneChosen,
              foot.calcVersion === null ? '' : say.calcRecord(foot.calcVersion, foot.recordVersion),
              foot.batchId ? ` · ${foot.batchId}` : '',
              foot.check && mark === undefined ? say.check(foot.check) : '',
              foot.printedAt ? say.printed(foot.printedAt) : '',
            )}
          </p>
        </footer>
      </div>
    </article>
  );
}

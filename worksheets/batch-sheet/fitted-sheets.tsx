import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import * as say from '#words/batch-sheet/fitted-sheets.ts';
import { BenchCopy, CombinedCopy, type CopyProps, MaterialsCard, NotesCard, RecordCopy } from './copies.tsx';
import { benchTry, fitOnOne, LAST_BENCH_TRY, materialsAt, overflows, RECORD_STEPS, recordAt } from './fit.ts';

/** Both copies on one page: as the record was set, or without what only informs. */
type Combined = false | 'as-set' | 'plain';
/** The first step of the record copy without information. */
const PLAIN_STEP = RECORD_STEPS.indexOf('all-logs');

/**
 * The copies of a sheet, each made to fit exactly one page of its paper. The blocks are set, measured, and
 * set again more tightly until they fit; nothing is cut off and no line is dropped. Where both copies
 * measure to fit on one page they are printed as one.
 */
export function FittedSheets(props: CopyProps) {
  const { model, paper } = props;
  const desk = useRef<HTMLElement>(null);
  const untried = { of: model, paper, bench: 0, record: 0, combined: false as Combined };
  const [tried, setTried] = useState(untried);
  const now = tried.of === model && tried.paper === paper ? tried : untried;

  const { step: benchStep, hasCode } = benchTry(now.bench);
  const recordStep = RECORD_STEPS[now.record] ?? 'notes-apart';
  const bench = { ...model, materials: materialsAt(benchStep, model.materials) };
  const record = recordAt(recordStep, model);

  useLayoutEffect(() => {
    const page = (copy: string) => desk.current?.querySelector(`[data-copy="${copy}"]`);
    const benchPage = page(say.benchCopy);
    const recordPage = page(say.recordCopy);
    if (now.combined || !benchPage || !recordPage) return;
    const tighterBench = overflows(benchPage) && now.bench < LAST_BENCH_TRY;
    const tighterRecord = overflows(recordPage) && now.record < RECORD_STEPS.length - 1;
    if (tighterBench || tighterRecord) {
      setTried({
        ...now,
        bench: now.bench + (tighterBench ? 1 : 0),
        record: now.record + (tighterRecord ? 1 : 0),
      });
    } else if (now.bench === 0 && now.record <= PLAIN_STEP) {
      if (fitOnOne(benchPage, recordPage)) setTried({ ...now, combined: 'as-set' });
      else if (fitOnOne(benchPage, recordPage, true)) setTried({ ...now, combined: 'plain' });
    }
  });

  return (
    <section class="sheet-desk" ref={desk} tabindex={0} aria-label={say.theSheetsAsTheyPrint}>
      {now.combined ? (
        <CombinedCopy
          {...props}
          model={now.combined === 'plain' ? recordAt('all-logs', bench) : recordAt(recordStep, bench)}
        />
      ) : (
        <>
          <BenchCopy {...props} model={bench} code={hasCode ? props.code : null} />
          {bench.materials.onCard.length > 0 ? <MaterialsCard {...props} model={bench} /> : null}
          <RecordCopy {...props} model={record} />
          {recordStep === 'notes-apart' ? <NotesCard {...props} /> : null}
        </>
      )}
    </section>
  );
}

import type { ComponentChildren, ComponentType } from 'preact';
import { useContext, useEffect, useLayoutEffect, useState } from 'preact/hooks';
import * as say from '#words/parts/worksheet-frame.ts';
import { hasClocks } from '../clocks/kept-clocks.ts';
import { Example } from '../example/mode.ts';
import { startBatch } from '../state/start.ts';
import { $batch, $life, $notice } from '../state/store.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { later } from './later.tsx';
import { Links, type SiteLinks } from './links.ts';

const Withdrawn = later(() => import('./withdrawn.tsx').then((m) => m.Withdrawn));
const BenchTools = later(() => import('./bench-tools.tsx').then((m) => m.BenchTools));

/** What every worksheet shares: the batch it works on, messages about the record, and the demo mark. */
export function WorksheetFrame({ links, children }: { links: SiteLinks; children: ComponentChildren }) {
  const hydrated = useHydrated();
  const example = useContext(Example);
  const life = useShared($life);
  // Before anything typed meanwhile is handed over: what keeps it is asked for ahead of what computes with it.
  useLayoutEffect(() => (example ? example.open() : startBatch(links.demoBase)), [example, links.demoBase]);
  return (
    <Hydrated.Provider value={hydrated}>
      <Links.Provider value={links}>
        <div class="worksheet" data-life={life}>
          {example ? <example.Head /> : <OnTheBench demoBase={links.demoBase} />}
          <Withdrawn />
          <Message />
          {example ? null : <RunningClocks />}
          {children}
        </div>
      </Links.Provider>
    </Hydrated.Provider>
  );
}

/** The clocks that run, of this batch or another. With none running nothing is fetched. */
function RunningClocks() {
  const [Bar, setBar] = useState<{ of: ComponentType } | null>(null);
  useEffect(() => {
    if (hasClocks())
      import('../clocks/clock-bar.tsx').then(
        ({ ClockBar }) => setBar({ of: ClockBar }),
        () => {},
      );
  }, []);
  return Bar ? <Bar.of /> : null;
}

/** A message about the record. Its words and its buttons are fetched when there is one, which is seldom. */
function Message() {
  const notice = useShared($notice);
  const [Box, setBox] = useState<{ of: ComponentType } | null>(null);
  useEffect(() => {
    if (!notice || Box) return;
    import('./notice-box.tsx').then(
      ({ NoticeBox }) => setBox({ of: NoticeBox }),
      // Without a network the bare fact must do.
      () => setBox({ of: () => <p role="alert">{say.batchMayNotKeptPrintBefore}</p> }),
    );
  }, [notice, Box]);
  return notice && Box ? <Box.of /> : null;
}

const fetchShow = () => import('../state/show.ts');

/** Which batch lies on the bench, and the ways out of a demo. */
function OnTheBench({ demoBase }: { demoBase: string }) {
  const batch = useShared($batch);
  const life = useShared($life);
  const demo = life === 'open' && batch.demo;
  const name = batch.product.name || say.unnamedBatch;
  const reset = () =>
    fetchShow().then(({ openDemo }) => openDemo(batch.id.replace(/^demo-/, ''), demoBase, true));
  return (
    <>
      <div class="worksheet-bench">
        <p class="worksheet-batch" aria-live="polite" data-blank={say.blankBench}>
          {life === 'open' ? (
            <>
              {say.batchOnTheBench} <strong>{name}</strong>
              {batch.product.batchNo ? ` · ${batch.product.batchNo}` : null}
              {demo ? (
                <>
                  {' '}
                  <span class="demo-mark">{say.demoInvented}</span>
                </>
              ) : null}
            </>
          ) : life === 'waking' ? (
            say.lookingForTheBatchOnThis
          ) : (
            say.blankBench
          )}
        </p>
        <BenchTools />
      </div>
      {demo ? (
        <p class="worksheet-demo">
          <button type="button" onClick={() => void reset()}>
            {say.putTheDemoBackAsIt}
          </button>
          <button type="button" onClick={() => void fetchShow().then(({ keepAsOwn }) => keepAsOwn())}>
            {say.copyItAsABatchOf}
          </button>
        </p>
      ) : null}
    </>
  );
}

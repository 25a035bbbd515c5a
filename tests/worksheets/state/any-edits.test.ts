import 'fake-indexeddb/auto';
import { type Batch, historyFault, newBatch } from '@larderwright/calc/batch';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { database } from '../../../worksheets/state/database.ts';
import { keepEdit } from '../../../worksheets/state/keeper.ts';
import { addFormulaLine } from '../../../worksheets/state/lines.ts';
import { putBack, removeRow } from '../../../worksheets/state/rows.ts';
import { openById } from '../../../worksheets/state/show.ts';
import { rawBatch, saveBatch } from '../../../worksheets/state/storage.ts';
import { $batch, $life, $notice, editAt, emptyBatch } from '../../../worksheets/state/store.ts';
import { redo, undo, watchSteps } from '../../../worksheets/state/undo.ts';

vi.stubGlobal('addEventListener', () => {});
watchSteps();

/** What a person would say stands in the record: the fields touched here, and the lines in their order. */
interface Written {
  texts: Record<string, string>;
  lines: { id: string; name: string }[];
}
/** On the screen, and on the device as it was last kept. */
interface Model {
  now: Written;
  kept: Written;
}
interface Bench {
  readonly id: string;
}
type Command = fc.AsyncCommand<Model, Bench>;

const PATHS = ['product.name', 'product.kitchen', 'product.batchNo'] as const;
/** Only the other tab writes it: what two write at once is told to the person, and tested with the keeper. */
const THEIRS = 'notes';

const writtenIn = ({ product, notes, formula }: Batch): Written => ({
  texts: {
    'product.name': product.name,
    'product.kitchen': product.kitchen,
    'product.batchNo': product.batchNo,
    [THEIRS]: notes,
  },
  lines: formula.lines.map(({ id, name }) => ({ id, name })),
});

const step = (
  name: string,
  run: (model: Model, bench: Bench) => Promise<void> | void,
  check = (_: Model) => true,
): Command => ({
  check,
  run: async (model, bench) => {
    await run(model, bench);
    expect(writtenIn($batch.get())).toEqual(model.now);
    expect($notice.get()).toBeNull();
  },
  toString: () => name,
});

const type = (path: string, text: string) =>
  step(`type ${JSON.stringify(text)} into ${path}`, (model) => {
    editAt(path, text);
    model.now.texts[path] = text;
  });

const addLine = () =>
  step('add a line', (model) => {
    model.now.lines.push({ id: addFormulaLine('lean'), name: '' });
  });

const lineAt = (model: Model, at: number) => {
  const line = model.now.lines[at % model.now.lines.length];
  if (!line) throw new Error('There is no line');
  return line;
};
const hasLines = (model: Model) => model.now.lines.length > 0;

const nameLine = (at: number, text: string) =>
  step(
    `name line ${at} ${JSON.stringify(text)}`,
    (model) => {
      const line = lineAt(model, at);
      editAt(`formula.lines.${line.id}.name`, text);
      line.name = text;
    },
    hasLines,
  );

const removeLine = (at: number) =>
  step(
    `remove line ${at}`,
    (model) => {
      const { id, name } = lineAt(model, at);
      removeRow('formula.lines', id, name);
      model.now.lines = model.now.lines.filter((line) => line.id !== id);
    },
    hasLines,
  );

const removeAndPutBack = (at: number) =>
  step(
    `remove line ${at} and put it back`,
    (model) => {
      const { id, name } = lineAt(model, at);
      removeRow('formula.lines', id, name);
      putBack();
    },
    hasLines,
  );

const undoAndRedo = () =>
  step('take back and do again', () => {
    undo();
    redo();
  });

const keep = () =>
  step('keep', async (model, { id }) => {
    await keepEdit($batch.get());
    // What the other tab wrote meanwhile is on this screen now.
    model.now.texts[THEIRS] = model.kept.texts[THEIRS] ?? '';
    model.kept = structuredClone(model.now);
    const kept = (await rawBatch(id)) as Batch;
    expect(writtenIn(kept)).toEqual(model.kept);
    expect(historyFault(id, kept.history)).toBeNull();
  });

const reload = () =>
  step('reload', async (model, { id }) => {
    $batch.set(emptyBatch);
    $life.set('waking');
    await openById(id, true);
    model.now = structuredClone(model.kept);
  });

const otherTab = (text: string) =>
  step(`another tab writes ${JSON.stringify(text)}`, async (model, { id }) => {
    const theirs = { ...((await rawBatch(id)) as Batch), notes: text };
    const db = await database();
    const tx = db.transaction(['batches', 'summaries'], 'readwrite');
    const shelved = await tx.objectStore('summaries').get(id);
    if (!shelved) throw new Error('The record has no summary');
    await tx.objectStore('batches').put(theirs);
    await tx.objectStore('summaries').put({ ...shelved, rev: shelved.rev + 1 });
    await tx.done;
    model.kept.texts[THEIRS] = text;
  });

const texts = fc.oneof(
  fc.constantFrom('', ' ', 'Hare', '12,5', '__proto__', '<b>', '\u0000', 'é́'),
  fc.string({ unit: 'grapheme', maxLength: 8 }),
);

test('whatever is typed, added, removed, taken back, kept and reloaded, in whatever order, nothing kept is lost', async () => {
  let count = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.commands(
        [
          fc.tuple(fc.constantFrom(...PATHS), texts).map(([path, text]) => type(path, text)),
          fc.constant(addLine()),
          fc.tuple(fc.nat(9), texts).map(([at, text]) => nameLine(at, text)),
          fc.nat(9).map(removeLine),
          fc.nat(9).map(removeAndPutBack),
          fc.constant(undoAndRedo()),
          fc.constant(keep()),
          fc.constant(reload()),
          texts.map(otherTab),
        ],
        { maxCommands: 30 },
      ),
      async (commands) => {
        count += 1;
        const batch = newBatch({ id: `any-${count}`, at: '2026-11-27T10:00:00+00:00', zone: 'UTC' });
        await saveBatch(batch);
        $notice.set(null);
        await openById(batch.id, true);
        await fc.asyncModelRun(
          () => ({
            model: { now: writtenIn(batch), kept: writtenIn(batch) },
            real: { id: batch.id },
          }),
          commands,
        );
      },
    ),
    { numRuns: 150 },
  );
});

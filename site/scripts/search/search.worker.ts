/**
 * The search at work. It stands in a worker since reading the index takes WebAssembly, which the policy of a page
 * forbids and that of this one file allows.
 */
import type { Hit } from './index-types.ts';
import { look, openIndex } from './look.ts';
import type { Answers, Question, Reply } from './messages.ts';

/** Results of the query answered last, and of those before it that the page may still ask about. */
const hits = new Map<string, Hit>();

async function answer(question: Question): Promise<Answers[Question['ask']]> {
  if (question.ask === 'open') {
    await openIndex();
    return true;
  }
  if (question.ask === 'look') {
    const found = await look(question.typed, question.kind);
    for (const hit of found.hits) hits.set(hit.id, hit);
    return { ...found, hits: found.hits.map(({ id }) => id) };
  }
  return Promise.all(
    question.hits.flatMap((id) => {
      const hit = hits.get(id);
      return hit ? [hit.data()] : [];
    }),
  );
}

addEventListener('message', async ({ data: question }: MessageEvent<Question>) => {
  const reply: Reply = await answer(question).then(
    (given) => ({ id: question.id, answer: given }),
    () => ({ id: question.id, failed: true }),
  );
  postMessage(reply);
});

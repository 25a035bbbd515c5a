import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { publicFunctions } from '../../tools/public-functions.ts';
import { faultIn } from './fault-in.ts';
import { namedTypes } from './named.ts';
import { valuesOf } from './of-type.ts';
import { OWN } from './own.ts';

const { checker, functions } = publicFunctions();
const named = namedTypes(await loadIngredients(), await loadIngredientDetails());
const argumentsOf = valuesOf(checker, named);

const subjects = [...new Set(functions.map(({ subject }) => subject))];
describe.each(subjects)('%s', async (subject) => {
  const face: Record<string, (...given: unknown[]) => unknown> = await import(
    `../../../calc/${subject}/index.ts`
  );
  for (const { name, signature, doc } of functions.filter((one) => one.subject === subject)) {
    const own = OWN[`${subject}.${name}`];
    it(`${name} answers whatever its types allow without NaN, and throws only what its docstring says`, async () => {
      const call = face[name];
      if (!call) throw new Error(`${name} is not there at run time`);
      const values = own?.given?.(named) ?? argumentsOf(signature, own?.parameters?.(named));
      const throwing = doc.includes('@throws');
      await fc.assert(
        fc.asyncProperty(values, async (given) => {
          const before = JSON.stringify(given);
          let answer: unknown;
          try {
            answer = await call(...given);
          } catch (error) {
            if (throwing && error instanceof RangeError) return;
            throw error;
          }
          const fault = faultIn(answer, own ?? {});
          if (fault) throw new Error(`${name} answers ${fault}`);
          if (before !== JSON.stringify(given)) throw new Error(`${name} changed what it was given`);
        }),
        { numRuns: own?.runs ?? 50 },
      );
    });
  }
});

it('every function says in a docstring what it gives', () => {
  const silent = functions.filter(({ doc }) => doc === '').map(({ subject, name }) => `${subject}.${name}`);
  expect(silent).toEqual([]);
});

it('keeps no entry of its own for a function that is gone', () => {
  const shown = new Set(functions.map(({ subject, name }) => `${subject}.${name}`));
  expect(Object.keys(OWN).filter((key) => !shown.has(key))).toEqual([]);
});

import type { Flow } from './flow.ts';
import type { Spreading } from './spreading.ts';

/**
 * Two nets of one body, the second with cells twice as long, marched side by side as one state. What is
 * read off them is `blend`, which cancels the leading error of a second-order rule.
 */
export interface Pair<T> {
  readonly fine: T;
  readonly coarse: T;
}

/** Richardson's combination of a value from the fine and from the coarse net. */
export function blend({ fine, coarse }: Pair<number>): number {
  return (4 * fine - coarse) / 3;
}

/** The same made for each net. */
export function both<T, R>({ fine, coarse }: Pair<T>, make: (one: T) => R): Pair<R> {
  return { fine: make(fine), coarse: make(coarse) };
}

/** Views of the two halves of a joint state. */
export function halves(state: Float64Array, fineSize: number): Pair<Float64Array> {
  return { fine: state.subarray(0, fineSize), coarse: state.subarray(fineSize) };
}

/** The two flows as one, over the states laid end to end. */
export function joinFlows({ fine, coarse }: Pair<Flow>): Flow {
  return {
    size: fine.size + coarse.size,
    derivative: (timeS, state, into) => {
      const [from, to] = [halves(state, fine.size), halves(into, fine.size)];
      fine.derivative(timeS, from.fine, to.fine);
      coarse.derivative(timeS, from.coarse, to.coarse);
    },
    fastestRate: (state) => {
      const from = halves(state, fine.size);
      return Math.max(fine.fastestRate(from.fine), coarse.fastestRate(from.coarse));
    },
    spreading: joinSpreadings({ fine: fine.spreading, coarse: coarse.spreading }, fine.size),
  };
}

function joinSpreadings({ fine, coarse }: Pair<Spreading | null>, fineSize: number): Spreading | null {
  if (fine === null || coarse === null) return null;
  return {
    prepare: (state, weightS) => {
      const from = halves(state, fineSize);
      fine.prepare(from.fine, weightS);
      coarse.prepare(from.coarse, weightS);
    },
    relax: (start, into) => {
      const [from, to] = [halves(start, fineSize), halves(into, fineSize)];
      fine.relax(from.fine, to.fine);
      coarse.relax(from.coarse, to.coarse);
    },
  };
}

/** Two arrays laid end to end. */
export function joined({ fine, coarse }: Pair<Float64Array>): Float64Array {
  const whole = new Float64Array(fine.length + coarse.length);
  whole.set(fine);
  whole.set(coarse, fine.length);
  return whole;
}

// One file of the build: what is found in the rows of a show, their cutting order, and what is asked where they are cut.
export { begunAgain, withoutWrongTicks } from '../core/bench/cutWarning.ts';
export { orderBench } from '../core/bench/orderBench.ts';
export { orderJob } from '../core/bench/orderJob.ts';
export { FindingsAcross } from '../core/findings/findingsAcross.ts';
export { judgeWorked } from '../core/findings/judgeRow.ts';
export { tallyLevels } from '../core/findings/levelTally.ts';
export { BenchOrder } from './benchOrder.svelte.ts';
export { questionOf } from './cutQuestion.ts';
export { KeptCuts } from './keptCuts.ts';

import { type PaperLine, stepsOnPages } from '../../core/bench/paper.ts';
import type { BenchStep } from '../../core/bench/benchPlan.ts';
import { stepMounts } from '../../core/bench/stations.ts';
import { windowCautions } from '../../core/bench/windowCautions.ts';
import { blankWords } from '../../core/bench/windowCuts.ts';
import { ticksByKey } from '../../core/show/tick.ts';
import ListPaper from '../../ui/paper/ListPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** The bench list: the cutting order, step by step. */
export const listDocument = paperDocument({
	id: 'list',
	name: 'Bench list',
	care: windowCautions.inShort,
	none: 'No window can be cut yet.',
	make(source) {
		const { bench, settings, show, results } = source.session;
		const ticks = ticksByKey(show.ticks);
		/** Of how many copies the cuts of a line are made. */
		const madeOf = (step: BenchStep, line: PaperLine) =>
			stepMounts(step, show.rows, results, settings, ticks).filter(
				({ index, part, isMade }) => isMade && index === line.row - 1 && part === line.part,
			).length;
		const nameOf = namesOfPrints(source);
		const blankOf = ({ row, part }: PaperLine) => blankWords(results[row - 1]!, part, settings);
		return {
			pages: stepsOnPages(bench.steps, source.paper).flatMap((page) =>
				page.length === 0 ? [] : [{ page, steps: bench.steps, nameOf, blankOf, madeOf, settings }],
			),
		};
	},
	component: ListPaper,
});

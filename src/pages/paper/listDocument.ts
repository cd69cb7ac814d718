import { stepsOnPages } from '../../core/bench/paper.ts';
import ListPaper from '../../ui/paper/ListPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** The bench list: the cutting order, step by step. */
export const listDocument = paperDocument({
	id: 'list',
	name: 'Bench list',
	none: 'No window can be cut yet.',
	make(source) {
		const { bench, settings } = source.session;
		const nameOf = namesOfPrints(source);
		return {
			pages: stepsOnPages(bench.steps, source.paper).flatMap((page) =>
				page.length === 0 ? [] : [{ page, steps: bench.steps, nameOf, settings }],
			),
		};
	},
	component: ListPaper,
});

import { onPages } from '../../core/bench/paper.ts';
import { paperMounts } from '../../core/bench/paperMounts.ts';
import { windowCautions } from '../../core/bench/windowCautions.ts';
import MarksPaper from '../../ui/paper/MarksPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

const perPage = 4;

/** Marks on the back of each mount. */
export const marksDocument = paperDocument({
	id: 'marks',
	name: 'Marks on the back',
	title: 'Marks on the back, mirrored',
	care: windowCautions.inShort,
	none: 'No window can be cut yet.',
	make(source) {
		const { show, results, bench, settings } = source.session;
		const nameOf = namesOfPrints(source);
		const pages = onPages(paperMounts(show.rows, results, bench.steps, settings), perPage);
		return { pages: pages.map((page) => ({ page, nameOf, stepsOfRows: bench.stepsOfRows, scale: settings })) };
	},
	component: MarksPaper,
});

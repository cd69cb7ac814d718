import { cornerTemplates, paperMounts } from '../../core/bench/paperMounts.ts';
import { windowCautions } from '../../core/bench/windowCautions.ts';
import TemplatePaper from '../../ui/paper/TemplatePaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** Corner templates, true to size. */
export const templatesDocument = paperDocument({
	id: 'templates',
	name: 'Corner templates, true to size',
	title: 'Corner template, true to size',
	care: windowCautions.inShort,
	none: 'No window can be cut yet.',
	make(source) {
		const { show, results, bench, settings } = source.session;
		const nameOf = namesOfPrints(source);
		const { pages, tooLarge } = cornerTemplates(paperMounts(show.rows, results, bench.steps, settings), source.paper);
		return {
			pages: pages.map((page) => ({ page, nameOf, scale: settings })),
			says:
				tooLarge.length > 0 ? `Too large for a template on this paper: ${tooLarge.map(nameOf).join(', ')}.` : undefined,
		};
	},
	component: TemplatePaper,
});

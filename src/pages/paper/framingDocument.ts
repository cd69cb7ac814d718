import { onPages } from '../../core/bench/paper.ts';
import { sawCautions } from '../../core/bench/sawCautions.ts';
import { layHinges } from '../../core/row/layHinges.ts';
import FramingPaper from '../../ui/paper/FramingPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

const perPage = 3;

/** Frames and hinges: the prints whose frame is known, or where they hang by their hinges. */
export const framingDocument = paperDocument({
	id: 'framing',
	name: 'Frames and hinges',
	care: sawCautions.inShort,
	none: 'No print has a frame or a place for its hinges yet.',
	make(source) {
		const { show, results, settings, pictures } = source.session;
		const nameOf = namesOfPrints(source);
		const framed = results.flatMap((result, index) => {
			const { copies, isStopped, frame } = result;
			const isShown = frame.seat !== undefined || layHinges(result, settings) !== undefined;
			return copies > 0 && !isStopped && isShown ? [index] : [];
		});
		const addressOf = (index: number) => pictures.addressOf(show.rows[index]!);
		return { pages: onPages(framed, perPage).map((page) => ({ page, nameOf, results, settings, addressOf })) };
	},
	component: FramingPaper,
});

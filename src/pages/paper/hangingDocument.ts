import { hangPages } from '../../core/order/hangPages.ts';
import { hangingList } from '../../core/walls/hangingList.ts';
import { hangWalls } from '../../core/walls/hangWalls.ts';
import { bearingWords, measureCords } from '../../core/walls/holdWords.ts';
import { wallLabels } from '../../core/walls/wallLabels.ts';
import { hangingCautions } from '../../core/walls/wallWords.ts';
import HangPaper from '../../ui/paper/HangPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** The walls with what hangs on each, and the hanging list. */
export const hangingDocument = paperDocument({
	id: 'hanging',
	name: 'Walls and hanging list',
	title: 'Hanging list',
	care: hangingCautions[2],
	none: 'No print hangs on a wall yet.',
	make(source) {
		const { show, results, settings } = source.session;
		const lines = hangingList(results, settings);
		const nameOf = namesOfPrints(source);
		const unhung = hangWalls(results, settings).unhung.map(({ place }) => nameOf(place));
		const hung = new Set((show.hung ?? []).map(({ row }) => row));
		const made = new Set(show.rows.flatMap(({ id }, place) => (hung.has(id) ? [place] : [])));
		const labels = wallLabels(lines, show.rows);
		const stopped = new Set(results.flatMap(({ isStopped }, place) => (isStopped ? [place] : [])));
		const measured = [
			...(lines.some(({ hooks }) => hooks?.fixing.isToMeasure) ? [measureCords] : []),
			...(lines.some(({ mark }) => mark.what === 'hook') ? [bearingWords(settings)] : []),
		];
		const pages = hangPages(lines, unhung, settings, source.paper, measured);
		return { pages: pages.map((page) => ({ page, nameOf, labels, stopped, made, settings })) };
	},
	component: HangPaper,
	csv: { label: 'Export hanging list', give: (out) => out.hangingList() },
});

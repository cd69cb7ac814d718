import type { LabelKind } from '../../core/labels/onLabel.ts';
import { labelPages } from '../../core/labels/labelPages.ts';
import LabelPaper from '../../ui/paper/LabelPaper.svelte';
import LabelOptions from './LabelOptions.svelte';
import { chooseLabels, labelChoicesOf } from './labelsOnDesk.ts';
import { paperDocument } from './paperDocument.ts';

/** How many prints are named whose texts were shortened. */
const mostSaid = 4;

const labels = (kind: LabelKind, name: string) =>
	paperDocument({
		id: `labels-${kind}`,
		name,
		isBare: true,
		none: 'There is no print to label.',
		make(source) {
			const { show, results, settings, costs } = source.session;
			const { sheet, start, isOnlyNew, group } = labelChoicesOf(source, kind);
			const { pages, says, count } = labelPages(
				{ ...{ kind, sheet, start, isOnlyNew, group }, show, results, settings, costOf: (row) => costs.costOfRow(row) },
				source.measure,
			);
			const more = says.length - mostSaid;
			const said = [...says.slice(0, mostSaid), ...(more > 0 ? [`${more} more like that.`] : [])];
			const isAllDone = count === 0 && says.length === 0 && isOnlyNew && show.rows.length > 0;
			const isOfSome = group.maker !== undefined || group.wall !== undefined;
			const done = isOfSome ? 'Every one of these prints is ticked as labelled.' : 'Every print is ticked as labelled.';
			return {
				pages: pages.map((each, place) => ({
					sheet,
					labels: each,
					onstart: place === 0 ? (from: number) => chooseLabels(source, kind, { start: from }) : undefined,
				})),
				paper: sheet.paper,
				says: isAllDone ? done : said.length > 0 ? said.join(' ') : undefined,
			};
		},
		component: LabelPaper,
		options: LabelOptions,
	});

/** Labels for the back of each print. */
export const backLabelsDocument = labels('back', 'Labels for the back');

/** Labels for the wall, beside each print. */
export const wallLabelsDocument = labels('wall', 'Labels for the wall');

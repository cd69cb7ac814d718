import { isRecord } from '../values/isRecord.ts';
import { type Paper, papers } from '../values/papers.ts';

/** How labels of a kind are printed. */
export interface LabelPrinting {
	/** The name of their sheet; undefined: the first that there is. */
	readonly sheet?: string;
	/** The first label of the first sheet that is free, from 1. */
	readonly start?: number;
	/** Whether only copies get a label that are not ticked off as labelled. */
	readonly isOnlyNew?: boolean;
	/** Whose prints get labels, and on which wall; left out or blank: all. */
	readonly maker?: string;
	readonly wall?: string;
}

/** What is chosen to be printed in a show. */
export interface Printing {
	/** Undefined: A4, or Letter where the show is in inches. */
	readonly paper?: Paper;
	/** The documents, by their ids; one that this version does not know is kept. */
	readonly shown: readonly string[];
	readonly labels: Readonly<Record<string, LabelPrinting>>;
}

/** Reads what is kept of it; what cannot be read counts as not chosen. */
export function readPrinting(stored: unknown): Printing {
	const { paper, shown, labels } = isRecord(stored) ? stored : {};
	const known = (Object.keys(papers) as Paper[]).find((name) => name === paper);
	return {
		...(known && { paper: known }),
		shown: Array.isArray(shown) ? shown.filter((id): id is string => typeof id === 'string') : [],
		labels: isRecord(labels)
			? Object.fromEntries(Object.entries(labels).map(([kind, each]) => [kind, readLabelPrinting(each)]))
			: {},
	};
}

function readLabelPrinting(stored: unknown): LabelPrinting {
	if (!isRecord(stored)) return {};
	const { sheet, start, isOnlyNew, maker, wall } = stored;
	return {
		...(typeof sheet === 'string' && { sheet }),
		...(typeof start === 'number' && Number.isSafeInteger(start) && start >= 1 && { start }),
		...(isOnlyNew === true && { isOnlyNew }),
		...(typeof maker === 'string' && maker !== '' && { maker }),
		...(typeof wall === 'string' && wall !== '' && { wall }),
	};
}

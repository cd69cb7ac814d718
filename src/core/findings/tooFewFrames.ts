import type { Scale } from '../length/formatLength.ts';
import type { Frame } from '../settings/settings.ts';
import type { RowResult } from './rowResult.ts';
import { told } from './told.ts';

/** How many of a frame the rows of a show want, and how many are there. */
interface Wanted {
	readonly frame: Frame;
	readonly places: number[];
	copies: number;
}

/**
 * The results of a show with `no-frame` where more frames of one name are wanted than are there. Rows that are stopped
 * want none. Results of which there are enough stay the same objects.
 */
export function withTooFewFrames(results: readonly RowResult[], scale: Scale): readonly RowResult[] {
	const byFrame = new Map<Frame, Wanted>();
	results.forEach(({ frame: { frame }, copies, isStopped }, place) => {
		if (!frame?.size || frame.count === undefined || isStopped || copies === 0) return;
		const wanted = byFrame.get(frame) ?? { frame, places: [], copies: 0 };
		wanted.places.push(place);
		wanted.copies += copies;
		byFrame.set(frame, wanted);
	});
	const short = [...byFrame.values()].filter(({ frame, copies }) => copies > frame.count!);
	if (short.length === 0) return results;
	const all = [...results];
	for (const { frame, places, copies } of short)
		for (const place of places) all[place] = withFinding(all[place]!, frame, copies, scale);
	return all;
}

function withFinding(result: RowResult, frame: Frame, copies: number, scale: Scale): RowResult {
	const finding = told(
		{
			code: 'no-frame',
			level: 'look',
			cells: ['frame'],
			figures: () => ({
				kind: 'too few',
				frame: frame.name,
				wanted: { count: copies },
				there: { count: frame.count! },
			}),
		},
		scale,
		() => [],
	);
	const isNote = ({ level }: { readonly level: string }) => level === 'note';
	const first = result.findings.findIndex(isNote);
	const at = first < 0 ? result.findings.length : first;
	return { ...result, findings: result.findings.toSpliced(at, 0, finding) };
}

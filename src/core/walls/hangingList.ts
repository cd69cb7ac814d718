import { formatWithUnit } from '../length/formatLength.ts';
import { type Length, minus } from '../length/length.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { type Hooks, hooksOf, isFlat } from './fixing.ts';
import { hangWalls } from './hangWalls.ts';
import type { HungPrint, HungWall } from './hungPrint.ts';

/** A print as it is hung: what is measured on the wall, and by what it hangs. */
export interface HangingLine {
	/** Its place in the show, from 0. */
	readonly place: number;
	/** Its place among the prints of its wall, from 1. */
	readonly number: number;
	readonly hung: HungWall;
	readonly print: HungPrint;
	readonly hooks: Hooks | undefined;
	/** What is marked: the first hook, or without one the top left corner of the print. */
	readonly mark: { readonly what: 'hook' | 'nail' | 'corner'; readonly left: Length; readonly height: Length };
	/** From the mark of the print before it on the wall, along the wall; undefined for the first. */
	readonly fromLast: Length | undefined;
	readonly weightKg: number | undefined;
	readonly isAbout: boolean;
}

/** The prints of all walls in the order in which they are hung: wall by wall, from the left, in a column from the top. */
export function hangingList(
	results: readonly Pick<WorkedRow, 'read' | 'hangs' | 'framed' | 'frame' | 'copies'>[],
	settings: Settings,
): readonly HangingLine[] {
	return hangWalls(results, settings).walls.flatMap((hung) => {
		let last: Length | undefined;
		return hung.prints.map((print, at): HangingLine => {
			const result = results[print.place]!;
			const hooks = hooksOf(result, print, settings);
			const mark = markOf(print, hooks, settings);
			const fromLast = last === undefined ? undefined : minus(mark.left, last);
			last = mark.left;
			const { weightKg, isAbout } = result.framed;
			return { place: print.place, number: at + 1, hung, print, hooks, mark, fromLast, weightKg, isAbout };
		});
	});
}

function markOf(print: HungPrint, hooks: Hooks | undefined, { hanging }: Settings): HangingLine['mark'] {
	const hook = hooks?.hooks[0];
	const corner = { what: 'corner', left: print.left, height: cornerHeight(print) } as const;
	if (!hook) return corner;
	if (hanging.nail === 0) return { what: 'hook', ...hook };
	return { what: 'nail', left: hook.left, height: (hook.height + hanging.nail) as Length };
}

const cornerHeight = ({ centre, size }: HungPrint): Length => Math.round(centre + size.height / 2) as Length;

/** What is marked on the wall, in a word. */
export const markWords: Readonly<Record<HangingLine['mark']['what'], string>> = {
	hook: 'Hook above the floor',
	nail: 'Nail above the floor',
	corner: 'Top edge above the floor',
};

/**
 * What holds a print, in a few words: "cord on one hook, it pulls 3.1 kg on each ring".
 * @param say how lengths are said: exactly in files, as marked on screens and on paper
 */
export function fixingWords({ hooks }: Pick<HangingLine, 'hooks'>, settings: Settings, say = formatWithUnit): string {
	if (!hooks) return 'no frame: fixed as it suits the print';
	const { kind } = settings.hanging;
	if (kind === 'rail')
		return hooks.railCord === undefined
			? 'two cords from the rail'
			: `two cords of ${say(hooks.railCord, settings)} from the rail`;
	if (kind === 'two hooks') {
		const [first, second] = hooks.hooks;
		return first && second ? `two hooks, ${say(minus(second.left, first.left), settings)} apart` : 'two hooks';
	}
	const { pullKg } = hooks.fixing;
	if (isFlat(hooks.fixing)) return 'cord on one hook but flat: lower the rings or let it rise further';
	return pullKg === undefined ? 'cord on one hook' : `cord on one hook, it pulls ${pullKg.toFixed(1)} kg on each ring`;
}

/** What a print weighs in words; blank where that is not known. */
export const weightOf = ({ weightKg, isAbout }: Pick<HangingLine, 'weightKg' | 'isAbout'>): string =>
	weightKg === undefined ? '' : `${isAbout ? 'about ' : ''}${weightKg.toFixed(1)} kg`;
